import { describe, expect, it } from 'vitest';
import { readPattern } from '../../../../src/knit/pattern/read-pattern.ts';
import { printRow } from '../../../../src/knit/row/print.ts';
import { table } from '../table.ts';
import { expectCounts } from './by-counts.ts';

/** Usages of the trade in one sentence of a shaping, whichever of its parts stands first; common practice, no published source. Counts reckoned by hand. */
describe('a shaping in prose, on a back of 60 sts,', () => {
  it.each(
    table(`
      Dec 1 st at each end, inside a border of 3 sts, on next and every foll 4th row until 52 sts rem. → 13 rows: 1 both 58, 5 both 56, 9 both 54, 13 both 52
      Dec 1 st at each end {inside a border of 3 sts|inside the 3 border sts|within the border|3 sts from the edge} every alt row 3 times. → 5 rows: 1 both 58, 3 both 56, 5 both 54
      Dec 1 st {inside a border of 3 sts|3 sts in from the border} at each end of every alt row 3 times. → 5 rows: 1 both 58, 3 both 56, 5 both 54
      {Continue|Cont} to dec at each end of every alt row until 54 sts remain. → 5 rows: 1 both 58, 3 both 56, 5 both 54
      Increase by {knitting twice into|knitting into front and back of} first and last st of every 4th row until there are 64 sts. → 7 rows: 3 both 62, 7 both 64
      Inc 1 st at beginning and end of {the row|needle|row} every 4th row 2 times. → 7 rows: 3 both 62, 7 both 64
      Dec by knitting 2 tog at each end of every alt row 3 times. → 5 rows: 1 both 58, 3 both 56, 5 both 54
      Every RS row: dec 1 st each end, 3 times. → 5 rows: 1 both 58, 3 both 56, 5 both 54
      Cast off at beg of each of the next 6 rows{,|:|} 7 sts 4 times and 6 sts twice. → 6 rows: 1 beg 53, 2 beg 46, 3 beg 39, 4 beg 32, 5 beg 26, 6 beg 20
      Cast off at beg of next 8 rows 3 sts twice and 2 sts twice. → 8 rows: 1 beg 57, 2 beg 54, 3 beg 51, 4 beg 48, 5 beg 46, 6 beg 44, 7 beg 42, 8 beg 40
      To shape {the armholes|armhole|the armhole edges} cast off 5 sts at the beg of the next 2 rows. → 2 rows: 1 beg 55, 2 beg 50
      Dec 1 st at each end of every alt row until 6 sts have been {decreased|decd}. → 5 rows: 1 both 58, 3 both 56, 5 both 54
      Inc 1 st at each end of next and every foll 4th row until 8 sts have been {increased|added}. → 13 rows: 1 both 62, 5 both 64, 9 both 66, 13 both 68
      Inc 1 st at end of every RS row until 3 {sts have been increased|incs have been worked|increases are made}. → 5 rows: 1 end 61, 3 end 62, 5 end 63
      Dec 1 st {each end|at each end} every alt row {(3 times)|(3 times in all)}. → 5 rows: 1 both 58, 3 both 56, 5 both 54
      K2tog each end every alt row (3 times). → 5 rows: 1 both 58, 3 both 56, 5 both 54
      Bind off 2 sts each end (2 times). → 4 rows: 1 beg 58, 2 beg 56, 3 beg 54, 4 beg 52
      Bind off 3 sts at beg of next 2 rows {at underarm|at underarms|for the armholes}, then dec 1 st at each end of next 2 rows. → 4 rows: 1 beg 57, 2 beg 54, 3 both 52, 4 both 50
      Inc 1 st at each end of next row. Work 3 rows. {Continue to increase|Increase} in this {manner|way} on every 4th row until 66 sts. → 9 rows: 1 both 62, 5 both 64, 9 both 66
      {At each end dec 1 st 3 times|Dec 1 st at each end 3 times|Dec 1 st 3 times at each end} on every 2nd row. → 5 rows: 1 both 58, 3 both 56, 5 both 54
      Inc 1 st 2 times at left end {on|of} every 4th row. → 7 rows: 3 end 61, 7 end 62
      Inc 1 st at each end of 5th row and 9th row. → 9 rows: 5 both 62, 9 both 64
      Work 4 rows, dec 1 st at each end of 1st and 3rd rows. → 4 rows: 1 both 58, 3 both 56
      Work 4 rows, dec 1 st at each end of next row. → 5 rows: 5 both 58
      Work until there are 64 sts, inc 1 st each end every 4th row. → 7 rows: 3 both 62, 7 both 64
      Work in st st until there are 64 sts on the needle, increasing 1 st at each end of every 4th row. → 7 rows: 3 both 62, 7 both 64
      Inc at each end of row every 4th row 2 times. → 7 rows: 3 both 62, 7 both 64
      Dec 1 st at each end of every alt row until {54 remain|there are 54|54 are left}. → 5 rows: 1 both 58, 3 both 56, 5 both 54
      Inc into first and last st {on|of} next row. → 1 rows: 1 both 62
      Proceed to shape top by casting off 3 sts at beg of next 2 rows. → 2 rows: 1 beg 57, 2 beg 54
      Dec 1 st, each end, every alt row 3 times. → 5 rows: 1 both 58, 3 both 56, 5 both 54
      Bind off 3 sts {at each|each} armhole edge. → 2 rows: 1 beg 57, 2 beg 54
    `),
  )('is worked as it is said: $line', expectCounts('Back\nCast on 60 sts.\nKnit 4 rows.'));

  it.each(
    table(`
      Cast off at beg of next 6 rows 7 sts twice and 6 sts twice. → 6 rows (own 6) ✗ stitch or repeat expected
      Repeat these 10 rows once more. → 0 rows ✗ no rows to repeat
      Inc 1 st at each end of every 4th row until 7 sts have been increased. → 1 rows (own 1) ✗ stitch or repeat expected
      Dec 1 st at each end of every 4th row until 4 decs have been worked. → 1 rows (own 1) ✗ stitch or repeat expected
    `),
  )('is not read where it does not say enough: $line', expectCounts('Back\nCast on 60 sts.\nKnit 4 rows.'));
});

