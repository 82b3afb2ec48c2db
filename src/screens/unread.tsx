import type { Unread } from '../app/drafts/kept/read-kept.ts';
import { readFault } from '../app/state.ts';
import { Button } from '../ui/button/button.tsx';
import { Notice } from '../ui/notice/notice.tsx';
import { saysFault } from '../words/fault.ts';

export interface OpeningProps {
  readonly unread: Unread | undefined;
  /** said while it is being read */
  readonly opening: string;
  readonly beginAnew: string;
  readonly onAnew: () => void;
}

/** In the place of a page that is not read yet: why it cannot be, and the way on. Never 'Opening ...' without end. */
export function Opening({ unread, opening, beginAnew, onAnew }: OpeningProps) {
  const fault = unread?.fault ?? readFault.value;
  if (fault === undefined) return <>{opening}</>;
  const isUnreadable = fault.code === 'kept-unreadable';
  return (
    <Notice kind="fault" title={saysFault(fault)} live>
      {isUnreadable && <Button onPress={onAnew}>{beginAnew}</Button>}
    </Notice>
  );
}
