import type { WorkedPattern } from './worked-pattern.ts';

const he = 'Sweaters He and She, Star Book No. 223, American Thread Co., n.d. (PG 65789)';
const babies = 'Babies Are Such Fun to Dress, Star Book No. 220, American Thread Co., n.d. (PG 66272)';

/** 5 sts an inch. */
export const bolero: WorkedPattern = {
  source: `${he}, Tyrolean bolero`,
  ours: 'inches and the rhythms of sides and sleeves: the book’s words for them were not at hand',
  sizes: 3,
  text: `TYROLEAN BOLERO
Sizes: Small (Medium, Large)
BACK
CO 74 (78, 82) sts. Work in st st, inc 1 st at each end of every 8th row 5 (6, 7) times – 84 (90, 96) sts. Work even until piece measures 9 in from beg, ending with a p row.
Shape armholes: BO 5 sts at beg of next 2 rows, then dec 1 st at each end every other row 3 times: 68 (74, 80) sts.
Work even until armholes measure 7 in.
Next row (RS): K22 (24, 26), BO next 24 (26, 28) sts, k to end. Working both sides at once, dec 1 st at each neck edge every row 4 times (18 (20, 22) sts each side).
BO 9 (10, 11) sts at each arm edge twice.

RIGHT FRONT
CO 30 (34, 38) sts.
Inc 1 st at front edge every other row 6 times, AT THE SAME TIME inc 1 st at side edge every 8th row 5 (6, 7) times. 41 (46, 51) sts.
Work even until same length as back to underarm, ending with a RS row.
At armhole edge BO 5 sts once, then dec 1 st at armhole edge every other row 3 times.
At neck edge BO 10 (12, 14) sts, then dec 1 st at neck edge every row 5 (6, 7) times. 18 (20, 22) sts.
BO 9 (10, 11) sts at armhole edge every other row twice.

SLEEVES
CO 50 (54, 58) sts. Inc 1 st each side every 12th row 5 (6, 7) times: 60 (66, 72) sts. Work even until sleeve measures 17 inches.
BO 5 sts at beg of next 2 rows. Dec 1 st at beg of every row until 22 sts rem.
BO 2 sts at beg of next 4 rows. BO rem 14 sts.`,
  ends: { 'back/left side': [0, 0, 0], 'back/right side': [0, 0, 0], 'right front/body': [0, 0, 0] },
};

/** 6 sts an inch. */
export const pinkAndWhite: WorkedPattern = {
  source: `${babies}, pink and white sweater`,
  ours: 'the ribs’ 2 inches, the 8 (9) to the armhole, 8 rows to the inch and where the front’s neck begins; the sleeve’s 9 (10) inches are taken to begin above its rib, since nine increases on every 8th row need them',
  sizes: 2,
  text: `Sizes: 2 (4) years
Tension: 6 sts and 8 rows = 1 inch
Back: CO 66 (72) sts. Work in k1, p1 rib for 2 ins. Change to larger needles and st st and work until piece measures 8 (9) ins.
Shape armholes: Cast off 5 sts at beg of next 2 rows. Dec 1 st at each end of next row. 54 (60) sts. Work straight until armhole measures 4½ (5) ins, ending with RS facing for next row.
Shape shoulders: Cast off 8 (9) sts at beg of next 4 rows. Slip rem 22 (24) sts on to a holder.

Left Front: CO 33 (36) sts. Work as given for back to armhole. Cast off 5 sts at beg of next row. Dec 1 st at armhole edge of next row: 27 (30) sts.
Work straight until front measures 2 ins less than back to shoulder, ending at front edge.
Dec 1 st at neck edge on every row until 16 (18) sts rem. Work until same length as back to shoulder. Cast off 8 (9) sts at armhole edge twice.

Right Front: Work as for left front, reversing all shapings.

Sleeves: Cast on 33 (36) sts. Rib 2 ins. Work in st st, inc 1 st at each end of every 8th row 9 times: 51 (54) sts. Cont straight until sleeve measures 11 (12) ins. Cast off.`,
  ends: { 'back/body': [22, 24], 'left front/body': [0, 0], 'right front/body': [0, 0] },
};

