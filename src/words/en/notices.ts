/** What comes between two rows of the knitting screen: a row not stored yet, and rest for the hands. */
export const words = {
  saving: 'Not saved yet',
  savingHelp: {
    one: '{count} row is being written down. It counts when that is done.',
    other: '{count} rows are being written down. They count when that is done.',
  },
  readAhead: 'Row {row} · not saved yet: row {from}',
  readFarAhead: 'Row {row} · not saved yet: rows {from} to {to}',
  held: 'Kept aside: knit on',
  heldHelp:
    'The storage takes nothing just now. Your rows are kept beside it and go in as soon as it does. Knit on.',
  heldFull:
    'The device has no room left. Your rows are kept beside the storage and go in once you free some. Knit on.',
  heldOld:
    'This page is too old to write. Your rows are kept beside the storage: load the page again, and they go in.',
  notSaved: 'Not saved: do not knit on',
  checkRow: 'Not saved: check the row first',
  onlyHere: {
    one: 'Do not knit on: {count} row is in this page alone. Note down where you are before you load it again or close it.',
    other:
      'Do not knit on: {count} rows are in this page alone. Note down where you are before you load it again or close it.',
  },
  tryAgain: 'Try again',
  restTitle: 'Rest your hands a moment',
  restBody:
    'You have knitted for a good while. Let the needles go, open your hands and look into the distance.',
  restDone: 'Knit on',
  restNever: 'Do not remind me',
  locked: 'Locked. Nothing happens when it is touched.',
  holdToUnlock: 'Hold to unlock',
  noSuchMake: 'There is nothing to knit at this address',
  noSuchMakeHelp:
    'It may have been deleted, or the address was cut short. Your garments are in the workbasket.',
} as const;
