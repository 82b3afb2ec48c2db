import { describe, expect, it } from 'vitest';
import type { PlannedPart } from '../../../src/knit/piece/planned.ts';
import { stripesTold } from '../../../src/knit/written/read-stripes.ts';
import { colouredPart, stretchesOf } from '../../../src/knit/written/stripe-lines.ts';

/* Stripes as they are told and read, counted by hand. */

type Read = Parameters<typeof stripesTold>[0];
const piece = (name: string, makes: number, ...rows: readonly number[]) => ({
  recipe: { name, makes },
  plan: { ok: true, value: { parts: rows.map((n) => ({ rows: Array.from({ length: n }) })) } },
});
/** A back in three parts, of which one rests; a band of two copies whose name begins as the back's. */
const pieces = [
  piece('Back', 1, 9, 0, 5),
  piece('Back Band', 2, 12),
  { ...piece('Hood', 1, 4), plan: { ok: false } },
];

const told = (lines: readonly string[], size = 0, sizes: readonly string[] = ['']) =>
  stripesTold({ lines: lines.map((text) => ({ text })), pieces, size, sizes } as unknown as Read).map(
    ({ piece: at, make, part, at: from, row, stripes }) =>
      `${at}.${make}.${part}@${from} row ${row}: ${stripes.map((one) => `${one.rows}${one.colour}`).join(' ')}`,
  );

describe('what is told of stripes', () => {
  it('is of the parts of a piece in their order, without those that rest, and of no more than there are', () => {
    expect(
      told([
        'Stripes, Back: rows 1 to 9 in a.',
        'Row 1 (RS): knit.',
        'Stripes, Back, Left: row 1 in b.',
        'Stripes, Back: row 1 in c.',
      ]),
    ).toEqual(['0.1.0@1 row 1: 1a', '0.1.2@1 row 1: 1b']);
  });

  it('is of the piece with the longest name that it begins with, whatever its letters', () => {
    expect(told(['Stripes, back band, no. 2: row 1 in a.'])).toEqual(['1.2.0@1 row 1: 1a']);
    expect(told(['Stripes, BACK BAND: row 1 in a.'])).toEqual(['1.1.0@1 row 1: 1a', '1.2.0@1 row 1: 1a']);
    for (const other of ['Backs', 'Back-Band', 'Sleeve'])
      expect(told([`Stripes, ${other}: row 1 in a.`])).toEqual([]);
    // nothing is planned of it
    expect(told(['Stripes, Hood: row 1 in a.'])).toEqual([]);
  });

  it('is of each copy apart where they are told apart', () => {
    expect(
      told(['Stripes, Back Band, no. 1: row 1 in a.', 'Stripes, Back Band, no. 2: row 1 in b.']),
    ).toEqual(['1.1.0@1 row 1: 1a', '1.2.0@1 row 1: 1b']);
    // the second of one copy would be of a second part
    expect(
      told(['Stripes, Back Band, no. 1: row 1 in a.', 'Stripes, Back Band, no. 1: row 1 in b.']),
    ).toEqual(['1.1.0@1 row 1: 1a']);
  });

  it.each([
    ['row 3 in a', ['row 3: 1a']],
    ['rows 3 to 9 in a', ['row 3: 1a']],
    ['rows 1 to 9: 2 rows in a, 1 row in b, in turn', ['row 1: 2a 1b']],
    ['rows 1 to 9: 12 rows in a, dark, 1 row in b, in turn', ['row 1: 12a, dark 1b']],
    ['rows 1 to 9 in 2 rows in a', ['row 1: 12 rows in a']],
    ['rows 1 to 9 in a, in turn', ['row 1: 1a, in turn']],
    ['rows 1 to 2 in a; rows 3 to 4 in b', ['row 1: 1a', 'row 3: 1b']],
    ['rows 1 to 2 in a; row 4 in b', ['row 1: 1a', 'row 3: ', 'row 4: 1b']],
    ['row 1 in a; row 3 in b', ['row 1: 1a', 'row 2: ', 'row 3: 1b']],
    ['rows 1 to 4 in a; bind off in b', ['row 1: 1a']],
    ['rows 1 to 4 in a; cast off in b', ['row 1: 1a']],
    ['rows 1 to 4 in a; or b', ['row 1: 1a; or b']],
    ['rows 1 and 2 in a', []],
  ])('%s', (said, wanted) => {
    expect(told([`Stripes, Back: ${said}.`])).toEqual(wanted.map((one) => `0.1.0@1 ${one}`));
  });

  it('is in each size by its own figure, and of a size that has a dash nothing', () => {
    const line = 'Stripes, Back: rows 1 to 4 (6, 8) in a; rows 5 (7, 9) to 10 (12, 14) in b.';
    const sizes = ['S', 'M', 'L'];
    expect([0, 1, 2].map((size) => told([line], size, sizes)[1])).toEqual([
      '0.1.0@1 row 5: 1b',
      '0.1.0@1 row 7: 1b',
      '0.1.0@1 row 9: 1b',
    ]);
    const some = 'Stripes, Back: rows 1 to – (6, 8) in a.';
    expect([0, 1, 2].map((size) => told([some], size, sizes).length)).toEqual([0, 1, 1]);
    // as many figures as there are not sizes are no list of them
    expect(told(['Stripes, Back: rows 1 to 4 (6) in a.'], 0, sizes)).toEqual([]);
  });

  it('is only of the sizes that it is told for', () => {
    const line = 'Size M only: Stripes, Back: row 1 in a.';
    expect([0, 1].map((size) => told([line], size, ['S', 'M']).length)).toEqual([0, 1]);
  });
});

