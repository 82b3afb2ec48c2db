import { describe, expect, it } from 'vitest';
import type { Shaping } from '../../../../src/knit/piece/recipe.ts';
import { rowsOfGroups } from '../../../../src/knit/piece/regauge/scaled-groups.ts';
import { scaledShaping } from '../../../../src/knit/piece/regauge/scaled-shaping.ts';
import { amountOf, scaledAmount } from '../../../../src/knit/piece/regauge/shaped-to.ts';

/** Shaping in other stitches and rows, reckoned by hand: so many times the stitches, so many times the rows, of so many rows. */
function scaled(shaping: Shaping, stitches: number, rows: number, total: number) {
  const scale = { stitches, rows };
  const made = scaledShaping([shaping], scale, total, [scaledAmount(shaping, scale)]);
  if (!made.ok) return made.faults.map(({ code, figures }) => [code, figures])[0];
  const [one] = made.value;
  if (one === undefined) return undefined;
  if ('groups' in one) return one.groups.map(({ row, stitches: count }) => `${row}:${count}`).join(' ');
  return one.rows;
}

const edge = (...rows: readonly number[]): Shaping => ({
  kind: 'edge',
  edge: 'right',
  by: -1,
  rows,
  inset: 1,
  lean: 'mirrored',
});
const middle = (...rows: readonly number[]): Shaping => ({ kind: 'middle', rows, from: 9 });
const off = (...groups: readonly (readonly [row: number, stitches: number])[]): Shaping => ({
  kind: 'bind off',
  edge: 'right',
  groups: groups.map(([row, stitches]) => ({ row, stitches })),
});

describe('decreases at an edge', () => {
  it.each<[string, Shaping, number, number, number, unknown]>([
    ['as they were', edge(3, 7, 11, 15), 1, 1, 20, [3, 7, 11, 15]],
    // six of them from row 3.75 to 18.75, on odd rows: 3 to 19
    ['half as many more, a quarter more rows', edge(3, 7, 11, 15), 1.5, 1.25, 25, [3, 7, 11, 15, 17, 19]],
    ['beyond the last row where they were, on the same side', edge(3, 5), 1.5, 1, 8, [3, 5, 7]],
    ['on every row where every second has no room', edge(3, 5), 2, 1, 7, [3, 5, 6, 7]],
    ['from the first row on where that has none', edge(3, 5), 3, 1, 6, [1, 2, 3, 4, 5, 6]],
    ['on either side where they were', edge(2, 3, 5), 1, 1, 6, [2, 4, 5]],
    ['none where not half of one is left', edge(3, 7, 11, 15), 0.1, 1, 20, []],
    ['none where there was none', edge(), 2, 1, 20, []],
    ['in the last row there is', edge(9), 1, 1, 5, [5]],
    ['in the first at the earliest', edge(2), 1, 0.2, 5, [1]],
  ])('%s', (_, shaping, stitches, rows, total, made) => {
    expect(scaled(shaping, stitches, rows, total)).toEqual(made);
  });

  it('are refused where there are not rows enough', () => {
    expect(scaled(edge(3, 5), 3, 1, 5)).toEqual([
      'shaping does not fit',
      { rows: 5, times: 6, mostTimes: 5 },
    ]);
  });
});

describe('of several shapings at one edge', () => {
  const at = (side: 'right' | 'left' | 'both', ...rows: readonly number[]): Shaping =>
    ({
      ...edge(...rows),
      edge: side,
    }) as Shaping;
  const rowsOf = (total: number, ...shaping: readonly Shaping[]) => {
    const made = scaledShaping(shaping, { stitches: 1, rows: 1 }, total, shaping.map(amountOf));
    return made.ok ? made.value.map((one) => 'rows' in one && one.rows) : made.faults.map(({ code }) => code);
  };

  it.each<[string, number, readonly Shaping[], unknown]>([
    // on every second row, so that all of them stay on the right side
    [
      'the later goes to the nearest row of its own side',
      12,
      [at('right', 3, 7), at('right', 3, 7)],
      [
        [3, 7],
        [1, 5],
      ],
    ],
    ['to the nearest there is, not to the first', 12, [at('right', 5), at('right', 5)], [[5], [3]]],
    ['a row later where that one is nearer', 12, [at('right', 5, 7), at('right', 7)], [[5, 7], [9]]],
    [
      'the other edge has its own rows',
      12,
      [at('right', 3, 7), at('left', 3, 7)],
      [
        [3, 7],
        [3, 7],
      ],
    ],
    ['one at both edges keeps clear of either', 12, [at('left', 3), at('both', 3)], [[3], [1]]],
    ['and either of one at both', 12, [at('both', 3), at('left', 3), at('right', 5)], [[3], [1], [5]]],
    ['to the other side where none is left', 4, [at('right', 1, 3), at('right', 1)], [[1, 3], [2]]],
    [
      'they are refused where no row is left',
      2,
      [at('right', 1, 2), at('right', 1)],
      ['shaping does not fit'],
    ],
  ])('%s', (_, total, shaping, wanted) => {
    expect(rowsOf(total, ...shaping)).toEqual(wanted);
  });
});

