/**
 * How often a knitter slips, as shares of the chances to slip: our own estimates, no published source. Only their
 * proportions matter: they rank what can be, and the fabric decides.
 */
export const slipRates = {
  /** of shaping rows: worked plain */
  missed: 1 / 50,
  /** of shaping rows: worked twice */
  doubled: 1 / 150,
  /** of rows shaped at both edges: shaped at one */
  oneEdge: 1 / 120,
  /** of rows: worked and not tapped; tapped and not worked */
  tap: 1 / 250,
  /** of rows: a stitch lost, a stitch made */
  dropped: 1 / 1200,
  yarnOver: 1 / 1200,
  /** of rows: two stitches worked as one unawares */
  together: 1 / 1200,
  /** of cast-ons: one stitch more or fewer */
  castOn: 1 / 20,
  /** of spread rows: with one increase or decrease left out, or one too many */
  spreadShort: 1 / 10,
  spreadOver: 1 / 30,
  /** of bound-off and cast-on groups: one stitch more or fewer */
  group: 1 / 180,
  /** of slips: the same one once more, right after (she did not know of it) */
  again: 1 / 4,
  /** beside all that one slip explains: what none does, two at once or a count that is off */
  other: 1 / 20,
} as const;
