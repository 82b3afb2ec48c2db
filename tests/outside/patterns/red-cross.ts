import type { WorkedPattern } from './worked-pattern.ts';

const needlecraft =
  'Handbook of Wool Knitting and Crochet, Needlecraft Publishing Co., Augusta (Maine), 1918 (PG 26113)';

/** 11 sts to 2 inches; the same directions in the Berkeley Daily Gazette, 22 September 1917. */
export const sleeveless: WorkedPattern = {
  source: `${needlecraft}, Red Cross sleeveless sweater`,
  ours: 'nothing: counts, inches and ridges are those of both prints',
  sizes: 1,
  text: `SWEATER
CO 80 sts. K2, p2 for 4 inches. Knit until piece measures 25 inches.
Next row: Knit 28, bind off 24, knit 28.
Working on last 28 sts, knit 7 ridges.
Rejoin yarn to other 28 sts and knit 7 ridges.
Next row: K 28, cast on 24, k 28. (80 sts)
Knit 21 inches. P2, k2 for 4 inches. Bind off.`,
};

export const gardenIsland: WorkedPattern = {
  source: 'Red Cross directions, The Garden Island 13(49), 4 December 1917, p. 4',
  ours: 'nothing; its rib (over and back) is said as ridge',
  sizes: 1,
  text: `SWEATER
Cast on 96 sts. K2, p2 for 3 inches. Knit plain until work measures 25 inches.
Next row: K35, bind off 26, k35. (35 sts each side)
Knit 7 ridges on last 35 sts. Rejoin yarn to other 35 sts, knit 7 ridges.
Next row: K35, cast on 26 sts, k35. 96 sts.
Knit 22 inches. K2, p2 for 3 inches. Bind off.`,
};

export const basketSweater: WorkedPattern = {
  source: `${needlecraft}, sleeveless sweater with a basket border`,
  ours: 'the basket is five knit and five purl as its border has five checks of six rows; which comes first was not at hand',
  sizes: 1,
  text: `BACK
CO 85 sts.
Row 1 (RS): *K5, p5; rep from * to last 5 sts, k5.
Row 2: *P5, k5; rep from * to last 5 sts, p5.
Rows 3 and 5: As row 1.
Rows 4 and 6: As row 2.
Rows 7, 9 and 11: As row 2.
Rows 8, 10 and 12: As row 1.
Rep rows 1-12 once more, then rows 1-6 once.
Knit 84 rows.
Dec 1 st at each end of alternate rows 3 times: 79 sts.
Next row: K31, BO 17, k31. (31 sts each side)`,
};

export const bottleCover: WorkedPattern = {
  source: `${needlecraft}, hot-water-bottle cover`,
  ours: 'the cast-off at the end',
  sizes: 1,
  text: `COVER
CO 56 sts. K2, p2 rib for 4 in. K even until piece measures 13½ in.
Dec 2 sts at each end of every row until 16 sts remain. BO 16 sts.`,
};

export const leggings: WorkedPattern = {
  source: `${needlecraft}, leggings`,
  ours: 'the two rows at the cast-on and the rhythm from 68 to 50, of which only nine shaping rows are known',
  sizes: 1,
  text: `LEGGINGS
CO 68 sts. Knit 2 rows.
K6, turn. K back. K12, turn. K back. K18, turn. K back. K24, turn. K back. K30, turn. K back. K36, turn. K back. 68 sts.
Dec 1 st at each end of every 4th row until 50 sts rem.
Next row: P7, k2, p9, k2, p10, k2, p9, k2, p7. (50 sts)
Next row: K6, p1, k2, p9, k2, p1, k8, p1, k2, p9, k2, p1, k6. (50 sts)`,
};

export const ladiesSweater: WorkedPattern = {
  source: `${needlecraft}, ladies' sweater`,
  ours: 'the ridges below the waist, the three inches of belt and the two rows above it, the rhythm and the fabric of the sleeve: the book’s words for them were not at hand',
  sizes: 1,
  text: `BACK
CO 119 sts. Knit 40 ridges.
Next row: *K2tog, k4; rep from * to last 5 sts, k2tog, k3. (99 sts)
K3, p3 rib for 3 inches. Knit 2 rows.
Dec 1 st at each end of next row and every other row 4 times more. (89 sts)
Knit 29 ridges.
Next row: K34, BO 21, k34. (34 sts each side)

SLEEVE
With RS facing pick up and k 72 sts along armhole.
Working in garter st, dec 1 st at each end of every 6th row 8 times. (56 sts)
Place sts on a holder.`,
};
