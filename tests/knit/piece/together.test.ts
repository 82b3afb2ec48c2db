import { describe, expect, it } from 'vitest';
import { sampleGarment } from '../../../src/knit/garment/sample.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { PlannedPart } from '../../../src/knit/piece/planned.ts';
import { togetherOrder } from '../../../src/knit/piece/together.ts';

const partsOf = (piece: string): readonly PlannedPart[] => {
  const recipe = sampleGarment.pieces.find((one) => one.name === piece);
  const planned = recipe && plan(recipe);
  if (!planned?.ok) throw new Error(`${piece} cannot be planned`);
  return planned.value.parts;
};
const sleeve = partsOf('Sleeve')[0] as PlannedPart;

describe('two makes on one needle', () => {
  it('a right-side row meets the first one first, a wrong-side row the last', () => {
    const right = togetherOrder([
      { part: sleeve, rows: 20 },
      { part: sleeve, rows: 20 },
    ]);
    expect(right).toMatchObject({
      ok: true,
      value: { side: 'RS', level: true, steps: [{ make: 0 }, { make: 1 }] },
    });
    const wrong = togetherOrder([
      { part: sleeve, rows: 21 },
      { part: sleeve, rows: 21 },
    ]);
    expect(wrong).toMatchObject({
      ok: true,
      value: { side: 'WS', level: true, steps: [{ make: 1 }, { make: 0 }] },
    });
  });

  it('in the middle of a row the other one comes, alone', () => {
    const half = togetherOrder([
      { part: sleeve, rows: 21 },
      { part: sleeve, rows: 20 },
    ]);
    expect(half).toMatchObject({
      ok: true,
      value: { level: false, ahead: 1, steps: [{ make: 1, row: { n: 21 } }] },
    });
  });

  it('knitted in turn to the end, both have every row worked once', () => {
    const rows = [0, 0];
    let turns = 0;
    for (let next = togetherOrder(on(rows)); next.ok; next = togetherOrder(on(rows))) {
      for (const step of next.value.steps) {
        expect(step.row.n).toBe((rows[step.make] ?? 0) + 1);
        rows[step.make] = step.row.n;
        turns += 1;
      }
    }
    expect(rows).toEqual([sleeve.rows.length, sleeve.rows.length]);
    expect(turns).toBe(2 * sleeve.rows.length);
  });

  it('refuses what is too far apart, and pieces that come to different sides', () => {
    expect(
      togetherOrder([
        { part: sleeve, rows: 24 },
        { part: sleeve, rows: 20 },
      ]),
    ).toMatchObject({ ok: false, faults: [{ code: 'not level' }] });
    const [, left] = partsOf('Front');
    const band = partsOf('Neckband')[0] as PlannedPart;
    expect(
      togetherOrder([
        { part: left as PlannedPart, rows: 0 },
        { part: band, rows: 0 },
      ]),
    ).toMatchObject({ ok: false, faults: [{ code: 'sides differ' }] });
    expect(togetherOrder([{ part: sleeve, rows: sleeve.rows.length }])).toMatchObject({
      ok: false,
      faults: [{ code: 'all done' }],
    });
  });

  it('a piece that has ended leaves the other to go on', () => {
    const [, short, long] = partsOf('Front') as [PlannedPart, PlannedPart, PlannedPart];
    const next = togetherOrder([
      { part: short, rows: short.rows.length },
      { part: long, rows: 30 },
    ]);
    expect(next).toMatchObject({ ok: true, value: { level: true, steps: [{ make: 1, row: { n: 31 } }] } });
  });
});

const on = (rows: readonly number[]) => rows.map((worked) => ({ part: sleeve, rows: worked }));
