import { describe, expect, it } from 'vitest';
import { changeOf, counts, startOf } from '../../../src/knit/piece/counts.ts';
import { unnamedGarterGauge, withGaugeIn } from '../../../src/knit/piece/gauges.ts';
import { match } from '../../../src/knit/piece/match.ts';
import { partWidths, rightEdgeShift } from '../../../src/knit/piece/part-shape.ts';
import type { Recipe, Section, Shaping } from '../../../src/knit/piece/recipe.ts';
import { firstSides, sideOfRow } from '../../../src/knit/piece/sides.ts';
import { wornSide } from '../../../src/knit/piece/worn-side.ts';
import { mitten, section } from './count/mitten.ts';
import { edge, part } from './parts-by-hand.ts';

/** Single functions of a piece, over figures that are reckoned by hand. */

describe('a part drawn, 5 mm a stitch', () => {
  it('is as wide as its stitches after each row', () => {
    expect(partWidths(mitten).map((mm) => mm / 5)).toEqual([
      20, 20, 20, 20, 20, 24, 24, 24, 24, 22, 22, 22, 22, 20, 19, 16, 13,
    ]);
    const rib = { ...mitten, cells: [{ width: 4, height: 2.5 }, ...mitten.cells.slice(1)] };
    expect(partWidths(rib).slice(0, 6)).toEqual([80, 80, 80, 80, 80, 120]);
    expect(partWidths({ ...mitten, cells: [] })).toEqual(mitten.rows.map(() => 0).concat(0));
  });

  it('has its right edge moved by what is done there, and by half of what is spread or drawn in', () => {
    const shift = (upTo?: number, one = mitten) => rightEdgeShift(one, partWidths(one), upTo);
    // four stitches spread out: 10 mm to either side; then 5 mm in by each decrease and 15 by the group
    expect([0, 4, 5, 9, 13, 14, 15, 16].map((rows) => shift(rows))).toEqual([0, 0, -10, -5, 0, 5, 20, 20]);
    expect(shift()).toBe(20);
    expect(shift(99)).toBe(20);
    // a rib of 4 mm a stitch under it: 40 mm wider, 20 to either side
    const rib = { ...mitten, cells: [{ width: 4, height: 2.5 }, ...mitten.cells.slice(1)] };
    expect(shift(5, rib)).toBe(-20);
  });
});

describe('two edges of a seam', () => {
  const seam = (first: number, second: number, tolerance: number, ease?: number) =>
    match({
      seam: 'side',
      unit: 'rows',
      first: { piece: 'Back', measure: first },
      second: { piece: 'Front', measure: second },
      tolerance,
      ...(ease === undefined ? {} : { ease }),
    });

  it('agree within the tolerance; else one in so many of the longer is eased in', () => {
    expect(seam(104, 100, 4)).toMatchObject({ difference: 4, agrees: true });
    expect(seam(104, 100, 4)).not.toHaveProperty('easeInEvery');
    expect(seam(104, 100, 3)).toMatchObject({ difference: 4, agrees: false, easeInEvery: 26 });
    expect(seam(96, 100, 3)).toMatchObject({ difference: -4, agrees: false, easeInEvery: 25 });
  });

  it('the first is meant to be longer by its ease', () => {
    expect(seam(110, 100, 0, 10).difference).toBeCloseTo(0, 9);
    expect(seam(100, 100, 2, 10)).toMatchObject({ agrees: false });
    expect(seam(100, 100, 2, 10).difference).toBeCloseTo(-10, 9);
    expect(seam(100, 100, 2, 10).easeInEvery).toBeCloseTo(11, 9);
  });
});

