import { type ComponentChildren, toChildArray } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { nextTask } from './next-task.ts';

export interface InTurnProps {
  /** how many of the children stand in the first frame */
  readonly atOnce?: number;
  /** each stands in the end: one that may be missing is a component that draws nothing then */
  readonly children: ComponentChildren;
}

/**
 * Draws a long page from the top: what is in sight first, then one part in a task, so that a slow phone shows it soon and
 * is never deaf to a finger for as long as the whole page takes. Drawn once, it stays.
 */
export function InTurn({ atOnce = 1, children }: InTurnProps) {
  const parts = toChildArray(children);
  const [drawn, setDrawn] = useState(atOnce);
  const isWhole = drawn >= parts.length;
  useEffect(() => {
    if (isWhole) return;
    let isGone = false;
    void turn().then(() => {
      if (!isGone) setDrawn(drawn + 1);
    });
    return () => {
      isGone = true;
    };
  }, [drawn, isWhole]);
  return <>{parts.slice(0, drawn)}</>;
}

let before = Promise.resolve();

/** A task of its own for each, whichever page or foot asks for it. */
const turn = (): Promise<void> => {
  before = before.then(nextTask);
  return before;
};
