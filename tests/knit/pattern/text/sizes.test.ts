import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectCut } from './cut.ts';

/** How patterns are usually set: common practice, no published source. */
describe('a list of sizes is read for each of them', () => {
  it.each(
    table(`
      92,100,108, then 4 → 1 sizes: 92 , then 4 | 100 , then 4 | 108 , then 4
      4: 92-100-108-116-k 4 → 4 sizes: 92 - k 4 | 100 - k 4 | 108 - k 4 | 116 - k 4
      92/100/108/ k → 1 sizes: 92 / k | 100 / k | 108 / k
      Cast on 20 (24, 28) sts → 3 sizes: cast on 20 sts | cast on 24 sts | cast on 28 sts
      Cast on 20, (24, 28 ) sts → 1 sizes: cast on 20 sts | cast on 24 sts | cast on 28 sts
      Cast on 20 [24: 28] sts → 3 sizes: cast on 20 sts | cast on 24 sts | cast on 28 sts
      Cast on 20 {24; 28} sts → 3 sizes: cast on 20 sts | cast on 24 sts | cast on 28 sts
      Cast on 20 (24 - 28) sts → 3 sizes: cast on 20 sts | cast on 24 sts | cast on 28 sts
      Cast on 20 (24 / 28) sts → 3 sizes: cast on 20 sts | cast on 24 sts | cast on 28 sts
      Cast on 20 (24 | 28) sts → 3 sizes: cast on 20 sts | cast on 24 sts | cast on 28 sts
      Cast on 20 (24) 28 sts → 1 sizes: cast on 20 sts | cast on 24 sts | cast on 28 sts
      Cast on 20 (24), 28 sts → 1 sizes: cast on 20 sts | cast on 24 sts | cast on 28 sts
      Cast on 20 (24) and 28 sts → 1 sizes: cast on 20 sts | cast on 24 sts | cast on 28 sts
      Cast on 20 (24) (28) sts → 3 sizes: cast on 20 sts | cast on 24 sts | cast on 28 sts
      4: Cast on 20 (24, 28) 32 sts → 3 sizes: cast on 20 sts | cast on 24 sts | cast on 28 sts | cast on 32 sts
      4: Cast on 20 (24)–26, 28 sts → 1 sizes: cast on 20 sts | cast on 24 sts | cast on 26 sts | cast on 28 sts
      4: Cast on 20 (24) (26) (28) sts → 4 sizes: cast on 20 sts | cast on 24 sts | cast on 26 sts | cast on 28 sts
      4: Cast on 20 (24, 28) k sts → 3 sizes: cast on 20 ( 24 , 28 ) k sts | cast on 20 ( 24 , 28 ) k sts | cast on 20 ( 24 , 28 ) k sts | cast on 20 ( 24 , 28 ) k sts | odd at 9
      4: Cast on 20 (24) (26, k) sts → 1 sizes: cast on 20 ( 24 ) ( 26 , k ) sts | cast on 20 ( 24 ) ( 26 , k ) sts | cast on 20 ( 24 ) ( 26 , k ) sts | cast on 20 ( 24 ) ( 26 , k ) sts
      5: Cast on 20 (24) - 26 (28, 30) sts → 3 sizes: cast on 20 sts | cast on 24 sts | cast on 26 sts | cast on 28 sts | cast on 30 sts
      2: Dec on 3rd (next) row → 2 sizes: dec on 3 rd row | dec on next row
      Cast on 20/24/28 sts → 1 sizes: cast on 20 sts | cast on 24 sts | cast on 28 sts
      Cast on 20, 24, 28 sts → 1 sizes: cast on 20 sts | cast on 24 sts | cast on 28 sts
      Cast on 20, 24, 28, 32 sts → 1 sizes: cast on 20 , 24 , 28 , 32 sts | cast on 20 , 24 , 28 , 32 sts | cast on 20 , 24 , 28 , 32 sts
      Rows 2, 4, 6 sts → 1 sizes: rows 2 , 4 , 6 sts | rows 2 , 4 , 6 sts | rows 2 , 4 , 6 sts
      Row 2, 4, 6 sts → 1 sizes: row 2 , 4 , 6 sts | row 2 , 4 , 6 sts | row 2 , 4 , 6 sts
      Rnd 2, 4, 6 sts → 1 sizes: rnd 2 , 4 , 6 sts | rnd 2 , 4 , 6 sts | rnd 2 , 4 , 6 sts
      Rnds 2, 4, 6 sts → 1 sizes: rnds 2 , 4 , 6 sts | rnds 2 , 4 , 6 sts | rnds 2 , 4 , 6 sts
      Round 2, 4, 6 sts → 1 sizes: round 2 , 4 , 6 sts | round 2 , 4 , 6 sts | round 2 , 4 , 6 sts
      Rounds 2, 4, 6 sts → 1 sizes: rounds 2 , 4 , 6 sts | rounds 2 , 4 , 6 sts | rounds 2 , 4 , 6 sts
      And 2, 4, 6 sts → 1 sizes: and 2 , 4 , 6 sts | and 2 , 4 , 6 sts | and 2 , 4 , 6 sts
      To 2, 4, 6 sts → 1 sizes: to 2 , 4 , 6 sts | to 2 , 4 , 6 sts | to 2 , 4 , 6 sts
      2: K20, 24 sts → 1 sizes: k 20 , 24 sts | k 20 , 24 sts
      K2, 3, 4; 5 → 1 sizes: k 2 , 3 , 4 ; 5 | k 2 , 3 , 4 ; 5 | k 2 , 3 , 4 ; 5
      K20-24-28 sts → 1 sizes: k 20 - 24 - 28 sts | k 20 - 24 - 28 sts | k 20 - 24 - 28 sts
      K20/24,k sts → 1 sizes: k 20 / 24 , k sts | k 20 / 24 , k sts | k 20 / 24 , k sts
      2: k2 (24) sts → 2 sizes: k 2 sts | k 24 sts
      2: k2 (24 sts) → 1 sizes: k 2 ( 24 sts ) | k 2 ( 24 sts )
      2: k2 (24) st → 2 sizes: k 2 st | k 24 st
      2: k2 (24) stitches → 2 sizes: k 2 stitches | k 24 stitches
      2: k2 (24) cm → 2 sizes: k 2 cm | k 24 cm
      2: k2 (24) in → 2 sizes: k 2 in | k 24 in
      2: k2 (24) times → 2 sizes: k 2 times | k 24 times
      2: k2 (24) rows → 2 sizes: k 2 rows | k 24 rows
      2: k2 (24) row → 2 sizes: k 2 row | k 24 row
      2: k2 (24) more → 2 sizes: k 2 more | k 24 more
      2: k2 (24) " → 2 sizes: k 2 " | k 24 "
      2: k2 (24) p2 → 1 sizes: k 2 p 2 | k 24 p 2
      2: (k2 (24)) → 2 sizes: ( k 2 ) | ( k 24 )
      1: K2 (3, 4) sts → 3 sizes: k 2 ( 3 , 4 ) sts
      K10 (12, 14, 16) sts, k 2 (3, 4) → 4 sizes: k 10 ( 12 ) sts , k 2 | k 10 ( 14 ) sts , k 3 | k 10 ( 16 ) sts , k 4 | odd at 2
      Every 4th (5th, 6th) row → 3 sizes: every 4 th row | every 5 th row | every 6 th row
      inc in next (3rd, 5th) row → 3 sizes: inc in next row | inc in 3 rd row | inc in 5 th row
      inc in next (RS) row → 1 sizes: inc in next ( rs ) row | inc in next ( rs ) row | inc in next ( rs ) row
      Every 1st (2nd, 3rd) row → 3 sizes: every 1 st row | every 2 nd row | every 3 rd row
      38 cm (40 cm, 42 cm) long → 3 sizes: 38 cm long | 40 cm long | 42 cm long
      38 cm (15 in) long → 1 sizes: 38 cm ( 15 in ) long | 38 cm ( 15 in ) long | 38 cm ( 15 in ) long
      2: 38 cm (40 cm) long → 1 sizes: 38 cm long | 40 cm long
      2: 38 cm (15 in) long → 1 sizes: 38 cm ( 15 in ) long | 38 cm ( 15 in ) long
      15 (15½, 16) in → 3 sizes: 15 in | 15.5 in | 16 in
      15 (15 ½, 16) in → 3 sizes: 15 in | 15.5 in | 16 in
      15 (15 1/2, 16) in → 3 sizes: 15 in | 15.5 in | 16 in
      15 (15 1/17, 16) in → 1 sizes: 15 ( 15 1 ) in | 15 ( 15 17 ) in | 15 ( 15 16 ) in
      15 (15 3/2, 16) in → 1 sizes: 15 ( 15 3 ) in | 15 ( 15 2 ) in | 15 ( 15 16 ) in
      15 1/2 (16, 17) in → 3 sizes: 15.5 in | 16 in | 17 in
      0 (2, 3) sts → 3 sizes: 0 sts | 2 sts | 3 sts
      – (2, 3) sts → 3 sizes: 0 sts | 2 sts | 3 sts
      2 (–, 3) sts → 3 sizes: 2 sts | 0 sts | 3 sts
      2 (-, 3) sts → 3 sizes: 2 sts | 0 sts | 3 sts
      2 (3, –) sts → 3 sizes: 2 sts | 3 sts | 0 sts
      K-O (2, 3) sts → 3 sizes: 0 sts | 2 sts | 3 sts
      2 (K-O, 3) sts → 3 sizes: 2 sts | 0 sts | 3 sts
      k – (2, 3) sts → 3 sizes: k 0 sts | k 2 sts | k 3 sts
      k-2 (2, 3) sts → 3 sizes: k - 2 sts | k - 2 sts | k - 3 sts
      k- (2, 3) sts → 3 sizes: k 0 sts | k 2 sts | k 3 sts
      Every 4th (–, 6th) row → 3 sizes: every 4 th row | every 0 th row | every 6 th row
      – (4th, 6th) row → 3 sizes: 0 th row | 4 th row | 6 th row
      20 (24, k) sts → 1 sizes: 20 ( 24 , k ) sts | 20 ( 24 , k ) sts | 20 ( 24 , k ) sts
      20 (24 28) sts → 1 sizes: 20 ( 24 28 ) sts | 20 ( 24 28 ) sts | 20 ( 24 28 ) sts
      20 (24, 28 sts → 1 sizes: 20 ( 24 , 28 sts | 20 ( 24 , 28 sts | 20 ( 24 , 28 sts
      20 (24, 28) (30, 32) sts → 5 sizes: 20 ( 30 , 32 ) sts | 24 ( 30 , 32 ) sts | 28 ( 30 , 32 ) sts
      20 (24; 28), 5 sts → 3 sizes: 20 , 5 sts | 24 , 5 sts | 28 , 5 sts
      3 (4, 5) (6 sts → 3 sizes: 3 ( 6 sts | 4 ( 6 sts | 5 ( 6 sts
      (2, 3, 4) sts → 1 sizes: ( 2 ) sts | ( 3 ) sts | ( 4 ) sts
      4 st (5 st, 6 st) → 1 sizes: 4 st ( 5 st , 6 st ) | 4 st ( 5 st , 6 st ) | 4 st ( 5 st , 6 st )
      4 mm; 5 mm (6 mm) → 1 sizes: 4 mm ; 5 mm ( 6 mm ) | 4 mm ; 5 mm ( 6 mm ) | 4 mm ; 5 mm ( 6 mm )
      4 in) 5 in] 6 in; 7 → 1 sizes: 4 in ) 5 in ] 6 in ; 7 | 4 in ) 5 in ] 6 in ; 7 | 4 in ) 5 in ] 6 in ; 7
      4 in (5 in, 6 in) → 3 sizes: 4 in | 5 in | 6 in
      4 in (5 in; 6 in] → 1 sizes: 4 in ( 5 in ; 6 in ] | 4 in ( 5 in ; 6 in ] | 4 in ( 5 in ; 6 in ]
      4 st) (5 st, 6 st) → 1 sizes: 4 st ) ( 5 st , 6 st ) | 4 st ) ( 5 st , 6 st ) | 4 st ) ( 5 st , 6 st )
      1 st (2nd, 3rd) row → 1 sizes: 1 st ( 2 nd , 3 rd ) row | 1 st ( 2 nd , 3 rd ) row | 1 st ( 2 nd , 3 rd ) row
      15 1/2 in (16 1/2 in, 17 in) → 3 sizes: 15.5 in | 16.5 in | 17 in
      15 1 / 2 2 (16, 17) → 3 sizes: 15 1 / 2 2 | 15 1 / 2 16 | 15 1 / 2 17
      15 1 2 (16, 17) → 3 sizes: 15 1 2 | 15 1 16 | 15 1 17
    `),
  )('$line', expectCut('sizes'));

  it.each(
    table(`
      44 sts. (10 yrs.—48 sts.) (12 yrs.—52 sts.) on needle → 3 sizes: 44 sts on needle | 48 sts on needle | 52 sts on needle
      44 sts (size 10, 46 sts) (size 12, 48 sts) on → 3 sizes: 44 sts on | 46 sts on | 48 sts on
      44 sts (46 sts size 10) on → 1 sizes: 44 sts ( 46 sts size 10 ) on | 44 sts ( 46 sts size 10 ) on | 44 sts ( 46 sts size 10 ) on
      44 sts (46 sts, size 10) (48 sts, size 12) on → 3 sizes: 44 sts on | 46 sts on | 48 sts on
      44 sts (48 sts) on → 1 sizes: 44 sts ( 48 sts ) on | 44 sts ( 48 sts ) on | 44 sts ( 48 sts ) on
      44 sts (10 yrs 48 rows) on → 1 sizes: 44 sts ( 10 yrs 48 rows ) on | 44 sts ( 10 yrs 48 rows ) on | 44 sts ( 10 yrs 48 rows ) on
      44 sts (10 48 sts) on → 1 sizes: 44 sts ( 10 48 sts ) on | 44 sts ( 10 48 sts ) on | 44 sts ( 10 48 sts ) on
      44 rows (10 yrs 48 rows) on → 1 sizes: 44 rows ( 10 yrs 48 rows ) on | 44 rows ( 10 yrs 48 rows ) on | 44 rows ( 10 yrs 48 rows ) on
      6½" (7, 8)" on → 3 sizes: 6.5 " on | 7 " on | 8 " on
      6 in (7, 8) in on → 3 sizes: 6 in on | 7 in on | 8 in on
      6 in (7 in, 8) in on → 1 sizes: 6 in ( 7 in , 8 ) in on | 6 in ( 7 in , 8 ) in on | 6 in ( 7 in , 8 ) in on
      6 in (7, 8) cm on → 1 sizes: 6 in ( 7 , 8 ) cm on | 6 in ( 7 , 8 ) cm on | 6 in ( 7 , 8 ) cm on
      next (2nd, 3rd) row → 3 sizes: next row | 2 nd row | 3 rd row
      next (next, 3rd) row → 3 sizes: next row | next row | 3 rd row
      next (RS) row → 1 sizes: next ( rs ) row | next ( rs ) row | next ( rs ) row
      3rd (next, 5th) row → 3 sizes: 3 rd row | next row | 5 th row
      on next (2 in, 3) row → 1 sizes: on next ( 2 in , 3 ) row | on next ( 2 in , 3 ) row | on next ( 2 in , 3 ) row
    `),
  )('by ages, by units behind them all, and among ordinals: $line', expectCut('sizes'));

  it.each(
    table(`
      2: Dec 1 st twice (3 times) more → 1 sizes: dec 1 st twice more | dec 1 st 3 times more
      2: Dec 1 st once (twice) more → 1 sizes: dec 1 st once ( twice ) more | dec 1 st once ( twice ) more
      2: Dec 1 st once (2 times), k → 1 sizes: dec 1 st once , k | dec 1 st 2 times , k
      3: Dec 1 st twice (3 times) more → 1 sizes: dec 1 st twice ( 3 times ) more | dec 1 st twice ( 3 times ) more | dec 1 st twice ( 3 times ) more
      2: Dec 1 st twice (3 rows) more → 1 sizes: dec 1 st twice ( 3 rows ) more | dec 1 st twice ( 3 rows ) more
      2: Dec 1 st twice (3 times more) k → 1 sizes: dec 1 st twice ( 3 times more ) k | dec 1 st twice ( 3 times more ) k
      1: K 20 (24) sts → 2 sizes: k 20 ( 24 ) sts
      2: K 20 (24) sts → 2 sizes: k 20 sts | k 24 sts
    `),
  )('how often, a word beside a number: $line', expectCut('sizes'));
});
