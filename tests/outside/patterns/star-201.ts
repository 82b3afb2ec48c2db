import type { WorkedPattern } from './worked-pattern.ts';

const source = 'Begin to Knit, Star Book No. 201, American Thread Co., New York, n.d. (PG 61105)';

/** 9 sts to 2 inches. */
export const shell: WorkedPattern = {
  source: `${source}, clam-digger shell`,
  ours: 'the 12 inches to the armhole, and 7 inches for the two larger sizes’ armholes: only 4½ of 7 is known',
  sizes: 3,
  text: `Sizes: 12 (14, 16)
BACK: Cast on 73 (77, 81) sts. K 1 row, p 1 row until piece measures 12 inches, ending with a p row.
ARMHOLES: Bind off 3 (4, 5) sts at beg of next 2 rows. Dec 1 st each side every other row 4 times – 59 (61, 63) sts. Work even until armholes measure 7 (7, 7½) inches.
NECK AND SHOULDERS: K 12 (13, 14), bind off center 35 sts, k to end: 12 (13, 14) sts each side. Working on one side only, dec 1 st at neck edge every row twice. Bind off 5 (5, 6) sts at arm edge once, then 5 (6, 6) sts once. Work other side to correspond.

FRONT: Work same as back until armholes measure 4½ inches.
K 17 (18, 19), bind off next 25 sts, k 17 (18, 19). Dec 1 st at neck edge every other row 7 times: 10 (11, 12) sts.
Work even until armhole measures same as back to shoulder. Shape shoulder as for back. Work other side to correspond.`,
  ends: {
    'back/right side': [0, 0, 0],
    'back/left side': [0, 0, 0],
    'front/right side': [0, 0, 0],
    'front/left side': [0, 0, 0],
  },
};

/** 9 sts to 2 inches. */
export const slipover: WorkedPattern = {
  source: `${source}, his slipover`,
  ours: 'the ribs’ 3 inches, the 15 inches to the armhole, and the back’s counts from 77 on, which follow from what is bound off; its increases were printed',
  sizes: 3,
  text: `Directions are for size 40. Changes for sizes 42 and 44 are in parentheses.
BACK: With smaller needles CO 92 (96, 100) sts. K 1, P 1 in ribbing for 3 inches, inc 1 st in last row. Change to larger needles and work in stockinette st until piece measures 15 inches from beg, ending with a P row.
ARMHOLES: Bind off 5 sts at beg of next 2 rows. Dec 1 st each side every other row 3 times (77 (81, 85) sts). Work even until armhole measures 9 (9½, 10) inches.
SHOULDERS: Bind off 8 sts at beg of next 4 rows. Place remaining 45 (49, 53) sts on a stitch holder.

SLEEVES: CO 48 (50, 52) sts. K 1, P 1 in ribbing for 3 inches, inc 1 st in last row. Work in stockinette st, inc 1 st each side every 10th row until there are 71 (73, 75) sts on needle.
Work even until sleeve measures 19 (19¼, 19½) inches.
CAP: Bind off 5 sts at beg of next 2 rows. Dec 1 st each side every other row until 33 (33, 35) sts remain. Bind off 3 sts at beg of next 4 rows. Bind off remaining 21 (21, 23) sts.`,
  ends: { 'back/body': [45, 49, 53] },
};

/** Body 52 (56, 60) rows of raglan, sleeve 51 (55, 59): the original's seams differ by a row. */
export const raglan: WorkedPattern = {
  source: `${source}, her raglan`,
  ours: 'ribs, inches and the sleeve’s every 6th row: the book’s words for them were not at hand',
  sizes: 3,
  text: `Sizes 12 (14, 16)
Gauge: 9 sts = 2 inches; 6 rows = 1 inch
BACK: CO 76 (80, 84) sts. K1, p1 in ribbing for 2 inches. Work in st st until piece measures 14 inches, ending with a WS row.
RAGLAN: Dec 1 st at beg of each row until 24 sts remain. Place sts on a holder.
SLEEVES: CO 32 (36, 40) sts. K1, p1 in ribbing for 2 inches. Work in st st, inc 1 st each side every 6th row 13 times – 58 (62, 66) sts. Work even until sleeve measures 17 inches, ending with a WS row.
RAGLAN: Dec 1 st at beg of each row until 8 sts remain. Work 1 row. Place sts on a holder.`,
  ends: { 'back/body': [24, 24, 24], 'sleeves/body': [8, 8, 8] },
};

/** 7 sts an inch; back 74, fronts 39, sleeve 41. */
export const babySweater: WorkedPattern = {
  source: `${source}, baby sweater`,
  ours: 'the book casts on 155 for the body in one piece (39, 3 bound off, 74 and 39): the pieces stand apart here; inches and the sleeve’s rhythm were not at hand',
  sizes: 1,
  text: `BACK
CO 74 sts and work in st st for 5 inches, ending with a p row.
BO 3 sts at beg of next row, k to end. Purl 1 row. Dec 1 st at each end of next row and next RS row. 67 sts.
Work even until armhole measures 4 inches, ending with a WS row.
Shoulders: BO 11 sts at beg of next 4 rows. 23 sts. BO.

LEFT FRONT
CO 39 sts and work in st st for 5 inches, ending with a p row.
BO 3 sts at armhole edge, then dec 1 st at armhole edge every other row twice. 34 sts.
Work even until armhole measures 2½ inches, ending at neck edge.
BO 10 sts at neck edge. Dec 1 st at neck edge every row twice. 22 sts.
BO 11 sts at armhole edge twice.

SLEEVES
CO 41 sts. Work in k1, p1 rib for 1½ inches, inc 2 sts evenly in last row: 43 sts.
Work in st st, inc 1 st each side every 6th row 5 times. 53 sts.
BO 3 sts at beg of next 2 rows, then 2 sts at beg of every row until 31 sts rem. BO.`,
};
