import { describe, expect, it } from 'vitest';
import { printRow } from '../../../../src/knit/row/print.ts';
import { parseRow } from '../../../../src/knit/row/read/parse.ts';

/** What a row is read as, in our own printed words; a refusal as its codes. */
const read = (text: string): string => {
  const row = parseRow(text);
  return row.ok ? printRow(row.value) : `refused: ${row.faults.map(({ code }) => code).join()}`;
};

/** Wordings as patterns use them: common practice, no published source. */
describe('what stands between the stitches of a row', () => {
  it.each([
    // a yarn that is joined, by itself
    ['join yarn, k2', 'join yarn, k2'],
    ['k2, join yarn', 'k2, join yarn'],
    ['k2, rejoin yarn, k3', 'k2, join yarn, k3'],
    ['[join yarn] k2', 'join yarn, k2'],
    ['bo 3, join yarn, k3', 'bind off 3 sts, join yarn, k3'],
    // and one of which more is said
    ['join yarn knit', 'knit'],
    ['k2, join yarn k3', 'k2, k3'],
    ['k2, join the ball of yarn, k3', 'k2, k3'],
    ['k2, join new wool, k3', 'k2, k3'],
    ['k2, join another ball, k3', 'k2, k3'],
    ['k2, join B, k3', 'refused: stitch or repeat expected'],
    // where the yarn is before a slipped stitch
    ['wyif sl 1, k2', 'sl wyif, k2'],
    ['wyif, sl 1, k2', 'sl wyif, k2'],
    ['wyif, sl 3 sts pwise', '[sl wyif] 3 times'],
    ['with yarn in front, sl 1, k1', 'sl wyif, k1'],
    ['wyib, sl 1, k2', 'sl1, k2'],
    ['wyif, k2', 'k2'],
    // an end that was not the end
    ['*k1, p1; rep from * to end, ending k1', '*k1, p1; repeat from * to last st, k1'],
    ['k3, *k2, p2; rep from * to end, end k2', 'k3, *k2, p2; repeat from * to last 2 sts, k2'],
    ['k across, ending p1', 'knit to last st, p1'],
    ['k5, knit to last 3 sts, ending p3', 'k5, knit to last 3 sts, p3'],
    // a last repeat that stops before its last stitches, where these can be counted
    ['*k3, p2; rep from * to end, ending last rep p1 instead of p2', '*k3, p2; repeat from * to end, k3, p1'],
  ])('%s is %s', (text, row) => {
    expect(read(text)).toBe(row);
  });
});
