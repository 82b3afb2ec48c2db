import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectCut, type readings } from './cut.ts';

/** What ends a line, a sentence or a size's order, beside what looks like it and ends none. How patterns are usually set: common practice, no published source. */
const cuts: Readonly<Record<string, string>> = {
  lines: `
    Cast on 40 (44, ¶  ¶ then 48) sts → 1: Cast on 40 (44, | 3: then 48) sts
    Cast on 40 (44, ¶  ¶ 48) sts → 1-3: Cast on 40 (44, 48) sts
    Cast on 40 (44 ¶  ¶ 48) sts → 1: Cast on 40 (44 | 3: 48) sts
    K 12 sts ¶ (13, 15) sts more → 1: K 12 sts | 2: (13, 15) sts more
    On next row 12 ¶ [13, 15] sts → 1-2: On next row 12 [13, 15] sts
    On next row 12 ¶ (a, b) sts → 1: On next row 12 | 2: (a, b) sts
    On next row 12 ¶ [13] sts → 1: On next row 12 | 2: [13] sts
    of the next 4 ¶ rows 2 sts → 1-2: of the next 4 rows 2 sts
    k2, p2 over 4 ¶ rows 2 and 4: knit → 1: k2, p2 over 4 | 2: rows 2 and 4: knit
    k2, p 4 ¶ rows 2 and 3 → 1: k2, p 4 | 2: rows 2 and 3
    Dec at beg of ¶ next 6 rows → 1-2: Dec at beg of next 6 rows
    Dec at both ends ¶ next 6 rows → 1: Dec at both ends | 2: next 6 rows
    K2 to last st, k1 ¶ 7 more rows in rib → 1: K2 to last st, k1 | 2: 7 more rows in rib
    K to end of row ¶ Section 2 → 1: K to end of row | 2: Section 2
    K to end of row ¶ k5 (k6) more → 1: K to end of row | 2: k5 (k6) more
    K to end of ¶ Section 2 → 1-2: K to end of Section 2
    Row 1: *K2, p2. ¶ Repeat from * to end. → 1-2: Row 1: *K2, p2. Repeat from * to end.
    Row 1: *K2, p2. ¶ Repeat from ** to end. → 1: Row 1: *K2, p2. | 2: Repeat from ** to end.
    Row 1: K2, p2. ¶ Repeat from * to end. → 1: Row 1: K2, p2. | 2: Repeat from * to end.
    Row 1: *K2, *p2. ¶ Rep from the * to end. → 1: Row 1: *K2, *p2. | 2: Rep from the * to end.
    *Work 4 rows. ¶ Repeat from * twice. → 1: *Work 4 rows. | 2: Repeat from * twice.
    * C4F, k2. ¶ Rep from * to end. → 1-2: * C4F, k2. Rep from * to end.
    • Cast on 40 sts ¶ • Knit 6 rows → 1: Cast on 40 sts | 2: Knit 6 rows
    – Cast on 40 sts ¶ – Knit 6 rows → 1: Cast on 40 sts | 2: Knit 6 rows
    - cast on 40 sts ¶ - knit 6 rows → 1: - cast on 40 sts | 2: - knit 6 rows
    12. Cast on 40 sts ¶ 13) Knit 6 rows → 1: Cast on 40 sts | 2: Knit 6 rows
    123. Cast on 40 sts → 1: 123. Cast on 40 sts
    Step 2: Work in rib ¶ step 3. Bind off → 1: Work in rib | 2: Bind off
    Step by step ¶ Knit → 1: Step by step | 2: Knit
    2 Work in rib ¶ 3 Bind off → 1: Work in rib | 2: Bind off
    2 Rows A ¶ 2 Rows B → 1-2: 2 Rows A 2 Rows B
    A ¶ B ¶  ¶ C → 1-2: A B | 4: C
    Knit to last 3 sts (10, ¶ 11, 12) → 1-2: Knit to last 3 sts (10, 11, 12)
    Knit [10- ¶ 11-12] rows → 1-2: Knit [10- 11-12] rows
    Knit [10; ¶ 11] rows → 1-2: Knit [10; 11] rows
    Knit [10 ¶ 11] rows → 1-2: Knit [10 11] rows
    Work in rib until it measures 4 cm ¶ (5 cm) in all → 1-2: Work in rib until it measures 4 cm (5 cm) in all
    Work in rib ¶ (5 cm) in all → 1: Work in rib | 2: (5 cm) in all
    Work in rib for some ¶ sts, k to end → 1-2: Work in rib for some sts, k to end
    Work in rib ¶ sts, k to end → 1: Work in rib | 2: sts, k to end
    Work a lot in rib ¶ row. 7 sts → 1: Work a lot in rib | 2: row. 7 sts
    Work a whole lot in the rib ¶ row. 7 sts → 1-2: Work a whole lot in the rib row. 7 sts
    Work a whole lot in the rib ¶ row 7 sts → 1: Work a whole lot in the rib | 2: row 7 sts
    Work a whole lot in the rib ¶ rows: 7 sts → 1: Work a whole lot in the rib | 2: rows: 7 sts
    3: K1, ssk ¶ 4: K2 → 1: 3: K1, ssk | 2: 4: K2
    k2, p2 ¶ 4-6: as rows 1-2 → 1: k2, p2 | 2: 4-6: as rows 1-2
    Work a whole lot in the rib ¶ 2nd row: k → 1: Work a whole lot in the rib | 2: 2nd row: k
    Work a whole lot in the rib ¶ *k2, p2 → 1: Work a whole lot in the rib | 2: *k2, p2
    Work a whole lot in the rib ¶ (k2, p2) → 1: Work a whole lot in the rib | 2: (k2, p2)
  `,
  sentences: `
    Work 4 rows. [Size L only: k 2 rows.] Bind off → work 4 rows | [ size l only : k 2 rows . ] | bind off
    Work 4 rows [size L only] → work 4 rows [ size l only ]
    Work 4 rows (size L only) → work 4 rows ( size l only )
    Work 4 rows. (For size L: k 2 rows.) Bind off → work 4 rows | ( for size l : k 2 rows . ) | bind off
    Work 4 rows. (size L k 2 rows) Bind off → work 4 rows | ( size l k 2 rows ) bind off
    Work 4 rows. (Size L only. k 2) Bind off → work 4 rows | ( size l only . k 2 ) | bind off
    1st row.- K2, p2 → 1 st row . - k 2 , p 2
    1st row. - K2, p2 → 1 st row . - k 2 , p 2
    Knit. - Purl → knit | - purl
    1st row. K2, p2 → 1 st row . k 2 , p 2
    1st row. Then p2 → 1 st row | then p 2
    1st row: (RS). K2. → 1 st row : ( rs ) . k 2
    1st row (RS). K2. → 1 st row ( rs ) . k 2
    1st row (abc). K2. → 1 st row ( abc ) | k 2
    Next row: (WS). P2. → next row : ( ws ) . p 2
    Next row. Patt to last 10 sts → next row . patt to last 10 sts
    next row. Patt to last 10 sts → next row | patt to last 10 sts
    Next row. Bind off → next row . bind off
    Work next row. Patt to end → work next row | patt to end
    2nd and every foll alt row. P → 2 nd and every foll alt row . p
    2nd and every alt row. P → 2 nd and every alt row . p
    2nd and all WS rows. P → 2 nd and all ws rows . p
    2nd and every row. P → 2 nd and every row | p
    2nd and 4th rows. P → 2 nd and 4 th rows . p
    Row 1: (k1, p1) to end of row Rep row 1 seven times more → row 1 : ( k 1 , p 1 ) to end of row | rep row 1 7 times more
    Row 1: (k1, p1) to end of row rep row 1 seven times more → row 1 : ( k 1 , p 1 ) to end of row rep row 1 7 times more
    Row 1: (k1, p1) to end Rep from * to end → row 1 : ( k 1 , p 1 ) to end rep from * to end
    Work (k1, p1) to end Rep row 1 → work ( k 1 , p 1 ) to end rep row 1
    Row 1: k to end Rep row 1 → row 1 : k to end | rep row 1
    work 3, bind off 2, work to end; on next row, cast on 2 over those bound off → work 3 , bind off 2 , work to end ; | on next row , cast on 2 over those bound off
    work 3, bind off 2, work to end, in the next row: cast on 2 over them → work 3 , bind off 2 , work to end , | in the next row : cast on 2 over them
    work 3, bind off 2, work to end then next row cast on 2 over them → work 3 , bind off 2 , work to end then | next row cast on 2 over them
    work 3, bind off 2, work to end; on next row, cast on 2 → work 3 , bind off 2 , work to end ; on next row , cast on 2
    work 3, bind off 2, work to end on next row, cast on 2 over them → work 3 , bind off 2 , work to end on next row , cast on 2 over them
    Next row: cast off 5 sts. Knit to end. → next row : cast off 5 sts . knit to end
    Next row: cast off 5 sts. Knit to the end. → next row : cast off 5 sts . knit to the end
    Next row: cast off 5 sts. Knit to last st. → next row : cast off 5 sts | knit to last st
    Next row: knit 5 sts. Knit to end. → next row : knit 5 sts . knit to end
    3rd row. k5. purl to end → 3 rd row . k 5 . purl to end
    3rd row. k5. Purl to end → 3 rd row . k 5 | purl to end
    3rd row. k5. purl to last st → 3 rd row . k 5 | purl to last st
    k5. purl to end → k 5 | purl to end
    1st row: *K2, p2. Repeat from * to end. → 1 st row : * k 2 , p 2 . repeat from * to end
    1st row: *K2, p2. Repeat from the * to end. → 1 st row : * k 2 , p 2 . repeat from the * to end
    1st row: *K2, p2. Repeat from ** to end. → 1 st row : * k 2 , p 2 | repeat from * * to end
    *Work 4 rows. Repeat from * twice. → * work 4 rows | repeat from * twice
    *K2 rows. Repeat from * twice. → * k 2 rows | repeat from * twice
    *K 2 rows. Repeat from * twice. → * k 2 rows | repeat from * twice
    1st row: *K2, p2, rep from * to end. Repeat from * once → 1 st row : * k 2 , p 2 , rep from * to end | repeat from * once
    Knit to last 4 sts. K2tog, yo, k2. → knit to last 4 sts . k 2 tog , yo , k 2
    Knit to last st. K2tog. → knit to last st . k 2 tog
    Knit to last 4 sts. Knit 2 rows. → knit to last 4 sts | knit 2 rows
    Knit to last 4 sts. Bind off → knit to last 4 sts | bind off
    Knit to last. K2 → knit to last | k 2
    Knit last 4 sts. K2tog. → knit last 4 sts | k 2 tog
    Work in K1.P1 rib → work in k 1 . p 1 rib
    Work K.1. P.1. rib → work k 1 . p 1 . rib
    Work K1. P1 rows → work k 1 | p 1 rows
    Decrease Row (RS): k → decrease row ( rs ) : k
    Next 7 Rows: k → next 7 rows : k
    Work Row 3: k → work row 3 : k
    Then Row 3: k → then | row 3 : k
    k2 Row 3: p → k 2 | row 3 : p
    k2, Next row: p → k 2 , next row : p
    Knit! Purl? Rib → knit | purl | rib
    Knit (all. of it). Purl → knit ( all . of it ) | purl
    Work ((a) b). Next → work ( ( a ) b ) | next
    Work a) b. Next → work a ) b | next
  `,
  'size-names': `
    Sizes: S (34) M (38) → S | 34 | M | 38
    Sizes S (M, L) → S | M | L
    Size 4. Changes for sizes 6 and 8 are in parentheses → 4 | 6 | 8
    Directions are given for size 34.  Changes for sizes 36 and 38 given in brackets → 34 | 36 | 38
    Size 2 years – sizes 4 and 6 years in brackets → 2 | 4 | 6
    Size 2. Changes for sizes 4 in brackets → 2 | 4
    Size 2½. Changes for sizes 4¼ and 6.5 are in parentheses → 2½ | 4¼ | 6.5
    To fit: S (M, L) → S | M | L
    Sizes: small, medium and large → small | medium | large
    Sizes: small; medium; large → small | medium | large
    Sizes: small | medium | large → small | medium | large
    Sizes: small - medium - large → small | medium | large
    Sizes: small-medium-large → 
    Size: 9 months, Gauge: 8 sts to 1 in → 
    Sizes: a very long name of a size, M → 
    Sizes: a long name of it, M → 
    Sizes: size S, size M → S | M
  `,
  meant: `
    For size L only: k 2 → L: k 2
    For sizes S and L only: k 2 → S L: k 2
    For sizes S, M only, k 2 → S M: k 2
    On the sizes 1 and 3 only: k 2 → S L: k 2
    Sizes 1 and 3 only: k 2 → S L: k 2
    Sizes 1 and 4 only: k 2 → S M L: sizes 1 and 4 only : k 2
    All sizes: k 2 → S M L: k 2
    For all 3 sizes: k 2 → S M L: k 2
    All sizes k 2 → S M L: k 2
    All rows: k 2 → S M L: all rows : k 2
    For the largest size only: k 2 → L: k 2
    For the smallest size only: k 2 → S: k 2
    For the larger size only: k 2 → S M L: for the larger size only : k 2
    Second size only: k 2 → M: k 2
    2nd size only: k 2 → M: k 2
    2nd and 3rd sizes only: k 2 → M L: k 2
    First and third sizes only: k 2 → S L: k 2
    Size XL only: k 2 → S M L: size xl only : k 2
    Size L: k 2 → L: k 2
    L only: k 2 → S M L: l only : k 2
    For L only: k 2 → S M L: for l only : k 2
    Size L, k 2 → S M L: size l , k 2
    Dec 1 st at each end (size L only) → S M L: dec 1 st at each end ( size l only )
    Sizes S, M and L only - k 2 → S M L: k 2
    Size S or L only: k 2 → S L: k 2
  `,
};

describe.each(Object.entries(cuts))('%s', (room, lines) => {
  it.each(table(lines))('$line', expectCut(room as keyof typeof readings));
});
