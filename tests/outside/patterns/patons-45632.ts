import type { WorkedPattern } from './worked-pattern.ts';

const source = 'Beehive for Bairns, vol. 2, Patons & Baldwins Ltd, Toronto, n.d. (PG 45632)';

/** British terms; the three sizes differ in needles and tension only. */
export const boysCoat: WorkedPattern = {
  source: `${source}, boy's coat, sleeve and left front`,
  ours: 'inches, needles, rib and moss stitch, the row of the first increase, how 43 come to 28, and the rows from 5 to 1: the book’s words for them were not at hand',
  sizes: 1,
  text: `SLEEVE
Using No. 10 needles, cast on 29 sts. Work in k.1, p.1 rib for 2 ins., ending with a WS row.
Next row: K1, p1, *inc. in next st., p3; rep. from * to last 3 sts., inc. in next st., p1, k1. 36 sts.
Proceed in moss st., inc. 1 st. at each end of 5th and every foll. 6th row until there are 48 sts. on needle.
Cont. without shaping until sleeve measures 6 ins. from cast-on edge, ending with a WS row.
Shape top: Dec. 1 st. at each end of next and every alt. row until 6 sts. rem. Cast off.

LEFT FRONT
Cast on 43 sts. Work in st. st. for 4 ins., ending with a WS row.
Dec. 1 st. at armhole edge of next and every alt. row until 28 sts. rem.
Cast off 15 sts. at beg. of next row. 13 sts.
Dec. 1 st. at each end of next and every alt. row until 5 sts. rem.
Next row: K2 tog., k1, k2 tog. 3 sts.
Next row: P3.
Next row: Sl 1, k2 tog., psso. (1 st)
Cast off.`,
};

export const rompers: WorkedPattern = {
  source: `${source}, rompers, sleeve`,
  ours: 'the six rows of k1, p1 rib before the row of increases',
  sizes: 1,
  text: `SLEEVE
Cast on 32 sts. Work 6 rows in k1, p1 rib.
Next row: K1, *inc in next st, p2; rep from * to last 4 sts, p1, inc in each of next 2 sts, k1. 43 sts.
Cast off loosely.`,
};

export const girlsCoat: WorkedPattern = {
  source: `${source}, girl's coat, front yoke and back`,
  ours: 'inches and plain rows, and where the 66 stitches lie that gather the back from 107 to 41',
  sizes: 1,
  text: `LEFT FRONT
Cast on 57 sts. K 4 rows.
Next row: K7, (k3tog) 5 times, (k3tog, k2tog) 4 times, (k3tog) 5 times. 25 sts.
Next row: Inc 12 sts evenly across. 37 sts.
Cast off.

BACK
Cast on 107 sts. Work in st. st. until work measures 6 ins., ending with a p. row.
Next row: K4, (k3tog) 33 times, k4. 41 sts.
Next row: Inc 25 sts evenly across. 66 sts.
Dec. 1 st. at each end of next and every alt. row until 24 sts. rem. Cast off.`,
};

/** 36 sts, from the cast-on's 33. */
export const cabledCoat: WorkedPattern = {
  source: `${source}, coat with crossed stripes, right front, 3 months`,
  ours: 'stocking stitch in place of its crossed stripes, the row of increases spread evenly, and no button hole',
  sizes: 1,
  text: `RIGHT FRONT
Cast on 33 sts. Knit 6 rows garter st.
Next row: Inc 3 sts evenly across. 36 sts.
Work in st. st. until work measures 6½ ins. from beg., ending at armhole edge.
Cast off 3 sts. at beg. of next row. Dec. 1 st. at armhole edge of every alt. row 4 times. 29 sts.
Cont. even until armhole measures 2 ins., ending at front edge.
Cast off 7 sts. at beg. of next row. Dec. 1 st. at neck edge of every row until 16 sts. rem.
Cont. even until armhole measures 3 ins., ending at armhole edge.
At armhole edge cast off 8 sts. every alt. row twice.`,
  ends: { 'right front/body': [0] },
};
