/** What comes between two rows of the knitting screen: a row not stored yet, and rest for the hands. */
export const words = {
  saving: 'Not saved yet',
  savingHelp: {
    one: '{count} row is waiting to be written down. Knit on; it is not forgotten.',
    other: '{count} rows are waiting to be written down. Knit on; they are not forgotten.',
  },
  readAhead: 'Row {row} · not saved yet: row {from}',
  readFarAhead: 'Row {row} · not saved yet: rows {from} to {to}',
  held: 'Kept aside',
  heldHelp:
    'The browser does not answer when asked to write. Your rows are kept beside its storage and go in as soon as it answers; knit on.',
  notSaved: 'Not saved',
  tryAgain: 'Try again',
  restTitle: 'Rest your hands a moment',
  restBody:
    'You have knitted for a good while. Let the needles go, open your hands and look into the distance.',
  restDone: 'Knit on',
  restNever: 'Do not remind me',
} as const;
