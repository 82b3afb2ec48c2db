/** What cannot be done with a piece under way, by the fault’s code: why, and what can be done instead. */
export const words = {
  'nothing left': 'All rows of this part are knitted; there is nothing left to plan anew.',
  'shaping to come does not fit':
    '{times} shaping rows are still to come and {rows} rows have room for {mostTimes}. Give it more rows, or rip back.',
  'too few rows for its shaping':
    'That would be too few rows: row {row} is to be shaped, and there would be {rows}. Give it more.',
  'no stretch ends there':
    'No stretch of this part can end at {heightMm}. Choose a stretch that is still to be knitted, and a height above 0.',
  'too few rows before the neck':
    'Only {leftRows} rows are left to knit before the neck, and it cannot begin earlier than now. Move it by fewer rows.',
  'fewer rows than knitted':
    '{rows} rows are fewer than the {workedRows} that are knitted of it already. Give it more.',
  'cannot be taken up':
    '{offStitches} stitches cannot be taken up in the rows that are left. Rip back some rows, or give the part more.',
  'measure again':
    '{measuredMm} can hardly be: {plannedMm} were planned for these rows. Please measure again.',
  'no neck ahead':
    'The neck can be moved only while the part below it is being knitted, and by an even number of rows.',
  'no lifeline': 'There is no lifeline below row {fromRow}.',
  'no firm ground': 'There is no row below row {fromRow} at which the count was checked and right.',
  'nothing to rip': 'Row {row} is not below row {fromRow}; there is nothing to pull.',
  'row outside': 'This part has rows 1 to {rows}; row {row} is not one of them.',
  'all done': 'Both are knitted to the end.',
  'not level': 'They are {rows} rows apart. Knit the one behind on its own until they are level.',
  'sides differ':
    'One comes to a right-side row and the other to a wrong-side row; they cannot share a needle here.',
} as const;
