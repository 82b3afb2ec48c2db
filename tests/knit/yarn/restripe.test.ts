import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  knittedAbove,
  restripedFrom,
  rowToStripe,
  type StripedMake,
  withRestriped,
} from '../../../src/knit/yarn/restripe.ts';
import { coloursOf, isStriped, type Restriped, rowsBelow } from '../../../src/knit/yarn/stripes.ts';
import { section } from '../piece/count/mitten.ts';
import { part, partsOf } from '../piece/parts-by-hand.ts';

/** A body of four rows that is parted into two shoulders of five, the last row of each bound off. */
const half = (edge: 'right' | 'left') =>
  part(edge, { part: 'body', edge, stitches: 10 }, { end: 'bind off', sections: [section({ rows: 4 })] });
const parts = partsOf(
  part('body', { castOn: 20 }, { end: 'split', sections: [section({ rows: 4 })] }),
  half('right'),
  half('left'),
);
const make = (...worked: readonly number[]): StripedMake => ({ piece: 'front', make: 1, parts, worked });

const blue = [
  { colour: 'blue', rows: 1 },
  { colour: 'green', rows: 2 },
];
const stripes = [{ colour: 'white', rows: 1 }];

/** Colours by their first letters, from the set-up on, a part after the other. */
const told = (restriped: readonly Restriped[], no = 1): string =>
  parts
    .map((one) => {
      const colour = coloursOf({ stripes, striped: {}, restriped }, 'front', parts, one, no);
      return [...Array(one.rows.length + 1).keys()].map((row) => colour(row)?.charAt(0) ?? '-').join('');
    })
    .join(' ');

describe('other stripes from a row on', () => {
  it('go on into the parts that grow from it; all before keep their colours, and so does another copy', () => {
    const changed = restripedFrom(make(2), 4, blue);
    expect(changed).toEqual([{ piece: 'front', make: 1, part: 0, row: 4, at: 1, stripes: blue }]);
    expect(told(changed)).toBe('wwwwb bggbgg bggbgg');
    expect(told(changed, 2)).toBe('wwwww wwwwww wwwwww');
  });

  it('begin on the right side unless she says otherwise: at the row in hand or at the one after it', () => {
    const [body] = parts;
    if (!body) throw new Error('there is no body');
    expect(body.rows.map(({ side }) => side)).toEqual(['RS', 'WS', 'RS', 'WS']);
    expect([1, 2, 3].map((n) => rowToStripe(body, n))).toEqual([1, 3, 3]);
    // none is left
    expect(rowToStripe(body, 4)).toBe(4);
  });

  it('begin with the cast-on where nothing is knitted', () => {
    expect(told(restripedFrom(make(), 1, blue))).toBe('bbggb bggbgg bggbgg');
  });

  it('leave what is knitted: a shoulder that is further goes on where the stripes are by then', () => {
    const changed = restripedFrom(make(4, 3), 6, blue);
    expect(changed.map(({ part: at, row, at: begins }) => [at, row, begins])).toEqual([
      [1, 4, 3],
      [2, 2, 1],
    ]);
    expect(told(changed)).toBe('wwwww wwwwgg wwbggg');
  });

  it('are none where all is knitted', () => {
    expect(restripedFrom(make(4, 5, 5), 2, blue)).toEqual([]);
    expect(isStriped({ restriped: [] })).toBe(false);
    expect(isStriped({ restriped: restripedFrom(make(), 2, blue) })).toBe(true);
  });

  it('without any are the garment’s own again', () => {
    const changed = restripedFrom(make(1), 2, blue);
    const back = withRestriped(changed, make(3), restripedFrom(make(3), 4, []));
    expect(told(back)).toBe('wwbgw wwwwww wwwwww');
  });

  it('are the last word for the rows to come: what was to change there before does not', () => {
    const first = restripedFrom(make(4), 6, blue);
    expect(first).toHaveLength(2);
    // ripped back below where they began
    const again = withRestriped(first, make(1), restripedFrom(make(1), 3, [{ colour: 'red', rows: 9 }]));
    expect(told(again)).toBe('wwwrr rrrrrr rrrrrr');
    // in several parts at once, each its own
    const shoulders = restripedFrom(make(4), 8, blue);
    const red = restripedFrom(make(4), 6, [{ colour: 'red', rows: 9 }]);
    expect(told(withRestriped(shoulders, make(4), red))).toBe('wwwww wwrrrr wwrrrr');
    expect(told(withRestriped(red, make(4), shoulders))).toBe('wwwww wwrrbb wwrrbb');
    // another copy's stay
    const other = { ...make(), make: 2 };
    expect(withRestriped(first, other, restripedFrom(other, 1, blue))).toHaveLength(3);
  });

  it('count the rows that no longer can be changed', () => {
    expect(knittedAbove(make(4, 3), 6)).toBe(2);
    expect(knittedAbove(make(2), 3)).toBe(0);
    expect(knittedAbove(make(4, 5, 1), 4)).toBe(1 + 5 + 1);
  });

  it('of no piece and no part that is there change nothing', () => {
    const [one] = restripedFrom(make(), 1, blue) as [Restriped];
    expect(told([{ ...one, piece: 'back' }])).toBe('wwwww wwwwww wwwwww');
    expect(told([{ ...one, part: 7 }])).toBe('wwwww wwwwww wwwwww');
    // nor are they taken for what is striped anew
    const stray = { ...one, part: 7 };
    expect(withRestriped([stray], make(), [one])).toEqual([stray, one]);
  });

  it('for any place: every knitted row as before, every other at or above the height by its distance from it', () => {
    const place = fc.tuple(fc.nat(4), fc.nat(5), fc.nat(5));
    fc.assert(
      fc.property(place, fc.integer({ min: 1, max: 9 }), ([body, right, left], height) => {
        const worked = body < 4 ? [body, 0, 0] : [body, right, left];
        const restriped = restripedFrom(make(...worked), height, blue);
        for (const [i, one] of parts.entries()) {
          const colour = coloursOf({ stripes, striped: {}, restriped }, 'front', parts, one);
          const below = rowsBelow(parts, one);
          for (const { n } of one.rows) {
            const isKnitted = n <= (worked[i] ?? 0);
            // all is bound off in the colour of the row before
            const asRow = i > 0 && n === one.rows.length ? n - 1 : n;
            const above = below + asRow - height;
            if (isKnitted || above < 0) expect(colour(n)).toBe('white');
            else if (asRow > (worked[i] ?? 0)) expect(colour(n)).toBe(above % 3 === 0 ? 'blue' : 'green');
          }
        }
      }),
      { endOnFailure: true },
    );
  });
});
