import { describe, expect, it } from 'vitest';
import { consequences } from '../../../src/knit/making-up/consequences.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { dataSaid, standing } from './by-hand.ts';
import { back, front, neckband, sleeve } from './pullover.ts';
import { drop } from './shapes.ts';

/** The piece with so many rows more in a section of one of its parts. */
const longer = (recipe: Recipe, part: string, section: string, by: number): Recipe => ({
  ...recipe,
  parts: recipe.parts.map((one) => ({
    ...one,
    sections: one.sections.map((own) =>
      one.name === part && own.name === section ? { ...own, rows: own.rows + by } : own,
    ),
  })),
});

const told = (before: readonly Recipe[], after: readonly Recipe[]): string[] =>
  consequences(standing(...before), standing(...after)).map(dataSaid);

const [straightBack, straightFront, straightSleeve] = drop as [Recipe, Recipe, Recipe];

/* Reckoned by hand: a stitch is 4 mm wide, a row 3 mm high, in rib 5 mm. */
describe('what a change breaks', () => {
  const all = [back, front, sleeve, neckband];

  it('a back four rows longer below the armhole: both sides, told once', () => {
    expect(told(all, [longer(back, 'Back', 'body', 4), front, sleeve, neckband])).toEqual([
      'kind seam of side unit rows piece Back to Front was 10 now 14 other 10 longerMm 12',
    ]);
  });

  it('a front four rows shorter there: it is the front that was changed', () => {
    expect(told(all, [back, longer(front, 'Body', 'body', -4), sleeve, neckband])).toEqual([
      'kind seam of side unit rows piece Front to Back was 10 now 6 other 10 longerMm -12',
    ]);
  });

  it('where both were changed, the one that was changed more; of two alike the first of the seam', () => {
    const changed = [longer(back, 'Back', 'body', 4), longer(front, 'Body', 'body', -2), sleeve, neckband];
    expect(told(all, changed)).toEqual([
      'kind seam of side unit rows piece Back to Front was 10 now 14 other 8 longerMm 18',
    ]);
    const alike = [longer(back, 'Back', 'body', 2), longer(front, 'Body', 'body', -2), sleeve, neckband];
    expect(told(all, alike)).toEqual([
      'kind seam of side unit rows piece Front to Back was 10 now 8 other 12 longerMm -12',
    ]);
  });

  it('nothing where both grow alike, nor where they come nearer; what is further apart than before is told', () => {
    const both = [longer(back, 'Back', 'body', 4), longer(front, 'Body', 'body', 4), sleeve, neckband];
    expect(told(all, both)).toEqual([]);
    const uneven = [longer(back, 'Back', 'body', 2), front, sleeve, neckband];
    expect(told(uneven, uneven)).toEqual([]);
    expect(told(uneven, [longer(back, 'Back', 'body', 6), front, sleeve, neckband])).toEqual([
      'kind seam of side unit rows piece Back to Front was 12 now 16 other 10 longerMm 18',
    ]);
    expect(told(uneven, all)).toEqual([]);
  });

  it('a sleeve may differ from its armhole by eight in a hundred', () => {
    // the straight top is 40 mm, the armhole 42; with a row more on either side of the shoulder 48
    expect(told(drop, drop)).toEqual([]);
    const wider = {
      ...straightSleeve,
      parts: straightSleeve.parts.map((one) => ({ ...one, from: { castOn: 10 } })),
    };
    expect(told(drop, [straightBack, straightFront, wider])).toEqual([]);
    expect(told([straightBack, straightFront, wider], drop)).toEqual([]);
  });

  it('a neck with room for more of its band: edge by edge, as many more as the edge has grown', () => {
    // eight rows more on either side are 24 mm, room for six stitches of 4 mm; the shoulders lie higher than the armhole
    const deeper = longer(longer(front, 'Right', 'neck', 8), 'Left', 'neck', 8);
    const found = told(all, [back, deeper, sleeve, neckband]);
    expect(found.filter((line) => line.startsWith('kind pick up'))).toEqual([
      'kind pick up band Neckband along 0 stitches 5 fit 11 longerMm 24',
      'kind pick up band Neckband along 2 stitches 5 fit 10 longerMm 24',
    ]);
  });

  it('what its rib takes up is not told: less than three stitches', () => {
    const pickUps = (by: number) => {
      const deeper = longer(longer(front, 'Right', 'neck', by), 'Left', 'neck', by);
      return told(all, [back, deeper, sleeve, neckband]).filter((line) => line.startsWith('kind pick up'));
    };
    // two rows of 3 mm are a stitch and a half, six are four and a half
    expect(pickUps(2)).toEqual([]);
    expect(pickUps(6).map((line) => line.slice(-11))).toEqual(['longerMm 18', 'longerMm 18']);
  });

  it('one sleeve that was made longer than the other: a pair no more', () => {
    const before = standing(back, front, sleeve, neckband);
    const long = standing(back, front, longer(sleeve, 'Sleeve', 'sleeve', 4), neckband);
    const mixed = (one: number) => ({
      ...before,
      pieces: before.pieces.map((piece, i) =>
        piece.recipe.name === 'Sleeve'
          ? {
              ...piece,
              makes: piece.makes.map((make, n) => (n === one ? (long.pieces[i]?.makes[n] ?? make) : make)),
            }
          : piece,
      ),
    });
    const pair = 'kind pair piece Sleeve was 10 now 14 other 10';
    expect(consequences(before, mixed(0)).map(dataSaid)).toEqual([pair]);
    expect(consequences(before, mixed(1)).map(dataSaid)).toEqual([pair]);
    expect(consequences(before, long)).toEqual([]);
    expect(consequences(mixed(0), before)).toEqual([]);
    expect(consequences(mixed(0), mixed(1))).toEqual([]);
    const alone = standing(back, front, neckband);
    expect(consequences(alone, before)).toEqual([]);
    expect(consequences(before, alone)).toEqual([]);
  });
});
