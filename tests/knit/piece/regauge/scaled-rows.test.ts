import { describe, expect, it } from 'vitest';
import type { PickUp, Section, Shaping } from '../../../../src/knit/piece/recipe.ts';
import { pickedUp } from '../../../../src/knit/piece/regauge/picked-up.ts';
import { scaledGroups } from '../../../../src/knit/piece/regauge/scaled-groups.ts';
import { scaledRows } from '../../../../src/knit/piece/regauge/scaled-rows.ts';
import { sectionRows } from '../../../../src/knit/piece/regauge/section-rows.ts';
import { told } from '../../../told.ts';

/* In twice as many rows every even row is twice as high: reckoned by hand. */
const high = { stitches: 1, rows: 2 };

const rowsOf = (rows: readonly number[], times: number, total: number, scale = high) => {
  const made = scaledRows(rows, times, scale, total);
  return made.ok ? made.value : told(made.faults);
};

describe('rows in which an edge is shaped', () => {
  it('in one rhythm and then in another are so again', () => {
    expect(rowsOf([2, 4, 6, 8, 12, 16, 20], 7, 40)).toEqual([4, 8, 12, 16, 24, 32, 40]);
    expect(rowsOf([2, 6, 10, 12, 14], 5, 30)).toEqual([4, 12, 20, 24, 28]);
  });

  it('in three rhythms are so again', () => {
    expect(rowsOf([2, 4, 6, 10, 14, 20, 26], 7, 60)).toEqual([4, 8, 12, 20, 28, 40, 52]);
  });

  it('along a curve lie at the same heights, each by itself', () => {
    expect(rowsOf([2, 4, 8, 10, 16, 18, 26], 7, 60)).toEqual([4, 8, 16, 20, 32, 36, 52]);
  });

  it('more often are in the same proportion in each rhythm', () => {
    // six steps become twelve: three of them up to row 8, which is row 16
    expect(rowsOf([2, 4, 6, 8, 12, 16, 20], 13, 40)).toEqual([
      4, 6, 8, 10, 12, 14, 16, 20, 24, 28, 32, 36, 40,
    ]);
  });

  it('between two rhythms are parted where the old ones were, to the nearest', () => {
    // five steps of four: half of them, 2½ and so three, up to row 5, which is row 7
    expect(rowsOf([1, 3, 5, 9, 13], 6, 20, { stitches: 1, rows: 1.5 })).toEqual([1, 3, 5, 7, 13, 19]);
  });

  it('that are four may be of two rhythms', () => {
    expect(rowsOf([2, 4, 6, 14], 4, 40)).toEqual([4, 8, 12, 28]);
  });

  it('that are three are one stretch, whatever lies between them', () => {
    expect(rowsOf([2, 4, 12], 3, 30)).toEqual([4, 14, 24]);
  });

  it('that were as many in a swatch alike stay where they are', () => {
    expect(rowsOf([2, 4, 6, 8, 12, 16, 20], 7, 20, { stitches: 1, rows: 1 })).toEqual([
      2, 4, 6, 8, 12, 16, 20,
    ]);
  });
});

describe('groups that are bound off', () => {
  const stitchesOf = (total: number, ...groups: readonly (readonly [row: number, stitches: number])[]) =>
    scaledGroups(
      groups.map(([row, stitches]) => ({ row, stitches })),
      high,
      total,
    ).map(({ stitches }) => stitches);

  it('are twice as many half as large along a slope', () => {
    expect(stitchesOf(12, [1, 4], [3, 4], [5, 4])).toEqual([2, 2, 2, 2, 2, 2]);
  });

  it('are a corner where more than six rows go on behind them: the first stays whole', () => {
    // six rows between the third and the ninth: a slope of eight in four
    expect(stitchesOf(16, [1, 5], [3, 3])).toHaveLength(4);
    expect(stitchesOf(18, [1, 5], [3, 3])).toEqual([5, 3]);
  });

  it('end in one that lies level where it is twice as large as the one before it', () => {
    // three of a slope are six; of two and one that is level the two are four, and that one stays whole
    expect(stitchesOf(20, [3, 4], [5, 4], [7, 7])).toEqual([2, 2, 2, 2, 4, 3]);
    expect(stitchesOf(20, [3, 4], [5, 4], [7, 8])).toEqual([2, 2, 2, 2, 8]);
  });

  it('beside decreases leave the corner as it was, and share what there is more of behind it', () => {
    const groups = [8, 2, 2, 2].map((stitches, i) => ({ row: 1 + 2 * i, stitches }));
    // 20 in place of 14: 8 at the corner, 12 along six
    const made = scaledGroups(groups, high, 20, 20, true);
    expect(made.map(({ stitches }) => stitches)).toEqual([8, 2, 2, 2, 2, 2, 2]);
  });

  it('are a corner where a larger one follows, and none where the first begins further up', () => {
    expect(stitchesOf(8, [1, 3], [3, 5])[0]).toBe(3);
    expect(stitchesOf(12, [3, 4], [5, 5])).toHaveLength(4);
  });
});

