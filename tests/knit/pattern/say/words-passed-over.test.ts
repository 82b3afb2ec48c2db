import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. Beside each wording what looks like it and is none. */
describe('words that were passed over, or not understood,', () => {
  it.each(
    table(`
      The{ entire|} jacket is {worked|knitted|made} in garter st{ throughout|} → even: fabric {named, name garter}, wholly
      Stock. st. for entire sweater → even: fabric {named, name stocking}, wholly
      NOTE: Garter st is used throughout → heading: title {words note, pattern note, divides false}, sideOnly false, talk, places [] | @7 even: fabric {named, name garter}, wholly
      The back is worked in garter st → ✗ stitch or repeat expected @13
      This piece is worked in garter st → ✗ stitch or repeat expected @1
      Work 6 rows in garter st for the scarf → ✗ stitch expected @39
      {Slip|Place} half {of |}the sts onto a holder → hold: which half
      Place half of the 20 sts onto a holder → ✗ stitch or repeat expected @1
      place {remaining|rem} {(42) |[42] |42 }sts on a holder → hold: which rest, stitches 42
      place the (RS) sts on a holder → ✗ stitch or repeat expected @1
      Repeat {the |}{1st |}{dec|decrease} row until {5 sts remain|there are 5 sts|you have 5 sts} → repeat named: name dec, beats [{first 1, every 1, toCount 5}]
      Repeat the dec rows until 5 sts remain → ✗ nothing before the repeat @12
      {1st|2nd} decrease row - k2tog, k to end → row: label {rows [], name dec}, items 'k2tog, k to {left 0}'
      Decrease row - this is how it is done → ✗ stitch or repeat expected @16
      Row 2{:|} and all{-| }even rows{,|:} purl → row: label {rows [2], everyOther}, items 'p to {left 'what follows'}'
      Row 2 and all of them: purl → ✗ stitch or repeat expected @5
      Knit 4 rows for the {garter stitch |}border → rows: n 4, items 'k to {left 'what follows'}'
      Knit 4 rows for the garter stitch yoke and cuffs → ✗ stitch expected @49
      Continue until {the cloth is|it is} the {desired|required} {length|size} → even: until {open}
      Continue until the cloth is a desired thing → ✗ stitch or repeat expected @1
      Work until piece measures {about|around} 7 cm {or length you want |}ending with row 4 of pattern → even: until {length, mm 70, from start, endRow 4}
      Work even until piece measures 15 cm from the starting row → even: until {length, mm 150, from start}
      Work in st st {(without any further increasing)|without any further shaping} until piece measures 7 cm → even: fabric {named, name stocking}, until {length, mm 70, from start}
      {Inc|Increase} once in {the |}next st, k2 → row: items 'inc, k ×2'
      {k1bf|k1fb|kfb}, k2 → row: items 'kfb, k ×2'
      K1, drop the {O|over|yo} of the {last|previous} row, k3 → row: items 'k, drop, k ×3'
      K5, drop the oval, k3 → ✗ stitch or repeat expected @14
      Bind off 7 sts{ of sleeve|}, {complete|finish} {the |}row → row: items 'bo ×7, patt to {left 'what follows'}'
      Bind off 7 sts of sleeve seam, complete row → ✗ stitch or repeat expected @26
      K2, {yo, k2tog, across row|yo, k2tog, across all sts} → row: items '(k ×2, yo, k2tog) to {left 'what follows'}'
      {Finish|End} by {casting|binding} off → bind off
      4 rows {worked|completed|have been made} → note: about aside
      4 rows of it worked → ✗ stitch or repeat expected @1
      Beginning at {back|cuff}, work 6 rows in garter st → note: about aside | @20 even: fabric {named, name garter}, until {rows, n 6}
      Begin at back, work 6 rows in garter st → ✗ stitch or repeat expected @1
      Knit {the |}last st at {the |}end of every row → slips: last k
      Knit the last st at the end of the row → ✗ stitch or repeat expected @18
      {Join|Join in|Change to} {colour|color|yarn} B → yarn: name B
      Join colour to the edge → rejoin | ✗ stitch or repeat expected @6
      Fasten off colour A and change to {colour|yarn} B → note: about yarn | @25 yarn: name B
      Using 4 mm needles and colour A, cast on 20 sts → needle: mm 4 | @20 yarn: name A | @34 cast on: stitches 20
      Using 4 mm needles and a colour, cast on 20 sts → needle: mm 4 | @34 cast on: stitches 20
      Always slip first st with yarn in back {of work |}at {the |}beg of every row → slips: work sl
      K first and last st on every {p|WS|} row → borders: borders [{edge both, stitches 1, fabric {named, name garter}}]
      Keeping 3 sts in garter st beginning and ending of rows → borders: borders [{edge both, stitches 3, fabric {named, name garter}}]
      {(|[}Repeat rows 1 to 4{)|]} twice more{ (12 rows)|} → repeat rows: from 1, to 4, times 2
      [Repeat rows 1 to 4, k1 → ✗ nothing before the repeat @9
      Repeat until {it|the piece} measures at least 6 cm → repeat rows: last 0, until {length, mm 60, from start}
      Repeat until you reach desired length → repeat rows: last 0, until {open}
      Repeat until you have desired length → ✗ stitch or repeat expected @8
      Row 3: k2tog, yo, knit across until 3 sts remain, yo, k2tog → row: label {rows [3]}, items 'k2tog, yo, k to {left 3}, yo, k2tog'
      Row 3: p1, wyf sl last 3 sts pwise → row: label {rows [3]}, items 'p, sl wyif ×3'
      {(Make 2)|Make 2} → note: about another, makes 2
      Join MC to rem sts and knit to end of row → rejoin | @24 row: items 'k to {left 0}'
      Join MC and knit to end of row → yarn: name MC | @13 row: items 'k to {left 0}'
      Bind off 3 sts at beg of next 2 rows, to form the armhole, then dec 1 st at beg of next 4 rows → groups: work bo, edge beginning, groups [{stitches 3, rows 2, every 1}] | @65 shape: change -1, edge beginning, beats [{first 1, every 1, times 4}]
      Bind off 3 sts at beg of next 2 rows, to form the square, then dec 1 st at beg of next 4 rows → groups: work bo, edge beginning, groups [{stitches 3, rows 2, every 1}] | ✗ stitch or repeat expected @42
      Dec 1 st at front edge by {knitting two sts together|k 2 tog} every 7th row until 40 sts remain → shape: change -1, edge neck, beats [{every 7, toCount 40}]
      Dec 1 st at front edge by hand every 7th row until 40 sts remain → ✗ stitch or repeat expected @27
      At neck edge, bind off every alt row 4 sts once and 2 sts once → groups: work bo, edge neck, groups [{stitches 4, rows 1, every 2}; {stitches 2, rows 1, every 2}]
      When work measures 36 cm, shape neck → even: until {length, mm 360, from start} | @27 heading: title {words 'shape neck', pattern 'shape neck', divides}, sideOnly false, talk false, places [neck]
      When work measures 36 cm, shape it as you like → ✗ stitch or repeat expected @27
      Patt 17, cast off 9 sts in rib patt, patt 17 → row: items 'patt ×17, bo ×9, patt ×17'
      Keep first and last 4 sts in garter st (knit all rows) for borders down the front of the coat → borders: borders [{edge both, stitches 4, fabric {named, name garter}}]
      Work until the scarf is 6 cm shorter than {required|desired length} → even: until {open}
    `),
  )('$line', expectReading);
});
