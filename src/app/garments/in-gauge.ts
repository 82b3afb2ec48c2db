import { type Fault, fault, ok, type Result, refuse } from '../../knit/fault.ts';
import type { Gauge } from '../../knit/gauge.ts';
import type { Joint } from '../../knit/making-up/joint.ts';
import { holdsInAnyGauge } from '../../knit/making-up/joint-called.ts';
import { jointsInGauge } from '../../knit/making-up/joints-in-gauge.ts';
import { makingUpOf } from '../../knit/making-up/making-up.ts';
import { roomAlong } from '../../knit/making-up/work-making-up.ts';
import { asPlanned } from '../../knit/piece/as-planned.ts';
import type { Garment } from '../../knit/piece/garment.ts';
import type { Recipe } from '../../knit/piece/recipe.ts';
import type { Nudge } from '../../knit/piece/regauge/part-in-gauge.ts';
import type { Resting } from '../../knit/piece/regauge/picked-up.ts';
import { regauge } from '../../knit/piece/regauge/regauge.ts';
import { workBudget } from '../../knit/piece/work-budget.ts';
import type { PassedOn } from '../../store/share/link.ts';
import { meeting } from './meeting.ts';
import { stripesLaid } from './stripes-laid.ts';

/** All pieces together, planned with every figure typed: as many stitches as fifty pullovers have. */
const MOST_STITCHES_IN_HER_GAUGE = 5_000_000;

/** What is wrong with the figures typed, or cannot be counted anew in any gauge. */
const whatever: readonly string[] = [
  'no gauge',
  'bad gauge',
  'rows in words',
  'too much to plan',
] satisfies Fault['code'][];

/** In the gauge that it came in it was proven: what is refused now its maker could mend, whoever follows cannot. */
const isOfTheGauge = (faults: readonly Fault[]): boolean =>
  !faults.some(({ code }) => whatever.includes(code));

const ownGauges = (garment: Garment, asked: Gauge): Garment => ({
  ...garment,
  pieces: garment.pieces.map((piece) => (piece.gauge ? piece : { ...piece, gauge: asked })),
});

/** Every piece in her gauge; a piece's own gauge differs from the first one's as much as it did. Its stripes are laid through them anew. */
export function inGauge(garment: PassedOn, asked: Gauge | undefined, mine: Partial<Gauge>): Result<PassedOn> {
  if (!asked) return { ok: true, value: garment };
  const stitches = (mine.stitches ?? 0) / asked.stitches;
  const rows = (mine.rows ?? 0) / asked.rows;
  // proven when the link was opened
  if (stitches === 1 && rows === 1) return { ok: true, value: ownGauges(garment, asked) };
  const budget = workBudget(MOST_STITCHES_IN_HER_GAUGE);
  const resting: Resting = new Map();
  const again = (piece: Recipe, nudges?: readonly Nudge[]): Result<Recipe> => {
    const own = piece.gauge ?? asked;
    const to = { stitches: own.stitches * stitches, rows: own.rows * rows };
    return regauge({ ...piece, gauge: own }, to, undefined, budget, resting, nudges);
  };
  const made: Recipe[] = [];
  for (const piece of garment.pieces) {
    const one = again(piece);
    if (!one.ok) return isOfTheGauge(one.faults) ? refuse(fault('not as asked')) : one;
    made.push(one.value);
  }
  const found = joinsOf(garment);
  const holds = found.length > 0;
  const pieces = holds ? meeting({ pieces: made, joints: found, before: garment.pieces, again }) : made;
  const joints = holds ? jointsInGauge(found, garment.pieces, pieces) : undefined;
  const { joints: _stated, byHand, ...rest } = garment;
  const whole = byHand?.filter(holdsInAnyGauge);
  const here = { ...rest, ...(joints && { joints }), ...(whole && { byHand: whole }), pieces };
  return ok(stripesLaid(garment, here));
}

/** What is sewn to what, as stated or by its pieces; of a band the share of stitches that it picked up is meant. */
function joinsOf({ name, pieces, joints }: Garment): readonly Joint[] {
  const planned = asPlanned({ name, pieces });
  if (!planned.ok) return [];
  return makingUpOf({ ...planned.value, ...(joints && { joints }) }).worked.map(({ joint, lines }) => {
    if (joint.kind !== 'pick up') return joint;
    const along = joint.along.map((one, i) => {
      const room = lines[i] && roomAlong(lines[i]);
      return room ? { percent: Math.round((100 * one.stitches) / room), ...one } : one;
    });
    return { ...joint, along };
  });
}
