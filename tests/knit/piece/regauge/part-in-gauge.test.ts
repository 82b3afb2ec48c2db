import { describe, expect, it } from 'vitest';
import type { PartRecipe, Recipe, Section, Shaping } from '../../../../src/knit/piece/recipe.ts';
import { regauge } from '../../../../src/knit/piece/regauge/regauge.ts';
import { told } from '../../../told.ts';

/* What a part begins with and is parted into, in twice or half as many stitches again: counted on paper. */

const gauge = { stitches: 20, rows: 20 };
const section = (name: string, rows: number, ...shaping: readonly Shaping[]): Section => ({
  name,
  rows,
  fabric: name === 'rib' ? 'rib 2x2' : name === 'single rib' ? 'rib 1x1' : 'stocking',
  needle: 4,
  shaping,
});
const part = (
  name: string,
  from: PartRecipe['from'],
  sections: readonly Section[],
  end: PartRecipe['end'] = 'bind off',
): PartRecipe => ({ name, from, sections, end });
const from = (stitches: number, edge: 'right' | 'middle' | 'left', of = 'body') => ({
  part: of,
  stitches,
  edge,
});

function again(parts: readonly PartRecipe[], stitches: number, rows = 1): readonly PartRecipe[] {
  const recipe: Recipe = { name: 'Piece', makes: 1, gauge, parts };
  const made = regauge(recipe, { stitches: gauge.stitches * stitches, rows: gauge.rows * rows });
  if (!made.ok) throw new Error(told(made.faults));
  return made.value.parts;
}

/** What each part begins with. */
const begins = (parts: readonly PartRecipe[], stitches: number) =>
  again(parts, stitches).map(({ from: start }) =>
    'castOn' in start
      ? start.castOn
      : 'part' in start
        ? start.stitches
        : start.pickUp.map((one) => one.stitches).join(' + '),
  );

const plain = section('body', 6);

describe('what a body is parted into', () => {
  const parted = (castOn: number, ...sides: readonly (readonly ['right' | 'middle' | 'left', number])[]) => [
    part('body', { castOn }, [plain], 'split'),
    ...sides.map(([edge, stitches]) => part(edge, from(stitches, edge), [plain])),
  ];

  it('is two shoulders alike, and between them what is left', () => {
    expect(begins(parted(60, ['right', 20], ['middle', 20], ['left', 20]), 2)).toEqual([120, 40, 40, 40]);
    // 60 become 90, each shoulder 27 of 25½ rounded up: 26, and 38 between them
    expect(begins(parted(60, ['right', 17], ['middle', 26], ['left', 17]), 1.5)).toEqual([90, 26, 38, 26]);
  });

  it('is, of two sides one of which has the middle with it, the smaller by its own count', () => {
    expect(begins(parted(60, ['right', 20], ['left', 40]), 1.5)).toEqual([90, 30, 60]);
    expect(begins(parted(60, ['right', 41], ['left', 19]), 1.5)).toEqual([90, 61, 29]);
  });

  it('is, of two sides that are not alike, the share of each in what the middle leaves of it', () => {
    // 15 + 20 + 25 of 60: of 120 twice as many
    expect(begins(parted(60, ['right', 15], ['middle', 20], ['left', 25]), 2)).toEqual([120, 30, 40, 50]);
    expect(begins(parted(60, ['right', 25], ['middle', 20], ['left', 15]), 2)).toEqual([120, 50, 40, 30]);
    // of 90 the middle 30; 15 of 40 in 60 are 22½, rounded up
    expect(begins(parted(60, ['right', 15], ['middle', 20], ['left', 25]), 1.5)).toEqual([90, 23, 30, 37]);
    // one side and the middle: 40 of 60, so of 90 60
    expect(begins(parted(60, ['right', 20], ['middle', 40]), 1.5)).toEqual([90, 30, 60]);
    expect(begins(parted(60, ['middle', 40], ['left', 20]), 1.5)).toEqual([90, 60, 30]);
  });

  it('is halves where there were halves', () => {
    expect(begins(parted(60, ['right', 30], ['left', 30]), 1.5)).toEqual([90, 45, 45]);
  });

  it('is all of it where one part goes on alone', () => {
    expect(
      begins([part('body', { castOn: 60 }, [plain], 'hold'), part('top', from(60, 'right'), [plain])], 1.5),
    ).toEqual([90, 90]);
  });
});

