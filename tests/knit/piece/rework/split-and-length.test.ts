import { describe, expect, it } from 'vitest';
import { plan } from '../../../../src/knit/piece/plan.ts';
import type { PlannedPart } from '../../../../src/knit/piece/planned.ts';
import type { PartRecipe, Recipe, Section, Shaping } from '../../../../src/knit/piece/recipe.ts';
import { waysToAbsorb } from '../../../../src/knit/piece/rework/absorb.ts';
import { splitAt } from '../../../../src/knit/piece/rework/split-at.ts';
import { type ReworkWish, rework } from '../../../../src/knit/piece/rework.ts';
import type { Step } from '../../../../src/knit/row/step.ts';
import { told } from '../../../told.ts';
import { section } from '../count/mitten.ts';
import { edge } from '../parts-by-hand.ts';

const gauge = { stitches: 20, rows: 40 };

/** A piece of one part; every row is 2.5 mm high. */
const pieceOf = (...sections: readonly Section[]): Recipe => ({
  name: 'P',
  makes: 1,
  gauge: { ...gauge, fabric: 'stocking' },
  gauges: { garter: gauge },
  parts: [{ name: 'p', from: { castOn: 20 }, end: 'hold', sections }],
});

function planned(recipe: Recipe): PlannedPart {
  const made = plan(recipe);
  if (!made.ok) throw new Error(told(made.faults));
  return made.value.parts[0] as PlannedPart;
}

const group = (kind: 'bind off' | 'cast on' | 'turn', row: number): Shaping =>
  ({ kind, edge: row % 2 === 1 ? 'right' : 'left', groups: [{ row, stitches: 2 }] }) as Shaping;

describe('a part parted at the needle', () => {
  const split = (worked: number, ...sections: readonly Section[]) => {
    const recipe = pieceOf(...sections);
    return splitAt(recipe.parts[0] as PartRecipe, planned(recipe), worked);
  };

  it('after a whole section has that done and the others to come', () => {
    const [a, none, b] = [section({ name: 'a' }), section({ name: 'none', rows: 0 }), section({ name: 'b' })];
    expect(split(4, a, none, b)).toEqual({ done: [a, none], rest: [b] });
    expect(split(0, a, b)).toEqual({ done: [], rest: [a, b] });
    expect(split(0, a, none, b)).toEqual({ done: [], rest: [a, none, b] });
    expect(split(2, a, none, b).rest.map(({ name }) => name)).toEqual(['a', 'none', 'b']);
    expect(split(8, a, b)).toEqual({ done: [a, b], rest: [] });
  });

  it('in the midst of one has its shaping in rows that count from the needle on', () => {
    const shaping: Shaping[] = [
      { kind: 'across', row: 5, by: 2 },
      edge('left', -1, 2, 3, 7),
      group('bind off', 1),
      group('cast on', 9),
      { kind: 'across', row: 4, by: -1 },
    ];
    const { done, rest } = split(4 + 4, section({ name: 'a' }), section({ name: 'b', rows: 10, shaping }));
    expect(done.map(({ rows }) => rows)).toEqual([4, 4]);
    expect(done[1]?.shaping).toEqual([
      edge('left', -1, 2, 3),
      group('bind off', 1),
      { kind: 'across', row: 4, by: -1 },
    ]);
    expect(rest.map(({ rows }) => rows)).toEqual([6]);
    expect(rest[0]?.shaping).toEqual([
      { kind: 'across', row: 1, by: 2 },
      edge('left', -1, 3),
      { ...group('cast on', 9), groups: [{ row: 5, stitches: 2 }] },
    ]);
  });

  it('has its centre stitch where decreases have brought it', () => {
    const shaping: Shaping[] = [
      edge('right', -1, 1, 3),
      { kind: 'middle', rows: [2, 5], from: 8 },
      { kind: 'middle', rows: [4, 6], from: 14 },
    ];
    const from = (worked: number) =>
      split(worked, section({ rows: 8, shaping })).rest[0]?.shaping.flatMap((one) =>
        one.kind === 'middle' ? [one.from] : [],
      );
    // two gone at the right edge, one beside the first centre; before the second one two of the first and its own
    expect(from(1)).toEqual([7, 13]);
    expect(from(3)).toEqual([5, 10]);
    expect(from(4)).toEqual([5, 9]);
  });

  it('goes on in its words, as measured; what was counted when it began stays behind', () => {
    const word = (times: number): readonly Step[] => [
      { work: 'k', times },
      { work: 'p', times: 20 - times },
    ];
    const words = [word(1), word(2), word(3)];
    const own = { words, onNeedle: 20, measured: { rowMm: 3, atMm: 5 } };
    const { done, rest } = split(4 + 4, section({ rows: 4 }), section({ rows: 9, ...own }));
    expect(done[1]).toMatchObject({ rows: 4, ...own });
    expect(rest).toEqual([section({ rows: 5, words: [word(2), word(3), word(1)], measured: { rowMm: 3 } })]);
  });
});

describe('taken up by the edges', () => {
  it('what else shapes the section stays', () => {
    const spread: Shaping = { kind: 'across', row: 2, by: 4 };
    const rest = [
      section({ rows: 20, shaping: [group('bind off', 1), edge('both', -1, 3, 7, 11, 15), edge('left', 2)] }),
    ];
    const [way] = waysToAbsorb(rest, -2, undefined, 'RS');
    expect(way?.rest[0]?.shaping).toEqual([
      group('bind off', 1),
      edge('left', 2),
      edge('both', -1, 3, 9, 15),
    ]);
    // where a row spreads stitches already, that comes first
    const [first] = waysToAbsorb(
      [section({ rows: 20, shaping: [spread, edge('both', -1, 3, 7)] })],
      -2,
      undefined,
      'RS',
    );
    expect(first?.rest[0]?.shaping).toEqual([{ ...spread, by: 6 }, edge('both', -1, 3, 7)]);
  });
});

