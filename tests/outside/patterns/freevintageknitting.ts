import type { WorkedPattern } from './worked-pattern.ts';

/** Patterns out of print that freevintageknitting.com gives whole: every figure here stands there. */

/** 4 sts an inch. */
export const botanyPullover: WorkedPattern = {
  source:
    'Botany College Hand Knits, vol. II, 1958, pullover No. 136, back (freevintageknitting.com, botany2/pullover136)',
  ours: 'nothing',
  sizes: 3,
  text: `Sizes 38 (40, 42)
Gauge: 4 sts = 1 inch
BACK: With size 8 needles, CO 76 (80, 84) sts. Work in k2, p2 rib until piece measures 3¾ ins from beg, ending with a RS row. Change to size 10 needles. Beg with a p row, work in st st until 11½ ins above ribbing, ending with a k row.
ARMHOLES: BO 4 sts at beg of next 2 rows. (68 (72, 76) sts) P 1 row.
Dec row: K2tog, k to last 2 sts, skp. (66 (70, 74) sts)
Rep last 2 rows 3 times. (60 (64, 68) sts) Work even until armhole measures 8½ (9, 9½) ins, ending with a k row.
SHOULDERS: BO 5 sts at beg of next 2 rows. BO 5 (6, 7) sts at beg of next 4 rows. (30 sts)
Work 8 rows in k2, p2 rib. BO in rib.`,
};

/** 5½ sts an inch. */
export const fiveSizes: WorkedPattern = {
  source: 'Pullover in sizes 36 to 44, back and front (freevintageknitting.com, print/1244)',
  ours: 'nothing',
  sizes: 5,
  text: `Sizes 36 (38, 40, 42, 44)
Gauge: 5½ sts = 1 inch
BACK: With No. 3 needles CO 100 (106, 112, 118, 124) sts. Work in ribbing of k2, p2 for 3½ inches. Change to No. 5 needles and work in st st until back measures 15 (15½, 16, 16½, 17) inches from beg.
BO 6 sts at beg of next 2 rows, then dec 1 st each side every other row until 78 (84, 90, 96, 102) sts remain. Work even until armhole measures 8½ (8¾, 9, 9¼, 9½) inches.
BO 13 (14, 15, 16, 17) sts at beg of next 4 rows. Place remaining 26 (28, 30, 32, 34) sts on a holder.

FRONT: With No. 3 needles CO 100 (106, 112, 118, 124) sts and work same as back to underarm. Shape armholes same as back. Work even until armhole measures 6½ (6¾, 7, 7¼, 7½) inches, ending with a RS row.
Next row: Work across 32 (34, 36, 38, 40) sts, place next 14 (16, 18, 20, 22) sts on a holder, join another ball of yarn and work across remaining 32 (34, 36, 38, 40) sts. Working both sides at same time, BO 2 sts at each neck edge every other row until 26 (28, 30, 32, 34) sts remain on each side. Work even until armhole measures same as back. Shape shoulders same as back.`,
  ends: { 'back/body': [26, 28, 30, 32, 34] },
};

/** 6½ sts an inch. */
export const sleeveless: WorkedPattern = {
  source:
    'Men’s sleeveless sweater No. 201, Classic Fashions in Wool, Hilde vol. 55, back (freevintageknitting.com, hilde55)',
  ours: 'the smaller size first, which the book has in parentheses, and one chest for each: printed are 36-38 and 40-42',
  sizes: 2,
  text: `Sizes 38 (42)
Gauge: 6½ sts = 1 inch
BACK: CO 120 (126) sts with No. 2 needles and work in k1, p1 rib for 3 inches. Change to No. 4 needles and st st.
Next row: Inc 6 (8) sts evenly across. (126 (134) sts)
Work even until entire piece measures 12½ (13) inches, ending with a WS row.
BO 12 sts at beg of next 2 rows. BO 2 sts at beg of next 4 rows. Dec 1 st at each end of every k row until 90 (94) sts remain. Work even until armhole measures 9½ (9¾) inches, ending with a WS row.
BO 8 (13) sts at beg of next 6 (4) rows. (42 sts)
BO.`,
};
