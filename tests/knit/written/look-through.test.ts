import { describe, expect, it } from 'vitest';
import { bodyOfSize } from '../../../src/knit/garment/bodies.ts';
import type { Body } from '../../../src/knit/garment/design.ts';
import { resized } from '../../../src/knit/garment/grade.ts';
import { startingDesign } from '../../../src/knit/garment/start.ts';
import { englishWritten } from '../../../src/knit/written/english.ts';
import { type Point, toMend } from '../../../src/knit/written/look-through.ts';
import { draftSize, type WorkedSize, workSize } from '../../../src/knit/written/work-size.ts';
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

/** The same of a scarf, which is looked through in no time. */
const few = ['S', 'M', 'L'].map((size) =>
  given(
    workSize(size, {
      name: 'Fen scarf',
      pieces: [
        {
          name: 'Scarf',
          makes: 1,
          gauge: { stitches: 20, rows: 28 },
          parts: [
            {
              name: 'scarf',
              from: { castOn: 20 },
              end: 'bind off',
              sections: [{ name: 'scarf', rows: 8, fabric: 'stocking', needle: 4, shaping: [] }],
            },
          ],
        },
      ],
    }),
  ),
);
const short = given(writeSizes(few));
const isMet = (point: Point, spoilt: string): boolean => !toMend(spoilt, few, US).includes(point);

