import { describe, expect, it } from 'vitest';
import type { Garment } from '../../../src/knit/piece/garment.ts';
import { writeSizes } from '../../../src/knit/written/write-sizes.ts';

/** A strip in garter stitch: cast on, knitted and bound off. */
const strip = (castOn: number, rows: number, over: Partial<Garment> = {}): Garment => ({
  name: 'Strip',
  pieces: [
    {
      name: 'Strip',
      makes: 1,
      parts: [
        {
          name: 'strip',
          from: { castOn },
          end: 'bind off',
          sections: [{ name: 'plain', rows, fabric: 'garter', needle: 4, shaping: [] }],
        },
      ],
    },
  ],
  ...over,
});

const sizes = (...garments: readonly Garment[]) =>
  writeSizes(garments.map((garment, i) => ({ size: ['S', 'M', 'L'][i] ?? 'XL', garment })));

const written = (...lines: readonly string[]) => ({ ok: true, value: [...lines, ''].join('\n') });

describe('sizes in one text, written out by hand', () => {
  it('only what differs stands in parentheses', () => {
    expect(sizes(strip(10, 6), strip(12, 8), strip(12, 8))).toEqual(
      written(
        'Strip',
        'Sizes S (M, L)',
        '',
        'STRIP',
        'With 4 mm needles, cast on 10 (12, 12) sts.',
        'Row 1 (RS): knit.',
        'Row 2 (WS): knit.',
        'Rep rows 1 and 2 2 (3, 3) times more.',
        'Row 7 (9, 9) (RS): Bind off all sts.',
      ),
    );
  });

  it('figures with a point are one figure, and one behind a point is one too', () => {
    const gauged = (name: string, stitches: number) => {
      const { pieces } = strip(10, 6);
      return { name, pieces: pieces.map((piece) => ({ ...piece, gauge: { stitches, rows: 40 } })) };
    };
    const lines = sizes(gauged('Strip no.5', 20.5), gauged('Strip no.6', 21));
    expect(lines.ok && lines.value.split('\n').slice(0, 3)).toEqual([
      'Strip no.5 (6)',
      'Sizes S (M)',
      'Gauge: 20.5 (21) sts and 40 rows = 10 cm.',
    ]);
  });

  it('one size alone is its own text, without a line of sizes', () => {
    const alone = sizes(strip(10, 6));
    expect(alone.ok && alone.value.split('\n').slice(0, 4)).toEqual([
      'Strip',
      '',
      'STRIP',
      'With 4 mm needles, cast on 10 sts.',
    ]);
  });

  it('and in the words of either side of the Atlantic', () => {
    const british = writeSizes([{ size: 'S', garment: strip(10, 6) }], { terms: 'UK' });
    expect(british.ok && british.value.split('\n').at(-2)).toBe('Row 7 (RS): Cast off all sts.');
  });

  it('says the first line that is not worked alike, as the first size has it', () => {
    const differs = (line: number, text: string) => ({
      ok: false,
      faults: [{ code: 'sizes worked differently', figures: { line, text } }],
    });
    const four = 'Rep rows 1 and 2 once more.';
    expect(sizes(strip(10, 4), strip(12, 6))).toMatchObject(differs(7, four));
    expect(sizes(strip(10, 6), strip(12, 6), strip(12, 4))).toMatchObject(
      differs(7, 'Rep rows 1 and 2 2 times more.'),
    );
    expect(sizes(strip(10, 6), strip(12, 6, { name: 'Cord' }))).toMatchObject(differs(1, 'Strip'));
    // a text that goes on where the other has ended, whichever it is
    const longer = { ...strip(10, 6), pieces: [...strip(10, 6).pieces, ...strip(10, 6).pieces] };
    expect(sizes(longer, strip(10, 6))).toMatchObject(differs(10, 'STRIP'));
    expect(sizes(strip(10, 6), longer)).toMatchObject(differs(10, ''));
  });

  it('is refused without a size, and where one of them cannot be knitted', () => {
    expect(sizes()).toMatchObject({ ok: false, faults: [{ code: 'no sizes' }] });
    expect(sizes(strip(10, 6), strip(0, 6)).ok).toBe(false);
  });
});
