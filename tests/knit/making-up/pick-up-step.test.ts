import { describe, expect, it } from 'vitest';
import { bodyOfSize } from '../../../src/knit/garment/bodies.ts';
import { draft } from '../../../src/knit/garment/draft.ts';
import { fittedPickUp } from '../../../src/knit/garment/pick-up.ts';
import { startingDesign } from '../../../src/knit/garment/start.ts';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import { asPlanned } from '../../../src/knit/piece/as-planned.ts';
import { told } from '../../told.ts';

/** A woman's pullover, 20 stitches and 28 rows to 100 mm. */
function stepOf(neck: 'boat' | 'round', armhole: 'drop' | 'raglan') {
  const body = bodyOfSize('women', 'M');
  if (!body) throw new Error('women have a size M');
  const gauge = { stitches: 20, rows: 28 };
  const design = startingDesign(
    { kind: 'pullover', armhole, neck, fit: 'standard' },
    body,
    'stocking',
    gauge,
  );
  const made = draft(
    neck === 'boat' ? { ...design, neck: { ...design.neck, depthMm: 0, backDepthMm: 0 } } : design,
  );
  if (!made.ok) throw new Error(told(made.faults));
  const planned = asPlanned({ name: 'any', pieces: made.value.recipes });
  if (!planned.ok) throw new Error(told(planned.faults));
  const { steps, joined } = makingUpOf({ ...planned.value, joints: made.value.joints });
  const found = steps.find(({ kind }) => kind === 'pick up');
  if (found?.kind !== 'pick up') throw new Error('no band');
  return { ...found, lines: joined.get(found.id)?.flatMap(({ lines }) => lines) ?? [] };
}

describe('the pick-up of a band', () => {
  it('tells a ratio of rows only where rows are picked up along', () => {
    // the counts decide: one for each stitch bound off, and so many of the rows, come to the count of the edge
    const { ratio: ofRows, edges, lines } = stepOf('round', 'drop');
    const sides = lines.flatMap(({ rows, stitches }, i) =>
      rows === 0
        ? []
        : [{ counted: edges[i]?.stitches, reckoned: stitches + (rows * ofRows.stitches) / ofRows.rows }],
    );
    expect(sides.length).toBeGreaterThan(1);
    for (const { counted = 0, reckoned } of sides) expect(Math.abs(counted - reckoned)).toBeLessThan(2);
    expect(ofRows.stitches).toBeLessThan(ofRows.rows);
    const { ratio } = stepOf('boat', 'drop');
    expect(ratio.stitches).toBe(ratio.rows);
  });

  // common practice, no published source: what a rib's repeat asks for beyond the edges is shared behind and before
  it('shares what the rib needs between back and front of a raglan’s neck, but not where corners have columns of their own', () => {
    const edges = (left: number, front: number, right: number, back: number) => [
      { along: 'left sleeve top', stitches: left },
      { along: 'front neck', stitches: front },
      { along: 'right sleeve top', stitches: right },
      { along: 'back neck', stitches: back },
    ];
    const fitted = (order: ReturnType<typeof edges>, hasCorners = false) =>
      fittedPickUp({ fabric: 'rib 2x2', heightMm: 20 }, order, hasCorners).map(({ stitches }) => stitches);
    // 84 to 86 = 4 × 21 + 2, 85 to 86, 87 to 86
    expect(fitted(edges(8, 40, 8, 28))).toEqual([8, 41, 8, 29]);
    expect(fitted(edges(8, 40, 8, 29))).toEqual([8, 41, 8, 29]);
    expect(fitted(edges(8, 40, 8, 31))).toEqual([8, 39, 8, 31]);
    expect(fitted(edges(8, 40, 8, 28), true)).toEqual([8, 40, 8, 30]);
  });
});
