import { expect, it } from 'vitest';
import { inGauge } from '../../../src/app/garments/in-gauge.ts';
import { draft } from '../../../src/knit/garment/draft.ts';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import type { Trouble } from '../../../src/knit/making-up/work-making-up.ts';
import { asPlanned } from '../../../src/knit/piece/as-planned.ts';
import type { Garment } from '../../../src/knit/piece/garment.ts';
import { thirtyGarments } from '../../arbitraries/thirty-garments.ts';
import { byTurns } from '../../by-turns.ts';
import { told } from '../../told.ts';

/** Stitches and rows of her swatch for each of the maker's: near, of another proportion, far. */
const swatches = [
  [0.85, 0.85],
  [1.2, 1.2],
  [0.95, 1.08],
  [1.1, 0.9],
  [0.7, 0.7],
  [1.45, 1.45],
] as const;

const troublesOf = (garment: Garment): readonly Trouble[] => {
  const planned = asPlanned(garment);
  if (!planned.ok) throw new Error(told(planned.faults));
  return makingUpOf({ ...planned.value, ...(garment.joints && { joints: garment.joints }) }).troubles;
};

/** Copied with the joints that its draft stated; and typed, with pieces alone. */
const ways = ['copied', 'typed'] as const;

it.each(thirtyGarments.map((one, turn) => ({ ...one, turn })))(
  '$name',
  ({ design, turn }) => {
    const made = draft(design);
    if (!made.ok) throw new Error(told(made.faults));
    const { recipes: pieces, joints } = made.value;
    const gauge = pieces[0]?.gauge;
    if (!gauge) throw new Error('a draft has a gauge');
    const found: Record<string, unknown> = {};
    for (const way of byTurns(ways, turn, 2))
      for (const [stitches, rows] of byTurns(swatches, turn)) {
        const garment: Garment = { name: 'any', pieces, ...(way === 'copied' && { joints }) };
        const mine = { stitches: gauge.stitches * stitches, rows: gauge.rows * rows };
        const again = inGauge(garment, gauge, mine);
        const troubles = again.ok ? troublesOf(again.value) : again.faults.map((f) => told([f]));
        if (troubles.length > 0 && troublesOf(garment).length === 0)
          found[`${way} ${stitches} ${rows}`] = troubles;
      }
    expect(found).toEqual({});
  },
  60_000,
);
