import { describe, expect, it } from 'vitest';
import { printRow } from '../../../../src/knit/row/print.ts';
import { cursorOver } from '../../../../src/knit/row/read/cursor.ts';
import { lex } from '../../../../src/knit/row/read/lex.ts';
import { readRow } from '../../../../src/knit/row/read/row.ts';
import { settle } from '../../../../src/knit/row/read/settle.ts';
import { told } from '../../../told.ts';

/** A row on a needle with so many stitches, and so many before each marker: its steps, and where the markers are then. */
function onNeedle(text: string, stitches: number, ...markers: readonly number[]): string {
  const items = readRow(cursorOver(lex(text)));
  if (!items.ok) return told(items.faults);
  const made = settle(items.value, { stitches, markers });
  if (!made.ok) return told(made.faults);
  const { steps, markers: after, turned } = made.value;
  return [
    printRow(steps),
    ...(after.length > 0 ? [`markers ${after.join(' ')}`] : []),
    ...(turned ? ['turned'] : []),
  ].join(' | ');
}

/* Reckoned by hand; stitches before a marker are counted in the order in which the row meets them. */
describe('a row on the needle', () => {
  it.each<[string, string, number, ...number[]]>([
    ['knit to last 12 sts, k2tog, knit to end | markers 8', 'k to marker, sm, k2tog, k to end', 20, 8],
    [
      'knit to last 14 sts, k2tog, knit to end | markers 7',
      'k to 2 sts before marker, k2tog, sm, k to end',
      20,
      8,
    ],
    ['k3, purl to end | markers 3', 'k3, pm, p to end', 10],
    ['k2, m1, knit to end | markers 3', 'k2, m1, pm, k to end', 10],
    ['k2tog, knit to end | markers 1', 'k2tog, pm, k to end', 10],
    ['knit to last 6 sts, purl to end', 'k to marker, rm, p to end', 10, 4],
    [
      'knit to last 8 sts, knit to last 4 sts, purl to end | markers 4 8',
      '(k to marker, sm) twice, p to end',
      12,
      4,
      8,
    ],
    [
      'knit to last 6 sts, m1, purl to last 2 sts, knit to end | markers 4 9',
      'k to marker, sm, m1, p to marker, sm, k to end',
      10,
      4,
      8,
    ],
    ['knit | markers 4 8', 'k', 12, 4, 8],
    ['[k2tog] to last 4 sts, k4 | markers 4', 'k2tog to last 4 sts, pm, k4', 12],
    [
      '*k1, yo; repeat from * to last 4 sts, k4 | markers 16',
      '*k1, yo; rep from * to last 4 sts, pm, k4',
      12,
    ],
    ['[kfb] to last 8 sts, k8 | markers 8', 'kfb to marker, sm, k8', 12, 4],
    ['[k2tog] 3 times, k6 | markers 3', '(k2tog) 3 times, pm, k6', 12],
    ['[k1, m1, k1] 2 times, k8 | markers 6', '(k1, m1, k1) twice, pm, k8', 12],
    ['[k2tog] 4 times, k12 | markers 4', '(k2tog) 4 times, k12', 20, 8],
    ['k2, k10 | markers 2 9', 'k2, pm, k10', 12, 9],
    ['k2, k2tog, k8 | markers 2 8', 'k2, sm, k2tog, k8', 12, 2, 9],
    ['k5 | turned', 'k5, turn', 12],
    ['work after a turn {} {}', 'k5, turn, p3', 12],
    ['k3, m1, k6, m1, k3', 'k across, inc 2 sts evenly', 12],
    ['p3, m1p, p6, m1p, p3', 'purl, inc 2 sts evenly', 12],
    ['k3, k2tog, k6, k2tog, k3', 'knit, dec 2 sts evenly', 16],
    ['p3, p2tog, p6, p2tog, p3', 'purl, dec 2 evenly', 16],
    ['k2, k4, m1, k4', 'k2, inc 1 evenly', 10],
    ['k2, k2, m1, k3, m1, k1, purl to end', 'k2, inc 2 evenly over next 6 sts, p to end', 12],
    ['[k1, p1] 3 times, knit to end', '(k1, p1) over next 6 sts, k to end', 12],
    ['*k1, p1; repeat from * to last 2 sts, k2', '*k1, p1; rep from * to last 2 sts, k2', 12],
    // a round that meets a marker lies elsewhere on the needle each time, however deep the marker is said
    ['k2, k2, purl to end | markers 2 4', '(k2, sm) twice, p to end', 10, 2, 4],
    ['k2, k2, k2, k2, purl to end | markers 2 4 6 8', '((k2, sm) twice) twice, p to end', 10, 2, 4, 6, 8],
    ['k1, [k1, p1] 2 times | markers 1', 'k1, sm, (k1, p1) over next 4 sts', 5, 1],
    ['[k1, k1] 51 times', '(k1, sm, k1) 51 times', 102],
    ['k1, k1, k1, k1 | markers 1 3', '(k1, sm, k1) 2 times', 4, 1, 3],
    [
      'k3, k2tog, knit to last 2 sts, k2tog | markers 9',
      'k3, k2tog, k to 2 sts before marker, k2tog, sm',
      11,
      11,
    ],
    ['knit to last 10 sts, m1, knit to end | markers 2 7 11', 'k to marker, sm, m1, k to end', 12, 2, 6, 10],
    ['k2, k2tog, knit to end | markers 2 3 7', 'k2, pm, k2tog, pm, k to end', 12, 8],
    ['*k1, yo; repeat from * to last 4 sts, k4 | markers 8', '*k1, yo; rep from * to marker, k4', 8, 4],
    ['k4, pick up and knit 2 sts, knit to end | markers 6', 'k4, pick up and k 2, pm, k to end', 8],
  ])('%s: %s over %i', (is, text, stitches, ...markers) => {
    expect(onNeedle(text, stitches, ...markers)).toBe(is);
  });

  it.each<[string, string, number]>([
    ['no marker {} {}', 'k to marker, k2', 10],
    [
      'repeat does not come out {"byStitches":2,"spanStitches":7} {}',
      '(k1, p1) over next 7 sts, k to end',
      12,
    ],
    ['endless repeat {} {}', '(yo) over next 6 sts, k to end', 12],
  ])('cannot be: %s', (fault, text, stitches) => {
    expect(onNeedle(text, stitches)).toBe(fault);
  });
});
