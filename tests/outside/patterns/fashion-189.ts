import type { WorkedPattern } from './worked-pattern.ts';

/** 6 sts and 6 rows an inch. */
export const deepVCardigan: WorkedPattern = {
  source:
    'Fashion Parade, Star Book No. 189, American Thread Co., n.d. (PG 69974), man’s deep-V cardigan, back',
  ours: 'stocking stitch for a pattern of 9 stitches and 1 whose rows were not at hand, the garter rows and the 16 inches, the names of the sizes',
  sizes: 3,
  text: `Sizes: S (M, L)
6 sts = 1 inch; 6 rows = 1 inch
BACK
CO 82 (86, 90) sts. Work in garter st for 12 rows.
Next row: Inc 45 (41, 46) sts evenly spaced across row. 127 (127, 136) sts.
Work in st st until piece measures 16 inches, ending with a WS row.
BO 5 (5, 6) sts at beg of next 2 rows.
*Dec 1 st at each end of next 2 rows; rep from * 9 (9, 10) times more.
Dec 1 st at each end of next row and every other row 19 (19, 19) times more.
BO rem 37 (37, 40) sts.`,
};
