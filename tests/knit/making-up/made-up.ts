import { expect } from 'vitest';
import { factsOf } from '../../../src/knit/fabric-facts.ts';
import type { Design } from '../../../src/knit/garment/design.ts';
import type { Draft } from '../../../src/knit/garment/draft.ts';
import { garmentKinds } from '../../../src/knit/garment/kinds/garments.ts';
import { type Finished, finished } from '../../../src/knit/making-up/finished.ts';
import { type WorkedMakingUp, workJoints } from '../../../src/knit/making-up/work-making-up.ts';
import type { StandingGarment } from '../../../src/knit/piece/standing.ts';

/** A drafted garment, knitted and made up. */
export interface MadeUp {
  readonly design: Design;
  readonly draft: Draft;
  readonly garment: StandingGarment;
  readonly made: WorkedMakingUp;
  readonly finished: Finished;
}

export function madeUp(design: Design, draft: Draft, garment: StandingGarment): MadeUp {
  const made = workJoints(draft.joints, garment);
  return { design, draft, garment, made, finished: finished(made.worked, garment) };
}

/** a drop or indented sleeve ends at the wrist: from the nape to its cuff what the body measures, less the seam stitch where none was added, to two rows and a stitch */
export function endsAtWrist(one: MadeUp): void {
  const { armhole, kind, body, sleeve } = one.design;
  if (!garmentKinds[kind].sleeves || (armhole !== 'drop' && armhole !== 'indented')) return;
  if (sleeve.lengthMm !== undefined) return;
  const { stitches, rows } = gaugeOf(one);
  const seam = one.design.seamStitch ? 0 : 100 / stitches;
  expect(Math.abs((one.finished.napeToCuff ?? 0) + seam - body.napeToWrist)).toBeLessThanOrEqual(
    200 / rows + 100 / stitches,
  );
}

/** the neck goes over the head as far as its band stretches and its back opens, or the draft warns of it */
export function goesOverHead({ design, draft: made, finished: sewn, made: { worked } }: MadeUp): void {
  if (garmentKinds[design.kind].open) return;
  const { stretch } = factsOf(design.neckband.heightMm > 0 ? design.neckband.fabric : design.fabric);
  const opening = worked
    .filter(({ joint }) => joint.kind === 'left free' && joint.as === 'opening')
    .flatMap(({ joint, lines }) =>
      joint.kind === 'left free' && joint.line[0]?.piece === 'Back' ? lines : [],
    )
    .reduce((sum, { mm }) => sum + mm, 0);
  const opens = (sewn.neck ?? 0) * stretch + opening;
  const isWarned = made.warnings.some(({ code }) => code === 'head does not pass');
  // both along the knitted edge: left and right begin a row apart, and of an odd neck that is parted a stitch lies in the middle
  const off = 100 / gaugeOf({ design }).stitches + 0.02 * design.body.head;
  if (opens < design.body.head - off) expect(isWarned).toBe(true);
  if (opens > design.body.head + off) expect(isWarned).toBe(false);
}

export const gaugeOf = ({ design }: Pick<MadeUp, 'design'>) =>
  design.gauges[design.fabric] ?? { stitches: 1, rows: 1 };