describe('what a part is cast on with', () => {
  it('stays odd or even as it was', () => {
    expect(begins([part('body', { castOn: 21 }, [plain])], 2)).toEqual([43]);
    expect(begins([part('body', { castOn: 20 }, [plain])], 1.5)).toEqual([30]);
  });

  it('comes out on the rib that it begins with: four, and none or two over', () => {
    // 25 × 1.44 = 36; 22 × 1.5 = 33, of which 34 and 32 come out: as even as it was
    expect(begins([part('body', { castOn: 22 }, [section('rib', 6)])], 1.5)).toEqual([34]);
    expect(begins([part('body', { castOn: 24 }, [section('rib', 6)])], 1.25)).toEqual([30]);
  });
});

describe('the first row of a rib', () => {
  const shapingOf = (parts: readonly PartRecipe[], index: number) => parts[0]?.sections[index]?.shaping;

  it('has stitches more or fewer where the count before it does not come out any more', () => {
    // 21 become 43 in stocking stitch: rib of two by two comes out over 42 and 44
    const [made] = again([part('body', { castOn: 22 }, [plain, section('rib', 4)])], 1.5);
    expect(made?.from).toEqual({ castOn: 34 });
    expect(made?.sections[1]?.shaping).toEqual([]);
    const odd = again([part('body', { castOn: 22 }, [plain, section('rib', 4)])], 1.77);
    // 38.9 is nearest to 38 of the even ones, which comes out too
    expect(odd[0]?.from).toEqual({ castOn: 38 });
    expect(shapingOf(odd, 1)).toEqual([]);
  });

  it('spreads what was spread there in its share, up to the next count that comes out', () => {
    // 20 and 8 more, to 28: two fifths; of 30 twelve, to 42, which comes out
    const spread = [
      part('body', { castOn: 20 }, [plain, section('rib', 4, { kind: 'across', row: 1, by: 8 })]),
    ];
    expect(shapingOf(again(spread, 1.5), 1)).toEqual([{ kind: 'across', row: 1, by: 12 }]);
    // of 28 eleven to 39, and one more to 40
    expect(again(spread, 1.4)[0]?.from).toEqual({ castOn: 28 });
    expect(shapingOf(again(spread, 1.4), 1)).toEqual([{ kind: 'across', row: 1, by: 12 }]);
  });
});

describe('the point of a V neckband', () => {
  it('lies behind the same edges as before', () => {
    const band = part(
      'band',
      {
        pickUp: [
          { along: 'left', stitches: 30 },
          { along: 'point', stitches: 1 },
          { along: 'right', stitches: 30 },
        ],
      },
      [section('body', 6, { kind: 'middle', rows: [2, 4], from: 30 })],
    );
    const [made] = again([band], 2);
    expect(made?.from).toEqual({
      pickUp: [
        { along: 'left', stitches: 60 },
        { along: 'point', stitches: 1 },
        { along: 'right', stitches: 60 },
      ],
    });
    expect(made?.sections[0]?.shaping).toEqual([{ kind: 'middle', rows: [2, 4], from: 60 }]);
  });
});

describe('a button hole', () => {
  it('in words is laid anew along a band that is picked up, and told where it is not', () => {
    const holes: Section = {
      ...section('single rib', 1),
      words: [[{ work: 'k', until: { left: 0 } }]],
    };
    const made = regauge(
      { name: 'Scarf', makes: 1, gauge, parts: [part('scarf', { castOn: 21 }, [plain, holes])] },
      { stitches: 30, rows: 20 },
    );
    expect(made.ok ? [] : made.faults.map(({ code, at }) => [code, at.sectionIndex])).toEqual([
      ['rows in words', 1],
    ]);
  });
});
