import { describe, expect, it } from 'vitest';
import { breaks } from '../../../src/knit/making-up/consequences.ts';
import { type Edit, editedBy, nothingKnitted } from '../../../src/knit/making-up/edit.ts';
import type { Joint } from '../../../src/knit/making-up/joint.ts';
import { answers } from '../../../src/knit/making-up/mends.ts';
import { proposed } from '../../../src/knit/making-up/propose.ts';
import { nothingTold } from '../../../src/knit/making-up/told.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { dataSaid, part, piece, section, slant, standing } from './by-hand.ts';
import { back, front, sleeve } from './pullover.ts';
import { drop } from './shapes.ts';

/* Reckoned by hand: a stitch is 4 mm wide and a row 3 mm high; a row of rib is 5 mm high. */

const longer = (recipe: Recipe, called: string, by: number): Recipe => ({
  ...recipe,
  parts: recipe.parts.map((one) => ({
    ...one,
    sections: one.sections.map((own) => (own.name === called ? { ...own, rows: own.rows + by } : own)),
  })),
});

describe('two seams of the same edges, one above the other', () => {
  const seam = (...sections: readonly string[]): Joint => ({
    kind: 'seam',
    of: 'side',
    a: [{ piece: 'Front', make: 1, part: 'Body', edge: 'right', sections }],
    b: [{ piece: 'Back', make: 1, part: 'Back', edge: 'left', sections }],
    how: 'mattress',
  });
  const joints = [seam('rib'), seam('body')];
  const broken = (changed: Recipe) =>
    breaks({ ...standing(back, front), joints }, { ...standing(changed, front), joints })
      .filter(({ what }) => what.kind === 'seam')
      .map(({ key, what }) => `${key.slice(-2)}: ${dataSaid(what)}`);
  const told = (now: number, was: number, mm: number) =>
    `kind seam of side unit rows piece Back to Front was ${was} now ${now} other ${was} longerMm ${mm}`;

  it('are told apart: the one that no longer meets is told, as the first or the second of them', () => {
    expect(broken(longer(back, 'rib', 2))).toEqual([` 0: ${told(6, 4, 10)}`]);
    expect(broken(longer(back, 'body', 4))).toEqual([` 1: ${told(10, 6, 12)}`]);
    expect(broken(longer(longer(back, 'rib', 2), 'body', 4))).toEqual([
      ` 0: ${told(6, 4, 10)}`,
      ` 1: ${told(10, 6, 12)}`,
    ]);
    expect(broken(back)).toEqual([]);
  });
});

describe('two sleeves whose own seams are as long', () => {
  it('are a pair no more where the cap of one has other rows: counted to their tops, with the row that binds off', () => {
    const whole = standing(back, front, sleeve);
    const long = standing(back, front, longer(sleeve, 'cap', 4));
    const mixed = {
      ...whole,
      pieces: whole.pieces.map((own, i) =>
        own.recipe.name === 'Sleeve'
          ? {
              ...own,
              makes: own.makes.map((make, n) => (n === 1 ? (long.pieces[i]?.makes[n] ?? make) : make)),
            }
          : own,
      ),
    };
    const pairs = breaks(whole, mixed).filter(({ what }) => what.kind === 'pair');
    expect(pairs.map(({ key, what }) => `${key}: ${dataSaid(what)}`)).toEqual([
      'pair Sleeve: kind pair piece Sleeve was 17 now 21 other 17',
    ]);
    expect(breaks(whole, long).filter(({ what }) => what.kind === 'pair')).toEqual([]);
  });
});

describe('a straight sleeve from the top down', () => {
  const [rear, fore] = drop as [Recipe, Recipe, Recipe];
  const arm = piece('Sleeve', 'sleeve', [part('Sleeve', 10, [section('a', 12)])], { makes: 2 });
  const mends = (topDown: boolean) => {
    const was = standing(rear, fore, arm);
    const joints = proposed(was, { ...nothingTold, topDown });
    const is = standing(rear, longer(fore, 'b', 6), arm);
    return [...answers({ before: { ...was, joints }, after: { ...is, joints } })].flatMap((one) =>
      one.mends.map(({ edits }) => edits),
    );
  };

  it('is cast on wider where its armhole is longer; one from the cuff up widens on its way', () => {
    const width = { kind: 'width', piece: 'Sleeve', part: 'Sleeve', by: 6 } as const;
    expect(mends(true)).toEqual([[{ ...width, fromTop: true }]]);
    expect(mends(false)).toEqual([[width]]);
    const made = (edit: Edit) =>
      editedBy(standing(rear, fore, arm), [edit], nothingKnitted)?.pieces[2]?.recipe.parts[0];
    const slanted = (by: 1 | -1) => [slant('both', by, 3, 7, 11)];
    expect(made({ ...width, fromTop: true })).toMatchObject({ from: { castOn: 16 } });
    expect(made({ ...width, fromTop: true })?.sections[0]?.shaping).toEqual(slanted(-1));
    expect(made(width)).toMatchObject({ from: { castOn: 10 } });
    expect(made(width)?.sections[0]?.shaping).toEqual(slanted(1));
  });
});
