import { describe, expect, it } from 'vitest';
import { alike, breaks, consequences } from '../../../src/knit/making-up/consequences.ts';
import { proposed } from '../../../src/knit/making-up/propose.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { dataSaid, part, piece, section, standing, workedSaid } from './by-hand.ts';
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
    // the straight top is 40 mm, 32 when its seam is sewn; with a stitch more at either end 48
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

  it('what no seam joins and yet is as high: a back and a front above the underarm, both sides told once', () => {
    // eight rows of armhole and two of shoulder on either; the left shoulder of the front begins a row later
    const higher = [longer(back, 'Back', 'armhole', 4), front, sleeve, neckband];
    expect(told(all, higher).filter((line) => line.startsWith('kind level'))).toEqual([
      'kind level of above the underarm piece Back to Front was 10 now 14 other 10 longerMm 12',
    ]);
    expect(told(higher, all)).toEqual(
      told(higher, all).filter((line) => !line.startsWith('kind level') || line.includes('now 10')),
    );
    // so it is where the front is the one: its left side was a row higher before, and is afterwards
    const deeper = [back, longer(front, 'Body', 'armhole', 4), sleeve, neckband];
    expect(told(all, deeper).filter((line) => line.startsWith('kind level'))).toEqual([
      'kind level of above the underarm piece Front to Back was 10 now 14 other 10 longerMm 12',
    ]);
    const uneven = [back, longer(front, 'Right', 'neck', 2), sleeve, neckband];
    expect(told(all, uneven).filter((line) => line.startsWith('kind level'))).toHaveLength(1);
  });

  it('an armhole that was made less deep behind: it is the back that was changed, though the front has more of it now', () => {
    const found = told(all, [longer(back, 'Back', 'armhole', -2), front, sleeve, neckband]);
    expect(found.filter((line) => line.includes('of armhole'))).toEqual([
      // two slants and four rows in back and front; of the back two rows go. The cap: the same slants, four rows, six stitches
      `kind seam of armhole unit mm piece Back to Sleeve was 52.8 now 46.8 other 64.8 longerMm -18`,
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

  it('an armhole a little further from its sleeve than it was: three tenths of a mm are told', () => {
    // five rows of the back are 15 mm; at 34 rows to 10 cm they are 14.7
    const wide = {
      ...straightSleeve,
      parts: straightSleeve.parts.map((one) => ({ ...one, from: { castOn: 14 } })),
    };
    const before = standing(straightBack, straightFront, wide);
    const joints = proposed(standing(...drop));
    const after = standing({ ...straightBack, gauge: { stitches: 25, rows: 34 } }, straightFront, wide);
    expect(consequences({ ...before, joints }, { ...after, joints }).map(dataSaid)).toEqual([
      'kind seam of armhole unit mm piece Back to Sleeve was 30 now 29.7 other 64 longerMm -34.3',
    ]);
    expect(consequences({ ...after, joints }, { ...before, joints })).toEqual([]);
  });

  describe('of a neck 24 mm deeper, whose band was changed with it', () => {
    const deeper = longer(longer(front, 'Right', 'neck', 8), 'Left', 'neck', 8);
    const picked = (first: number, third: number) => ({
      ...neckband,
      parts: neckband.parts.map((one) => ({
        ...one,
        from: {
          pickUp: [
            { along: 'left front neck', stitches: first },
            { along: 'middle of the front neck', stitches: 4 },
            { along: 'right front neck', stitches: third },
            { along: 'back neck', stitches: 8 },
          ],
        },
        sections: one.sections.map((own) => ({ ...own, fabric: 'garter' as const })),
      })),
    });
    // there is room for 11 and 10
    it.each([
      [11, 10, []],
      [9, 12, []],
      [13, 8, []],
      [8, 10, ['kind pick up band Neckband along 0 stitches 8 fit 11 longerMm 24']],
      [14, 10, ['kind pick up band Neckband along 0 stitches 14 fit 11 longerMm 24']],
      [11, 7, ['kind pick up band Neckband along 2 stitches 7 fit 10 longerMm 24']],
    ])('to %i and %i', (first, third, lines) => {
      const found = told([back, front, sleeve, picked(5, 5)], [back, deeper, sleeve, picked(first, third)]);
      expect(found.filter((line) => line.startsWith('kind pick up'))).toEqual(lines);
    });
  });

  it('stitches on a holder are counted: one more is told, and so are three', () => {
    const held = {
      ...neckband,
      parts: neckband.parts.map((one) => ({
        ...one,
        from: {
          pickUp: [
            { along: 'left front neck', stitches: 5 },
            { along: 'middle of the front neck', stitches: 4, held: true as const },
            { along: 'right front neck', stitches: 5 },
            { along: 'back neck', stitches: 8 },
          ],
        },
      })),
    };
    const wider = (by: number): Recipe => ({
      ...front,
      parts: front.parts.map((one) =>
        one.name === 'Body'
          ? {
              ...one,
              from: { castOn: 30 + by },
              // rib would ask for an even count
              sections: one.sections.map((own) => ({ ...own, fabric: 'stocking' as const })),
            }
          : one.name === 'Middle'
            ? { ...one, from: { part: 'Body', stitches: 4 + by, edge: 'middle' as const } }
            : one,
      ),
    });
    for (const by of [1, 2, 3])
      expect(told([back, wider(0), sleeve, held], [back, wider(by), sleeve, held])).toEqual([
        `kind pick up band Neckband along 1 stitches 4 fit ${4 + by} longerMm ${4 * by}`,
      ]);
    // picked up anew instead, three more are told and two are not
    expect(told([back, wider(0), sleeve, neckband], [back, wider(2), sleeve, neckband])).toEqual([]);
    expect(told([back, wider(0), sleeve, neckband], [back, wider(3), sleeve, neckband])).toEqual([
      'kind pick up band Neckband along 1 stitches 4 fit 7 longerMm 12',
    ]);
    // it was off before: it is not told again
    expect(told([back, wider(1), sleeve, held], [back, wider(1), sleeve, held])).toEqual([]);
  });

  it('a pocket that nothing is joined to: each of its makes once, and never again', () => {
    const pocket = piece('Pocket', 'other', [part('Pocket', 10, [section('strip', 12)])], { makes: 2 });
    const unjoined = ['kind unjoined piece Pocket make 1', 'kind unjoined piece Pocket make 2'];
    expect(told(all, [...all, pocket])).toEqual(unjoined);
    expect(told([...all, { ...pocket, makes: 1 }], [...all, pocket])).toEqual(unjoined.slice(1));
    expect(told([...all, pocket], [...all, pocket])).toEqual([]);
    expect(told([...all, pocket], all)).toEqual([]);
    expect(breaks(standing(...all), standing(...all, pocket)).map(({ key }) => key)).toEqual([
      '["Pocket",1]',
      '["Pocket",2]',
    ]);
  });

  it('joint by joint both sides of the body are two breaks of the same words', () => {
    const found = breaks(
      standing(...all),
      standing(longer(back, 'Back', 'body', 4), front, sleeve, neckband),
    );
    expect(found.map(({ what }) => dataSaid(what))).toEqual(
      Array.from(
        { length: 2 },
        () => 'kind seam of side unit rows piece Back to Front was 10 now 14 other 10 longerMm 12',
      ),
    );
    expect(
      found.map(({ worked }) => worked?.joint && workedSaid({ ...worked, joint: worked.joint })),
    ).toEqual([
      'side: Body right rows 1-10 (10r 38.0mm) = Back left rows 1-14 (14r 50.0mm)',
      'side: Body left rows 1-10 (10r 38.0mm) = Back right rows 1-14 (14r 50.0mm)',
    ]);
    expect(alike(found)).toEqual([found]);
    // what is joined to what, and the how manieth of those that join the same
    expect(found.map(({ key }) => key)).toEqual([
      '["seam","side",[[["Front",1,"right"]],[["Back",1,"left"]]]] 0',
      '["seam","side",[[["Front",1,"left"]],[["Back",1,"right"]]]] 0',
    ]);
  });
});
