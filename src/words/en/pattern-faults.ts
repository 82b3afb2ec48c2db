/** What keeps a pattern's text from being read, by the fault's code: what the text says, and what is missing. */
export const words = {
  'stitch expected':
    'A stitch was expected at column {column} of this line. Change the text there, or leave the line out.',
  'stitch or repeat expected':
    'A stitch or a repeat was expected at column {column} of this line. Change the text there, or leave the line out.',
  'bracket expected':
    'A bracket is still open: “{bracketText}” was expected at column {column} of this line. Close it there.',
  'nothing before the repeat':
    'At column {column} of this line something is to be repeated, and no stitch stands before it. Write out what is repeated.',
  'nested too deep': 'Brackets stand {depth} deep here. Write the inner ones out.',
  'work after a turn': 'Something is worked after the turn. Write it as a row of its own.',
  'not enough stitches':
    'This takes {needStitches} stitches where {haveStitches} are on the needle. Check the count before this row.',
  'bound off too many':
    '{wantedStitches} stitches are to be [bound off] where {haveStitches} are on the needle. Check the count before this row.',
  'too many stitches': '{stitches} stitches are more than a needle holds. Check the numbers in this line.',
  'too long': 'A part has at most {mostRows} rows. Check the numbers in this line.',
  'too many pieces read':
    'A garment has at most {mostPieces} pieces. Nothing from here on is read: copy it as a garment of its own.',
  'too many parts begun':
    '“{pieceName}” is begun more than {mostTimes} times here. Nothing from here on is read: give the next piece a heading of its own.',
  'count contradicts':
    'The text says {statedStitches} stitches; its instructions leave {foundStitches}. One of the two is wrong.',
  'side differs':
    'The text calls this a {saidSide} row; counted from the start it is a {foundSide} row. Check how many rows come before it.',
  'worked in rounds':
    'This is worked in rounds, and rounds are not counted here as rows. The line stays in its own words; say the stitches after it, or write it as rows.',
  'count not known':
    'To spread {changeStitches} evenly the stitches on the needle must be known. Say the count before this row.',
  'no marker': 'No marker is known to lie ahead on this row. Say first where it is placed.',
  'centre not in the middle':
    '{stitches} stitches cannot have {centreStitches} in their middle. Both must be even, or both odd.',
  'nothing on the needle': 'No stitches are on the needle here. Cast on, pick up or rejoin first.',
  'nothing rests': 'No stitches are known to rest here. Say first which are put on a holder.',
  'nothing to match': 'There is no first side that this one could match. Write the first side out.',
  'stitches wait':
    '{stitches} stitches are left waiting here, and the text does not say what becomes of them. Say below what is done with them.',
  'no rows to repeat': 'No rows are known here that could be repeated. Write them before this line.',
  'row not known': 'Row {rowName} is not known here. Write it before this line.',
  'piece not known': 'No “{pieceName}” is known here that could be followed. Put that piece first.',
  'place not known': 'It is not known here where that is. Say the length or the number of rows instead.',
  'longer already':
    'The rows before this one make the piece {overMm} longer than the {wantedMm} asked for here. Check the [gauge] and the rows.',
  'fabric not known': 'How “{name}” is worked is not said here. Write its rows before this line.',
  'not a multiple':
    '{stitches} stitches are no multiple of {ofStitches} plus {plusStitches}, which {name} needs. Check the count before it.',
  'pattern row does not come out':
    'Row {row} uses {takesStitches} stitches in a repeat and does not come out on {stitches} stitches, a multiple of {ofStitches} plus {plusStitches}.',
  'pattern does not return':
    'After its {rows} rows the stitch pattern has {afterStitches} stitches where it began with {startStitches}.',
  'sizes differ':
    'This list has not as many numbers as the pattern has sizes ({sizes}). Give one number for each size, or take one size alone.',
  'rows already worked': 'This stretch has {workedRows} rows already; it cannot have {rows}.',
  'side of the last row':
    'With {rows} rows the next row would begin on the other side. Take one row more or less.',
  'text reads otherwise':
    'The text is no longer read as it was when these rows were knitted. The rows stay as they are.',
  'no sizes': 'Choose a size to write.',
} as const;
