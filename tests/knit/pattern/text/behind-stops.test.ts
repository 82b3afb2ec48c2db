import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectCut } from './cut.ts';

/** How patterns are usually set: common practice, no published source. What goes on is one row; what does not is another sentence. */
describe('behind a full stop', () => {
  it.each(
    table(`
      1st row.-K → 1 st row . - k
      Bind off 5 sts. K to end. P → bind off 5 sts . k to end | p
      Cast off 5 sts. P to end → cast off 5 sts . p to end
      BO 5 sts. Work to end → bo 5 sts . work to end
      Cast off 5 sts. Patt to end → cast off 5 sts . patt to end
      Cast off 5 sts. Rib to end → cast off 5 sts . rib to end
      *K2, p2. Repeat from * to end → * k 2 , p 2 . repeat from * to end
      *K2, p2. Repeat from the * to end → * k 2 , p 2 . repeat from the * to end
      *Sl 1, k2. Repeat from * to end → * sl 1 , k 2 . repeat from * to end
      *(K2, p2). Repeat from * to end → * ( k 2 , p 2 ) . repeat from * to end
      *Yo, k1. Repeat from * to end → * yo , k 1 . repeat from * to end
      K2. *K2, p2. Repeat from * to end → k 2 | * k 2 , p 2 . repeat from * to end
      Knit to last 4 sts. K2tog, yo, k2 → knit to last 4 sts . k 2 tog , yo , k 2
      Knit to last 4 sts. P2tog, yo, k2 → knit to last 4 sts . p 2 tog , yo , k 2
      Knit to last 4 sts. Ssk, k2 → knit to last 4 sts . ssk , k 2
      Knit to last 4 sts. Skp, k2 → knit to last 4 sts . skp , k 2
      Knit to last 4 sts. Sl 1, k2 → knit to last 4 sts . sl 1 , k 2
      Knit to last st. K1 → knit to last st . k 1
      Knit to last 1 st. K1 → knit to last 1 st . k 1
      Knit to last sts. K1 → knit to last sts . k 1
      K over 18 sts. Place on holder. Bind off 32 sts → k over 18 sts . place on holder . bind off 32 sts
      K over 18 sts. Place onto holder. Bind off 32 sts → k over 18 sts . place onto holder . bind off 32 sts
      K 18 sts. Place them on holder → k 18 sts . place them on holder
      K 18 sts. Place these on holder → k 18 sts . place these on holder
      K 18 sts. Place those on holder → k 18 sts . place those on holder
      K 18 sts. Sl on holder → k 18 sts . sl on holder
      K 18 sts. Put on holder → k 18 sts . put on holder
      K 18 sts. Leave on holder → k 18 sts . leave on holder
      K 18 sts. Transfer on holder → k 18 sts . transfer on holder
      K 18 st. Leave on holder → k 18 st . leave on holder
      K across first 18 sts. Leave on holder → k across first 18 sts . leave on holder
      K the first 18 sts. Leave on holder → k the first 18 sts . leave on holder
      P 18 sts. Leave on holder → p 18 sts . leave on holder
      Work 18 sts. Leave on holder → work 18 sts . leave on holder
      Patt 18 sts. Leave on holder → patt 18 sts . leave on holder
      Rib 18 sts. Leave on holder → rib 18 sts . leave on holder
      K over over over 18 sts. Leave on holder → k over over over 18 sts . leave on holder
      K 18 sts on holder. Bind off 32 sts → k 18 sts on holder . bind off 32 sts
      K 18 sts on holder. BO 32 sts → k 18 sts on holder . bo 32 sts
      K 18 sts on holder. Cast off 32 sts → k 18 sts on holder . cast off 32 sts
      K 18 sts on holder. K32 → k 18 sts on holder . k 32
      K 18 sts on holder. P32 → k 18 sts on holder . p 32
      P 18 sts on holder. K32 → p 18 sts on holder . k 32
      Work 18 sts on holder. K32 → work 18 sts on holder . k 32
      Next 18 sts on holder. K32 → next 18 sts on holder . k 32
      Then 18 sts on holder. K32 → then 18 sts on holder . k 32
      K 18 sts on holder until you have need of them. K32 → k 18 sts on holder until you have need of them . k 32
      K 18 sts on holder until you have need of it. K32 → k 18 sts on holder until you have need of it . k 32
      K 18 sts holder 1 2 3 4 5 6 7. K32 → k 18 sts holder 1 2 3 4 5 6 7 . k 32
      K1.P1 rib → k 1 . p 1 rib
      P1.K1 rib → p 1 . k 1 rib
      K1.P1. rib → k 1 . p 1 . rib
      K1.P1 moss rib → k 1 . p 1 moss rib
      K1. P1 rib → k 1 . p 1 rib
      K1. rib → k 1 . rib
      K1. Rib 2 → k 1 . rib 2
    `),
  )('a row goes on: $line', expectCut('sentences'));

  it.each(
    table(`
      Row 1: k - . - k → row 1 : k - | - k
      1st row. - K → 1 st row . - k
      1st of all. - K → 1 st of all | - k
      Cast off 5 sts. Yo to end → cast off 5 sts | yo to end
      Cast off 5 sts. K to marker → cast off 5 sts | k to marker
      Cast off 5 sts. K up end → cast off 5 sts | k up end
      K 5 sts. K to end → k 5 sts | k to end
      Cast off 5. K 1. K to end → cast off 5 | k 1 | k to end
      *K2, p2. Repeat from a * to end → * k 2 , p 2 | repeat from a * to end
      *K2, p2. Repeat to * → * k 2 , p 2 | repeat to *
      *K2, p2. Work from * to end → * k 2 , p 2 | work from * to end
      *K2, p2. Repeat from ** to end → * k 2 , p 2 | repeat from * * to end
      *K2, p2. Repeat from the ** to end → * k 2 , p 2 | repeat from the * * to end
      K2, p2. Repeat from * to end → k 2 , p 2 | repeat from * to end
      *K2 * p2. Repeat from * to end → * k 2 * p 2 | repeat from * to end
      *K2, rep 2. Repeat from * to end → * k 2 , rep 2 | repeat from * to end
      *K2 rows. Repeat from * twice → * k 2 rows | repeat from * twice
      *K 2 rows. Repeat from * twice → * k 2 rows | repeat from * twice
      *K row row. Repeat from * twice → * k row row | repeat from * twice
      *Work 4 rows. Repeat from * twice → * work 4 rows | repeat from * twice
      *P2 row. Repeat from * to end → * p 2 row | repeat from * to end
      *Dec 1. Repeat from * to end → * dec 1 | repeat from * to end
      *K2. K2, p2. Repeat from * to end → * k 2 | k 2 , p 2 | repeat from * to end
      Knit to last 4 sts. K 2 rows → knit to last 4 sts | k 2 rows
      Knit to last 4 sts. K 2 row → knit to last 4 sts | k 2 row
      Knit to last row. K1 → knit to last row | k 1
      Knit to first 4 sts. K1 → knit to first 4 sts | k 1
      Knit for last 4 sts. K1 → knit for last 4 sts | k 1
      Knit to last few sts. K1 → knit to last few sts | k 1
      K to last. K1 → k to last | k 1
      K 18 sts. Place next on holder → k 18 sts | place next on holder
      K 18 sts. Hold on holder → k 18 sts | hold on holder
      K 18 rows. Leave on holder → k 18 rows | leave on holder
      Yo 18 sts. Leave on holder → yo 18 sts | leave on holder
      18 sts. Leave on holder → 18 sts | leave on holder
      K few 18 sts. Leave on holder → k few 18 sts | leave on holder
      K few sts. Leave on holder → k few sts | leave on holder
      Next row 18 sts. Leave on holder → next row 18 sts | leave on holder
      Over 18 sts. Leave on holder → over 18 sts | leave on holder
      K 18 sts on holder. K to end → k 18 sts on holder | k to end
      K 18 sts on holder. K 2 rows → k 18 sts on holder | k 2 rows
      K 18 sts on holder. P 2 row → k 18 sts on holder | p 2 row
      K 18 sts on holder. Work 32 → k 18 sts on holder | work 32
      Slip 18 sts on holder. K32 → slip 18 sts on holder | k 32
      K 18 sts holder 1 2 3 4 5 6 7 8. K32 → k 18 sts holder 1 2 3 4 5 6 7 8 | k 32
      K 18 sts on thread. K32 → k 18 sts on thread | k 32
      Holder k 18 sts. K32 → holder k 18 sts | k 32
      K2. P1 moss moss rib → k 2 | p 1 moss moss rib
      Yo1. P1 rib → yo 1 | p 1 rib
      K1. Yo1 rib → k 1 | yo 1 rib
      K1, p1. P rib → k 1 , p 1 | p rib
      K. P1 rib → k | p 1 rib
      K 1 1. P1 rib → k 1 1 | p 1 rib
    `),
  )('another sentence begins: $line', expectCut('sentences'));
});
