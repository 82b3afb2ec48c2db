/** The plan of a piece as paper. */
export const words = {
  makes: 'To be knitted',
  key: 'One box for each row. ▶ and a black edge: a row with shaping. Count the stitches after it.',
  bindOff: '[Bind off]',
  row: 'Row',
  rows: '{first} to {last}',
  work: 'Work',
  after: 'Stitches after',
  measures: '{width} wide at most, {height} high, {castOn} wide at the beginning',
} as const;