describe('a tension that names no fabric', () => {
  const gauge = { stitches: 20, rows: 40 };
  const piece = (fabric: Section['fabric'], rows: number, over: Partial<Recipe> = {}): Recipe => ({
    name: 'P',
    makes: 1,
    gauge,
    parts: [part('p', { castOn: 20 }, { sections: [section({ fabric, rows })] })],
    ...over,
  });

  it('is asked about where most rows are garter stitch, each make counted', () => {
    expect(unnamedGarterGauge([piece('garter', 10)])).toBe(gauge);
    expect(unnamedGarterGauge([piece('garter', 10), piece('stocking', 12)])).toBeUndefined();
    expect(unnamedGarterGauge([piece('garter', 10, { makes: 2 }), piece('stocking', 12)])).toBe(gauge);
    expect(unnamedGarterGauge([piece('garter', 7), piece('stocking', 12), piece('garter', 7)])).toBe(gauge);
    expect(unnamedGarterGauge([])).toBeUndefined();
  });

  it('and not where it names one, or there is none', () => {
    const named = { gauge: { ...gauge, fabric: 'garter' as const } };
    expect(unnamedGarterGauge([piece('garter', 10, named)])).toBeUndefined();
    const { gauge: _none, ...without } = piece('garter', 99);
    expect(unnamedGarterGauge([without, piece('stocking', 4)])).toBeUndefined();
    expect(unnamedGarterGauge([piece('garter', 99, named), piece('stocking', 4)])).toBeUndefined();
  });

  it('is said to be of a fabric, and what names one or is none stays', () => {
    expect(withGaugeIn(piece('garter', 10), 'garter').gauge).toEqual({ ...gauge, fabric: 'garter' });
    const named = piece('garter', 10, { gauge: { ...gauge, fabric: 'moss' } });
    expect(withGaugeIn(named, 'garter')).toBe(named);
    const { gauge: _none, ...without } = piece('garter', 10);
    expect(withGaugeIn(without, 'garter')).toBe(without);
  });
});

describe('the side of a row', () => {
  it('goes on from that of row 1, which is the next one after what it was taken from', () => {
    expect([1, 2, 3, 4].map((row) => sideOfRow(row, 'WS'))).toEqual(['WS', 'RS', 'WS', 'RS']);
    const rows = (count: number) => ({ sections: [section({ rows: count - 1 }), section({ rows: 1 })] });
    const taken = (name: string) => part('taken', { part: name, stitches: 9, edge: 'right' });
    expect(
      firstSides([
        part('even', { castOn: 9 }, rows(4)),
        part('odd', { castOn: 9 }, rows(5)),
        part('band', { pickUp: [{ along: 'neck', stitches: 9 }] }, rows(4)),
        part('said', { castOn: 9 }, { ...rows(4), firstSide: 'WS' }),
        ...['even', 'odd', 'band', 'said', 'nowhere'].map(taken),
      ]),
    ).toEqual(['RS', 'RS', 'WS', 'WS', 'RS', 'WS', 'WS', 'WS', 'RS']);
  });
});

describe('counts by sums, of every kind of shaping', () => {
  it.each<[Shaping, number]>([
    [edge('both', -1, 1, 3), -4],
    [edge('both', 2, 1), 4],
    [edge('right', 2, 1, 3), 4],
    [{ kind: 'across', row: 2, by: 7 }, 7],
    [{ kind: 'middle', rows: [1, 3, 5], from: 9 }, -6],
    [
      {
        kind: 'bind off',
        edge: 'right',
        groups: [
          { row: 1, stitches: 4 },
          { row: 3, stitches: 3 },
        ],
      },
      -7,
    ],
    [{ kind: 'cast on', edge: 'left', groups: [{ row: 2, stitches: 4 }] }, 4],
    [{ kind: 'turn', edge: 'left', groups: [{ row: 1, stitches: 4 }] }, 0],
  ])('%j adds %i', (shaping, by) => {
    expect(changeOf({ shaping: [shaping] })).toBe(by);
    expect(changeOf({ shaping: [shaping, shaping] })).toBe(2 * by);
    const [sums] = counts({
      name: 'P',
      makes: 1,
      parts: [part('p', { castOn: 20 }, { sections: [section({ rows: 6, shaping: [shaping] })] })],
    });
    expect(sums).toMatchObject({ start: 20, left: 20 + by, rows: 6 });
  });

  it('begin with what is cast on, taken or picked up in all', () => {
    expect(startOf({ castOn: 31 })).toBe(31);
    expect(startOf({ part: 'body', stitches: 12, edge: 'left' })).toBe(12);
    const pickUp = [12, 1, 15].map((stitches) => ({ along: 'neck', stitches }));
    expect(startOf({ pickUp })).toBe(28);
  });
});

describe('two fronts that are each other’s mirror image', () => {
  const front = { role: 'front', makes: 2, mirrored: true } as const;

  it('are the left and then the right one, as worn; nothing else has a side', () => {
    expect([1, 2].map((make) => wornSide(front, make))).toEqual(['left', 'right']);
    for (const other of [
      { ...front, role: 'sleeve' as const },
      { ...front, mirrored: false },
      { ...front, makes: 3 },
      { ...front, makes: 1 },
    ])
      expect([1, 2].map((make) => wornSide(other, make))).toEqual([undefined, undefined]);
  });
});