describe('a part in its colours', () => {
  const part = (end: PlannedPart['end'], rows: number): PlannedPart =>
    ({
      name: 'Body',
      end,
      rows: Array.from({ length: rows }, (_, i) => ({ n: i + 1 })),
    }) as unknown as PlannedPart;
  const coloured = (colours: string, end: PlannedPart['end'] = 'bind off') =>
    colouredPart(part(end, colours.length), (row) => colours[row - 1]);

  it('tells the row that binds off apart where it would make its stripe a row longer', () => {
    expect(coloured('aabb')).toEqual({ name: 'Body', rows: ['a', 'a', 'b'], boundOffIn: 'b' });
    expect(coloured('aab')).toEqual({ name: 'Body', rows: ['a', 'a', 'b'] });
    expect(coloured('aabb', 'hold')).toEqual({ name: 'Body', rows: ['a', 'a', 'b', 'b'] });
    expect(coloured('a')).toEqual({ name: 'Body', rows: ['a'] });
    expect(coloured('')).toEqual({ name: 'Body', rows: [] });
  });

  it('has no row told apart that has no colour', () => {
    expect(colouredPart(part('bind off', 3), () => undefined)).toEqual({
      name: 'Body',
      rows: [undefined, undefined, undefined],
    });
  });

  it('goes round in turns only where row lies on row', () => {
    const said = (letters: string) =>
      stretchesOf([...letters].map((one) => (one === '.' ? undefined : one))).map(
        ({ first, last, turn }) =>
          `${first}-${last}: ${turn.map((one) => `${one.rows}${one.colour}`).join(' ')}`,
      );
    expect(said('ab.ab')).toEqual(['1-1: 1a', '2-2: 1b', '4-4: 1a', '5-5: 1b']);
    expect(said('abab.ab')).toEqual(['1-4: 1a 1b', '6-6: 1a', '7-7: 1b']);
    // cut short only at its end, and by the colour that comes next
    expect(said('aabbaabbac')).toEqual(['1-8: 2a 2b', '9-9: 1a', '10-10: 1c']);
    expect(said('aabbaabbc')).toEqual(['1-8: 2a 2b', '9-9: 1c']);
    expect(said('aabbaabbaaa')).toEqual(['1-8: 2a 2b', '9-11: 3a']);
    expect(said('aabbaabb.a')).toEqual(['1-8: 2a 2b', '10-10: 1a']);
    // of two turns the one that goes further
    expect(said('ababcababc')).toEqual(['1-10: 1a 1b 1a 1b 1c']);
    expect(said('aa.aa')).toEqual(['1-2: 2a', '4-5: 2a']);
  });
});
