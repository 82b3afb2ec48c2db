import { describe, expect, it } from 'vitest';
import { bodyOfSize } from '../../../src/knit/garment/bodies.ts';
import type { Body } from '../../../src/knit/garment/design.ts';
import { resized } from '../../../src/knit/garment/grade.ts';
import { startingDesign } from '../../../src/knit/garment/start.ts';
import { readPattern } from '../../../src/knit/pattern/read-pattern.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { englishWritten } from '../../../src/knit/written/english.ts';
import { draftSize, type WorkedSize, workSize } from '../../../src/knit/written/work-size.ts';
import { type WriteSizesOptions, writeSizes } from '../../../src/knit/written/write-sizes.ts';
import { given } from '../../store/scenario.ts';
import { told } from '../../told.ts';

/** A back of our own in three sizes, shaped in the same rhythm. */
const back = (castOn: number, rows: number, off: number): Recipe => ({
  name: 'Back',
  makes: 1,
  gauge: { stitches: 20, rows: 28 },
  parts: [
    {
      name: 'body',
      from: { castOn },
      end: 'bind off',
      sections: [
        { name: 'rib', rows: 8, fabric: 'rib 2x2', needle: 3.5, shaping: [] },
        { name: 'body', rows, fabric: 'stocking', needle: 4, shaping: [] },
        {
          name: 'armholes',
          rows: 40,
          fabric: 'stocking',
          needle: 4,
          shaping: [
            { kind: 'bind off', edge: 'right', groups: [{ row: 1, stitches: off }] },
            { kind: 'bind off', edge: 'left', groups: [{ row: 2, stitches: off }] },
          ],
        },
      ],
    },
  ],
});

const sized = (size: string, recipe: Recipe) => given(workSize(size, { name: 'Fen vest', pieces: [recipe] }));

function textOf(of: readonly WorkedSize[], options?: WriteSizesOptions): string {
  const written = writeSizes(of, options);
  if (!written.ok) throw new Error(told(written.faults));
  return written.value;
}

const sizes = [sized('S', back(92, 80, 4)), sized('M', back(100, 84, 5)), sized('L', back(108, 90, 6))];

describe('a garment in all sizes', () => {
  const text = textOf(sizes);

  it('has needles in another system beside the millimetres, and is read all the same', () => {
    const numbers: Readonly<Record<number, string>> = { 4: 'US 6' };
    const told = textOf(sizes, { needle: (mm) => numbers[mm] });
    expect(told).toContain('Needles: 4 mm (US 6) and 3.5 mm');
    expect(readPattern(told, { size: 1 }).lines.flatMap(({ faults }) => faults)).toEqual([]);
  });

  it('has a tension of which nobody said that it was washed', () => {
    expect(textOf(sizes, { units: 'cm' })).toContain('\nGAUGE\nGauge: 20 sts and 28 rows = 10 cm.\n\n');
  });

  it('has a tension in each fabric that was swatched, of which the first says that it was washed', () => {
    const swatch = { stitches: 20, widthMm: 100, rows: 28, heightMm: 100 };
    const recipe: Recipe = { ...back(92, 80, 4), gauges: { 'rib 2x2': { stitches: 25, rows: 32 } } };
    const worked = given(
      workSize('S', {
        name: 'Fen vest',
        pieces: [recipe],
        swatches: [{ ...swatch, fabric: 'stocking', needle: 4 }],
      }),
    );
    const found = textOf([worked], { units: 'cm' }).split('\nGAUGE\n')[1]?.split('\n\n')[0];
    expect(found?.split('\n')).toEqual([
      'Gauge: 20 sts and 28 rows = 10 cm. Measured washed and dry.',
      'Gauge: 25 sts and 32 rows = 10 cm in k2, p2 rib on 3.5 mm needles.',
    ]);
  });

  it('has the smallest size first and the others in parentheses', () => {
    expect(text).toContain('Sizes: S (M, L)');
    expect(text).toContain('cast on 92 (100, 108) sts.');
    expect(text).toContain('bind off 4 (5, 6) sts, knit to end. (88 (95, 102) sts)');
  });

  it.each([0, 1, 2])('is read back to the plan of size %i', (size) => {
    const read = readPattern(text, { size });
    expect(read.lines.flatMap((line) => line.faults.map((f) => `${line.text}: ${told([f])}`))).toEqual([]);
    const before = plan(sizes[size]?.garment.pieces[0]?.recipe as Recipe);
    const after = read.pieces[0]?.plan;
    if (!before.ok || !after?.ok) throw new Error('not read');
    const rows = (made: typeof before.value) =>
      made.parts[0]?.rows.map((r) => [r.side, r.steps, r.before, r.after]);
    expect(rows(after.value)).toEqual(rows(before.value));
  });

  it('has a line of its own for what is not worked alike', () => {
    const other = {
      ...back(108, 90, 6),
      parts: back(108, 90, 6).parts.map((p) => ({ ...p, sections: p.sections.slice(1) })),
    };
    const both = textOf([sizes[0] as WorkedSize, sized('L', other)]);
    expect(both).toContain('Size S only: Change to 4 mm needles.');
    const starts = [0, 1].map((size) => readPattern(both, { size }).pieces[0]?.plan);
    expect(starts.map((made) => made?.ok && made.value.parts[0]?.rows.length)).toEqual([129, 131]);
  });

  it('keeps two pieces that are called the same', () => {
    const { recipe } = (sizes[0] as WorkedSize).garment.pieces[0] as { recipe: Recipe };
    const twice = given(workSize('', { name: 'Fen', pieces: [recipe, recipe] }));
    expect(textOf([twice]).match(/^BACK$/gm)).toHaveLength(2);
  });

  it('has each piece once, also where one size has another piece before it', () => {
    const pocket = { ...back(20, 10, 2), name: 'Pocket' };
    const more = given(workSize('L', { name: 'Fen vest', pieces: [pocket, back(108, 90, 6)] }));
    const both = textOf([sizes[0] as WorkedSize, more]);
    expect(both.match(/^[A-Z]+$/gm)?.sort()).toEqual([...new Set(both.match(/^[A-Z]+$/gm))].sort());
    expect(both).toContain('cast on 92 (108) sts.');
  });

  it('is refused without a size', () => {
    expect(writeSizes([])).toMatchObject({ ok: false, faults: [{ code: 'no sizes' }] });
  });

  it('one alone needs no list of sizes, and is named where it has a name', () => {
    const [small] = sizes as [WorkedSize];
    expect(textOf([small]).split('\n').slice(0, 2)).toEqual(['Fen vest', 'Size: S']);
    expect(
      textOf([{ ...small, size: '' }])
        .split('\n')
        .slice(0, 2),
    ).toEqual(['Fen vest', '']);
  });
});

