import { expect } from 'vitest';
import { factsOf } from '../../../src/knit/fabric-facts.ts';
import type { Design } from '../../../src/knit/garment/design.ts';
import type { Draft } from '../../../src/knit/garment/draft.ts';
import { garmentKinds } from '../../../src/knit/garment/kinds/garments.ts';
import type { LaidLine } from '../../../src/knit/making-up/boundary-of.ts';
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

/** round the body it measures what was asked, less four seam stitches where none were added, to half a stitch for each of its edges */
export function asWideAsAsked(one: MadeUp): void {
  const { design, finished: sewn } = one;
  const { stitches, rows } = gaugeOf(one);
  const asked = design.body.chest + design.ease.chest;
  const width = 100 / stitches;
  // the fronts of a cardigan share what neck and width ask for: a stitch more; and its band is a row off
  const { open } = garmentKinds[design.kind];
  const most = open ? 4 * width + 100 / rows : 2 * width;
  const seams = design.seamStitch ? 0 : 4 * width;
  expect(Math.abs((sewn.chest ?? 0) + seams - asked)).toBeLessThanOrEqual(most + 1e-6);
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

/** the neck goes over the head as far as its band stretches and it opens, or the draft warns of it */
export function goesOverHead({ design, draft: made, finished: sewn, made: { worked } }: MadeUp): void {
  if (garmentKinds[design.kind].open) return;
  const { stretch } = factsOf(design.neckband.heightMm > 0 ? design.neckband.fabric : design.fabric);
  const slits = worked
    .filter(({ joint }) => joint.kind === 'left free' && joint.as === 'opening')
    .flatMap(({ joint, lines }) =>
      joint.kind === 'left free' && SLIT.includes(joint.line[0]?.piece ?? '') ? lines : [],
    )
    .reduce((sum, { mm }) => sum + mm, 0);
  const placket = worked
    .flatMap(({ joint, lines }) =>
      joint.kind === 'pick up'
        ? lines.filter((_, i) => alongOf(made, joint.piece)[i]?.endsWith('front edge'))
        : [],
    )
    .flatMap(({ laid }) => laid)
    .reduce((sum, one) => sum + (one.stretch.piece === 'Front' ? one.mm : 0), 0);
  const { stitches, rows } = gaugeOf({ design });
  const straight = (line: LaidLine) => Math.hypot((line.stitches * 100) / stitches, (line.rows * 100) / rows);
  const shoulders = worked.flatMap(({ joint, lines }) =>
    joint.kind === 'pick up'
      ? lines.filter((_, i) => alongOf(made, joint.piece)[i]?.endsWith('shoulder'))
      : [],
  );
  // the shoulders of an envelope lie along its neckbands, and are measured with the neck; of an open left one the back's is as long
  const isOne = shoulders.length === 1;
  const wide = shoulders.reduce((sum, line) => sum + (isOne ? 2 : 1) * straight(shoulderOnly(line)), 0);
  const neck = (sewn.neck ?? 0) - (isOne ? 0 : shoulders.reduce((sum, { mm }) => sum + mm, 0));
  const opens = (neck + wide) * stretch + slits + placket;
  const isWarned = made.warnings.some(({ code }) => code === 'head does not pass');
  // both along the knitted edge: left and right begin a row apart, and of an odd neck that is parted a stitch lies in the middle
  const off = 100 / gaugeOf({ design }).stitches + 0.02 * design.body.head;
  if (opens < design.body.head - off) expect(isWarned).toBe(true);
  if (opens > design.body.head + off) expect(isWarned).toBe(false);
}

const alongOf = ({ recipes }: Draft, piece: string): readonly string[] => {
  const from = recipes.find(({ name }) => name === piece)?.parts[0]?.from;
  return from && 'pickUp' in from ? from.pickUp.map(({ along }) => along) : [];
};

/** what opens along rows: a back, or the back and a sleeve */
const SLIT: readonly string[] = ['Back', 'Sleeve'];

/** Without the end of the neckband, along which the same band goes on. */
const shoulderOnly = ({ laid, ...line }: LaidLine): LaidLine => {
  const own = laid.filter(({ stretch }) => stretch.piece !== 'Neckband');
  const sum = (of: 'rows' | 'stitches') => own.reduce((total, one) => total + one[of], 0);
  return { ...line, laid: own, rows: sum('rows'), stitches: sum('stitches') };
};

export const gaugeOf = ({ design }: Pick<MadeUp, 'design'>) =>
  design.gauges[design.fabric] ?? { stitches: 1, rows: 1 };

/** What a whole sweep says of a law that some designs break: how many of those drafted, and the first few. */
export const brokenBy = (found: readonly string[], drafted: number): string =>
  `broken by ${found.length} of ${drafted} designs: ${found.slice(0, 6).join('\n')}`;
