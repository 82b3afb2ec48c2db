import { ok, type Result } from '../fault.ts';
import type { Design } from '../garment/design.ts';
import { draft } from '../garment/draft.ts';
import type { Warning } from '../garment/warnings.ts';
import { type Finished, finished } from '../making-up/finished.ts';
import { type MakingUp, makingUpOf } from '../making-up/making-up.ts';
import type { MakingUpStep } from '../making-up/step.ts';
import { asPlanned } from '../piece/as-planned.ts';
import type { Garment } from '../piece/garment.ts';
import type { StandingGarment } from '../piece/standing.ts';
import { type YarnNeed, yarnOf } from '../yarn/need.ts';
import type { ColouredMake } from './stripe-lines.ts';

/** A garment in one size, with all that is told of it beside its rows. */
export interface WorkedSize {
  /** '' where there is only one */
  readonly size: string;
  readonly garment: StandingGarment;
  readonly steps: readonly MakingUpStep[];
  readonly made: MakingUp;
  readonly finished: Finished;
  readonly yarn: YarnNeed;
  readonly warnings: readonly Warning[];
  readonly design?: Design;
  /** its rows in their colours, where it is striped */
  readonly coloured?: readonly ColouredMake[];
}

/** @returns the garment worked out, or the planner's faults */
export function workSize(size: string, garment: Garment): Result<WorkedSize> {
  const planned = asPlanned(garment);
  if (!planned.ok) return planned;
  const made = makingUpOf(planned.value);
  const yarn = yarnOf(planned.value);
  if (!yarn.ok) return yarn;
  return ok({
    size,
    garment: planned.value,
    steps: made.steps,
    made,
    finished: finished(made.worked, planned.value),
    yarn: yarn.value,
    warnings: [],
  });
}

/** The same drafted from a design, with the warnings of the draft; what is not drafted (name, yarn, credits) from `rest`. */
export function draftSize(size: string, design: Design, rest: Omit<Garment, 'pieces'>): Result<WorkedSize> {
  const drafted = draft(design);
  if (!drafted.ok) return drafted;
  const { recipes, joints, warnings } = drafted.value;
  const worked = workSize(size, { ...rest, pieces: recipes, joints });
  return worked.ok ? ok({ ...worked.value, design, warnings }) : worked;
}