describe('the whole pattern, in the order of the trade', () => {
  /** Order and contents by published checklists for technical editors: K. McGrath, 'The value of being thorough'; Snickerdoodle Knits, 'Knitting pattern editing checklist'. */
  const body = bodyOfSize('women', 'M') as Body;
  const design = startingDesign(
    { kind: 'cardigan', armhole: 'set-in', neck: 'round', fit: 'standard' },
    body,
    'stocking',
    {
      stitches: 21,
      rows: 28,
    },
  );
  const rest = {
    name: 'Fen',
    credits: 'A. Knitter',
    licence: 'CC BY 4.0',
    yarns: [{ name: 'Hollin', fibre: 'wool', grams: 50, metres: 120 }],
    swatches: [
      { fabric: 'stocking', stitches: 21, widthMm: 100, rows: 28, heightMm: 100, needle: 4 } as const,
    ],
  };
  const text = (options?: WriteSizesOptions) =>
    textOf(
      (['S', 'M', 'L'] as const).map((size) =>
        given(draftSize(size, resized(design, bodyOfSize('women', size) as Body), rest)),
      ),
      options,
    );
  const sectionsOf = (whole: string) =>
    new Map(
      whole
        .trim()
        .split('\n\n')
        .map((block) => [block.split('\n')[0] ?? '', block.split('\n').slice(1)] as const),
    );

  it('has every section once', () => {
    expect([...sectionsOf(text()).keys()]).toEqual([
      'Fen',
      'SIZE AND FIT',
      'FINISHED MEASUREMENTS',
      'MATERIALS',
      'GAUGE',
      'ABBREVIATIONS',
      'BACK',
      'FRONT (make 2, the second as a mirror image: first the left front as worn, then the right)',
      'SLEEVE (make 2)',
      'NECKBAND',
      'BUTTON BAND',
      'BUTTONHOLE BAND',
      'MAKING UP',
      'CARE AND CAUTIONS',
      'LICENCE',
    ]);
  });

  it('says who made it, whom it fits, and of what, for each size', () => {
    const found = sectionsOf(text({ units: 'cm' }));
    expect(found.get('Fen')).toEqual(['Design: A. Knitter', 'Sizes: S (M, L)']);
    // 33, 37 and 41 inches of the body table, 84, 94 and 104 cm
    expect(found.get('SIZE AND FIT')).toEqual([
      'Cardigan with set-in armholes and a round neck, knitted flat in pieces and sewn together.',
      'Body, round the chest: 84 (94, 104) cm',
      'Ease: 7.5 cm wider than the body at the chest',
    ]);
    expect(found.get('FINISHED MEASUREMENTS')?.map((line) => line.split(':')[0])).toEqual([
      'Chest',
      'Length',
      'Nape to cuff',
      'Upper arm',
      'Wrist',
      'Neck, round its edge',
    ]);
    const [yarn, amount, needles, notions, buttons] = found.get('MATERIALS') ?? [];
    expect(yarn).toBe('Yarn: Hollin, wool, 50 g = 120 m, weight 3 light');
    expect(amount).toMatch(
      /^Amount, reserve included: \d+ \(\d+, \d+\) m \/ \d+ \(\d+, \d+\) yd; \d+ \(\d+, \d+\) g; \d+ \(\d+, \d+\) balls$/,
    );
    expect(needles).toBe('Needles: 4 mm and 3.5 mm');
    expect(notions).toBe('Notions: stitch holders, markers, tapestry needle');
    expect(buttons).toMatch(/^Buttons: \d+/);
    expect(found.get('GAUGE')?.[0]).toMatch(
      /^Gauge: 21 sts and 28 rows = 10 cm .* Measured washed and dry\.$/,
    );
    expect(found.get('LICENCE')).toEqual(['Licence: CC BY 4.0']);
  });

  /* A straight needle of 35 to 40 cm holds some 50 cm of stitches, a circular one what is crowded to three quarters: common practice. */
  it('names a circular needle where a band is longer than a straight one, and how long it is', () => {
    const body = bodyOfSize('women', 'M') as Body;
    const of = (neck: 'round' | 'V', kind: 'pullover' | 'cardigan') => {
      const choices = { kind, armhole: 'set-in', neck, fit: 'standard' } as const;
      const begun = startingDesign(choices, body, 'stocking', { stitches: 21, rows: 28 });
      const written = textOf([given(draftSize('', begun, { name: 'Fen' }))]);
      return written.split('\n').filter((line) => line.startsWith('Circular'));
    };
    // round both fronts and the neck some 315 stitches of rib: 1.3 m
    expect(of('V', 'cardigan')).toEqual([
      expect.stringMatching(/^Circular needle for the front band: 3.5 mm, (100|120) cm long$/),
    ]);
    expect(of('round', 'pullover')).toEqual([]);
  });

  it('names one needle for all bands that it is long enough for, each band once', () => {
    // of 20 stitches to 10 cm: a quarter is crowded out of 0.6, 1.2, 0.62, 2 and 2.2 m
    const wide = {
      'Neck band': 120,
      'Front band': 240,
      'Armhole band': 124,
      'Hem band': 400,
      'Long band': 440,
    };
    const band = (name: string, stitches: number): Recipe => ({
      name,
      makes: 1,
      role: 'front band',
      gauge: { stitches: 20, rows: 28 },
      parts: [
        {
          name,
          from: { pickUp: [{ along: 'edge', stitches }] },
          end: 'bind off',
          sections: [{ name: 'band', rows: 6, fabric: 'stocking', needle: 4, shaping: [] }],
        },
      ],
    });
    const long = Object.entries(wide).map(([name, stitches]) => band(name, stitches));
    // half a metre lies on a straight one
    const pieces = [...long, band('Short band', 100), band('Edge', 300)].map((one) =>
      one.name === 'Edge' ? { ...one, role: 'other' as const } : one,
    );
    const written = textOf([given(workSize('', { name: 'Fen', pieces }))]);
    expect(written.split('\n').filter((line) => line.startsWith('Circular'))).toEqual([
      'Circular needle for the neck band and the armhole band: 4 mm, 60 cm long',
      'Circular needle for the front band: 4 mm, 100 cm long',
      'Circular needle for the hem band and the long band: 4 mm, 150 cm long',
    ]);
  });

  it('cautions for a child: cords, buttons and the head, deferring to local rules', () => {
    const careOf = (table: 'babies' | 'women', size: string, kind: 'pullover' | 'cardigan') => {
      const choices = { kind, armhole: 'set-in', neck: 'round', fit: 'standard' } as const;
      const begun = startingDesign(choices, bodyOfSize(table, size) as Body, 'stocking', {
        stitches: 24,
        rows: 33,
      });
      return textOf([given(draftSize('', begun, { name: 'Fen' }))]).split('CARE AND CAUTIONS')[1] ?? '';
    };
    for (const kind of ['pullover', 'cardigan'] as const) {
      const care = careOf('babies', '6 months', kind);
      expect(care).toMatch(/For a child: no cords or ribbons at the neck; buttons sewn so that they hold/);
      expect(care).toContain('Follow your local rules.');
      expect(care.includes('over the head')).toBe(kind === 'pullover');
    }
    expect(careOf('women', 'M', 'cardigan')).not.toContain('child');
    // of what was not drafted nobody knows whom it is for
    expect(textOf(sizes)).toContain('For a child: no cords or ribbons at the neck');
  });

  it('measures in centimetres, inches or both, in the words of either side of the Atlantic', () => {
    expect(text()).toContain('Body, round the chest: 84 (94, 104) cm / 33 (37, 41) in');
    expect(text({ units: 'in' })).toContain('Body, round the chest: 33 (37, 41) in\n');
    expect(text({ words: englishWritten('UK') })).toContain('\nTENSION\nTension: 21 sts');
    expect(text({ words: englishWritten('UK') })).not.toMatch(/bind off|bound off|stockinette|gauge/i);
    expect(text({ words: englishWritten('US') })).not.toMatch(/cast off|stocking stitch|tension/i);
  });
});
