import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectCut } from './cut.ts';

/** How some patterns set their sizes: common practice, no published source. */
describe('a list of sizes with every second one in brackets', () => {
  it.each(
    table(`
      4: Cast on 96 (104) 112 (120) sts → 4 sizes: cast on 96 sts | cast on 104 sts | cast on 112 sts | cast on 120 sts
      3: Cast on [96] 104 [112] sts → 3 sizes: cast on 96 sts | cast on 104 sts | cast on 112 sts
      3: Dec [5] 5 [4] times → 2 sizes: dec 5 times | dec 5 times | dec 4 times
      4: Dec 5 (5) 4 (4) times → 2 sizes: dec 5 times | dec 5 times | dec 4 times | dec 4 times
      2: Work 6 (8) rows → 2 sizes: work 6 rows | work 8 rows
      1: Cast on 20 (24) 18 (12) sts → 2 sizes: cast on 20 ( 24 ) 18 ( 12 ) sts
      1: K 2 (3) 4 (5) p → 4 sizes: k 2 ( 3 ) 4 ( 5 ) p
    `),
  )('$line', expectCut('sizes'));
});
