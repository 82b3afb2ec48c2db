import { describe, expect, it } from 'vitest';
import { bodyOfSize } from '../../../src/knit/garment/bodies.ts';
import type { Body } from '../../../src/knit/garment/design.ts';
import { resized } from '../../../src/knit/garment/grade.ts';
import { startingDesign } from '../../../src/knit/garment/start.ts';
import { englishWritten } from '../../../src/knit/written/english.ts';
import { type Point, toMend } from '../../../src/knit/written/look-through.ts';
import { draftSize, type WorkedSize } from '../../../src/knit/written/work-size.ts';
import { writeSizes } from '../../../src/knit/written/write-sizes.ts';
import { given } from '../../store/scenario.ts';

/** Points of published lists: Snickerdoodle Knits; K. McGrath; The Wrinkled Thistle; see src/knit/written/look-through.ts. */
const body = (size: string) => bodyOfSize('women', size) as Body;
const design = startingDesign(
  { kind: 'pullover', armhole: 'set-in', neck: 'round', fit: 'standard' },
  body('M'),
  'stocking',
  {
    stitches: 21,
    rows: 28,
  },
);
const sizes = ['S', 'M', 'L'].map((size) =>
  given(
    draftSize(size, resized(design, body(size)), {
      name: 'Fen',
      credits: 'A. Knitter',
      licence: 'CC BY 4.0',
      yarns: [{ name: 'Hollin', fibre: 'wool', grams: 50, metres: 120 }],
      swatches: [{ fabric: 'stocking', stitches: 21, widthMm: 100, rows: 28, heightMm: 100, needle: 4 }],
    }),
  ),
);
const [US, UK] = [englishWritten('US'), englishWritten('UK')];
const text = given(writeSizes(sizes, { units: 'cm' }));

describe('a pattern looked through as a technical editor does', () => {
  it('has nothing to mend where all is told, in US and in UK words', () => {
    expect(toMend(text, sizes, US)).toEqual([]);
    expect(toMend(given(writeSizes(sizes, { words: UK })), sizes, UK)).toEqual([]);
  });

  it.each<[Point, string | RegExp, string]>([
    ['title', 'Design: A. Knitter\n', ''],
    ['body and ease', /Ease: .*\n/, ''],
    ['measures', /Length: .*\n/, ''],
    ['measures', /Chest: (\d+)/, 'Chest: 9$1'],
    ['sections', /Hem, in .*\n/, ''],
    ['sections', /(Armhole, in .*, )\d+/, '$199'],
    ['needles', '3.5 mm', '3.75 mm'],
    ['yarn', /Amount, .*\n/, ''],
    ['needles', /Needles: .*\n/, ''],
    ['gauge', ' on 4 mm needles', ''],
    ['washed', ' Measured washed and dry.', ''],
    ['abbreviations', 'ssk = ', 'skp = '],
    ['abbreviations', 'WS = wrong side', 'WS = wrong side\nyo = yarn over'],
    ['abbreviations', /k2tog = .*\n/, ''],
    ['lists', /cast on (\d+) \((\d+), (\d+)\)/, 'cast on $1 ($2, $3, $3)'],
    ['sides', 'Row 1 (RS): knit', 'Row 1: knit'],
    ['same words', 'Bind off all sts', 'Cast off all sts'],
    ['same words', 'Measured washed', 'In this tension. Measured washed'],
    ['making up', /MAKING UP\n(.+\n)+\n/, ''],
    ['care', /CARE AND CAUTIONS\n(.+\n)+\n/, ''],
    ['licence', 'Licence: CC BY 4.0', ''],
  ])('%s: what is not there or not so is found (%s)', (point, was, now) => {
    const spoilt = text.replace(was, now);
    expect(spoilt).not.toBe(text);
    expect(toMend(spoilt, sizes, US)).toEqual([point]);
  });

  const changed = (by: (size: WorkedSize) => WorkedSize) =>
    toMend(text, [by(sizes[0] as WorkedSize), ...sizes.slice(1)], US);
  const withRow = (by: (row: { before: number; after: number }) => object) =>
    changed((size) => {
      const again = structuredClone(size);
      const row = again.garment.pieces[0]?.makes[0]?.parts[0]?.rows[20];
      if (row) Object.assign(row, by(row));
      return again;
    });

  it('counts that do not go on from each other, and shapings that do not add up, are found', () => {
    expect(withRow(({ before, after }) => ({ before: before + 2, after: after + 2 }))).toEqual(['counts']);
    expect(withRow(({ after }) => ({ after: after + 2 }))).toEqual(['counts', 'sums']);
  });

  it('a size that nobody can say the length or the chest of is told for its measures, not for what its rows make', () => {
    for (const name of ['length', 'chest'] as const)
      expect(changed((size) => ({ ...size, finished: { ...size.finished, [name]: undefined } }))).toEqual([
        'measures',
      ]);
  });

  it('names with numbers are no list of figures', () => {
    expect(toMend(`${text}\n\nFor more see (page 1, page 2, page 3).`, sizes, US)).toEqual([]);
  });

  it('a length that the rows do not make is found', () => {
    expect(changed((size) => ({ ...size, finished: { ...size.finished, length: 700 } }))).toEqual([
      'measures',
      'lengths',
    ]);
  });

  it('a rib that does not come out is found', () => {
    expect(
      changed((size) => {
        const again = structuredClone(size);
        for (const row of again.garment.pieces[0]?.makes[0]?.parts[0]?.rows ?? [])
          if (row.section === 0) Object.assign(row, { before: row.before + 1, after: row.after + 1 });
        return again;
      }),
    ).toContain('multiples');
  });

  it('yarn without a weight, or none, is found', () => {
    expect(
      changed((size) => ({ ...size, garment: { ...size.garment, yarns: [{ name: 'Hollin' }] } })),
    ).toEqual(['yarn']);
    expect(changed((size) => ({ ...size, garment: { ...size.garment, yarns: [] } }))).toEqual(['yarn']);
  });
});
