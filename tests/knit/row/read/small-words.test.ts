import { describe, expect, it } from 'vitest';
import { printRow } from '../../../../src/knit/row/print.ts';
import { parseRow } from '../../../../src/knit/row/read/parse.ts';

/** What a row is read as, in our own printed words; a refusal as its codes. */
const read = (text: string): string => {
  const row = parseRow(text);
  return row.ok ? printRow(row.value) : `refused: ${row.faults.map(({ code }) => code).join()}`;
};

/* Small words of a row, each kind in every way that it is written; common practice, no published source. */
describe('several stitches in one', () => {
  it.each(['in', 'into'])('%s the next, in every word for it', (into) => {
    for (const which of [
      'next st',
      'the next st',
      'same st',
      'the same stitch',
      'next stitch',
      'foll st',
      'first st',
      'last st',
      '1 st',
    ])
      expect(read(`(k1, p1) ${into} ${which}, k2`), which).toBe('(k1, p1) in next st, k2');
    expect(read(`(k1, p1) all ${into} next st, k2`)).toBe('(k1, p1) in next st, k2');
    for (const each of [
      'each of next 3 sts',
      'each of the next 3 sts',
      'each of foll 3 sts',
      'each of 3 sts',
    ])
      expect(read(`(k1, p1) ${into} ${each}, k2`), each).toBe('[(k1, p1) in next st] 3 times, k2');
  });

  it('of three and of one', () => {
    expect(read('(k1, yo, k1) in next st, k1')).toBe('(k1, yo, k1) in next st, k1');
    expect(read('k1f&b, k2')).toBe('kfb, k2');
    expect(read('k 1 f and b, p1')).toBe('kfb, p1');
    expect(read('k into back and front of next st, k1')).toBe('kfb, k1');
  });
});

describe('how often a bracket is worked', () => {
  it.each([
    ['[k1, p1] once', 'k1, p1'],
    ['[k1, p1] twice, k1', '[k1, p1] 2 times, k1'],
    ['[k1, p1] rep 3 times', '[k1, p1] 3 times'],
    ['[k1, p1] rep twice more, k1', '[k1, p1] 3 times, k1'],
    ['[k2, p2] all across', '*k2, p2; repeat from * to end'],
    ['[k2, p2] to last 2 sts, k2', '*k2, p2; repeat from * to last 2 sts, k2'],
    ['*k1, p1; rep from * once', '[k1, p1] 2 times'],
    ['*k1, p1; rep from * once more', '[k1, p1] 2 times'],
    ['*k1, p1; rep from * twice', '[k1, p1] 3 times'],
    ['*k1, p1, rep from * 2 times more, k3', '[k1, p1] 3 times, k3'],
    ['rep to end', 'refused: nothing before the repeat'],
  ])('%s', (text, row) => {
    expect(read(text)).toBe(row);
  });
});

describe('one stitch', () => {
  it.each([
    ['k1 b, k2', 'k tbl, k2'],
    ['k1b, k2', 'k1 below, k2'],
    ['p1b, k2', 'p1 below, k2'],
    ['k1 tbl, k2', 'k tbl, k2'],
    ['k1 in back of st, p1', 'k tbl, p1'],
    ['k 2 tog tbl, p1', 'k2tog tbl, p1'],
    ['k 3 sts, p1', 'k3, p1'],
    ['knit 1 stitch, purl 1 stitch', 'k1, p1'],
    ['slip, slip, knit', 'ssk'],
    ['sl, sl, k, p1', 'ssk, p1'],
    ['sl, sl, sl, k', 'sssk'],
    ['sl, sl, p', 'ssp'],
    ['sl, sl, sl, p', 'sssp'],
    ['sl, sl, k1', 'sl1, sl1, k1'],
    ['sl, k1', 'sl1, k1'],
    ['sl, k, p1', 'sl1, k1, p1'],
    ['yfwd, k2tog', 'yo, k2tog'],
    ['sl 1, k2tog, psso, k1', 'sk2p, k1'],
    ['sl 1 purlwise, k1', 'sl1, k1'],
    ['sl1 wyif, p1', 'sl wyif, p1'],
  ])('%s', (text, row) => {
    expect(read(text)).toBe(row);
  });
});

describe('a full stop', () => {
  it.each([
    ['k. 2 tog., p. 1.', 'k2tog, p1'],
    ['k1. p1', 'k1, p1'],
    ['k 2 sts. P 1', 'k2, p1'],
    ['k2, p2. Turn.', 'k2, p2, turn'],
    ['inc. 1 st', 'inc'],
    ['K2tog. 39 sts', 'refused: stitch or repeat expected'],
  ])('shortens a word or ends a sentence: %s', (text, row) => {
    expect(read(text)).toBe(row);
  });
});

describe('going on as before', () => {
  it.each([
    'work in patt',
    'work even',
    'patt across',
    'work as set',
    'work in garter st',
    'work in est patt',
    'work in patt as set',
    'work correct',
  ])('%s', (text) => {
    expect(read(text)).toBe('work in pattern');
  });
});
