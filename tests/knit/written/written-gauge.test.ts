import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FabricName } from '../../../src/knit/fabric.ts';
import type { Garment } from '../../../src/knit/piece/garment.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { gaugesOf, writePattern } from '../../../src/knit/written/write-pattern.ts';
import { told } from '../../told.ts';

/** A swatch of so many stitches and rows to 10 cm, and a piece planned in it. */
const garment = (stitches: number, rows: number): Garment => ({
  name: 'Swatch',
  pieces: [
    {
      name: 'Square',
      makes: 1,
      gauge: { stitches, rows },
      parts: [
        {
          name: 'body',
          from: { castOn: 20 },
          end: 'bind off',
          sections: [{ name: 'all', rows: 10, fabric: 'stocking', needle: 4, shaping: [] }],
        },
      ],
    },
  ],
});

function text(of: Garment, terms: 'US' | 'UK' = 'US'): string {
  const written = writePattern(of, { terms });
  if (!written.ok) throw new Error(told(written.faults));
  return written.value;
}

describe('the tension in a written pattern', () => {
  it('is the one that the piece was planned in, over 10 cm, in the words of either side of the Atlantic', () => {
    expect(text(garment(22, 30))).toContain('Gauge: 22 sts and 30 rows = 10 cm');
    expect(text(garment(22, 30), 'UK')).toContain('Tension: 22 sts and 30 rows = 10 cm');
    expect(text(garment(17.5, 24))).toContain('Gauge: 17.5 sts and 24 rows = 10 cm');
  });

  it('of further fabrics is told with the needle that they are knitted on first, and of those that are swatched only', () => {
    const rib = { stitches: 25, rows: 32 };
    const piece = (needles: readonly (readonly [FabricName, number])[], gauges?: Recipe['gauges']) => ({
      recipe: {
        name: 'Square',
        makes: 1,
        gauge: { stitches: 22, rows: 30, fabric: 'stocking' as const, needle: 4 },
        ...(gauges && { gauges }),
        parts: [
          {
            name: 'body',
            from: { castOn: 20 },
            end: 'bind off' as const,
            sections: needles.map(([fabric, needle]) => ({
              name: fabric,
              rows: 4,
              fabric,
              needle,
              shaping: [],
            })),
          },
        ],
      },
    });
    const told = (...pieces: readonly ReturnType<typeof piece>[]) =>
      gaugesOf({ pieces } as unknown as Parameters<typeof gaugesOf>[0]).map(
        ({ fabric, needle, stitches, rows }) => `${fabric} ${stitches}/${rows} on ${needle}`,
      );
    const main = 'stocking 22/30 on 4';
    const swatched = { 'rib 2x2': rib };
    expect(told(piece([['rib 2x2', 3.5]]))).toEqual([main]);
    expect(
      told(
        piece(
          [
            ['rib 2x2', 3.5],
            ['moss', 3.75],
          ],
          swatched,
        ),
      ),
    ).toEqual([main, 'rib 2x2 25/32 on 3.5']);
    expect(told(piece([['rib 2x2', 3.5]], swatched), piece([['rib 2x2', 3]], swatched))).toEqual([
      main,
      'rib 2x2 25/32 on 3.5',
    ]);
    // what the garment is planned in is told once
    expect(told(piece([['stocking', 5]], { stocking: rib }))).toEqual([main]);
  });

  it('is told to a tenth of a stitch, whatever it is', () => {
    fc.assert(
      fc.property(fc.integer({ min: 30, max: 400 }), fc.integer({ min: 40, max: 600 }), (stitches, rows) => {
        const said = /: ([\d.]+) sts and ([\d.]+) rows = 10 cm/.exec(text(garment(stitches / 10, rows / 10)));
        expect([Number(said?.[1]), Number(said?.[2])]).toEqual([stitches / 10, rows / 10]);
      }),
      { numRuns: 100 },
    );
  });
});
