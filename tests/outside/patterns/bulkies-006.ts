import type { WorkedPattern } from './worked-pattern.ts';

const source = 'Bulkies: Sweaters to Knit and Crochet, Book No. 006, American Thread Co., n.d. (PG 66271)';

/** 4 sts and 6 rows an inch; widths and lengths of the original agree with its counts. */
export const hoodedJacket: WorkedPattern = {
  source: `${source}, boy's hooded jacket`,
  ours: 'the sleeve’s rib, its rows in all and the rhythm of its cap, and where the hood’s decreases lie: the book’s words for them were not at hand',
  sizes: 4,
  text: `Sizes 7 (8, 10, 12)
Gauge: 4 sts = 1 inch, 6 rows = 1 inch

BACK
CO 57 (59, 63, 65) sts.
Rows 1-5: Beg with a k row, work in st st.
Row 6 (WS): K across for hem.
Rows 7-50 (52, 52, 54): Work even in st st.
Shape armholes: BO 4 sts at beg of next 2 rows. (49 (51, 55, 57) sts)
Work 1 row even.
Dec 1 st at each end of next row and every 3rd row 14 (15, 16, 17) times more. 19 (19, 21, 21) sts.
Work 2 (1, 2, 1) rows even. BO.

LEFT FRONT
CO 29 (31, 31, 33) sts. Work as for back to armhole.
BO 4 sts at beg of next row. Work 2 rows even.
Dec 1 st at armhole edge of this and every 3rd row 14 (15, 16, 17) times more. (10 (11, 10, 11) sts)
Place rem sts on a holder.

RIGHT FRONT
Work as for left front, reversing all shaping.

SLEEVES
CO 25 (27, 29, 31) sts. Work 24 rows in k1, p1 rib.
Change to larger needles. Beg with a k row and working in st st, inc 1 st at each end of next row and every 5th row 11 (11, 12, 12) times more. (49 (51, 55, 57) sts)
Work even until there are 90 (92, 94, 96) rows in all.
BO 4 sts at beg of next 2 rows.
Dec 1 st at each end of next row and every 3rd row 14 (15, 16, 17) times more: 11 (11, 13, 13) sts. BO.

HOOD
CO 71 (73, 77, 79) sts.
Row 1 (RS): K 35 (36, 38, 39), pm, k1, pm, k to end.
Row 2: Purl.
Row 3: K to 2 sts before marker, k2tog, sm, k1, sm, ssk, k to end.
Row 4: Purl.
Rep rows 3 and 4 9 (10, 11, 12) times more. 51 (51, 53, 53) sts.
BO.`,
  ends: { 'left front/body': [10, 11, 10, 11], 'right front/body': [10, 11, 10, 11] },
};

/** 4 sts and 8 rows an inch in garter stitch. */
export const womansJacket: WorkedPattern = {
  source: `${source}, woman's knitted jacket`,
  ours: 'inches, the rows before the first button hole and its three stitches from the edge (one hole of the six is in the text): the book’s words for them were not at hand',
  sizes: 3,
  text: `Sizes: S (M, L)
Gauge: 4 sts = 1 inch; 8 rows = 1 inch in garter st

BACK
CO 75 (79, 85) sts. Work in garter st for 81 (85, 89) rows.
Dec 1 st at each end of next row. Work 19 rows even. Dec 1 st at each end of next row. 71 (75, 81) sts.
Work even until piece measures 16 inches from cast-on edge, ending with a WS row.
Shape armholes: BO 10 (12, 14) sts at beg of next 2 rows. (51 (51, 53) sts)
Work even until armhole measures 7 inches, ending with a WS row.
Shape neck: K 17, BO centre 17 (17, 19) sts, k to end. (17 sts each side)
Working on last 17 sts only, dec 1 st at neck edge of next 2 rows. (15 sts)
Next row: BO 6 sts, k to last 2 sts, k2tog. (8 sts)
BO 8 sts.
Rejoin yarn to rem 17 sts and complete to match first side, reversing shaping.

RIGHT FRONT
CO 41 (43, 47) sts. Knit 28 (30, 32) rows.
Buttonhole row: K3, BO 2 sts, k to end.
Next row: K to last 3 sts, CO 2 sts, k3. (41 (43, 47) sts)
Knit 51 (53, 55) rows.
Next row: K to last 2 sts, k2tog. Knit 19 rows.
Next row: K to last 2 sts, k2tog. 39 (41, 45) sts.
Work even until piece measures 16 inches, ending at side edge.
BO 10 (12, 14) sts, k to end. (29 (29, 31) sts)
Work even for 5 inches, ending at front edge.
BO 6 sts, k to end – 23 (23, 25) sts.
Dec 1 st at neck edge every row 9 (9, 11) times: 14 sts.
At arm side BO 6 sts once and 8 sts once.

LEFT FRONT
Work as for right front, reversing all shaping.

SLEEVES (make 2)
CO 57 (61, 67) sts. Work in garter st for 4 inches.
Inc 1 st at each end of next row. Work 4 inches even. Inc 1 st at each end of next row. 61 (65, 71) sts.
Work even until sleeve measures 17 inches. BO.

HOOD
With RS facing, pick up and k 48 (50, 54) sts evenly around neck edge.
Rows 1-3: Knit.
Row 4: K4 (5, 4), inc in next st, *k7 (9, 8), inc in next st; rep from * to last 3 (4, 4) sts, k to end. 54 (55, 60) sts.
Row 5: Knit.
Row 6: K4 (5, 5), inc in next st, *k8 (10, 9), inc in next st; rep from *, end k4 (5, 4). 60 (60, 66) sts.
Row 7: Knit.
Row 8: K2 (2, 3), inc in next st, *k3 (3, 5), inc in next st; rep from *, end k1 (1, 2). 75 (75, 77) sts.
BO.`,
};
