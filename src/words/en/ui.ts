export const words = {
  close: 'Close',
  more: 'One more: {label}',
  less: 'One less: {label}',
  deleteDigit: 'Delete last digit',
  justNow: 'just now',
  mapKeys: 'Arrow keys go from row to row, Enter reads the row.',
  mapLabel: 'Drawing of {piece}',
  mapRow: '{part}, row {row}: {stitches}',
  mapRowShaping: '{part}, row {row}, {shaping}: {stitches}',
  scale: 'Scale: {length}',
  nextRows: 'Rows ahead',
  rowsBetween: { one: '{count} plain row', other: '{count} plain rows' },
} as const;