/** 168 (180) sts gathered to 140 (150), then halved. */
export const childsDress: WorkedPattern = {
  source: `${babies}, child's dress`,
  ours: 'inches of skirt and cuff, the plain rows of the yoke, and every 6th row of the sleeve: the book’s words for them were not at hand',
  sizes: 2,
  text: `Sizes: 2 (4)
SKIRT: CO 168 (180) sts. Work in garter st for 1 in, then in st st until piece measures 10 in, ending with a WS row.
Next row: *K4, k2tog; rep from * to end. 140 (150) sts.
Next row: P 70 (75), place rem 70 (75) sts on a holder.
Back yoke: BO 4 sts at beg of next 2 rows. Dec 1 st each end of every RS row twice. 58 (63) sts.
Work even until armhole measures 4½ (5) in, ending with a WS row.
Next row: K18, BO next 22 (27) sts, k18. (18 sts each side)
Place these 18 sts on a holder. Rejoin yarn to 18 sts, purl 1 row. Place sts on a holder.
Front yoke: Rejoin yarn to rem 70 (75) sts. BO 4 sts at beg of next 2 rows. Dec 1 st each end of every RS row twice: 58 (63) sts.
Work even until armhole measures 4 (4½) in, ending with a WS row.
Next row: K20, BO next 18 (23) sts, k20. Working on last 20 sts only, dec 1 st at neck edge of next 2 rows. 18 sts.
Place sts on a holder. Complete other side to match, reversing shaping.

SLEEVES
CO 34 (38) sts. K1, p1 rib for 1 in. Inc 1 st at both ends of next and every foll 6th row 6 times. (46 (50) sts) BO.`,
};

/** Pattern of 4 sts plus 1 that has 6 for 4 on its odd rows; yarn overs are counted when they are bound off. */
export const sacque: WorkedPattern = {
  source: `${babies}, knitted baby sacque`,
  ours: 'the words of pattern rows 1 and 3 (their counts, 4 to 6 and 6 to 4, are printed), the purl rows between, the boots’ inches and rows; front and sleeve end here before the yoke joins them',
  sizes: 1,
  text: `BACK
CO 65 sts.
Row 1: *K1, yo, k3, yo; rep from * to last st, k1. (97 sts)
Row 2: Purl.
BO 6 sts at beg of next 2 rows. (85 sts)
Row 5: *K1, ssk, k1, k2tog; rep from * to last st, k1. (57 sts)
Place these sts on a holder.

FRONT
CO 37 sts.
Row 1: *K1, yo, k3, yo; rep from * to last st, k1. (55 sts)
Row 2: Purl.
BO 6 sts at beg of next row. (49 sts)
Next row: Purl.
Next row: *K1, ssk, k1, k2tog; rep from * to last st, k1. (33 sts)
Place these sts on a holder.

SLEEVE
CO 37 sts.
Row 1: *K1, yo, k3, yo; rep from * to last st, k1. (55 sts)
Row 2: Purl.
BO 6 sts at beg of next 2 rows. (43 sts)
Next row: *K1, ssk, k1, k2tog; rep from * to last st, k1. (29 sts)
Place these sts on a holder.

YOKE
CO 181 sts.
Row 1: Dec 4 sts evenly across. 177 sts.
Row 2: *K1, p1, k1, p2tog; rep from *, end k2tog. 141 sts.
Row 3: *K1, p1, k1, p2tog; rep from *, end k1. 113 sts.
Row 4: *K1, p1, k1, p2tog; rep from *, end k1, p1, k1. 91 sts.
BO.

BOOTIES
CO 42 sts. Work in k1, p1 rib for 2 in.
Next row: K27, turn and leave rem 15 sts on a holder.
Next row: P12, place rem 15 sts on a holder.
Knit 20 rows. BO.

CAP
CO 53 sts. Work in st st for 4 in, ending with a WS row. BO 16 sts at beg of next 2 rows. 21 sts. BO.`,
};
