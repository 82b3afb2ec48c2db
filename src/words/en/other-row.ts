/** Of the knitting screen: another row than the one in hand, to be read or gone back to. */
export const words = {
  goBackHelp: 'Choose the row that is to be knitted next. The rows after it count as not yet worked.',
  goBackTo: 'Row {row} next',
  olderRows: 'Older rows',
  rowLine: '{side}, {count} on the needle',
  looking: 'You are reading row {row}.',
  inHand: 'The row in hand is {place}.',
  lookingDone: 'You are reading row {row}. All rows of this part are worked.',
  backToPlace: 'Back to row {row}',
  backToEnd: 'Back to the end',
  placeHere: 'Make row {row} the next',
  rowBefore: 'The row before',
  rowAfter: 'The row after',
} as const;
