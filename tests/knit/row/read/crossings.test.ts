import { describe, expect, it } from 'vitest';
import { printRow } from '../../../../src/knit/row/print.ts';
import { parseRow } from '../../../../src/knit/row/read/parse.ts';

/* Cables spelled out, names as in the Craft Yarn Council's list of abbreviations; which counts a name has is common practice. */
const read = (text: string): string => {
  const row = parseRow(text);
  return row.ok ? printRow(row.value) : 'refused';
};

describe('a cable spelled out', () => {
  it.each([
    ['sl next 2 sts to cn and hold in front, k2, k2 from cn', 'c4f'],
    [
      'place next 3 sts on a spare double pointed or cable needle and hold at back of work, k3, knit the 3 sts from spare needle',
      'c6b',
    ],
    [
      'sl 2 sts on a spare double pointed needle and hold in front, knit next 2 sts, knit the 2 sts from spare needle',
      'c4f',
    ],
    ['sl next 2 sts to cn and hold at back, k2, k2 from cn', 'c4b'],
    ['sl next 2 sts to cn and hold in front, k next 2 sts, k2 from cn', 'c4f'],
    ['sl next 2 sts to cn and hold in front, k the next 2 sts, k2 from cn', 'c4f'],
    ['sl 3 sts to cn and hold at back, k3, then k3 from cn', 'c6b'],
    ['sl 3 sts to cn and hold at back; k3; k3 from cn', 'c6b'],
    ['sl next 2 sts to cn and hold in front, p1, k2 from cn', '2/1 lpc'],
    ['sl next st to cn and hold at back, k2, p1 from cn', '2/1 rpc'],
    ['sl 1 st to cn and hold at back, k2, k1 from cn', '2/1 rc'],
    ['sl 2 sts to cn and hold in front, k1, k2 from cn', '2/1 lc'],
    ['sl next st to cn and hold at back, k next 2 sts, p the next st from cn', '2/1 rpc'],
    ['sl next st to cn and hold in front, k2, k st from cn', '1/2 lc'],
    // as many as were slipped come back
    ['sl 2 sts to cn and hold in front, k2, k3 from cn', 'refused'],
    ['sl 2 sts to cn and hold in front, k2', 'refused'],
  ])('%s', (text, row) => {
    expect(read(text)).toBe(row);
  });
});

describe('stitches picked up', () => {
  it.each([
    ['pick up and knit 12 sts along neck, k1', 'pick up and knit 12 sts, k1'],
    ['pick up and purl 12 sts along neck edge, k1', 'pick up and knit 12 sts, k1'],
    ['pick up, k 12 sts, p1', 'pick up and knit 12 sts, p1'],
    ['pick-up and knit 12 sts, k1', 'pick up and knit 12 sts, k1'],
    ['pick up and k 6 sts along neck and k5', 'pick up and knit 6 sts, k5'],
    ['k5, pick up and knit 6 sts down left side', 'k5, pick up and knit 6 sts'],
  ])('%s', (text, row) => {
    expect(read(text)).toBe(row);
  });
});

describe('a bare stitch', () => {
  it.each([
    ['k', 'knit'],
    ['p.', 'purl'],
    ['k1, p1 to end', '*k1, p1; repeat from * to end'],
    ['k2, k2tog to end', 'k2, [k2tog] to end'],
    ['k the k sts and p the p sts', 'work in pattern'],
    ['p the p sts and k the k sts', 'work in pattern'],
    ['k2 tbl', '[k tbl] 2 times'],
  ])('%s', (text, row) => {
    expect(read(text)).toBe(row);
  });
});
