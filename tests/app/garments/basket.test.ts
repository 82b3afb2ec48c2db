import { describe, expect, it } from 'vitest';
import { wholeGauge, withCount, withMend } from '../../../src/app/drafts/pattern/draft.ts';
import { basketOf, onShelf, shelfOf, shelves } from '../../../src/app/garments/basket.ts';
import { withLines } from '../../../src/knit/pattern/text/with-lines.ts';
import type { GarmentSummary, PlaceRecord } from '../../../src/store/records.ts';

const DAY = 24 * 3_600_000;

const garment = (id: string, createdAt: number, rows = 10): GarmentSummary =>
  ({ id, name: id, createdAt, rows }) as GarmentSummary;
const place = (rows: number, at: number): PlaceRecord => ({ rows, at }) as PlaceRecord;

describe('the workbasket', () => {
  it('has the last knitted first, then the newest, each with the rows of all its makes and its last moment', () => {
    const list = [garment('old', 1), garment('new', 5), garment('knitted', 2), garment('later', 3)];
    const places = [[], [place(0, 0)], [place(3, 700), place(4, 900), place(0, 0)], [place(1, 950)]];
    const entries = basketOf(list, places);
    expect(entries.map((entry) => [entry.garment.id, entry.worked, entry.at])).toEqual([
      ['later', 1, 950],
      ['knitted', 7, 900],
      ['new', 0, 0],
      ['old', 0, 0],
    ]);
    expect(basketOf([garment('x', 1)], [])).toMatchObject([{ worked: 0, at: 0 }]);
  });

  it('does not lay the garment in hand aside a second time, however long it rested', () => {
    const [old, other] = basketOf([garment('old', 1), garment('other', 2)], [[place(3, 5)], [place(3, 9)]]);
    const entries = [old, other].flatMap((one) => one ?? []);
    const on = (inHand?: string) =>
      onShelf('resting', entries, 100 * DAY, inHand as GarmentSummary['id']).map((one) => one.garment.id);
    expect(on()).toEqual(['other', 'old']);
    expect(on('old')).toEqual(['other']);
    // knitted lately it stands with the others, as ever
    const lately = basketOf([garment('old', 1)], [[place(3, 99 * DAY)]]);
    expect(onShelf('on the needles', lately, 100 * DAY, 'old' as GarmentSummary['id'])).toHaveLength(1);
  });

  it('has four shelves, what is knitted at first and what is done at last', () => {
    expect(shelves).toEqual(['on the needles', 'resting', 'to begin', 'finished']);
  });

  it('lays garments on shelves: to begin, on the needles, resting after weeks, finished', () => {
    const shelf = (worked: number, at: number, rows = 10, now = 100 * DAY) =>
      shelfOf({ garment: garment('x', 1, rows), worked, at }, now);
    expect(shelf(0, 0)).toBe('to begin');
    expect(shelf(4, 99 * DAY)).toBe('on the needles');
    expect(shelf(4, 79 * DAY)).toBe('on the needles');
    expect(shelf(4, 79 * DAY - 1)).toBe('resting');
    expect(shelf(10, 0)).toBe('finished');
    expect(shelf(9, 99 * DAY)).toBe('on the needles');
    // nothing to knit in it is not finished: it was not planned yet
    expect(shelf(0, 0, 0)).toBe('to begin');
  });
});

describe('a pattern that is being copied in', () => {
  it('has its own gauge once both numbers are there, the needle only where it is one', () => {
    expect(wholeGauge({ stitches: 20, rows: 28 })).toEqual({ stitches: 20, rows: 28 });
    expect(wholeGauge({ stitches: 20, rows: 28, needle: 4, fabric: 'garter' })).toEqual({
      stitches: 20,
      rows: 28,
      needle: 4,
      fabric: 'garter',
    });
    expect(wholeGauge({ stitches: 20, rows: 28, needle: 0 })).toEqual({ stitches: 20, rows: 28 });
    for (const typed of [
      {},
      { stitches: 20 },
      { rows: 28 },
      { stitches: 0, rows: 28 },
      { stitches: 20, rows: -1 },
    ])
      expect(wholeGauge(typed)).toBeUndefined();
    expect(wholeGauge({ stitches: Number.NaN, rows: 28 })).toBeUndefined();
    expect(wholeGauge({ stitches: 20, rows: Number.POSITIVE_INFINITY })).toBeUndefined();
  });

  it('takes what she wrote instead of lines in their place, be it more or fewer', () => {
    const text = 'one\ntwo\nthree\nfour';
    expect(withLines(text, 2, 3, 'TWO')).toBe('one\nTWO\nfour');
    expect(withLines(text, 1, 1, 'a\nb')).toBe('a\nb\ntwo\nthree\nfour');
    expect(withLines(text, 4, 4, 'FOUR')).toBe('one\ntwo\nthree\nFOUR');
  });

  it('takes the count that a line asked for behind it, as leaflets print it', () => {
    const text = 'Row 1: k10.\nRow 2: k2tog to end . \nRow 3';
    expect(withCount(text, 2, 5)).toBe('Row 1: k10.\nRow 2: k2tog to end (5 sts)\nRow 3');
    expect(withCount(text, 1, 1)).toBe('Row 1: k10 (1 st)\nRow 2: k2tog to end . \nRow 3');
    expect(withCount(text, 4, 5)).toBe(text);
  });

  it('has what she says of a line written behind it, in place of what she said before', () => {
    const text = 'Wibble it.\nRow 2: k10.';
    const once = withMend(text, 1, { rows: 6, stitches: 1 });
    expect(once).toBe('Wibble it. [6 rows, 1 st]\nRow 2: k10.');
    expect(withMend(once, 1, { rows: 1 })).toBe('Wibble it. [1 row]\nRow 2: k10.');
    expect(withMend(once, 1, { rows: 0, stitches: 8 })).toBe('Wibble it. [no rows]\nRow 2: k10.');
    expect(withMend('K2 [k1, p1] [2 rows, 24 sts] ', 1, { rows: 3, stitches: 24 })).toBe(
      'K2 [k1, p1] [3 rows, 24 sts]',
    );
    expect(withMend(text, 4, { rows: 6 })).toBe(text);
  });
});