describe('a piece that was measured, of rows that were planned 2.5 mm high', () => {
  const sections = (last: Partial<Section> = {}, first = 20) => [
    section({ name: 'a', rows: first }),
    section({ name: 'b', rows: 12, fabric: 'garter' }),
    section({ name: 'c', rows: 20, ...last }),
  ];
  const after = (wish: ReworkWish, worked = 10, all = sections()) => {
    const recipe = pieceOf(...all);
    const made = rework(recipe, 0, planned(recipe), worked, wish);
    if (!made.ok) return made.faults.map(({ code, figures }) => ({ code, ...figures }))[0];
    return made.value.parts[0]?.part.recipe?.sections.map(({ name, rows, measured }) => [
      name,
      rows,
      measured,
    ]);
  };

  it('3 mm a row: each section in that fabric ends where it was planned, in an even number of rows more or fewer', () => {
    // ten rows of 30 mm; a ends at 50: 6.7 rows; b from 48 to 80 by 2.5: 12.8; c from 78 to 130: 17.3
    const all = [
      ['a', 10, undefined],
      ['a', 6, { rowMm: 3, atMm: 30 }],
      ['b', 12, undefined],
      ['c', 18, { rowMm: 3 }],
    ];
    expect(after({ kind: 'measured', heightMm: 30, above: 0 })).toEqual(all);
    // six rows above the fourth of 18 mm: 7.3 to 50, then 11.2 from 52 to 80, then 16 from 82 to 130
    expect(after({ kind: 'measured', heightMm: 18, above: 4 })).toEqual([
      ['a', 10, undefined],
      ['a', 8, { rowMm: 3, atMm: 28 }],
      ['b', 12, undefined],
      ['c', 16, { rowMm: 3 }],
    ]);
  });

  it('after its first row a section is measured by that one: what was worked before it and what comes after stays', () => {
    // b begins at 50; a row of 3 mm, and from 53 to 80 nine more
    expect(after({ kind: 'measured', heightMm: 3, above: 20 }, 21)).toEqual([
      ['a', 20, undefined],
      ['b', 1, undefined],
      ['b', 9, { rowMm: 3, atMm: 53 }],
      ['c', 20, undefined],
    ]);
  });

  it('an odd number stays odd, and none of rows is fewer than that', () => {
    // a of 21 rows ends at 52.5: 7.5 rows, seven; 3.5 mm a row of a that is nearly done leaves one
    const odd = after({ kind: 'measured', heightMm: 30, above: 0 }, 10, sections({}, 21)) as unknown[][];
    expect(odd[1]).toEqual(['a', 7, { rowMm: 3, atMm: 30 }]);
    const least = after({ kind: 'measured', heightMm: 80, above: 0 }, 20, sections({}, 21)) as unknown[][];
    expect(least[1]?.slice(0, 2)).toEqual(['a', 1]);
  });

  it('what is shaped in groups keeps its rows, unless they lie in its first third', () => {
    const rowsOfC = (row: number, kind: 'bind off' | 'cast on' | 'turn' = 'bind off') => {
      const made = after(
        { kind: 'measured', heightMm: 30, above: 0 },
        10,
        sections({ shaping: [group(kind, row)] }),
      );
      return (made as unknown[][])[3]?.[1];
    };
    expect([rowsOfC(6), rowsOfC(7)]).toEqual([18, 20]);
    expect([rowsOfC(7, 'cast on'), rowsOfC(6, 'cast on')]).toEqual([20, 18]);
  });

  it('less than half or more than twice what was planned was measured wrongly', () => {
    const said = (heightMm: number, above = 0) => after({ kind: 'measured', heightMm, above });
    for (const heightMm of [12.5, 50, -3])
      expect(said(heightMm)).toEqual({
        code: 'measure again',
        measuredMm: Math.round(heightMm),
        plannedMm: 25,
      });
    for (const heightMm of [12.6, 49.9]) expect(said(heightMm)).toBeInstanceOf(Array);
    expect(said(3, 10)).toEqual({ code: 'measure again', measuredMm: 3, plannedMm: 0 });
  });

  it('a section that is to end so high gets the rows for it, as odd or even as they are', () => {
    const rows = (index: number, heightMm: number) => after({ kind: 'height', section: index, heightMm });
    expect(rows(0, 60)).toEqual([
      ['a', 10, undefined],
      ['a', 14, undefined],
      ['b', 12, undefined],
      ['c', 20, undefined],
    ]);
    // b begins at 50 mm: 36 mm are 14.4 rows
    expect((rows(1, 86) as unknown[][])[2]).toEqual(['b', 14, undefined]);
    const how = (wish: ReworkWish) => {
      const recipe = pieceOf(...sections());
      const made = rework(recipe, 0, planned(recipe), 10, wish);
      return made.ok ? made.value.how : undefined;
    };
    expect(how({ kind: 'height', section: 0, heightMm: 60 })).toEqual({
      code: 'rows',
      figures: { rows: 24 },
    });
    expect(how({ kind: 'rows', section: 0, rows: 26 })).toEqual({ code: 'rows', figures: { rows: 26 } });
    // 50 and 30 mm, and 18 rows of 3 mm from 78 mm: 132 where 130 were planned
    expect(how({ kind: 'measured', heightMm: 30, above: 0 })).toEqual({
      code: 'measured',
      figures: { plannedMm: 130, reachedMm: 132 },
    });
    expect(rows(0, 0)).toEqual({ code: 'no stretch ends there', heightMm: 0 });
    expect(rows(3, 90)).toEqual({ code: 'no stretch ends there', heightMm: 90 });
  });
});
