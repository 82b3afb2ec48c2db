import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectCut } from './cut.ts';

/** How patterns are usually set: common practice, no published source. */
describe('a text is cut into the lines that its writer meant', () => {
  it.each(
    table(`
      Cast on 92 sts. ¶ K 1 row. → 1: Cast on 92 sts. | 2: K 1 row.
      Cast on 92 sts ¶  ¶ k 1 row → 1: Cast on 92 sts | 3: k 1 row
      Cast on 92 sts, ¶ then k 1 row → 1-2: Cast on 92 sts, then k 1 row
      Cast on 92 sts; ¶ k 1 row → 1-2: Cast on 92 sts; k 1 row
      K2 (p2, ¶ k2) to end → 1-2: K2 (p2, k2) to end
      K2 [p2 ¶ k2] to end → 1-2: K2 [p2 k2] to end
      K2 (p2) ¶ k2 to end → 1: K2 (p2) | 2: k2 to end
      Work to ¶ Something else → 1-2: Work to Something else
      Dec from ¶ Something else → 1-2: Dec from Something else
      End of ¶ Something else → 1-2: End of Something else
      With the ¶ Something else → 1-2: With the Something else
      Take a ¶ Something else → 1-2: Take a Something else
      Take an ¶ Something else → 1-2: Take an Something else
      On next ¶ Something else → 1-2: On next Something else
      On every ¶ Something else → 1-2: On every Something else
      On each ¶ Something else → 1-2: On each Something else
      K 1 and ¶ Something else → 1-2: K 1 and Something else
      Start at ¶ Something else → 1-2: Start at Something else
      K with ¶ Something else → 1-2: K with Something else
      On last ¶ Something else → 1-2: On last Something else
      The rem ¶ Something else → 1-2: The rem Something else
      Then foll ¶ Something else → 1-2: Then foll Something else
      Back in ¶ Something else → 1-2: Back in Something else
      K for ¶ Something else → 1-2: K for Something else
      Work on ¶ Something else → 1-2: Work on Something else
      Work until ¶ Something else → 1-2: Work until Something else
      At beg ¶ Something else → 1-2: At beg Something else
      K, then ¶ Something else → 1-2: K, then Something else
      End dec ¶ Something else → 1-2: End dec Something else
      End inc ¶ Something else → 1-2: End inc Something else
      End sl ¶ Something else → 1-2: End sl Something else
      End k ¶ Something else → 1-2: End k Something else
      End p ¶ Something else → 1-2: End p Something else
      Then rep ¶ Something else → 1-2: Then rep Something else
      End ending ¶ Something else → 1-2: End ending Something else
      Then bind ¶ Something else → 1-2: Then bind Something else
      Then cast ¶ Something else → 1-2: Then cast Something else
      1 row ¶ Something else → 1: 1 row | 2: Something else
      1 row ¶ of something else → 1-2: 1 row of something else
      1 Work in rib ¶ 2 Rows A → 1: Work in rib | 2: 2 Rows A
      2 rows ¶ Something else → 1: 2 rows | 2: Something else
      Dec at 6th (6th, 4th, ¶ 4th, 4th) row → 1-2: Dec at 6th (6th, 4th, 4th, 4th) row
      Every alt ¶ Something else → 1-2: Every alt Something else
      Every other ¶ Something else → 1-2: Every other Something else
      Next st ¶ Something else → 1-2: Next st Something else
      Yes or ¶ Something else → 1-2: Yes or Something else
      It takes approx ¶ Something else → 1-2: It takes approx Something else
      This is ¶ Something else → 1-2: This is Something else
      Turn into ¶ Something else → 1-2: Turn into Something else
      The same ¶ Something else → 1-2: The same Something else
      At first ¶ Something else → 1-2: At first Something else
      Work second ¶ Something else → 1-2: Work second Something else
      Over all ¶ Something else → 1-2: Over all Something else
      Then place ¶ Something else → 1-2: Then place Something else
      Then pick ¶ Something else → 1-2: Then pick Something else
      Pick up ¶ Something else → 1-2: Pick up Something else
      Then rejoin ¶ Something else → 1-2: Then rejoin Something else
      Work as ¶ Something else → 1-2: Work as Something else
      It measures ¶ Something else → 1-2: It measures Something else
      Work (to ¶ Something else → 1-2: Work (to Something else
      Work to. ¶ end → 1: Work to. | 2: end
      Work to: ¶ end → 1: Work to: | 2: end
      Work to! ¶ end → 1: Work to! | 2: end
      Work to? ¶ end → 1: Work to? | 2: end
      A very long line of words that goes on and far ¶ and then some more → 1-2: A very long line of words that goes on and far and then some more
      A very long line of words that goes on and far ¶ (and then some more → 1-2: A very long line of words that goes on and far (and then some more
      A very long line of words that goes on and far ¶ 3 times and some more → 1-2: A very long line of words that goes on and far 3 times and some more
      A very long line of words that goes on and far ¶ *k2, p2 → 1: A very long line of words that goes on and far | 2: *k2, p2
      A very long line of words that goes on and far ¶ k2, p2 → 1: A very long line of words that goes on and far | 2: k2, p2
      A very long line of words that goes on and far ¶ (k2, p2) → 1: A very long line of words that goes on and far | 2: (k2, p2)
      A very long line of words that goes on and far ¶ Something else → 1: A very long line of words that goes on and far | 2: Something else
      • Row 1: k ¶ • Row 2: p → 1: Row 1: k | 2: Row 2: p
      1. Cast on 92 sts ¶ 2. Knit 6 rows → 1: Cast on 92 sts | 2: Knit 6 rows
      - Cast on 92 sts ¶ - Knit 6 rows → 1: Cast on 92 sts | 2: Knit 6 rows
      Cont in rib until work ¶ meas 8 cm → 1-2: Cont in rib until work meas 8 cm
      Cast off 5 (7-8-10) sts ¶ at beg of next 2 rows → 1-2: Cast off 5 (7-8-10) sts at beg of next 2 rows
      Dec 1 st at each end of foll ¶ row → 1-2: Dec 1 st at each end of foll row
      Cast on 92 sts. ¶ – 24 sts → 1: Cast on 92 sts. | 2: – 24 sts
      A short line of words, letters ¶ and then some more → 1-2: A short line of words, letters and then some more
      A short line of words, letterss ¶ and then some more → 1-2: A short line of words, letterss and then some more
      A very long line of words that goes on and far ¶ row 2 → 1: A very long line of words that goes on and far | 2: row 2
      A very long line of words that goes on and far ¶ rows 2 → 1: A very long line of words that goes on and far | 2: rows 2
      A very long line of words that goes on and far ¶ rnd 2 → 1: A very long line of words that goes on and far | 2: rnd 2
      A very long line of words that goes on and far ¶ rnds 2 → 1: A very long line of words that goes on and far | 2: rnds 2
      A very long line of words that goes on and far ¶ round 2 → 1: A very long line of words that goes on and far | 2: round 2
      A very long line of words that goes on and far ¶ rounds 2 → 1: A very long line of words that goes on and far | 2: rounds 2
      A very long line of words that goes on and far ¶ next row → 1: A very long line of words that goes on and far | 2: next row
      A very long line of words that goes on and far ¶ rep it → 1: A very long line of words that goes on and far | 2: rep it
      A very long line of words that goes on and far ¶ repeat it → 1: A very long line of words that goes on and far | 2: repeat it
      A very long line of words that goes on and far ¶ k it → 1: A very long line of words that goes on and far | 2: k it
      A very long line of words that goes on and far ¶ p it → 1: A very long line of words that goes on and far | 2: p it
      A very long line of words that goes on and far ¶ knit it → 1: A very long line of words that goes on and far | 2: knit it
      A very long line of words that goes on and far ¶ purl it → 1: A very long line of words that goes on and far | 2: purl it
      A very long line of words that goes on and far ¶ work it → 1: A very long line of words that goes on and far | 2: work it
      A very long line of words that goes on and far ¶ cont it → 1: A very long line of words that goes on and far | 2: cont it
      A very long line of words that goes on and far ¶ continue it → 1: A very long line of words that goes on and far | 2: continue it
      A very long line of words that goes on and far ¶ bind off → 1: A very long line of words that goes on and far | 2: bind off
      A very long line of words that goes on and far ¶ cast off → 1: A very long line of words that goes on and far | 2: cast off
      A very long line of words that goes on and far ¶ bo 2 → 1: A very long line of words that goes on and far | 2: bo 2
      A very long line of words that goes on and far ¶ co 2 → 1: A very long line of words that goes on and far | 2: co 2
      A very long line of words that goes on and far ¶ dec 1 → 1: A very long line of words that goes on and far | 2: dec 1
      A very long line of words that goes on and far ¶ inc 1 → 1: A very long line of words that goes on and far | 2: inc 1
      A very long line of words that goes on and far ¶ change it → 1: A very long line of words that goes on and far | 2: change it
      A very long line of words that goes on and far ¶ with it → 1-2: A very long line of words that goes on and far with it
      A very long line of words that goes on and far ¶ using it → 1-2: A very long line of words that goes on and far using it
      A very long line of words that goes on and far ¶ shape it → 1: A very long line of words that goes on and far | 2: shape it
      A very long line of words that goes on and far ¶ back it → 1-2: A very long line of words that goes on and far back it
      A very long line of words that goes on and far ¶ front it → 1-2: A very long line of words that goes on and far front it
      A very long line of words that goes on and far ¶ left it → 1-2: A very long line of words that goes on and far left it
      A very long line of words that goes on and far ¶ right it → 1-2: A very long line of words that goes on and far right it
      A very long line of words that goes on and far ¶ sleeve it → 1-2: A very long line of words that goes on and far sleeve it
      A very long line of words that goes on and far ¶ sleeves it → 1: A very long line of words that goes on and far | 2: sleeves it
      A very long line of words that goes on and far ¶ place it → 1: A very long line of words that goes on and far | 2: place it
      A very long line of words that goes on and far ¶ rejoin it → 1: A very long line of words that goes on and far | 2: rejoin it
      A very long line of words that goes on and far ¶ join it → 1: A very long line of words that goes on and far | 2: join it
      A very long line of words that goes on and far ¶ pick it → 1: A very long line of words that goes on and far | 2: pick it
      A very long line of words that goes on and far ¶ beg it → 1-2: A very long line of words that goes on and far beg it
      A very long line of words that goes on and far ¶ sl 1 → 1: A very long line of words that goes on and far | 2: sl 1
      A very long line of words that goes on and far ¶ slip 1 → 1: A very long line of words that goes on and far | 2: slip 1
      A very long line of words that goes on and far ¶ leave it → 1: A very long line of words that goes on and far | 2: leave it
      A very long line of words that goes on and far ¶ complete it → 1: A very long line of words that goes on and far | 2: complete it
      A very long line of words that goes on and far ¶ size it → 1: A very long line of words that goes on and far | 2: size it
      A very long line of words that goes on and far ¶ sizes it → 1: A very long line of words that goes on and far | 2: sizes it
      A very long line of words that goes on and far ¶ gauge it → 1: A very long line of words that goes on and far | 2: gauge it
      A very long line of words that goes on and far ¶ tension it → 1: A very long line of words that goes on and far | 2: tension it
      A very long line of words that goes on and far ¶ 2nd row → 1: A very long line of words that goes on and far | 2: 2nd row
      A very long line of words that goes on and far ¶ 3rd row → 1: A very long line of words that goes on and far | 2: 3rd row
      A very long line of words that goes on and far ¶ 1st row → 1: A very long line of words that goes on and far | 2: 1st row
      A very long line of words that goes on and far ¶ 4th row → 1: A very long line of words that goes on and far | 2: 4th row
      A very long line of words that goes on and far ¶ at it → 1-2: A very long line of words that goes on and far at it
      A very long line of words that goes on and far ¶ turn it → 1: A very long line of words that goes on and far | 2: turn it
      A very long line of words that goes on and far ¶ note it → 1: A very long line of words that goes on and far | 2: note it
      A very long line of words that goes on and far ¶ divide it → 1: A very long line of words that goes on and far | 2: divide it
      A very long line of words that goes on and far ¶ break it → 1: A very long line of words that goes on and far | 2: break it
      A very long line of words that goes on and far ¶ then it → 1-2: A very long line of words that goes on and far then it
      Work on every ¶ row 2 → 1: Work on every | 2: row 2
      Work on every ¶ rows → 1: Work on every | 2: rows
      Work on every ¶ next row → 1-2: Work on every next row
      Work 6 sts ¶ next row: k → 1: Work 6 sts | 2: next row: k
      Work on every ¶ rnd 2 → 1: Work on every | 2: rnd 2
      Work on every ¶ rnds → 1: Work on every | 2: rnds
      Work on every ¶ work it → 1-2: Work on every work it
      Work on every ¶ Work it → 1: Work on every | 2: Work it
      Work on ¶ *k2 → 1-2: Work on *k2
      Work, ¶ *k2 → 1-2: Work, *k2
      Work on every ¶ 4th row → 1-2: Work on every 4th row
      One, ¶ two, ¶ three, ¶ four → 1-4: One, two, three, four
      K2 (p2, ¶ (k2), ¶ K3) ¶ K4 → 1-3: K2 (p2, (k2), K3) | 4: K4
      (k2 ¶ K3) → 1-2: (k2 K3)
      [K2 ¶ K3 ¶ P2] ¶ P3 → 1-3: [K2 K3 P2] | 4: P3
      K2 ((p2) ¶ P3 → 1-2: K2 ((p2) P3
      A. b ¶ c → 1: A. b | 2: c
      K 2. Work to the ¶ End → 1-2: K 2. Work to the End
      Is it? Work to the ¶ End → 1-2: Is it? Work to the End
      Dec 1 st at each end of ¶ next row, then ¶ every 4th row. ¶ K 1 row. → 1-3: Dec 1 st at each end of next row, then every 4th row. | 4: K 1 row.
    `),
  )('$line', expectCut('lines'));

  it.each(
    table(`
      Cast on 20 sts ¶ 3: K1, ssk ¶ 4-6: as rows 1-2 → 1: Cast on 20 sts | 2: 3: K1, ssk | 3: 4-6: as rows 1-2
      Cast on 20 sts ¶ 3 : k1, ssk → 1: Cast on 20 sts | 2: 3 : k1, ssk
      Cast on 20 sts and ¶ work 3: k1 → 1-2: Cast on 20 sts and work 3: k1
      Cast on 20 sts and ¶ 12 stitches: k → 1-2: Cast on 20 sts and 12 stitches: k
      Step 2: Work in rib ¶ Step 3. Knit → 1: Work in rib | 2: Knit
      Step2: Work in rib → 1: Step2: Work in rib
      2 Work in rib ¶ 3 Rows A → 1: Work in rib | 2: 3 Rows A
      10 Work in rib → 1: Work in rib
      2 work in rib → 1: 2 work in rib
      k 4, p 4, ¶ K4, p4 → 1-2: k 4, p 4, K4, p4
      k 4, p 4, ¶ k4, p4 → 1-2: k 4, p 4, k4, p4
      k 4 ¶ *k4, p4 → 1: k 4 | 2: *k4, p4
      k 4 ¶ (k4, p4) twice → 1: k 4 | 2: (k4, p4) twice
      k 4 ¶ (K4, p4) twice → 1: k 4 | 2: (K4, p4) twice
      • Work in rib ¶ – Knit ¶ 1. Purl → 1: Work in rib | 2: Knit | 3: Purl
    `),
  )('a row or a step begins a line: $line', expectCut('lines'));
});
