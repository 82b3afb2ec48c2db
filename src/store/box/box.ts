import type { SentinelKeeper } from '../beside/sentinel.ts';
import type { Change } from './changes.ts';
import type { Door } from './door.ts';

/** What the parts that are loaded later need. */
export interface Box {
  readonly door: Door;
  readonly sentinel: SentinelKeeper;
  readonly now: () => number;
  readonly device: string;
  readonly tell: (change: Change) => void;
}