describe('a mitre goes with the rows of its band', () => {
  it.each<[string, Shaping, number, number, unknown]>([
    ['as it was', middle(2, 4, 6), 1, 6, [2, 4, 6]],
    // five of them from row 4 on
    ['half as many rows more', middle(2, 4, 6), 1.5, 12, [4, 6, 8, 10, 12]],
    ['no more than there are rows', middle(2, 4, 6), 1.5, 3, [1, 2, 3]],
    ['one at least', middle(2, 4, 6), 0.1, 4, [1]],
  ])('%s', (_, shaping, rows, total, made) => {
    expect(scaled(shaping, 3, rows, total)).toEqual(made);
  });
});

describe('groups', () => {
  it.each<[string, Shaping, number, number, number, string]>([
    ['one stays one, in the row where it was', off([1, 4]), 1.5, 1, 10, '1:6'],
    ['of the second row of a pair too', off([2, 4]), 1.5, 1, 10, '2:6'],
    ['further up with the rows, on its side', off([21, 4]), 1, 1.2, 30, '25:4'],
    ['a left one with the right one before it', off([22, 4]), 1, 1.2, 30, '26:4'],
    ['no further up than there are rows', off([21, 4]), 1, 1.2, 20, '19:4'],
    ['as they were', off([1, 6], [3, 4], [5, 2]), 1, 1, 10, '1:6 3:4 5:2'],
    // 12 stitches along the same line in quarters: 4.5, 3.5, 2.5 and 1.5
    ['a third more rows: four', off([1, 6], [3, 4], [5, 2]), 1, 1.34, 10, '1:5 3:3 5:3 7:1'],
    ['so many rows apart as before', off([1, 6], [5, 4], [9, 2]), 1, 1, 10, '1:6 5:4 9:2'],
    ['one of no stitch is none', off([1, 1], [3, 1], [5, 1]), 0.5, 1, 10, '1:1 5:1'],
    [
      'those that stand apart keep their share of the rows',
      off([3, 2], [23, 2], [25, 2]),
      1,
      1,
      26,
      '3:2 23:2 25:2',
    ],
    [
      'what lies level stays apart from its slope',
      // 8 become 10, and 6 along the slope what is left of 18
      off([1, 8], [3, 2], [5, 2], [7, 2]),
      1.3,
      1.34,
      10,
      '1:10 3:2 5:2 7:2 9:2',
    ],
    ['none at all', off(), 1, 1, 10, ''],
  ])('%s', (_, shaping, stitches, rows, total, made) => {
    expect(scaled(shaping, stitches, rows, total)).toBe(made);
  });

  it('need so many rows', () => {
    const groups = (...rows: readonly number[]) => rows.map((row) => ({ row, stitches: 3 }));
    const need = (rows: readonly number[], scale = 1) =>
      rowsOfGroups(groups(...rows), { stitches: 1, rows: scale });
    expect([need([1, 3, 5]), need([1, 3, 5], 1.34), need([2, 4]), need([3, 5]), need([21])]).toEqual([
      5, 7, 4, 3, 1,
    ]);
  });
});

it('what is spread over a row is reckoned from the counts, not here', () => {
  expect(scaled({ kind: 'across', row: 1, by: 4 }, 2, 1, 10)).toBeUndefined();
});
