import { signal } from '@preact/signals';
import type { ComponentProps } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { useLate } from '../../pace/late.tsx';
import { nextTask } from '../../pace/next-task.ts';
import { Group } from '../../ui/group/group.tsx';

/** All that is in sight stands: what is folded may be made. */
const isDue = signal(false);
/** A field is gone to that may lie in a fold. */
const isWanted = signal(false);

/**
 * A group of which nothing is made while the page is coming. Then each is made in a frame of its own, so that finding in
 * the page finds what is in it; sooner where she is about to open it.
 */
export function Fold({ children, ...group }: ComponentProps<typeof Group>) {
  const isMade = useLate(isDue, 'map');
  const [isNear, setNear] = useState(false);
  return (
    <Group {...group} onNear={() => setNear(true)}>
      {(isMade || isNear || isWanted.value) && children}
    </Group>
  );
}

/** The end of the page. */
export function PageStands() {
  useEffect(() => {
    isDue.value = true;
    return () => {
      isDue.value = isWanted.value = false;
    };
  }, []);
  return null;
}

/** Has every fold made; false where that was so already. */
export async function makeFolds(): Promise<boolean> {
  if (isWanted.peek()) return false;
  isWanted.value = true;
  await nextTask();
  return true;
}
