import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Rounds are said and not made rows of, wherever they begin. Wordings of our own. */
describe('what is worked in rounds, followed row by row,', () => {
  it.each(
    annotatedIn(`
### rounds
HAT
  > heading
Cast on 80 sts. Join to work in the round, being careful not to twist.
  > own words 80
  > ✗ worked in rounds @2:17
Rnds 1-10: *K2, p2; rep from * around.
  > own words 80 asks the count Hat/body 1 RS work in pattern 'Rnds 1-10: *K2, p2; rep from * around' · [WS work in pattern 'Rnds 1-10: *K2, p2; rep from * around' · RS work in pattern 'Rnds 1-10: *K2, p2; rep from * around'] ×4 · WS work in pattern 'Rnds 1-10: *K2, p2; rep from * around'
  > ✗ worked in rounds @3:1
Knit 20 rounds.
  > own words 80 asks the count Hat/body 11 RS work in pattern 'Knit 20 rounds' · [WS work in pattern 'Knit 20 rounds' · RS work in pattern 'Knit 20 rounds'] ×9 · WS work in pattern 'Knit 20 rounds'
  > ✗ worked in rounds @4:1
Next rnd: *k2tog, k6; rep from * around. 70 sts.
  > own words 80→70 says 70 Hat/body 31 RS [dec] 10 times, work in pattern to end 'Next rnd: *k2tog, k6; rep from * around' (70)
  > ✗ worked in rounds @5:1
Bind off.
  > 70→0 Hat/body 32 WS bind off all sts in pattern (0)
COWL
  > heading
With circular needle cast on 120 sts, join into a ring and place marker.
  > own words 120
  > ✗ worked in rounds @8:39
Work in k2, p2 rib for 5 cm.
  > own words 120 asks the count Cowl/body 1 RS work in pattern 'Work in k2, p2 rib for 5 cm'
  > ✗ worked in rounds @9:1
Rounds 1 to 4: purl.
  > own words 120 asks the count Cowl/body 2 WS work in pattern 'Rounds 1 to 4: purl' · RS work in pattern 'Rounds 1 to 4: purl' · WS work in pattern 'Rounds 1 to 4: purl' · RS work in pattern 'Rounds 1 to 4: purl'
  > ✗ worked in rounds @10:1
Bind off loosely.
  > 120→0 Cowl/body 6 WS bind off all sts in pattern (0)
SLEEVE
  > heading
With double-pointed needles cast on 40 sts and divide on 4 needles.
  > own words 40
  > ✗ worked in rounds @13:48
Knit round and round for 10 cm.
  > own words 40 asks the count as long as she likes: 1 rows Sleeve/body 1 RS work in pattern 'Knit round and round for 10 cm'
  > ✗ worked in rounds @14:1
Bind off.
  > 40→0 Sleeve/body 2 WS bind off all sts in pattern (0)
NECKBAND
  > heading
With circular needle pick up and knit 90 sts around neck.
  > →90
Working in rounds, work 6 rounds of k1, p1 rib.
  > own words 90 asks the count Neckband/body 1 WS work in pattern 'Working in rounds, work 6 rounds of k1, p1 rib' · [RS work in pattern 'Working in rounds, work 6 rounds of k1, p1 rib' · WS work in pattern 'Working in rounds, work 6 rounds of k1, p1 rib'] ×2 · RS work in pattern 'Working in rounds, work 6 rounds of k1, p1 rib'
  > ✗ worked in rounds @18:1
Bind off in rib.
  > 90→0 Neckband/body 7 WS bind off all sts in pattern (0)
YOKE
  > heading
Cast on 60 sts.
  > →60
Work in rows back and forth on circular needle in st st for 10 rows.
  > 60 Yoke/body 1 RS knit · [WS purl · RS knit] ×4 · WS purl
Bind off.
  > 60→0 Yoke/body 11 RS bind off all sts in pattern (0)
MITTEN
  > heading
Cast on 36 sts on 3 needles and rib 20 rounds, k2, p2.
  > own words 36 asks the count Mitten/body 1 RS work in pattern 'on 3 needles and rib 20 rounds, k2, p2'
  > ✗ worked in rounds @25:16
Knit 4 rounds plain.
  > own words 36 asks the count Mitten/body 2 WS work in pattern 'Knit 4 rounds plain' · RS work in pattern 'Knit 4 rounds plain' · WS work in pattern 'Knit 4 rounds plain' · RS work in pattern 'Knit 4 rounds plain'
  > ✗ worked in rounds @26:1
Bind off.
  > 36→0 Mitten/body 6 WS bind off all sts in pattern (0)
  > = Hat, other, 1 to make, lines 3 4 5 6
  > =   body from {castOn 80}, RS: 10 stocking 4 mm (own words 1 2 3 4 5 6 7 8 9 10); 21 pattern in stocking 4 mm (own words 1 2 3 4 5 6 7 8 9 10 11 12 13 14 15 16 17 18 19 20 21); bind off
  > = Cowl, other, 1 to make, lines 9 10 11
  > =   body from {castOn 120}, RS: 1 stocking 4 mm (own words 1); 4 pattern in stocking 4 mm (own words 1 2 3 4); bind off
  > = Sleeve, sleeve, 1 to make, lines 14 15
  > =   body from {castOn 40}, RS: 1 stocking 4 mm (own words 1, length {id 'sleeve/1', open, from here}); bind off
  > = Neckband, neckband, 1 to make, lines 18 19
  > =   body from {pickUp [{stitches 90, along neck}]}, WS: 6 stocking 4 mm (own words 1 2 3 4 5 6); bind off
  > = Yoke, other, 1 to make, lines 22 23
  > =   body from {castOn 60}, RS: 10 stocking 4 mm; bind off
  > = Mitten, other, 1 to make, lines 25 26 27
  > =   body from {castOn 36}, RS: 1 stocking 4 mm (own words 1); 4 pattern in stocking 4 mm (own words 1 2 3 4); bind off

    `),
  )('$title', expectAnnotated);
});
