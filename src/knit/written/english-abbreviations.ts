import type { Abbreviation } from './written-words.ts';

/**
 * What the rows are abbreviated with, explained in our own words, as the standard lists have it (`tests/outside/abbreviations.test.ts`
 * names them, and what is in none of them).
 */
export const englishAbbreviations: readonly Abbreviation[] = [
  ['ds', 'double stitch: the stitch at a turn, pulled up so that two loops lie over the needle'],
  ['foll', 'following'],
  ['k', 'knit', /\bk\d*\b/],
  ['k2tog', 'knit 2 stitches together'],
  ['k3tog', 'knit 3 stitches together'],
  ['kfb', 'knit into front and back of the same stitch'],
  ['m1', 'make 1: lift the strand before the next stitch and knit it twisted'],
  ['m1l', 'make 1 that leans left: lift the strand from the front, knit its back leg'],
  ['m1p', 'make 1 purlwise: lift the strand and purl it twisted'],
  ['m1r', 'make 1 that leans right: lift the strand from behind, knit its front leg'],
  ['mm', 'millimetres'],
  ['p', 'purl', /\bp\d*\b/],
  ['p2tog', 'purl 2 stitches together'],
  ['p3tog', 'purl 3 stitches together'],
  ['rem', 'remaining'],
  ['rep', 'repeat', /\bRep\b/],
  ['RS', 'right side'],
  ['s2kp', 'slip 2 stitches together knitwise, knit 1, pass both over it'],
  ['s2pp', 'slip 2 stitches so that they cross, purl 1, pass both over it'],
  ['sk2p', 'slip 1 knitwise, knit 2 together, pass the slipped stitch over'],
  ['sl', 'slip', /\bsl\d*\b/],
  ['ssk', 'slip 2 stitches knitwise one by one, knit them together through the back loops'],
  ['ssp', 'slip 2 stitches knitwise one by one, purl them together through the back loops'],
  ['sssp', 'slip 3 stitches knitwise one by one, purl them together through the back loops'],
  ['st', 'stitch'],
  ['sts', 'stitches'],
  ['tbl', 'through the back loop'],
  ['WS', 'wrong side'],
  ['yo', 'yarn over'],
];
