import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectCounts } from './by-counts.ts';

/** What is bound off at one edge while the other is shaped; common practice, no published source. Rows reckoned by hand: the armhole is where right side rows begin. */
describe('at the same time, on a left front of 30 sts,', () => {
  it.each(
    table(`
      Dec 1 st at neck edge every alt row 6 times, at the same time cast off 5 sts at armhole edge and dec 1 st at armhole edge every alt row 3 times. → 11 rows: 1 both 24, 3 both 22, 5 both 20, 7 both 18, 9 end 17, 11 end 16
      Dec 1 st at armhole edge every alt row 8 times, at the same time, when there are 26 sts on needle, bind off 3 sts at neck edge. → 15 rows: 1 beg 29, 3 beg 28, 5 beg 27, 7 beg 26, 8 beg 23, 9 beg 22, 11 beg 21, 13 beg 20, 15 beg 19
      Dec 1 st at neck edge every alt row 6 times. At the same time bind off 5 sts at armhole edge on next 2 RS rows. → 11 rows: 1 both 24, 3 both 18, 5 end 17, 7 end 16, 9 end 15, 11 end 14
      Work 6 rows in st st, at the same time bind off 2 sts at beg of next RS row. → 6 rows: 1 beg 28
      Dec 1 st at neck edge every 4th row 4 times, at the same time, when 12 rows have been worked in all, bind off 4 sts at armhole edge, then dec 1 st at same edge every other row 2 times. → 15 rows: 3 end 29, 7 end 28, 9 beg 24, 11 both 22, 13 beg 21, 15 end 20
      Cast on 6 sts at beg of next 2 rows and at the same time change to k1, p1 rib. → 2 rows: 1 beg 36, 2 beg 42
      Dec 1 st at armhole edge every alt row 4 times, at the same time, when there are 28 sts, dec 1 st at neck edge on next 3 rows. → 7 rows: 1 beg 29, 3 beg 28, 4 beg 27, 5 both 25, 6 beg 24, 7 beg 23
    `),
  )('is worked beside: $line', expectCounts('Left front\nCast on 30 sts.\nKnit 4 rows.'));

  it.each(
    table(`
      Dec 1 st at neck edge every 4th row 3 times, at the same time work 10 rows in moss st. → 21 rows: 3 end 29, 7 end 28, 11 end 27 ✗ place not known
    `),
  )('is told where nobody works it beside: $line', expectCounts('Left front\nCast on 30 sts.\nKnit 4 rows.'));

  it.each(
    table(`
      Bind off. → 0 rows ✗ place not known
    `),
  )(
    'is told where its count never comes: $line',
    expectCounts(
      'Left front\nCast on 30 sts.\nDec 1 st at armhole edge every alt row 3 times, at the same time, when there are 20 sts, bind off 3 sts at neck edge.',
    ),
  );
});
