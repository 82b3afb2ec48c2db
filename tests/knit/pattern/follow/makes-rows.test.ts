import { expect, it } from 'vitest';
import { makesRows } from '../../../../src/knit/pattern/follow/makes-rows.ts';
import { saidIn } from '../say/said.ts';

/** A sentence of each kind; what makes rows is spelled out, since a stretch of a text without any is no piece. */
const rows = [
  'Row 1: K 4',
  'K 2 rows',
  'Work even for 6 rows',
  'Dec 1 st at each end of next row',
  'Dec 4 sts evenly across row',
  'Bind off 4 sts at beg of next 2 rows',
  'Bind off',
  'Rep rows 1 to 4 twice',
  'Rep dec row 5 times',
  'Work as for back to armhole',
  'Complete other side to match',
];
const none = [
  'BACK:',
  'Cast on 20 sts',
  'Change to 4 mm needles',
  'Place 10 sts on holder',
  'Rejoin yarn to rem sts',
  'Turn',
  'Place marker',
  'Gauge: 20 sts = 10 cm',
  'Basket pattern (multiple of 8)',
  'These 2 rows form the pattern',
  'Work on these 10 sts',
];

it.each(rows)('%s: makes rows', (text) => {
  expect(
    saidIn(text).some(makesRows),
    saidIn(text)
      .map(({ is }) => is)
      .join(),
  ).toBe(true);
});

it.each(none)('%s: makes none', (text) => {
  expect(saidIn(text)).not.toEqual([]);
  expect(
    saidIn(text).some(makesRows),
    saidIn(text)
      .map(({ is }) => is)
      .join(),
  ).toBe(false);
});
