/** The work as it lies in her lap: what is done before a row, where the next shaping lies, and how far it is. */
export const words = {
  before: 'Before row {row}:',
  takenBack: 'Taken back.',
  changeNeedle: 'change to the {size} needle',
  changeColour: 'change to {colour}',
  measure: 'measure, {length} as planned',
  colour: 'in {colour}',
  ridge: 'ridge {ridge}',
  rowRidge: '{row} ({ridge})',
  nextShaping: {
    one: 'Next row is a shaping row: {shaping}',
    other: 'Shaping in {count} rows, row {row}: {shaping}',
  },
  noMoreShaping: 'No more shaping in this part',
  view: '{where}, as the {side} faces you. {next}',
  soFar: 'so far',
  toEndOf: 'to the end of {section}',
  toEnd: 'to the end',
  toRow: 'to row {row}',
  markNeedle: '{size} needle',
  markMeasure: 'measure: {length}',
} as const;