describe('a shaping in prose, on a left front of 30 sts,', () => {
  it.each(
    table(`
      Decrease for neck {1 st|} every other row 3 times. → 5 rows: 1 end 29, 3 end 28, 5 end 27
      Decrease 1 st for the neck every other row 3 times. → 5 rows: 1 end 29, 3 end 28, 5 end 27
      For {neck|the neck,} dec 1 st every other row 3 times. → 5 rows: 1 end 29, 3 end 28, 5 end 27
      Shape neck by {dec|decreasing} 1 st every other row 3 times. → 5 rows: 1 end 29, 3 end 28, 5 end 27
      Dec at neck edge 1 st every other row 3 times. → 5 rows: 1 end 29, 3 end 28, 5 end 27
      Dec 1 st at {neck edge and armhole edge|both neck and armhole edges|armhole and neck edges|front edge and at side edge} on next 3 rows. → 3 rows: 1 both 28, 2 both 26, 3 both 24
      Dec 1 st at neck edge and 1 st at armhole edge {on next 3 rows|every row 3 times}. → 3 rows: 1 both 28, 2 both 26, 3 both 24
      Bind off 7 sts at beg of next row at {armhole edge|the armhole edge|underarm}, then 2 sts at same edge on foll alt row. → 3 rows: 1 beg 23, 3 beg 21
      Bind off 7 sts at beg of next row at {neck edge|the front edge}. → 2 rows: 2 beg 23
      Dec 1 st at armhole edge {on next 3 rows|of next 3 rows} and {at neck edge|1 st at neck edge|dec 1 st at neck edge} on every 4th row 4 times. → 15 rows: 1 beg 29, 2 end 28, 3 both 26, 7 end 25, 11 end 24, 15 end 23
      Dec 1 st at neck edge every 4th row 4 times and 1 st at armhole edge on next 3 rows. → 15 rows: 1 beg 29, 2 end 28, 3 both 26, 7 end 25, 11 end 24, 15 end 23
      Dec 1 st at armhole edge on next 3 rows and then 1 st at neck edge on next 2 rows. → 5 rows: 1 beg 29, 2 end 28, 3 beg 27, 4 beg 26, 5 end 25
      Dec 1 st as before at raglan {armhole edge|edge} of next row and cast off 3 sts at beg of foll row. → 2 rows: 1 beg 29, 2 beg 26
      Now place {chart|panel|patt} as {folls|follows}: → 0 rows
      Bind off 7 sts at beg of armhole edge 3 times. → 5 rows: 1 beg 23, 3 beg 16, 5 beg 9
    `),
  )('is worked as it is said: $line', expectCounts('Left front\nCast on 30 sts.\nKnit 4 rows.'));

  it.each(
    table(`
      Dec 1 st at neck edge and 2 sts at armhole edge on next 3 rows. → 3 rows (own 3) ✗ stitch or repeat expected
    `),
  )(
    'is not read where it does not say enough: $line',
    expectCounts('Left front\nCast on 30 sts.\nKnit 4 rows.'),
  );
});

describe('a shaping within a stretch, on a back of 60 sts in 40 rows to 10 cm,', () => {
  it.each(
    table(`
      Work in st st {for 5 cm|until work measures 6 cm}, increasing 1 st each end every 4th row. → 20 rows: 3 both 62, 7 both 64, 11 both 66, 15 both 68, 19 both 70
      Work in st st {for 5 cm|until work measures 6 cm}, increasing 1 st each end every 4th row 3 times. → 20 rows: 3 both 62, 7 both 64, 11 both 66
      Cont in st st, increasing 1 st at each end of {the first row|first row|next row}, until work measures 6 cm. → 20 rows: 1 both 62
      Work even for 5 cm, then {inc|increase} 1 st each end every 4th row 2 times. → 27 rows: 23 both 62, 27 both 64
      Work even until work measures 6 cm, dec 1 st each end of next 2 rows. → 22 rows: 21 both 58, 22 both 56
    `),
  )(
    'is worked as it is said: $line',
    expectCounts('Gauge: 20 sts and 40 rows = 10 cm\nBack\nCast on 60 sts.\nWork 4 rows in st st.'),
  );
});

describe('a border beside a fabric that is said twice, on a back of 60 sts,', () => {
  it('is kept', () => {
    const text =
      'Back\nCast on 60 sts.\nKnit 4 rows.\nKeeping 6 sts at each edge in garter st, work remaining 48 sts in st st (k 1 row, p 1 row) for 4 rows.';
    const rows = readPattern(text)
      .lines.at(-1)
      ?.rows.map(({ steps }) => printRow(steps));
    expect(rows).toEqual(['knit', 'k6, purl to last 6 sts, k6', 'knit', 'k6, purl to last 6 sts, k6']);
  });
});
