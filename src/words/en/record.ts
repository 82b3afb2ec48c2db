/** The record of a garment as it was really knitted. */
export const words = {
  title: 'As it was knitted',
  reading: 'Reading the log…',
  waiting: 'Not begun: {list}',
  rows: '{rows} of {total} rows',
  days: 'From {from} to {to}',
  day: 'On {from}',
  time: '{time} at the needles, pauses left out',
  needles: 'Needles: {list}',
  took: 'It weighed {grams}.',
  ripped: { one: 'Ripped back once.', other: 'Ripped back {count} times.' },
  reworked: { one: 'Planned anew once.', other: 'Planned anew {count} times.' },
  checked: { one: 'Counted at row {list}.', other: 'Counted at rows {list}.' },
  note: 'Row {row}: {text}',
  again: 'Knit it again as it was made',
  againHelp: 'A new garment with the changes you made on the way; this one stays as it is.',
  againName: '{garment}, again',
  design: 'Design another from its figures',
  designHelp:
    'The measures, swatch and choices it was drafted from, to change and draft anew: another size, another neck. This one stays as it is.',
  designNotKept: 'The figures could not be kept on this device. Nothing was changed; try once more.',
  designAsk: 'Another design is begun',
  designAskText:
    'One design is kept in the making. These figures would take its place, and what you typed there is gone.',
  designOther: 'Go on with the other',
  designReplace: 'Put these in its place',
  likeStraight:
    'A new garment begins with all of its figures filled in. Change width, lengths and neck to the size that you want: stitches and rows follow.',
  likePieces:
    'A new garment begins with its pieces as they are. No rule says how they grow: change the stitches and rows of each for the size that you want, and alike where two are sewn together.',
  likeText: 'The text that it was copied from is opened again: choose another of its sizes there.',
  likeYarn:
    'Its yarns come over without what you have of them, and so do its stripes: as many rows of each colour, from the same sections on.',
  likeYarnNot: 'Its yarns and stripes are not taken over: enter them anew.',
  likeStays: 'This garment stays as it is.',
  likeBegin: 'Begin it',
  likeOther: 'Another one is begun',
  likeOtherText:
    'One at a time is kept while it is made. This one would take its place, and what you typed there is gone.',
  cannot: 'It cannot be made again as it stands',
} as const;
