import type { InHand } from '../../app/state.ts';
import type { LogEntry } from '../../progress/log.ts';

/** What each page about count and place is given. */
export interface CountPageProps {
  readonly now: InHand;
  readonly entries: readonly LogEntry[];
  readonly query: URLSearchParams;
}
