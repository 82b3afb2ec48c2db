import { describe, expect, it } from 'vitest';
import type { Notch } from '../../src/ui/panel-map/outline-of.ts';
import { shapeOfPart } from '../../src/ui/panel-map/outline-of.ts';
import { clothPath, notchPath, rowPath, withoutMiddles } from '../../src/ui/panel-map/paths.ts';
import { partsOf, strip } from './pieces.ts';

const cloth = (stitches: number, rows: number) => {
  const [part] = partsOf(strip(stitches, rows));
  if (!part) throw new Error('no part');
  return shapeOfPart(part);
};

const notch = (y: number, turn: 1 | -1 = -1, at: Notch['at'] = 'right'): Notch => ({
  row: 1,
  x: 0,
  y,
  at,
  turn,
});

describe('paths of the panel map', () => {
  it('draws a straight strip with four corners, whatever the number of its rows', () => {
    const corners = (d: string) => d.split(/[ML]/).length - 1;
    expect(clothPath(cloth(20, 4))).toBe('M0 0L0 -16L-100 -16L-100 0z');
    expect(corners(clothPath(cloth(20, 2000)))).toBe(4);
  });

  it('draws only the rows that are asked for, and nothing for none', () => {
    expect(clothPath(cloth(20, 4), 3, 4)).toBe('M0 -8L0 -16L-100 -16L-100 -8z');
    expect(clothPath(cloth(20, 4), 1, 0)).toBe('');
  });

  it('keeps every bend of a line, and drops what lies between', () => {
    const points = [
      [0, 0],
      [0, 1],
      [0, 2],
      [1, 3],
      [2, 4],
      [2, 3],
    ] as const;
    expect(withoutMiddles(points)).toEqual([
      [0, 0],
      [0, 2],
      [2, 4],
      [2, 3],
    ]);
  });

  it('cuts a notch into the cloth for fewer stitches, and lets it stand out for more', () => {
    expect(notchPath([notch(0)], 4)).toBe('M0 -2L0 2L-4 0z');
    expect(notchPath([notch(0, 1)], 4)).toBe('M0 -2L0 2L4 0z');
    expect(notchPath([notch(0, -1, 'left')], 4)).toBe('M0 -2L0 2L4 0z');
  });

  it('thins notches out that would lie on each other, at each edge by itself', () => {
    const drawn = (notches: readonly Notch[]) => notchPath(notches, 4).split('z').length - 1;
    expect(drawn([notch(0), notch(-1), notch(-2), notch(-3), notch(-4)])).toBe(2);
    expect(drawn([notch(0), notch(0, -1, 'left')])).toBe(2);
    expect(drawn([notch(0), notch(-10), notch(-20)])).toBe(3);
  });

  it('shows the row that is read, however thin it is', () => {
    const [row] = cloth(20, 4).rows;
    if (!row) throw new Error('no row');
    expect(rowPath(row, 1)).toBe('M0 0L0 -4L-100 -4L-100 0z');
    expect(rowPath(row, 8)).toBe('M0 2L0 -6L-100 -6L-100 2z');
  });
});
