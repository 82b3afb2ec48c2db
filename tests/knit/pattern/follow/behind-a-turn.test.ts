import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectCounts } from './by-counts.ts';

/* Each row in which a count changes, reckoned on paper: ten stitches of a shoulder whose neck edge lies at their left, and four rows of which the first takes one of twelve. Common practice, no published source. */

describe('what is worked behind a turn', () => {
  it.each(
    table(`
      Dec 1 st at neck edge on next 3 rows. → 3 rows: 1 beg 9, 2 end 8, 3 beg 7
      Dec 1 st at armhole edge on next 3 rows. → 3 rows: 1 end 9, 2 beg 8, 3 end 7
      Dec 1 st at each end of next row. → 1 rows: 1 both 8
      Bind off 4 sts at neck edge once. → 1 rows: 1 beg 6
      Bind off 4 sts at armhole edge once. → 2 rows: 2 beg 6
      Bind off 4 sts at beg of next 2 rows. → 2 rows: 1 beg 6, 2 beg 2
      Bind off 5 sts at armhole edge twice. → 4 rows: 2 beg 5, 4 beg 0
      Bind off 4 sts at each end of next row. → 2 rows: 2 beg 6
      Work 3 rows, then bind off. → 4 rows: 4 beg 0
      Dec 1 st at neck edge every row 3 times, at the same time, bind off 2 sts at armhole edge once. → 3 rows: 1 beg 9, 2 both 6, 3 beg 5
      Bind off rem sts. → 1 rows: 1 beg 0
      Leave rem 20 sts on a holder. → 0 rows
      Leave rem 19 sts on a holder. → 0 rows ✗ count contradicts
      Place these 10 sts on a holder. → 0 rows
      Rejoin yarn to rem 20 sts. → 0 rows
      Knit to end. → 1 rows
      Cast on 4 sts at beg of next row. → 1 rows: 1 beg 14
    `),
  )('$line', expectCounts('BACK\nCast on 30 sts.\nKnit 2 rows.\nNext row: k10, turn.'));
});

describe('what is worked behind four rows', () => {
  it.each(
    table(`
      Rep these 4 rows twice. → 8 rows: 1 beg 10, 5 beg 9
      Rep rows 1 and 2 twice. → 4 rows: 1 beg 10, 3 beg 9
      Rep rows 3 and 4 twice. → 4 rows
      Rep row 1 once. → 1 rows: 1 beg 10
      Rep row 2 once. → 1 rows
      Rep last row twice. → 2 rows
      Rep last 2 rows 3 times. → 6 rows
      Rep rows 1-4 until 9 sts rem. → 5 rows: 1 beg 10, 5 beg 9
      Rep rows 1-4 until 9 sts rem, ending with row 1. → 5 rows: 1 beg 10, 5 beg 9
      Rep rows 1-4 until 9 sts rem, ending with row 2. → 6 rows: 1 beg 10, 5 beg 9
      Rep rows 1-4 until 9 sts rem, ending with row 3. → 5 rows: 1 beg 10, 5 beg 9 ✗ place not known
      Rep these 4 rows once, ending with row 4. → 4 rows: 1 beg 10
      Rep these 4 rows once, ending with row 3. → 4 rows: 1 beg 10 ✗ place not known
      Rep these 4 rows once, ending with row 9. → 4 rows: 1 beg 10
      Rep rows 1 to 4 twice, then row 1 once. → 9 rows: 1 beg 10, 5 beg 9, 9 beg 8
      Rep rows 1 to 3 once. → 3 rows: 1 beg 10
      Rep these 5 rows. → 0 rows ✗ no rows to repeat
      Rep rows 1-6. → 0 rows ✗ row not known
      Rep rows 2-4 once. → 3 rows
      Rep these 4 rows 0 times. → 0 rows
      Work in pattern for 6 rows. → 6 rows
      Cont as established for 2 rows. → 2 rows
      Row 5: as row 1. → 1 rows: 1 beg 10
      Row 5: as row 9. → 1 rows (own 1) ✗ row not known
      Rows 5-8: rep rows 1-4. → 4 rows: 1 beg 10
      Rows 5-8: as rows 1 to 4. → 4 rows: 1 beg 10
      Rows 5 and 6: as rows 1 and 2. → 2 rows: 1 beg 10
      Row 6: purl. → 1 rows
      Next row: as row 1. → 1 rows (own 1) ✗ stitches left over
      Work 2 rows, dec 1 st at each end of last row. → 2 rows: 2 both 9
      Work 2 rows. (11 sts) → 2 rows
      Work 2 rows. (12 sts) → 2 rows ✗ count contradicts
      Bind off 5 sts, knit to end. → 1 rows: 1 beg 6
      Bind off 5 sts, knit to end. (6 sts) → 1 rows: 1 beg 6
      K5, bind off 2 sts, k to end. → 1 rows: 1 within 9
      K5, bind off 2 sts, k to end. Next row: p4, cast on 2 sts, p5. → 2 rows: 1 within 9, 2 within 11
      K20. → 1 rows (own 1) ✗ not enough stitches
      K5. → 1 rows (own 1) ✗ stitches left over
      K5, turn. → 1 rows
      K2, (k2tog, k1) twice, k3. → 1 rows: 1 within 9
      K2, (k2tog, k1) 4 times, k3. → 1 rows (own 1) ✗ not enough stitches
      *K2, p2; rep from * to end. → 1 rows (own 1) ✗ not enough stitches
      *K2, p2; rep from * to last 3 sts, k3. → 1 rows
      *K2tog, yo; rep from * to last st, k1. → 1 rows
      K1, m1, k to last st, m1, k1. → 1 rows: 1 within 13
      K to last 2 sts, k2tog. → 1 rows: 1 end 10
      K to last 20 sts, k2tog. → 1 rows (own 1) ✗ not enough stitches
      K11, k1. → 1 rows (own 1) ✗ not enough stitches
      Sl 1, k1, psso, k to end. → 1 rows: 1 within 10
      K2tog across. → 1 rows (own 1) ✗ repeat does not come out
      K2tog to last st, k1. → 1 rows: 1 within 6
      Inc in next st, k to end. → 1 rows: 1 beg 12
      Inc in every st. → 1 rows: 1 beg 22
      Kfb, k to last 2 sts, kfb, k1. → 1 rows: 1 within 13
      K3, place marker, k to end. → 1 rows
      K all sts. → 1 rows
      Purl across. → 1 rows
      Knit, dec 1 st at each end. → 1 rows: 1 both 9
      P2tog, p to end. → 1 rows: 1 within 10
    `),
  )(
    '$line',
    expectCounts(
      'Cast on 12 sts.\nRow 1 (RS): k2tog, knit to end.\nRow 2: purl.\nRow 3: knit.\nRow 4: purl.',
    ),
  );
});
