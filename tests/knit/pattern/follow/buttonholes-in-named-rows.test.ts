import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectCounts } from './by-counts.ts';

const FRONT = 'Left front\nCast on 30 sts.\nKnit 4 rows.';

/** Buttonholes that are told within a row with a name; common practice, no published source. Counts reckoned by hand. */
describe('a buttonhole in a named row', () => {
  it.each(
    table(`
      {Buttonhole row 1|First buttonhole row|Buttonhole row 1 (RS)}: k3, cast off 2 sts, k to end. → 1 rows: 1 within 28
      {Form buttonhole thus|Make buttonhole as follows|Form a buttonhole as follows}: k3, cast off 2 sts, k to end. → 1 rows: 1 within 28
      Next row, form buttonhole: k3, cast off 2 sts, k to end. → 1 rows: 1 within 28
    `),
  )('is that row: $line', expectCounts(FRONT));

  it.each(
    table(`
      Next row: Cast on 2 sts over {the cast-off sts|the sts cast off|cast-off sts} {of previous row|of the previous row|of last row|in previous row|on the last row}. → 1 rows: 1 within 30
      On {return|the return|following|next} row cast on 2 sts over {those cast off|cast-off sts|the cast-off sts}. → 1 rows: 1 within 30
      Buttonhole row 2: k to cast-off sts, cast on 2, k to end. → 1 rows: 1 within 30
      {2nd|Second} buttonhole row: cast on 2 sts over those cast off. → 1 rows: 1 within 30
    `),
  )(
    'is closed where it was opened: $line',
    expectCounts(`${FRONT}\nButtonhole row: k3, cast off 2 sts, k to end.`),
  );
});
