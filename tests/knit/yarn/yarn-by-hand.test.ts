import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FabricName } from '../../../src/knit/fabric.ts';
import type { Garment, Swatch } from '../../../src/knit/piece/garment.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { PlannedPart } from '../../../src/knit/piece/planned.ts';
import { lastBall } from '../../../src/knit/yarn/last-ball.ts';
import { yarnFor } from '../../../src/knit/yarn/need.ts';
import { colourOf, loopsByColour } from '../../../src/knit/yarn/stripes.ts';
import { knittableRecipe } from '../../arbitraries/knittable-recipe.ts';
import { told } from '../../told.ts';

/** Yarn reckoned as a knitter reckons it, row by row and ball by ball, apart from the program. */

const given = <T>(made: { ok: true; value: T } | { ok: false; faults: Parameters<typeof told>[0] }): T => {
  if (!made.ok) throw new Error(told(made.faults));
  return made.value;
};

const partsOf = (recipe: Garment['pieces'][number]): readonly PlannedPart[] => given(plan(recipe)).parts;

const flat = (fabric: FabricName, castOn = 20, rows = 28): Garment['pieces'][number] => ({
  name: 'square',
  makes: 1,
  gauge: { stitches: 20, rows: 28 },
  parts: [
    {
      name: 'square',
      from: { castOn },
      end: 'bind off',
      sections: [{ name: 'plain', rows, fabric, needle: 4, shaping: [] }],
    },
  ],
});

const yarn = { name: 'Hollin', grams: 50, metres: 120 };

const weighed = (fabric: FabricName, grams: number): Swatch => ({
  fabric,
  stitches: 20,
  widthMm: 100,
  rows: 28,
  heightMm: 100,
  needle: 4,
  weighed: { grams, stitches: 20, rows: 28 },
});

const need = (garment: Partial<Garment>, taken: Parameters<typeof yarnFor>[1] = []) =>
  given(yarnFor({ name: 'square', pieces: [flat('stocking')], yarns: [yarn], ...garment }, taken));

/** Every stitch that is on the needle after a row or was bound off in it was made in that row. */
const loopsOf = ({ after, shaping }: PlannedPart['rows'][number]): number =>
  shaping.reduce((sum, { kind, by }) => sum + (kind === 'bind off' ? Math.abs(by) : 0), after);

