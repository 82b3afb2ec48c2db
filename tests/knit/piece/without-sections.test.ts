import { expect, it } from 'vitest';
import { plan } from '../../../src/knit/piece/plan.ts';
import { gaugeIn, type PlannedPart } from '../../../src/knit/piece/planned.ts';
import type { PartRecipe } from '../../../src/knit/piece/recipe.ts';
import { told } from '../../told.ts';

/* Parts that end where they begin: a shoulder that is bound off or rests as soon as it is parted. Reckoned by hand. */
function planned(...parts: readonly PartRecipe[]): readonly PlannedPart[] {
  const made = plan({
    name: 'Back',
    makes: 1,
    gauge: { stitches: 20, rows: 25, fabric: 'stocking', needle: 4.5 },
    gauges: { 'rib 1x1': { stitches: 25, rows: 30 } },
    parts,
  });
  if (!made.ok) throw new Error(told(made.faults));
  return made.value.parts;
}

it('a cast-on that is bound off at once is a row in stocking stitch, on a usual needle, of no height', () => {
  const [one] = planned({ name: 'all', from: { castOn: 10 }, end: 'bind off', sections: [] });
  expect(one).toEqual({
    piece: 'Back',
    name: 'all',
    from: { castOn: 10 },
    end: 'bind off',
    setUp: [{ work: 'co', times: 10 }],
    sections: [{ name: 'bind off', fabric: 'stocking', needle: 4, first: 1, last: 1 }],
    rows: [
      {
        n: 1,
        side: 'RS',
        section: 0,
        needle: 4,
        steps: [{ work: 'bo', until: { left: 0 } }],
        before: 10,
        after: 0,
        shaping: [{ kind: 'bind off', edge: 'across', by: -10 }],
        height: 0,
      },
    ],
    start: 10,
    left: 0,
    base: 0,
    offset: 0,
    cells: [{ width: 5, height: 4 }],
  });
});

it('one that rests has no row, and its stitches are those of stocking stitch', () => {
  const [one] = planned({ name: 'all', from: { castOn: 10 }, end: 'hold', sections: [] });
  expect(one).toMatchObject({
    sections: [],
    rows: [],
    start: 10,
    left: 10,
    cells: [{ width: 5, height: 4 }],
  });
});

it('a shoulder that is bound off as it was parted keeps fabric and needle of what it is parted from', () => {
  const rib = { name: 'rib', rows: 2, fabric: 'rib 1x1', needle: 3.5, shaping: [] } as const;
  const [body, right, left] = planned(
    { name: 'body', from: { castOn: 10 }, end: 'split', sections: [rib] },
    { name: 'right', from: { part: 'body', edge: 'right', stitches: 4 }, end: 'bind off', sections: [] },
    { name: 'left', from: { part: 'body', edge: 'left', stitches: 6 }, end: 'hold', sections: [] },
  );
  const height = 200 / 30;
  expect(body?.cells).toEqual([{ width: 4, height: 100 / 30 }]);
  expect(right).toMatchObject({
    sections: [{ name: 'bind off', fabric: 'rib 1x1', needle: 3.5, first: 1, last: 1 }],
    rows: [{ n: 1, before: 4, after: 0, height: expect.closeTo(height, 9) }],
    base: expect.closeTo(height, 9),
    offset: 0,
    parent: 'body',
  });
  expect(left).toMatchObject({ rows: [], left: 6, offset: 16, cells: body?.cells });
});

it('a row that takes no height of its own has the cells of the rows before it', () => {
  const rib = { name: 'rib', rows: 2, fabric: 'rib 1x1', needle: 3.5, shaping: [] } as const;
  const [one] = planned({
    name: 'all',
    from: { castOn: 10 },
    end: 'bind off',
    sections: [{ ...rib, name: 'plain', fabric: 'stocking', needle: 4 }, rib],
  });
  const cell = { width: 4, height: 100 / 30 };
  expect(one?.cells).toEqual([{ width: 5, height: 4 }, cell, cell]);
  expect([0, 1, 2, 3].map((section) => gaugeIn(one as PlannedPart, section).stitches)).toEqual([
    20, 25, 25, 25,
  ]);
});

it('shoulders bound off as they are parted are as wide as what they rest on, also where its rows are told in words', () => {
  const parts = planned(
    {
      name: 'body',
      from: { castOn: 30 },
      end: 'split',
      sections: [
        {
          name: 'rib',
          rows: 6,
          fabric: 'rib 1x1',
          needle: 4,
          shaping: [],
          words: [[{ work: 'k', until: { left: 0 } }]],
        },
      ],
    },
    { name: 'right', from: { part: 'body', stitches: 10, edge: 'right' }, end: 'bind off', sections: [] },
    { name: 'neck', from: { part: 'body', stitches: 10, edge: 'middle' }, end: 'hold', sections: [] },
    { name: 'left', from: { part: 'body', stitches: 10, edge: 'left' }, end: 'bind off', sections: [] },
  );
  // 25 stitches and 30 rows to 10 cm
  for (const part of parts.slice(1)) expect(part.cells[0], part.name).toEqual({ width: 4, height: 100 / 30 });
});
