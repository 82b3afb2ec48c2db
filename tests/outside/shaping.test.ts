import { describe, expect, it } from 'vitest';
import { plan } from '../../src/knit/piece/plan.ts';
import type { PartRecipe, Section, Shaping } from '../../src/knit/piece/recipe.ts';
import { taper } from '../../src/knit/shape/taper.ts';
import { told } from '../told.ts';

const section = (name: string, rows: number, shaping: Shaping[] = []): Section => ({
  name,
  rows,
  fabric: 'stocking',
  needle: 4,
  shaping,
});

const every = (first: number, step: number, times: number) =>
  Array.from({ length: times }, (_, i) => first + i * step);

const bothEdges = (by: number, rows: number[]): Shaping => ({
  kind: 'edge',
  edge: 'both',
  by,
  rows,
  inset: 1,
  lean: 'mirrored',
});
const oneEdge = (edge: 'right' | 'left', rows: number[]): Shaping => ({
  kind: 'edge',
  edge,
  by: -1,
  rows,
  inset: 1,
  lean: 'mirrored',
});

/** Both armholes bound off: the right one on the first row, the left one on the row after it. */
const armholes = (stitches: number): Shaping[] => [
  { kind: 'bind off', edge: 'right', groups: [{ row: 1, stitches }] },
  { kind: 'bind off', edge: 'left', groups: [{ row: 2, stitches }] },
];

function endOf(castOn: number, sections: Section[], more: Partial<PartRecipe> = {}): number {
  const made = plan({
    name: 'piece',
    makes: 1,
    parts: [{ name: 'body', from: { castOn }, end: 'hold', sections, ...more }],
  });
  if (!made.ok) throw new Error(told(made.faults));
  return made.value.parts[0]?.left ?? 0;
}

describe('Boy’s hooded jacket, Bulkies, Book No. 006, American Thread Co. (PG 66271), sizes 7 (8, 10, 12)', () => {
  const sizes = [0, 1, 2, 3];
  const pick = (list: readonly number[], size: number) => list[size] ?? 0;

  it('back: 4 bound off at each armhole, then one at each end on rows 4 to 46 (49, 52, 55), every 3rd row', () => {
    const last = [46, 49, 52, 55];
    const left = sizes.map((size) => {
      const times = (pick(last, size) - 4) / 3 + 1;
      const even = section('even', pick([44, 46, 46, 48], size));
      const shaped = section('armholes', pick(last, size), [
        ...armholes(4),
        bothEdges(-1, every(4, 3, times)),
      ]);
      return endOf(pick([57, 59, 63, 65], size), [even, shaped]);
    });
    expect(left).toEqual([19, 19, 21, 21]);
  });

  it('sleeve: one at each end every 5th row from row 25 to 80 (80, 85, 85)', () => {
    const times = [12, 12, 13, 13];
    const left = sizes.map((size) =>
      endOf(pick([25, 27, 29, 31], size), [
        section('sleeve', 90, [bothEdges(1, every(25, 5, pick(times, size)))]),
      ]),
    );
    expect(left).toEqual([49, 51, 55, 57]);
  });

  // the rhythm of the cap, every 3rd row, is the back's: the book's own was not at hand; only the counts are printed
  it('sleeve cap: 4 bound off twice, then one at each end 15 (16, 17, 18) times', () => {
    const left = sizes.map((size) => {
      const times = pick([15, 16, 17, 18], size);
      return endOf(pick([49, 51, 55, 57], size), [
        section('cap', 60, [...armholes(4), bothEdges(-1, every(4, 3, times))]),
      ]);
    });
    expect(left).toEqual([11, 11, 13, 13]);
  });
});

describe('Woman’s knitted jacket, Bulkies, Book No. 006 (PG 66271), S (M, L)', () => {
  it('back: one at each end at row 82 and 20 rows later, then 10 (12, 14) bound off at each armhole', () => {
    const castOn = [75, 79, 85];
    const waist = castOn.map((n, i) => {
      const row = [82, 86, 90][i] ?? 0;
      return endOf(n, [section('body', row + 20, [bothEdges(-1, [row, row + 20])])]);
    });
    expect(waist).toEqual([71, 75, 81]);
    expect(waist.map((n, i) => endOf(n, [section('armholes', 4, armholes([10, 12, 14][i] ?? 0))]))).toEqual([
      51, 51, 53,
    ]);
  });
});

// the rows are ours: the book gives inches
describe('Knitted sleeveless sweater, Handbook of Wool Knitting and Crochet, 1918 (PG 26113)', () => {
  it('80 stitches part into 28 for each shoulder and 24 bound off between them', () => {
    const made = plan({
      name: 'Sweater',
      makes: 1,
      parts: [
        {
          name: 'back',
          from: { castOn: 80 },
          end: 'split',
          sections: [{ ...section('rib', 8), fabric: 'rib 2x2' }, section('body', 40)],
        },
        {
          name: 'right shoulder',
          from: { part: 'back', stitches: 28, edge: 'right' },
          end: 'hold',
          sections: [section('shoulder', 14)],
        },
        { name: 'neck', from: { part: 'back', stitches: 24, edge: 'middle' }, end: 'bind off', sections: [] },
        {
          name: 'left shoulder',
          from: { part: 'back', stitches: 28, edge: 'left' },
          end: 'hold',
          sections: [section('shoulder', 14)],
        },
      ],
    });
    if (!made.ok) throw new Error(told(made.faults));
    expect(made.value.parts.map((p) => p.start)).toEqual([80, 28, 24, 28]);
  });
});

describe('A V neck (common practice, no published source)', () => {
  const neckRows = every(1, 2, 24);
  const shoulder = (edge: 'right' | 'left') => endOf(50, [section('neck', 47, [oneEdge(edge, neckRows)])]);

  it('one decrease every second row over 47 rows, the first on the row after the split, takes 24 and leaves 26 of 50', () => {
    const laid = taper({ rows: 47, times: 24, first: 1 });
    expect(laid).toMatchObject({ ok: true, value: { rows: neckRows } });
    expect(shoulder('left')).toBe(26);
    expect(shoulder('right')).toBe(26);
  });

  it('back neck = all stitches less both shoulders, and the band picks up one side + back neck + the other side', () => {
    const shoulders = shoulder('left') + shoulder('right');
    const backNeck = 100 - shoulders;
    const side = 36;
    const band = plan({
      name: 'Neckband',
      makes: 1,
      parts: [
        {
          name: 'band',
          from: {
            pickUp: [
              { along: 'left front neck', stitches: side },
              { along: 'back neck', stitches: backNeck },
              { along: 'right front neck', stitches: side },
            ],
          },
          end: 'bind off',
          sections: [{ ...section('rib', 7), fabric: 'rib 1x1' }],
        },
      ],
    });
    expect(backNeck).toBe(48);
    expect(band).toMatchObject({ ok: true, value: { parts: [{ start: side + backNeck + side }] } });
  });
});

// 'Knitting and the Magic Formula', a page on increasing evenly over rows, as kept in a public collection of web pages
describe('Shaping evenly over rows ("Knitting and the Magic Formula")', () => {
  it('36 shapings in 140 rows: every 3rd row 4 times and every 4th row 32 times', () => {
    const laid = taper({ rows: 140, times: 36, step: 1, order: 'shorter first' });
    if (!laid.ok) throw new Error(told(laid.faults));
    expect(laid.value.first).toBe(3);
    expect(laid.value.runs).toEqual([
      { every: 3, times: 3 },
      { every: 4, times: 32 },
    ]);
    expect(laid.value.rows.at(-1)).toBe(140);
  });
});
