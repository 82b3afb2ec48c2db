import { describe, expect, it } from 'vitest';
import { rowsOf } from '../follow/rows-of.ts';
import { reading } from './said.ts';

describe('what is kept at the edges, in more words', () => {
  const garter = (edge: string, n: number) =>
    `borders [{edge ${edge}, stitches ${n}, fabric {named, name garter}}]`;
  it.each([
    ['Work in st st except for 6 sts at front edge which are worked in garter st.', garter('neck', 6)],
    [
      'Work in st st, excepting first and last 4 sts in garter st, until piece measures 12 cm.',
      garter('both', 4),
    ],
    ['Work in st st with 6 garter sts at each side for 8 rows.', garter('both', 6)],
    ['Cont in st st with 6 st garter borders until piece measures 12 cm.', garter('both', 6)],
    ['Work 8 rows in st st, keeping the 6 sts that are at front edge in garter st.', '✗'],
    ['Work in st st except for 6 sts at front edge.', '✗'],
    ['Work in st st with 6 st garter border for 8 rows.', '✗'],
  ])('%s', (words, read) => {
    expect(reading(words)).toContain(read);
  });
});

describe('two edges in one sentence', () => {
  const front = ['LEFT FRONT', 'Cast on 40 sts.', 'Work 2 rows in st st.'];
  const counts = (words: string) => rowsOf(...front, words).map((row) => Number(row.split(' ').at(-1)));
  it('shapes the one beside the other behind what is bound off at the one', () => {
    // 40 - 5; then 3 at the armhole in right side rows, and at the neck in every 4th row 2
    expect(
      counts(
        'Bind off 5 sts at armhole edge, then dec 1 st at same edge every RS row 3 times and at neck edge every 4th row twice.',
      ).slice(2),
    ).toEqual([35, 35, 34, 34, 32, 32, 31, 31, 30]);
  });
  it('binds off groups at the one beside the shaping of the other', () => {
    const all = counts(
      'Bind off at neck edge 3 sts once and 2 sts once, and at armhole edge dec 1 st every other row 4 times.',
    );
    // no more rows than the longer of the two has
    expect(all.at(-1)).toBe(40 - 5 - 4);
    expect(all.length).toBeLessThanOrEqual(2 + 8);
  });
  it('but not behind "then"', () => {
    const all = counts(
      'Dec 1 st at neck edge every other row 3 times, then dec 1 st at armhole edge every other row 3 times.',
    );
    expect(all.length).toBeGreaterThan(2 + 9);
  });
});