describe('a pattern looked through as a technical editor does', () => {
  it('has nothing to mend where all is told, in US and in UK words', () => {
    expect(toMend(text, sizes, US)).toEqual([]);
    expect(toMend(given(writeSizes(sizes, { words: UK })), sizes, UK)).toEqual([]);
  });

  it.each<[Point, string | RegExp, string]>([
    ['title', 'Design: A. Knitter\n', ''],
    ['body and ease', /Ease: .*\n/, ''],
    ['body and ease', /(Body, .* )(\d+)\)/, '$19$2)'],
    ['body and ease', /(Ease: )/, '$11'],
    ['yarn', /(reserve included: \d+ \()(\d+)/, '$19$2'],
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

  it.each([
    ['names with numbers', '(page 1, page 2, page 3)', []],
    ['numbers with names', '(1 page, 2 pages, 3 pages)', []],
    ['one figure among words', '(left, 2, right)', []],
    ['one in brackets', '(3)', []],
    ['as many as there are sizes', '3 (4, 5)', []],
    ['a size without one', '3 (4, –)', []],
    ['figures with a point', '3 (4.5, 5.5)', []],
    ['figures with a comma, parted otherwise', '3 (4,5; 5,5)', []],
    ['ordinals', '8th (6th, 2nd)', []],
    ['one too many', '3 (4, 5, 6)', ['lists']],
    ['one too many with a point', '3 (4.5, 5, 6)', ['lists']],
    ['an ordinal too many', '8th (6th, 2nd, 1st)', ['lists']],
    ['ordinals of every ending', '8th (3rd, 2nd, 1st)', ['lists']],
    ['one too many, parted otherwise', '3 (4,5; 5,5; 6)', ['lists']],
    ['the second list of a line', '3 (4, 5) and 3 (4, 5, 6)', ['lists']],
  ])('lists of figures: %s, %s', (_, said, points) => {
    expect(isMet('lists', `${short}\n\nFor more see ${said}.`)).toBe(points.length === 0);
  });

  it.each([
    ['Row 900 (RS): knit.', []],
    ['Rep rows 900 and 901 once more.', []],
    ['Row 900: knit.', ['sides']],
    ['Row 900 (XS): knit.', ['sides']],
    ['Row 900(RS): knit.', ['sides']],
    ['Row 900 (RS) and more: knit.', ['sides']],
    ['Row 900 (RS):knit.', []],
    ['Row 900 (RS) knit.', []],
    ['Size S only: Row 900: knit.', ['sides']],
    ['Sizes S and M only: Row 900 (WS): purl.', []],
    ['Rows are counted: from the cast-on.', []],
  ])('a row has its side: %s', (line, points) => {
    expect(isMet('sides', `${short}\n\n${line}`)).toBe(points.length === 0);
  });

  it('what only some sizes have counts as told', () => {
    const some = text
      .replace(/^(Amount, )/m, 'Sizes S and M only: $1')
      .replace(/^(Ease: )/m, 'Size L only: $1');
    expect(some.match(/ only: /g)?.length).toBeGreaterThan(1);
    expect(toMend(some, sizes, US)).toEqual([]);
  });

  it.each(['Needles: ', 'Notions: ', 'Chest: ', 'Length: ', 'Licence: '])(
    'so does %s, of one size and of several',
    (begins) => {
      for (const only of ['Size L only: ', 'Sizes S and M only: ', 'Sizes S, M and L only: ']) {
        const some = text.replace(`\n${begins}`, `\n${only}${begins}`);
        expect(some).toContain(`\n${only}${begins}`);
        expect(toMend(some, sizes, US), only).toEqual([]);
      }
      // what stands before it otherwise does not say for whom it is
      const other = text.replace(`\n${begins}`, `\nOnly: ${begins}`);
      expect(toMend(other, sizes, US)).not.toEqual([]);
    },
  );

  it('a pattern of no name is found', () => {
    expect(toMend(text.replace(/^.*\n/, '\n'), sizes, US)).toContain('title');
  });

  it('a pattern that begins with its designer or with a heading has no name', () => {
    const behindName = text.replace(/^.*\n/, '');
    for (const first of ['Design: A. Knitter', US.headings.abbreviations, US.headings.gauge])
      expect(toMend(`${first}\n${behindName}`, sizes, US), first).toContain('title');
    expect(toMend(`Fen\n${behindName}`, sizes, US)).toEqual([]);
  });

  it('in inches, in both units, and with more behind its gauge, it has nothing to mend either', () => {
    for (const units of ['in', 'both'] as const)
      expect(toMend(given(writeSizes(sizes, { units })), sizes, US), units).toEqual([]);
    const more = text.replace(/^(Gauge: .*)$/m, '$1\nCount it in the middle of the swatch.');
    expect(more).not.toBe(text);
    expect(toMend(more, sizes, US)).toEqual([]);
  });

  it('a gauge of which nobody knows the fabric or the needle is found', () => {
    for (const unknown of ['fabric', 'needle'] as const)
      expect(
        changed((size) => {
          const again = structuredClone(size);
          for (const { recipe } of again.garment.pieces)
            Object.assign(recipe, { gauges: undefined, gauge: { ...recipe.gauge, [unknown]: undefined } });
          return again;
        }),
        unknown,
      ).toEqual(['gauge']);
  });

  it('a size that nobody has put together is found', () => {
    expect(changed((size) => ({ ...size, steps: [] }))).toEqual(['making up']);
  });

  it('the second copy of a piece is reckoned as the first', () => {
    expect(
      changed((size) => {
        const again = structuredClone(size);
        const sleeve = again.garment.pieces.find(({ makes }) => makes.length > 1);
        const row = sleeve?.makes[1]?.parts[0]?.rows[20];
        if (row) Object.assign(row, { before: row.before + 2, after: row.after + 2 });
        return again;
      }),
    ).toEqual(['counts']);
  });

  it('a length that the rows do not make is found', () => {
    expect(changed((size) => ({ ...size, finished: { ...size.finished, length: 700 } }))).toEqual([
      'measures',
      'lengths',
    ]);
  });

  it('a length is that of the rows to less than a centimetre', () => {
    const length = sizes[0]?.finished.length ?? 0;
    const off = (mm: number) =>
      changed((size) => ({ ...size, finished: { ...size.finished, length: length + mm } })).includes(
        'lengths',
      );
    // the rows make it to half a row: three millimetres and a half
    expect([off(-5), off(0), off(5), off(-15), off(15)]).toEqual([false, false, false, true, true]);
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

  it('a rib is reckoned by its first row, where that changes no count', () => {
    const hem = (by: (rows: { section: number; before: number; after: number }[]) => void) =>
      changed((size) => {
        const again = structuredClone(size);
        by(again.garment.pieces[0]?.makes[0]?.parts[0]?.rows as never);
        return again;
      });
    const odd = (row: { before: number; after: number } | undefined) =>
      Object.assign(row ?? {}, { before: (row?.before ?? 0) + 1, after: (row?.after ?? 0) + 1 });
    expect(hem((rows) => odd(rows[0]))).toEqual(['counts', 'multiples']);
    expect(hem((rows) => odd(rows[1]))).toEqual(['counts']);
    // a row of increases comes to the count that the fabric needs
    expect(hem((rows) => Object.assign(rows[0] ?? {}, { before: (rows[0]?.before ?? 0) - 1 }))).toEqual([
      'sums',
    ]);
  });

  it('a rib of four may end on its two knit stitches, or not, and a section without a row is none', () => {
    const inRib = (by: number) =>
      changed((size) => {
        const again = structuredClone(size);
        const part = again.garment.pieces[0]?.makes[0]?.parts[0];
        const sections = [...(part?.sections ?? [])];
        Object.assign(sections[0] ?? {}, { fabric: 'rib 2x2' });
        Object.assign(part ?? {}, {
          sections: [...sections, { ...sections[0], first: 900, last: 899 }],
          rows: part?.rows.map((row) => (row.section === 0 ? { ...row, before: by, after: by } : row)),
        });
        return again;
      }).includes('multiples');
    expect([96, 97, 98, 99, 100].map(inRib)).toEqual([false, true, false, true, false]);
  });

  it('yarn without a weight, or none, is found', () => {
    expect(
      changed((size) => ({ ...size, garment: { ...size.garment, yarns: [{ name: 'Hollin' }] } })),
    ).toEqual(['yarn']);
    expect(changed((size) => ({ ...size, garment: { ...size.garment, yarns: [] } }))).toEqual(['yarn']);
    const hollin = { name: 'Hollin', fibre: 'wool', grams: 50, metres: 120 };
    for (const lacking of [{ name: '' }, { grams: undefined }, { metres: undefined }])
      expect(
        changed((size) => ({
          ...size,
          garment: { ...size.garment, yarns: [{ ...hollin, ...lacking } as typeof hollin] },
        })),
        JSON.stringify(lacking),
      ).toEqual(['yarn']);
  });
});
