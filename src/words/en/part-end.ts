/** The end of a part: what becomes of the stitches, what it took, what comes next. */
export const words = {
  partDone: '{part} is done',
  partRests: '{part}: its stitches rest',
  partDivides: '{part} is knitted up to where it divides',
  endBoundOff: 'All stitches are [bound off]. Cut the yarn and pull it through the last loop.',
  endHold: {
    one: 'Put the {count} stitch that is left on a holder or a thread.',
    other: 'Put the {count} stitches that are left on a holder or a thread.',
  },
  endSplit: {
    one: 'Leave the {count} stitch resting and the yarn uncut; the next parts take it up.',
    other: 'Leave the {count} stitches resting and the yarn uncut; the next parts take them up.',
  },
  beginNext: 'Begin {what}',
  continueNext: 'Go on with {what}',
  tookRows: { one: '{count} row', other: '{count} rows' },
  tookSittings: { one: '{count} sitting', other: '{count} sittings' },
  tookDays: { one: 'in {count} day', other: 'in {count} days' },
  toMakingUp: 'Sew it up',
  allDone: 'Every piece of {garment} is knitted.',
  toGarment: 'To the garment',
  garmentKnitted: 'Knitted to the last stitch',
  garmentFinished: 'Finished: knitted and made up',
  notMadeUp: 'Not made up yet.',
  madeUpSoFar: 'Making up: {count} of {all} steps done.',
  toRecord: 'How it was knitted',
} as const;
