import type { Result } from '../../knit/fault.ts';
import type { Gauge } from '../../knit/gauge.ts';
import { countsRows, countsStitches, holdsInAnyGauge } from '../../knit/making-up/joint-called.ts';
import type { Garment } from '../../knit/piece/garment.ts';
import { type Resting, regauge } from '../../knit/piece/regauge/regauge.ts';
import { workBudget } from '../../knit/piece/work-budget.ts';

/** All pieces together, planned with every figure typed: as many stitches as fifty pullovers have. */
const MOST_STITCHES_IN_HER_GAUGE = 5_000_000;

const ownGauges = (garment: Garment, asked: Gauge): Garment => ({
  ...garment,
  pieces: garment.pieces.map((piece) => (piece.gauge ? piece : { ...piece, gauge: asked })),
});

/** Every piece in her gauge; a piece's own gauge differs from the first one's as much as it did. */
export function inGauge(garment: Garment, asked: Gauge | undefined, mine: Partial<Gauge>): Result<Garment> {
  if (!asked) return { ok: true, value: garment };
  const stitches = (mine.stitches ?? 0) / asked.stitches;
  const rows = (mine.rows ?? 0) / asked.rows;
  // proven when the link was opened
  if (stitches === 1 && rows === 1) return { ok: true, value: ownGauges(garment, asked) };
  const budget = workBudget(MOST_STITCHES_IN_HER_GAUGE);
  const resting: Resting = new Map();
  const pieces = [];
  for (const piece of garment.pieces) {
    const own = piece.gauge ?? asked;
    const made = regauge(
      { ...piece, gauge: own },
      { stitches: own.stitches * stitches, rows: own.rows * rows },
      undefined,
      budget,
      resting,
    );
    if (!made.ok) return made;
    pieces.push(made.value);
  }
  const { joints, byHand, ...rest } = garment;
  const holds = joints?.some((joint) => countsStitches(joint) || countsRows(joint)) === false;
  const whole = byHand?.filter(holdsInAnyGauge);
  return {
    ok: true,
    value: { ...rest, ...(holds && { joints }), ...(whole && { byHand: whole }), pieces },
  };
}