describe('the ball in hand, for every part', () => {
  it('that holds just the yarn of so many rows and its two ends lasts for these, and is joined near their end', () => {
    fc.assert(
      fc.property(knittableRecipe(), fc.nat(), fc.nat(), ({ recipe }, one, other) => {
        for (const part of partsOf(recipe)) {
          if (part.rows.length < 2) continue;
          const worked = one % (part.rows.length - 1);
          const rest = part.rows.slice(worked);
          const lasts = 1 + (other % (rest.length - 1 || 1));
          const grams = rest.slice(0, lasts).reduce((sum, row) => sum + loopsOf(row), 0) * 0.01;
          const ball = lastBall(part, worked, grams + 150 / 2000, 0.01, 2000);
          expect(ball.lastRow).toBe(rest[lasts - 1]?.n);
          expect(ball.enough).toBe(lasts === rest.length);
          expect(ball.needed).toBeCloseTo(rest.reduce((sum, row) => sum + loopsOf(row), 0) * 0.01, 6);
          if (ball.enough) expect(ball.joinAt).toBeUndefined();
          else {
            // in the last four rows that it could be, at the end of the old ball if there no row is plain
            const choice = rest.slice(Math.max(0, lasts - 3), lasts + 1);
            const plain = choice.filter(({ shaping }) => shaping.length === 0);
            expect(ball.joinAt).toBe((plain.at(-1) ?? choice.at(-1))?.n);
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  it('a hair less than the row needs does not finish it', () => {
    const [part] = partsOf(flat('stocking'));
    if (part === undefined) throw new Error('no part');
    expect(lastBall(part, 0, 5 * 20 * 0.01 + 0.075 - 1e-4, 0.01, 2000).lastRow).toBe(4);
    expect(lastBall(part, 0, 5 * 20 * 0.01 + 0.075, 0.01, 2000).lastRow).toBe(5);
  });

  it('of yarn whose length is not known has no ends taken off', () => {
    const [part] = partsOf(flat('stocking'));
    if (part === undefined) throw new Error('no part');
    expect(lastBall(part, 0, 5 * 20 * 0.01, 0.01, 0).lastRow).toBe(5);
    // and of the heaviest that is known they are
    expect(lastBall(part, 0, 150 + 5 * 20 * 0.01, 0.01, 1).lastRow).toBe(5);
  });
});

describe('loops', () => {
  it('of the cast-on count with the first section of their part, and each row with its own', () => {
    const [square] = flat('stocking').parts;
    if (square === undefined) throw new Error('no part');
    const section = (name: string, rows: number) =>
      ({ ...square.sections[0], name, rows }) as (typeof square.sections)[0];
    const body = { ...square, sections: [section('hem', 3), section('body', 5)], end: 'split' as const };
    const half = (edge: 'right' | 'left') => ({
      ...square,
      name: edge,
      from: { part: 'square', stitches: 10, edge },
      sections: [section('top', 4)],
    });
    const pieces = [{ ...flat('stocking'), parts: [body, half('right'), half('left')] }];
    // a cast-on of 20 and rows of 20; the halves take 10 stitches that rest, four rows, and the row that binds off
    expect(need({ pieces }).makes[0]?.sections.map(({ name, loops }) => [name, loops])).toEqual([
      ['square: hem', 20 + 3 * 20],
      ['square: body', 5 * 20],
      ['right: top', 4 * 10],
      ['right: bind off', 10],
      ['left: top', 4 * 10],
      ['left: bind off', 10],
    ]);
  });

  it('are none of a garment without pieces, of which nothing is to be bought', () => {
    expect(need({ pieces: [] })).toMatchObject({
      makes: [],
      metres: 0,
      margin: 0,
      metresToBuy: 0,
      balls: 0,
      grams: 0,
    });
  });

  it('of a row in which stitches are bound off are those too: none is knitted for nothing', () => {
    const [part] = partsOf({
      ...flat('stocking'),
      parts: [
        {
          name: 'front',
          from: { castOn: 20 },
          end: 'bind off',
          sections: [
            {
              name: 'armhole',
              rows: 4,
              fabric: 'stocking',
              needle: 4,
              shaping: [
                {
                  kind: 'bind off',
                  edge: 'right',
                  groups: [
                    { row: 1, stitches: 3 },
                    { row: 3, stitches: 2 },
                  ],
                },
              ],
            },
          ],
        },
      ],
    });
    if (part === undefined) throw new Error('no part');
    const needed = lastBall(part, 0, 1000, 1, 0).needed;
    // 20 with the three bound off, 17 back, 17 with the two bound off, 15 back, 15 in the last bind-off
    expect(needed).toBe(20 + 17 + 17 + 15 + 15);
  });
});

describe('stripes', () => {
  const stripes = [
    { colour: 'woad', rows: 2 },
    { colour: 'madder', rows: 3 },
    { colour: 'none', rows: 0 },
    { colour: 'weld', rows: 1 },
  ];

  it('follow each other row by row and begin again', () => {
    const rows = Array.from({ length: 13 }, (_, index) => colourOf(stripes, index + 1)?.slice(0, 2));
    expect(rows.join(' ')).toBe('wo wo ma ma ma we wo wo ma ma ma we wo');
  });

  it('the cast-on goes with row 1 and with no other', () => {
    const [part] = partsOf(flat('stocking', 10, 3));
    if (part === undefined) throw new Error('no part');
    const single = ['woad', 'madder', 'weld', 'rose'].map((colour) => ({ colour, rows: 1 }));
    expect([...loopsByColour(part, (row) => colourOf(single, row))]).toEqual([
      ['woad', 20],
      ['madder', 10],
      ['weld', 10],
      ['rose', 10],
    ]);
    expect([...loopsByColour(part, () => undefined)]).toEqual([]);
  });

  it('without a row have no colour', () => {
    expect(colourOf([], 1)).toBeUndefined();
    expect(colourOf([{ colour: 'woad', rows: 0 }], 3)).toBeUndefined();
  });

  it('the first takes the cast-on as well as its rows', () => {
    const [part] = partsOf(flat('stocking', 10, 7));
    if (part === undefined) throw new Error('no part');
    const rows = part.rows.map(({ n, after }) => [colourOf(stripes, n), Math.max(after, 10)] as const);
    const woad = rows.filter(([colour]) => colour === 'woad').reduce((sum, [, loops]) => sum + loops, 0);
    expect(loopsByColour(part, (row) => colourOf(stripes, row)).get('woad')).toBe(10 + woad);
    expect(loopsByColour(part, (row) => colourOf(stripes, row)).get('weld')).toBe(10);
    expect(loopsByColour(part, (row) => colourOf(stripes, row)).has('none')).toBe(false);
  });
});

describe('what is bought on top', () => {
  it('is less the surer it is known, and never as much as a third (common practice, no published source)', () => {
    const own = need({ swatches: [weighed('stocking', 6)] });
    const other = need({ swatches: [weighed('garter', 6)] });
    const gauge = need({});
    const garter = need({ pieces: [flat('garter')] });
    expect([own, other, gauge, garter].map(({ basis }) => basis)).toEqual([
      'weighed swatch',
      'weighed swatch of another fabric',
      'loop length',
      'loop length',
    ]);
    const margins = [own.margin, other.margin, gauge.margin, garter.margin];
    expect(margins).toEqual([...margins].sort((a, b) => a - b));
    expect(own.margin).toBeGreaterThan(0);
    expect(own.margin).toBeLessThan(other.margin);
    expect(gauge.margin).toBeLessThan(garter.margin);
    expect(garter.margin).toBeLessThan(1 / 3);
    for (const one of [own, other, gauge, garter])
      expect(one.metresToBuy).toBeCloseTo(one.metres * (1 + one.margin), 6);
  });

  it('reverse stocking stitch is stocking stitch turned round: a swatch of the one is one of the other', () => {
    const turned = need({ pieces: [flat('reverse stocking')] });
    expect(turned.margin).toBe(need({}).margin);
    const both = need({
      pieces: [flat('reverse stocking')],
      swatches: [weighed('garter', 9), weighed('stocking', 6)],
    });
    expect(both.basis).toBe('weighed swatch');
    expect(both.grams).toBeCloseTo(6, 6);
  });

  it('of two fabrics in a garment is each its own, and the less sure one is said', () => {
    const pieces = [flat('stocking'), { ...flat('garter'), name: 'edging' }];
    const whole = need({ pieces, swatches: [weighed('stocking', 6)] });
    expect(whole.basis).toBe('weighed swatch of another fabric');
    const [plain, edging] = whole.makes.map(({ sections }) => sections[0]);
    expect(plain?.margin).toBeLessThan(edging?.margin ?? 0);
    expect(whole.margin).toBeGreaterThan((plain?.margin ?? 1) + 0.05);
    // five in the hundred are for the making up
    expect(whole.margin).toBeLessThan((edging?.margin ?? 0) + 0.05);
  });

  it('a swatch that was not weighed, or with nothing in it, says nothing of yarn', () => {
    const { weighed: _, ...bare } = weighed('stocking', 6);
    for (const swatches of [
      [bare],
      [weighed('stocking', 0)],
      [{ ...bare, weighed: { grams: 6, stitches: 0, rows: 0 } }],
    ])
      expect(need({ swatches }).basis).toBe('loop length');
    // one of the fabric itself that was not weighed does not stand before one of another that was
    const other = need({ swatches: [bare, weighed('garter', 9)] });
    expect(other.basis).toBe('weighed swatch of another fabric');
    expect(other.grams).toBeCloseTo(9, 9);
  });
});

describe('what the scales say', () => {
  const pieces = [{ ...flat('stocking'), makes: 3 }];
  const swatches = [weighed('stocking', 6)];

  it('a make that was weighed counts as weighed, the others as it went: 6 g thought, 9 and 6 g taken, 7.5 g to come', () => {
    const whole = need({ pieces, swatches }, [
      { piece: 'square', make: 1, grams: 9 },
      { piece: 'square', make: 2, grams: 6 },
    ]);
    expect(whole.correction).toBeCloseTo(15 / 12, 6);
    const grams = whole.makes.map((make) => make.grams);
    expect(grams.map((one) => Math.round((one ?? 0) * 1e6) / 1e6)).toEqual([9, 6, 7.5]);
    expect(whole.grams).toBeCloseTo(22.5, 6);
  });

  it('weights of another piece or make change nothing', () => {
    const before = need({ pieces, swatches });
    expect(need({ pieces, swatches }, [{ piece: 'square', make: 4, grams: 9 }])).toEqual(before);
    expect(need({ pieces, swatches }, [{ piece: 'sleeve', make: 1, grams: 9 }])).toEqual(before);
  });

  it('a weight of nothing is one that was not taken, and one of 100 kg is refused', () => {
    const untaken = need({ pieces, swatches }, [{ piece: 'square', make: 1, grams: 0 }]);
    expect(untaken).toEqual(need({ pieces, swatches }));
    const heavy = yarnFor({ name: 'square', pieces, yarns: [yarn], swatches }, [
      { piece: 'square', make: 1, grams: 100_000 },
    ]);
    expect(heavy).toMatchObject({
      ok: false,
      faults: [{ code: 'bad weight', figures: { pieceName: 'square', grams: 100_000 } }],
    });
  });

  it('a weight is taken as it is however little there is to knit, and where there is no stitch at all it says nothing', () => {
    const cord = { ...flat('stocking', 2, 1), name: 'cord' };
    const tiny = need({ pieces: [cord], swatches }, [{ piece: 'cord', make: 1, grams: 0.2 }]);
    // 600 loops weigh 6 g: the six of the cord 0.06 g, where its maker weighed 0.2
    expect(tiny.makes[0]?.metres).toBeCloseTo(0.2 * (120 / 50), 9);
    expect(tiny.correction).toBeCloseTo(0.2 / 0.06, 9);
    const bare: Garment['pieces'][number] = {
      name: 'bare',
      makes: 1,
      parts: [{ name: 'bare', from: { castOn: 9 }, end: 'hold', sections: [] }],
    };
    const none = need({ pieces: [bare] }, [{ piece: 'bare', make: 1, grams: 5 }]);
    expect(none).toMatchObject({ correction: 1, metres: 0, grams: 0, margin: 0, metresToBuy: 0, balls: 0 });
  });

  it('a weight just under 100 kg is taken', () => {
    expect(need({ pieces, swatches }, [{ piece: 'square', make: 1, grams: 99_999 }]).grams).toBeGreaterThan(
      99_999,
    );
  });

  it('without the ball’s metres there are metres to knit, but no grams and no balls', () => {
    for (const yarns of [undefined, [], [{ name: 'Hollin' }], [{ name: 'Hollin', grams: 50 }]]) {
      const whole = given(yarnFor({ name: 'square', pieces, ...(yarns === undefined ? {} : { yarns }) }));
      expect(whole.metres).toBeGreaterThan(0);
      expect(whole).not.toHaveProperty('grams');
      expect(whole).not.toHaveProperty('balls');
      expect(whole).not.toHaveProperty('short');
      expect(whole.correction).toBe(1);
    }
  });

  it('balls that she has are enough, or short by the rest: 23.1 m of 12 m balls are two', () => {
    const has = (balls: number) =>
      need({
        swatches: [weighed('stocking', 8.75)],
        yarns: [{ name: 'Hollin', grams: 5, metres: 12, balls }],
      });
    expect(has(2).metresToBuy).toBeCloseTo(23.1, 6);
    expect([0, 1, 2, 3].map((balls) => has(balls).short)).toEqual([2, 1, 0, 0]);
    expect(has(0).balls).toBe(2);
  });
});
