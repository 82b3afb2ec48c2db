import type { PlanId } from './log.ts';
/** What the log says about a make. */
export interface Place {
  /** rows worked */
  readonly rows: number;
  /** id of the plan; undefined while nothing in the log names one */
  readonly plan: PlanId | undefined;
  readonly seq: number;
  /** when it was last knitted, ms; 0 when never */
  readonly at: number;
}