describe('rows of sections', () => {
  const section = (rows: number, ...shaping: readonly Shaping[]): Section => ({
    name: 'section',
    rows,
    fabric: 'stocking',
    needle: 4,
    shaping,
  });
  const of = (sections: readonly Section[], below?: { readonly old: number; readonly now: number }) =>
    sectionRows({ name: 'part', from: { castOn: 20 }, sections, end: 'bind off' }, high, below);

  it('are twice as many, of an odd number an odd one', () => {
    expect(of([section(10), section(6), section(0)])).toEqual({
      rows: [20, 12, 0],
      last: { old: 0, now: 0 },
    });
    expect(of([section(7)]).rows).toEqual([15]);
  });

  it('above a split are rounded together with what lies below it', () => {
    // ten in all are twenty: of seven that became fifteen the three above have five
    expect(of([section(3)], { old: 7, now: 15 })).toEqual({ rows: [5], last: { old: 10, now: 20 } });
  });

  it('are as many as the groups in them need', () => {
    const groups: Shaping = {
      kind: 'bind off',
      edge: 'right',
      groups: [1, 3, 5].map((row) => ({ row, stitches: 4 })),
    };
    // six groups begin on every second row: eleven rows
    expect(
      sectionRows(
        { name: 'part', from: { castOn: 20 }, sections: [section(5, groups)], end: 'bind off' },
        { stitches: 1, rows: 0.4 },
        undefined,
      ).rows,
    ).toEqual([3]);
    expect(of([section(5, groups)]).rows).toEqual([11]);
  });
});

describe('stitches that a band picks up', () => {
  const picked = (
    edges: readonly (number | 'held')[],
    stitches: number,
    more = 0,
    resting: ReadonlyMap<number, number> = new Map(),
  ) => {
    const old = edges.map(
      (one): PickUp =>
        one === 'held' ? { along: 'edge', stitches: 15, held: true } : { along: 'edge', stitches: one },
    );
    return pickedUp(old, { stitches, rows: 1 }, new Map(resting), (sum) => sum + more).map(
      (one) => one.stitches,
    );
  };

  it('are twice as many along each edge, a point of one or two as it was', () => {
    expect(picked([10, 1, 12, 2], 2)).toEqual([20, 1, 24, 2]);
  });

  it('are as many along edges that were alike', () => {
    expect(picked([10, 7, 10], 1.25)).toEqual([13, 8, 13]);
  });

  it('are one at the least', () => {
    expect(picked([3, 20], 0.1)).toEqual([1, 2]);
  });

  it('are those that rest on a holder, one by one', () => {
    expect(picked([10, 'held', 10], 2, 0, new Map([[15, 31]]))).toEqual([20, 31, 20]);
    expect(picked([10, 'held'], 2)).toEqual([20, 30]);
  });

  it('are one more or fewer at the last edge for the rib’s multiple, but for a holder', () => {
    expect(picked([10, 10, 6], 1, 1)).toEqual([10, 10, 7]);
    expect(picked([10, 10, 6], 1, -1)).toEqual([10, 10, 5]);
    expect(picked([6, 'held'], 1, 1, new Map([[15, 15]]))).toEqual([7, 15]);
  });
});
