/** Stitch patterns as texts of our own in modern abbreviations. */
export interface StitchPatternText {
  readonly source: string;
  /** what in the text is not the book's, and why */
  readonly ours: string;
  readonly text: string;
  readonly of: number;
  readonly plus: number;
  /** line of the text in which the printed original contradicts itself, where it does */
  readonly slipAt?: number;
}

const dillmont = 'T. de Dillmont, Encyclopedia of Needlework, 1886 (PG 20776), Knitting';
const lambert = 'Miss Lambert, My Knitting Book, John Murray, London, 1843, Twelve patterns (PG 33502)';
const star = 'Begin to Knit, Star Book No. 201, American Thread Co., n.d. (PG 61105)';

export const stitchPatterns: readonly StitchPatternText[] = [
  {
    source: `${dillmont}, fig. 376`,
    ours: 'nothing',
    of: 14,
    plus: 0,
    text: `Piqué (multiple of 14)
Rows 1 and 2: *P7, [k1, p1] 3 times, k1; rep from * to end.
Rows 3 and 4: *K7, [p1, k1] 3 times, p1; rep from * to end.`,
  },
  {
    source: `${dillmont}, fig. 393; the printed row 8 has 13 stitches (k2 is meant at its end)`,
    ours: 'nothing',
    of: 14,
    plus: 0,
    slipAt: 9,
    text: `Lozenge (multiple of 14)
Row 1: *Yo, k1, yo, k2, p3, k3tog, p3, k2; rep from * to end.
Row 2: *K5, p7, k2; rep from *.
Row 3: *Yo, k3, yo, k2, p2, k3tog, p2, k2; rep from *.
Row 4: *K7, p5, k2; rep from *.
Row 5: *Yo, k5, yo, k2, p1, k3tog, p1, k2; rep from *.
Row 6: *K9, p3, k2; rep from *.
Row 7: *Yo, k7, yo, k2, k3tog, k2; rep from *.
Row 8: *K11, p1, k1; rep from *.`,
  },
  {
    source: `${dillmont}, fig. 390`,
    ours: 'nothing',
    of: 4,
    plus: 0,
    text: `Zigzag, multiple of 4
1st row: *Yo, sl 1, k1, psso, k2; rep from *.
2nd row: *K1, yo, sl 1, k1, psso, k1; rep from *.
3rd row: *K2, yo, skp; rep from *.
4th row: *Skp, k2, yo; rep from *.
5th row: *K2tog, yo, k2; rep from *.
6th row: *K1, k2tog, yo, k1; rep from *.
7th row: *K2tog, yo, k2; rep from *.
8th row: *K2, k2tog, yo; rep from *.`,
  },
  {
    source: `${dillmont}, fig. 391`,
    ours: 'where row 3 begins: printed as row 1 moved on, by one stitch here',
    of: 3,
    plus: 0,
    text: `Openwork (multiple of 3)
Row 1: *Yo, sl 1, k2, psso; rep from * to end.
Row 2: Knit.
Row 3: K1, *yo, sl 1, k2, psso; rep from * to last 2 sts, k2.
Row 4: As row 2.`,
  },
  {
    source: `${dillmont}, fig. 386`,
    ours: 'nothing',
    of: 4,
    plus: 0,
    text: `Two-thread pattern (multiple of 4)
Rows 1 and 2: Knit.
Row 3: *Yo, k2tog, k2; rep from *.
Row 4: Knit.
Row 5: *K1, yo, k2tog, k1; rep from *.
Row 6: Knit.
Row 7: *K2, yo, k2tog; rep from *.
Rows 8-11: Knit.
Row 12: *Yo, k2tog; rep from *.`,
  },
  {
    source: `${lambert}, no. VII, Vandyke`,
    ours: 'nothing',
    of: 10,
    plus: 0,
    text: `Vandyke (multiple of 10)
Row 1: Purl.
Row 2: Knit.
Row 3: Purl.
Row 4: *Yo, k2, k2tog, p1, k2tog, k2, yo, k1; rep from * to end.`,
  },
  {
    source: `${lambert}, no. VI, Chevron`,
    ours: 'nothing',
    of: 8,
    plus: 0,
    text: `Chevron (multiple of 8 sts)
Row 1: P.
Row 2: *K2tog, k3, yo, k3* across.`,
  },
  {
    source: `${lambert}, no. V, Scotch pattern; the printed row 13 has 8 stitches for a multiple of 7`,
    ours: 'rows 3, 7 and 9 and the even rows are left out: row 3 leads with a stitch of its own, 7 and 9 are as row 5',
    of: 7,
    plus: 0,
    slipAt: 5,
    text: `Scotch (multiple of 7)
Row 1: *K2, k2tog, yo, k1, yo, k2tog; rep from *.
Row 5: *K2, yo, k2tog, k1, k2tog, yo; rep from *.
Row 11: *K3, yo, k3tog, yo, k1; rep from *.
Row 13: *K3, k2tog, yo, k3; rep from *.`,
  },
  {
    source: `${lambert}, no. VIII, Lace`,
    ours: 'rows 5 to 11 and from 15 on are left out: they make three in one stitch or are worked as those given',
    of: 6,
    plus: 0,
    text: `Lace (multiple of 6)
Row 1: *K1, k2tog, yo, k1, yo, k2tog; rep from * to end.
Row 2 and every alternate row: Purl.
Row 13: *K1, yo, k2tog, k1, k2tog, yo; rep from *.`,
  },
  {
    source: `${star}, pre-teen lace`,
    ours: 'nothing',
    of: 6,
    plus: 5,
    text: `Lace pattern (multiple of 6 plus 5)
1st row (RS): K5, *p1, k5; rep from * to end.
2nd row: P5, *k1, p5; rep from * to end.
3rd row: K3, *k2tog, yo, p1, yo, k2tog tbl, k1; rep from * to last 2 sts, k2.
4th row: As 2nd row.`,
  },
  {
    source: `${star}, no. 4, cable panel on 35 sts`,
    ours: 'wrong-side rows as the stitches show; rows from 10 on are left out',
    of: 0,
    plus: 35,
    text: `Cable panel (35 sts)
Row 1 (RS): K3, p3, k6, p3, k5, p3, k6, p3, k3.
Row 2: P3, k3, p6, k3, p5, k3, p6, k3, p3.
Rows 3, 5 and 7: As row 1.
Rows 4, 6 and 8: As row 2.
Row 9: K3, p3, sl next 3 sts to cn and hold in front, k3, k3 from cn, p3, k5, p3, C6F, p3, k3.`,
  },
  {
    source: `${star}, no. 5, basket`,
    ours: 'nothing',
    of: 8,
    plus: 4,
    text: `Basket stitch: multiple of 8 + 4
Rows 1 & 3: K4, *p4, k4; rep from *.
Rows 2 & 4: P4, *k4, p4; rep from *.
Rows 5 & 7: As row 2.
Rows 6 & 8: As row 1.`,
  },
  {
    source: `${star}, no. 1, slip rib`,
    ours: 'nothing',
    of: 2,
    plus: 1,
    text: `Slip rib (multiple of 2 plus 1)
Row 1: Knit.
Row 2: K1, *sl 1 wyib, k1; rep from *.
Row 3: K1, *sl 1 wyif, k1; rep from *.
Row 4: Knit.`,
  },
  {
    source: `${star}, no. 3, rib and ridge`,
    ours: 'nothing',
    of: 4,
    plus: 0,
    text: `Rib and ridge (multiple of 4)
Rows 1-8: *K2, p2; rep from * to end.
Rows 9-12: Knit.`,
  },
  {
    source: 'Sweaters He and She, Star Book No. 223, American Thread Co., n.d. (PG 65789), cross-rib vest',
    ours: 'which way the twists lean',
    of: 9,
    plus: 5,
    text: `Cross rib (multiple of 9 plus 5)
Row 1 (RS): P2, k1, p2, *k4, p2, k1, p2; rep from *.
Row 2: K2, p1, k2, *p4, k2, p1, k2; rep from *.
Row 3: P2, k1, p2, *[RT] twice, p2, k1, p2; rep from *.
Row 4: As row 2.`,
  },
  {
    source: 'In Fashions for Him for Her, American Thread Co., n.d. (PG 62842), twist rib',
    ours: 'which way the twists lean, and that they come in row 3',
    of: 3,
    plus: 2,
    text: `Twist rib (multiple of 3 + 2)
Row 1: K2, *p1, k2; rep from *.
Row 2: P2, *k1, p2; rep from *.
Row 3: RT, *p1, RT; rep from *.`,
  },
];
