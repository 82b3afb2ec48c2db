import { describe, expect, it } from 'vitest';
import { shapeOfPiece } from '../../src/ui/panel-map/outline-of.ts';
import { heightAt, lineOf, placeOnLine, rowAt } from '../../src/ui/panel-map/row-at.ts';
import { neck, partsOf, strip } from './pieces.ts';

const front = shapeOfPiece(partsOf(neck));

describe('a tap on the panel map', () => {
  it('finds every row of every part at its own middle', () => {
    front.parts.forEach((shape, part) => {
      shape.rows.forEach((row, i) => {
        if (row.top === row.bottom) return;
        const x = (row.left0 + row.right0) / 2;
        expect(rowAt(front, x, (row.top + row.bottom) / 2)).toEqual({ part, row: i + 1 });
      });
    });
  });

  it('beside or above the cloth finds the nearest row', () => {
    expect(rowAt(front, 30, -2)).toEqual({ part: 0, row: 1 });
    expect(rowAt(front, 30, -78)).toEqual({ part: 1, row: 10 });
    expect(rowAt(front, -400, -500)).toEqual({ part: 3, row: 10 });
  });

  it('finds nothing where nothing is knitted', () => {
    expect(rowAt({ parts: [], box: { x: 0, y: 0, width: 0, height: 0 } }, 0, 0)).toBeUndefined();
  });

  it('is quick in a piece of 2,000 rows', () => {
    const long = shapeOfPiece(partsOf(strip(100, 2000)));
    expect(rowAt(long, -50, -4 * 1234.5)).toEqual({ part: 0, row: 1235 });
  });
});

describe('the arrow keys on the panel map', () => {
  it('walk all rows of all parts in one line, there and back', () => {
    const counts = [10, 0, 3, 5];
    for (let line = 1; line <= 18; line += 1) expect(lineOf(counts, placeOnLine(counts, line))).toBe(line);
    expect(placeOnLine(counts, 11)).toEqual({ part: 2, row: 1 });
  });

  it('stop at both ends', () => {
    expect(placeOnLine([10, 5], 0)).toEqual({ part: 0, row: 1 });
    expect(placeOnLine([10, 5], 99)).toEqual({ part: 1, row: 5 });
  });
});

describe('the height of the place', () => {
  it('is the cast-on before row 1, then the top of the last row worked', () => {
    const [body] = front.parts;
    if (!body) throw new Error('no part');
    expect([0, 1, 10, 99].map((worked) => heightAt(body, worked))).toEqual([-0, -4, -40, -40]);
  });
});
