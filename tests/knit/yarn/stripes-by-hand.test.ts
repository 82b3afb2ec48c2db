import { describe, expect, it } from 'vitest';
import { coloursOf, rowsBelow, type Striped } from '../../../src/knit/yarn/stripes.ts';
import { section } from '../piece/count/mitten.ts';
import { part, partsOf } from '../piece/parts-by-hand.ts';

const stripes = [
  { colour: 'woad', rows: 1 },
  { colour: 'madder', rows: 2 },
];

/** A body of four rows, and a shoulder of five with its last one, in which it is bound off. */
const parts = partsOf(
  part('body', { castOn: 20 }, { end: 'split', sections: [section({ rows: 4 })] }),
  part(
    'neck',
    { part: 'body', edge: 'right', stitches: 20 },
    { end: 'split', sections: [section({ rows: 2 })] },
  ),
  part(
    'top',
    { part: 'neck', edge: 'right', stitches: 20 },
    { end: 'bind off', sections: [section({ rows: 4 })] },
  ),
);
const [body, neck, top] = parts as [(typeof parts)[0], (typeof parts)[0], (typeof parts)[0]];

const told = (
  of: typeof body,
  striped?: Readonly<Record<string, Striped>>,
  upTo = of.rows.length,
): string => {
  const colour = coloursOf({ stripes, ...(striped && { striped }) }, 'front', parts, of);
  return Array.from({ length: upTo + 1 }, (_, row) => colour(row)?.charAt(0) ?? '-').join('');
};

describe('stripes of one row of woad and two of madder', () => {
  it('begin anew with each part where they were not laid through the pieces; the set-up has none', () => {
    expect(told(body)).toBe('-wmmw');
    expect(told(top)).toBe('-wmmwm');
    expect(coloursOf({}, 'front', parts, body)(1)).toBeUndefined();
  });

  it('go on through the parts, with all bound off in the colour of the row before', () => {
    const through = { front: { first: 0, at: 1 } };
    expect(told(body, through)).toBe('wmmwm');
    expect(told(neck, through)).toBe('mmw');
    expect(told(top, through)).toBe('wmmwmm');
  });

  it('are only between their first and last row; the others have the first colour', () => {
    expect(told(body, { front: { first: 2, last: 3, at: 2 } })).toBe('wwmmw');
    expect(told(top, { front: { first: 8, last: 9, at: 3 } })).toBe('wwmwww');
  });

  it('run backwards where they are to', () => {
    expect(told(body, { front: { first: 1, at: 3, back: true } })).toBe('wmmwm');
  });

  it('are none of a piece that has none: it is in the first colour', () => {
    expect(told(body, { back: { first: 0, at: 1 } })).toBe('wwwww');
    expect(told(body, {})).toBe('wwwww');
  });

  it('count the rows below a part through all that lies under it', () => {
    expect(parts.map((one) => rowsBelow(parts, one))).toEqual([0, 4, 6]);
  });
});
