import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectCut, type readings } from './cut.ts';

/** Rows that a page or a stop parts, sets that are put aside within a row, and numbers of several sizes. How patterns are usually set: common practice, no published source. */
const cuts: Readonly<Record<string, string>> = {
  lines: `
    5th row: ¶ K4, p2 → 1-2: 5th row: K4, p2
    5th row (RS): ¶ K4, p2 → 1-2: 5th row (RS): K4, p2
    5th row ¶ K4, p2 → 1: 5th row | 2: K4, p2
    Next row: ¶ K4, p2 → 1-2: Next row: K4, p2
    Row 5: ¶ Cable 6 → 1: Row 5: | 2: Cable 6
    Row 5: ¶ Bind off → 1-2: Row 5: Bind off
    Cast off ¶ 2 sts, knit to end → 1-2: Cast off 2 sts, knit to end
    Cast on ¶ 2 sts, knit to end → 1-2: Cast on 2 sts, knit to end
    Bind off ¶ all sts → 1: Bind off | 2: all sts
    Knit ¶ 3 rows → 1-2: Knit 3 rows
    Work ¶ 3 more rows → 1-2: Work 3 more rows
    Knit ¶ 3 sts → 1: Knit | 2: 3 sts
    Knit on ¶ 3 rows → 1-2: Knit on 3 rows
    K2 to end ¶ 3 rows in rib → 1: K2 to end | 2: 3 rows in rib
    K2, p2 ¶ 3 more rows → 1: K2, p2 | 2: 3 more rows
    K2, p2 ¶ 3 sts more → 1: K2, p2 | 2: 3 sts more
    1st row: (RS). K4. *C6B. K4. ¶ Rep from * to last 4 sts. K4. → 1-2: 1st row: (RS). K4. *C6B. K4. Rep from * to last 4 sts. K4.
    1st row: (RS). K4. P2. ¶ K4. P2. → 1-2: 1st row: (RS). K4. P2. K4. P2.
    1st row: K4, p2. ¶ K4. P2. → 1: 1st row: K4, p2. | 2: K4. P2.
    1st row K4. P2. ¶ K4. P2. → 1: 1st row K4. P2. | 2: K4. P2.
    5th: K4. P2. ¶ K4. P2. → 1: 5th: K4. P2. | 2: K4. P2.
    1st row: K4. P2. ¶ **K4. P2. → 1: 1st row: K4. P2. | 2: **K4. P2.
    1st row: K4. P2. ¶ *C6B. K4. → 1-2: 1st row: K4. P2. *C6B. K4.
    1st row: K4. P2. ¶ (K4. P2. → 1-2: 1st row: K4. P2. (K4. P2.
    Next row (RS): Work 22 sts. ¶ Place remaining sts on holder. → 1-2: Next row (RS): Work 22 sts. Place remaining sts on holder.
    Next row (RS): Work 22 (24, 26) sts. ¶ Place the remaining sts on holder. → 1-2: Next row (RS): Work 22 (24, 26) sts. Place the remaining sts on holder.
    Next row (RS): Work 22 sts. ¶ Place sts on holder. → 1: Next row (RS): Work 22 sts. | 2: Place sts on holder.
    Next row (RS): Work to end. ¶ Place remaining sts on holder. → 1: Next row (RS): Work to end. | 2: Place remaining sts on holder.
    Next row: K22. ¶ Leave rem sts on a holder. → 1-2: Next row: K22. Leave rem sts on a holder.
    Next row: Bind off 22 sts. ¶ Leave rem sts on a holder. → 1: Next row: Bind off 22 sts. | 2: Leave rem sts on a holder.
    Next row: K22 sts, turn. ¶ Leave rem sts on a holder. → 1: Next row: K22 sts, turn. | 2: Leave rem sts on a holder.
    Work 22 sts. ¶ Leave rem sts on a holder. → 1: Work 22 sts. | 2: Leave rem sts on a holder.
  `,
  sentences: `
    1st row: K9. P2. K8. → 1 st row : k 9 . p 2 . k 8
    1st row: K9. P2 rows. K8. → 1 st row : k 9 | p 2 rows | k 8
    1st row: K9. P 1 row. K8. → 1 st row : k 9 | p 1 row | k 8
    1st row: K9. K 2 times. K8. → 1 st row : k 9 | k 2 times | k 8
    1st row: K9, yo. K8. → 1 st row : k 9 , yo . k 8
    1st row: K9, k2tog. Yo, k2tog. K8. → 1 st row : k 9 , k 2 tog . yo , k 2 tog . k 8
    1st row: K2, inc 1 st in next st. P4. → 1 st row : k 2 , inc 1 st in next st . p 4
    1st row: K2. Inc 1 st in next st. P4. → 1 st row : k 2 . inc 1 st in next st . p 4
    1st row: K2. Inc 1 st. P4. → 1 st row : k 2 | inc 1 st | p 4
    1st row: K2. Inc 1 st in last st. P4. → 1 st row : k 2 . inc 1 st in last st | p 4
    1st row: C6B. K4. T4F. K2. → 1 st row : c 6 b . k 4 . t 4 f . k 2
    1st row: (k2tog, k3) 8 times. K4. → 1 st row : ( k 2 tog , k 3 ) 8 times . k 4
    1st row: (k2tog, k3) twice. K4. → 1 st row : ( k 2 tog , k 3 ) twice . k 4
    1st row: k2tog 8 times. K4. → 1 st row : k 2 tog 8 times | k 4
    1st row: K4. Work in patt to end. → 1 st row : k 4 . work in patt to end
    1st row: K4. Work to last 4 sts. K4. → 1 st row : k 4 . work to last 4 sts . k 4
    1st row: K4. Patt to end. → 1 st row : k 4 . patt to end
    1st row: K4. Knit to end. → 1 st row : k 4 . knit to end
    1st row: K4. Work 4 rows. → 1 st row : k 4 | work 4 rows
    1st row: K4. Sl 1. K2. → 1 st row : k 4 . sl 1 . k 2
    1st row: K4. Wl fwd. K2. → 1 st row : k 4 . wl fwd . k 2
    1st row K9. P2. K8. → 1 st row k 9 | p 2 | k 8
    1st row with a very long name of its own: K9. P2. → 1 st row with a very long name of its own : k 9 | p 2
    Work: K9. P2. K8. → work : k 9 | p 2 | k 8
    1st row: K30. Turn. Leave rem sts on a spare needle. → 1 st row : k 30 . turn . leave rem sts on a spare needle
    1st row: K30. Turn. Leave sts on a spare needle. → 1 st row : k 30 . turn | leave sts on a spare needle
    1st row: K30. Turn. Place the rem sts on a spare needle. → 1 st row : k 30 . turn . place the rem sts on a spare needle
    1st row: K30. Turn. Bind off. → 1 st row : k 30 . turn | bind off
    1st row: Work 5 rows. Turn. Leave rem sts. → 1 st row : work 5 rows | turn . leave rem sts
    K30. Turn. Leave rem sts on a spare needle. → k 30 . turn . leave rem sts on a spare needle
    K over 18 sts. Place on holder. Bind off 32 sts. → k over 18 sts . place on holder . bind off 32 sts
    K 18 sts. Place them on holder. Knit to end. → k 18 sts . place them on holder . knit to end
    K 18 sts. Place the rem sts on holder. Knit to end. → k 18 sts . place the rem sts on holder . knit to end
    K 18 sts. Place the sts on holder. Knit to end. → k 18 sts | place the sts on holder | knit to end
    K 18 sts. Place marker. Knit to end. → k 18 sts | place marker | knit to end
    Work across first 18 sts. Sl these onto holder. Work across rem sts. → work across first 18 sts . sl these onto holder . work across rem sts
    Work across first 18 sts. Sl these onto holder. Work rem sts in rib. → work across first 18 sts . sl these onto holder | work rem sts in rib
    Work across first 18 sts. Sl these onto holder. Join second ball and k 32. → work across first 18 sts . sl these onto holder . join second ball and k 32
    Work across first 18 sts. Sl these onto holder. Join second ball. K 32. → work across first 18 sts . sl these onto holder | join second ball | k 32
    Work across first 18 sts. Sl these onto holder. K 4 rows. → work across first 18 sts . sl these onto holder | k 4 rows
    Cast on 18 sts. Place on holder. Bind off 2 sts. → cast on 18 sts | place on holder | bind off 2 sts
    K 18 rows. Place on holder. Bind off 2 sts. → k 18 rows | place on holder | bind off 2 sts
    bind off 22 sts; on last 18 sts work for 4 cm → bind off 22 sts | on last 18 sts work for 4 cm
    bind off 22 sts, on the last 18 sts knit 5 rows → bind off 22 sts | on the last 18 sts knit 5 rows
    bind off 22 sts and on the remaining 26 sts knit 5 rows → bind off 22 sts | on the remaining 26 sts knit 5 rows
    bind off 22 sts; on last 18 sts k2 → bind off 22 sts ; on last 18 sts k 2
    bind off 22 sts; on last few sts work for 4 cm → bind off 22 sts | on last few sts work for 4 cm
    bind off 22 sts; over these other 18 sts work even → bind off 22 sts | over these other 18 sts work even
    bind off 22 sts; at last 18 sts work for 4 cm → bind off 22 sts ; at last 18 sts work for 4 cm
    bind off 22 sts and work to correspond → bind off 22 sts | work to correspond
    bind off 22 sts and work to correspond with first side → bind off 22 sts and work to correspond with first side
    bind off and work to correspond → bind off and work to correspond
    bind off 22 sts and continue work on the remaining 28 sts as follows → bind off 22 sts | continue work on the remaining 28 sts as follows
    bind off 22 sts and continue on the remaining 28 sts as follows → bind off 22 sts | continue on the remaining 28 sts as follows
    bind off 22 sts and continue on 28 sts → bind off 22 sts and continue on 28 sts
    bind off 22 sts and continue in rib on the remaining 28 sts → bind off 22 sts and continue in rib on the remaining 28 sts
  `,
  sizes: `
    Cast on 44 sts. (10 yrs. - 48 sts.) (12 yrs. - 52 sts.) → 3 sizes: cast on 44 sts | cast on 48 sts | cast on 52 sts
    2: Cast on 42 sts (size 10, 46 sts) → 2 sizes: cast on 42 sts | cast on 46 sts
    2: Cast on 42 sts (size 10, 46 rows) → 1 sizes: cast on 42 sts ( size 10 , 46 rows ) | cast on 42 sts ( size 10 , 46 rows )
    2: Cast on 42 sts (46 sts) → 1 sizes: cast on 42 sts ( 46 sts ) | cast on 42 sts ( 46 sts )
    2: work twice (3 times) → 1 sizes: work twice | work 3 times
    2: work once (3 times) → 1 sizes: work once | work 3 times
    2: work twice (3 rows) → 1 sizes: work twice ( 3 rows ) | work twice ( 3 rows )
    2: work 4 times (3 times) → 1 sizes: work 4 times ( 3 times ) | work 4 times ( 3 times )
    next (next: 3rd) row → 3 sizes: next row | next row | 3 rd row
    next (next, 3rd, 3rd) row → 4 sizes: next ( next , 3 rd , 3 rd ) row | next ( next , 3 rd , 3 rd ) row | next ( next , 3 rd , 3 rd ) row | odd at 1
    4: next (next: 3rd: 3rd) and every foll 4th row → 4 sizes: next and every foll 4 th row | next and every foll 4 th row | 3 rd and every foll 4 th row | 3 rd and every foll 4 th row
    next (RS) row → 1 sizes: next ( rs ) row | next ( rs ) row | next ( rs ) row
    3: 4th (5th, 6th) row → 3 sizes: 4 th row | 5 th row | 6 th row
    3: 38 cm (40 cm, 42 cm) → 3 sizes: 38 cm | 40 cm | 42 cm
    2: 38 cm (15 in) → 1 sizes: 38 cm ( 15 in ) | 38 cm ( 15 in )
    2: 38 cm (40 cm) → 1 sizes: 38 cm | 40 cm
    11-1/2 (12, 12-1/2) in → 3 sizes: 11.5 in | 12 in | 12.5 in
    2½ (3, 3½) cm → 3 sizes: 2.5 cm | 3 cm | 3.5 cm
    2 1/2 (3, 3 1/2) cm → 3 sizes: 2.5 cm | 3 cm | 3.5 cm
    6½" (7, 8)" from → 3 sizes: 6.5 " from | 7 " from | 8 " from
    6½" (7", 8") from → 3 sizes: 6.5 " from | 7 " from | 8 " from
    20 (K-O, 28) sts → 3 sizes: 20 sts | 0 sts | 28 sts
    20 (-, 28) sts → 3 sizes: 20 sts | 0 sts | 28 sts
    20 (– , 28) sts → 3 sizes: 20 sts | 0 sts | 28 sts
    - (24, 28) sts → 3 sizes: 0 sts | 24 sts | 28 sts
    0 (24, 28) sts → 3 sizes: 0 sts | 24 sts | 28 sts
    k2 (24) → 1 sizes: k 2 ( 24 ) | k 2 ( 24 ) | k 2 ( 24 )
    24 (26) sts → 2 sizes: 24 ( 26 ) sts | 24 ( 26 ) sts | 24 ( 26 ) sts
    24 (26) k → 1 sizes: 24 ( 26 ) k | 24 ( 26 ) k | 24 ( 26 ) k
    2: 24 (26) sts → 2 sizes: 24 sts | 26 sts
    bind off 3-2-1-1 sts → 1 sizes: bind off 3 - 2 - 1 - 1 sts | bind off 3 - 2 - 1 - 1 sts | bind off 3 - 2 - 1 - 1 sts
    4: bind off 3-2-1-1 sts → 1 sizes: bind off 3 - 2 - 1 - 1 sts | bind off 3 - 2 - 1 - 1 sts | bind off 3 - 2 - 1 - 1 sts | bind off 3 - 2 - 1 - 1 sts
    4: bind off 3-4-5-6 sts → 4 sizes: bind off 3 sts | bind off 4 sts | bind off 5 sts | bind off 6 sts
    4: cast on 30-40-50-60 sts → 4 sizes: cast on 30 sts | cast on 40 sts | cast on 50 sts | cast on 60 sts
    5: (34) 37-44-48 (55) sts → 5 sizes: 34 sts | 37 sts | 44 sts | 48 sts | 55 sts
    5: (34) 37-44-48-52 (55) sts → 6 sizes: ( 34 ) 37 - 44 - 48 - 52 ( 55 ) sts | ( 34 ) 37 - 44 - 48 - 52 ( 55 ) sts | ( 34 ) 37 - 44 - 48 - 52 ( 55 ) sts | ( 34 ) 37 - 44 - 48 - 52 ( 55 ) sts | ( 34 ) 37 - 44 - 48 - 52 ( 55 ) sts
    3: (34) 37-44 sts → 3 sizes: 34 sts | 37 sts | 44 sts
    3: 20 (24, 28), 32 sts → 3 sizes: 20 , 32 sts | 24 , 32 sts | 28 , 32 sts
    4: 20 (24, 28), 32 sts → 3 sizes: 20 sts | 24 sts | 28 sts | 32 sts
    4: 20 (24, 28)-32 sts → 3 sizes: 20 sts | 24 sts | 28 sts | 32 sts
    4: 20 (24, 28) and 32 sts → 3 sizes: 20 sts | 24 sts | 28 sts | 32 sts
    5: 20 (24, 28) 30, 32 sts → 3 sizes: 20 sts | 24 sts | 28 sts | 30 sts | 32 sts
    2: On size 4 only: 20 (24) sts → 2 sizes: on size 4 only : 20 sts | on size 4 only : 24 sts
  `,
};

describe.each(Object.entries(cuts))('%s', (room, lines) => {
  it.each(table(lines))('$line', expectCut(room as keyof typeof readings));
});
