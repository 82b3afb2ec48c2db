import { describe, expect, it } from 'vitest';
import { withoutAsides } from '../../../../src/knit/pattern/text/asides.ts';
import { lex } from '../../../../src/knit/row/read/lex.ts';

const without = (text: string): string =>
  withoutAsides(lex(text))
    .map(({ text: word }) => word)
    .join(' ');

/** How patterns comment in brackets: common practice, no published source. */
describe('brackets', () => {
  it.each([
    ['bo 5 (for all sizes) at beg', 'bo 5 at beg'],
    ['next row (Buttonhole Row): k', 'next row : k'],
    ['bo 9 [for pocket opening], k', 'bo 9 , k'],
    ['decrease (dec) 1', 'decrease 1'],
    ['dec 1 3 time(s)', 'dec 1 3 time'],
    ['co 42 (or a multiple of 18 plus 6)', 'co 42'],
  ])('that only comment are passed over: %s', (text, wanted) => {
    expect(without(text)).toBe(wanted);
  });

  it.each([
    ['row 1 (RS): k'],
    ['k 5 (yo, k1)'],
    ['(for all) k'],
    ['sleeves (make two)'],
    ['co 5 (6, 7)'],
    ['size s (m, l)'],
    ['k (24 sts)'],
    ['for (all sizes'],
  ])('that say something stay: %s', (text) => {
    expect(without(text)).toBe(
      lex(text)
        .map(({ text: word }) => word)
        .join(' '),
    );
  });
});
