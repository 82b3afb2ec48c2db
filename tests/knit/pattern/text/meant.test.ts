import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectCut } from './cut.ts';

/** How patterns are usually set: common practice, no published source. */
describe('a sentence for some sizes is read for those', () => {
  it.each(
    table(`
      {For size S only: k|For size S only, k|For size S only. k|For size S only - k|Size S only k|For sizes S only: k|Size S: k|Sizes S: k|For size S: k} → S: k
      For sizes S and M only: k → S M: k
      For sizes S or M only: k → S M: k
      Sizes M, L: k → M L: k
      {All sizes: k|For all sizes: k|For all sizes k|All size: k} → S M L: k
      {2nd size only: k|For 2nd size only k} → M: k
      1st and 3rd sizes only: k → S L: k
      For sizes 1st only: k → S: k
      S only: k → S M L: s only : k
      For size XL only: k → S M L: for size xl only : k
      For size only: k → S M L: for size only : k
      Only: k → S M L: only : k
      Size S k → S M L: size s k
      S: k → S M L: s : k
      K 1 row → S M L: k 1 row
      For all k → S M L: for all k
      For one two three four five six seven eight nine ten eleven twelve new old red blue size S only: k → S M L: for 1 2 3 4 5 6 7 8 9 10 11 12 new old red blue size s only : k
      For size one two three four five six seven eight nine ten new old red blue S only: k → S: k
      3 st size only: k → L: k
      For size S, M only: k → S M: k
      For size (S) only: k → S: k
      For size 1st or 2nd only: k → S M: k
    `),
  )('$line', expectCut('meant'));
});
