/** What a tension was measured in, and what is guessed from it. */
export const words = {
  measuredIn: 'Measured in',
  in: 'Measured in {fabric}.',
  unsaid: 'not said yet',
  needle: 'With needle, mm',
  needleNumber: 'With needle',
  guessed: '{fabric}: guessed from your [gauge] in {from}',
  askTitle: 'Was this [gauge] measured in garter stitch?',
  askHelp:
    'Most rows here are garter stitch, and nothing says what {stitches} stitches and {rows} rows to {length} were counted in. They have been taken as [stockinette]. Your answer puts measures and drawings right; no row changes.',
  askYes: 'Yes, in garter stitch',
  askNo: 'No, in [stockinette]',
} as const;
