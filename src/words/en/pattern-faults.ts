/** What keeps a pattern's text from being read, by the fault's code: what the text says, and what is missing. */
export const words = {
  'not understood':
    '{expected} was expected at column {column} of this line. Change the text there, or leave the line out.',
  'nested too deep': 'Brackets stand {depth} deep here. Write the inner ones out.',
  'not enough stitches':
    'This takes {need} stitches where {have} are on the needle. Check the count before this row.',
  'bound off too many':
    '{wanted} stitches are to be [bound off] where {have} are on the needle. Check the count before this row.',
  'too many stitches': '{count} stitches are more than a needle holds. Check the numbers in this line.',
  'too long': 'A part has at most {most} rows. Check the numbers in this line.',
  'too many pieces read':
    'A garment has at most {most} pieces. Nothing from here on is read: copy it as a garment of its own.',
  'too many parts begun':
    '{piece} is begun more than {most} times here. Nothing from here on is read: give the next piece a heading of its own.',
  'count contradicts':
    'The text says {stated} stitches; its instructions leave {found}. One of the two is wrong.',
  'side differs':
    'The text calls this a {said} row; counted from the start it is a {found} row. Check how many rows come before it.',
  'count not known':
    'To spread {change} evenly the stitches on the needle must be known. Say the count before this row.',
  'no marker': 'No marker is known to lie ahead on this row. Say first where it is placed.',
  'centre not in the middle':
    '{count} stitches cannot have {centre} in their middle. Both must be even, or both odd.',
  'nothing on the needle': 'No stitches are on the needle here. Cast on, pick up or rejoin first.',
  'nothing rests': 'No stitches are known to rest here. Say first which are put on a holder.',
  'nothing to match': 'There is no first side that this one could match. Write the first side out.',
  'no rows to repeat': 'No rows are known here that could be repeated. Write them before this line.',
  'row not known': 'Row {row} is not known here. Write it before this line.',
  'piece not known': 'No {piece} is known here that could be followed. Put that piece first.',
  'place not known': 'It is not known here where that is. Say the length or the number of rows instead.',
  'longer already':
    'The rows before this one make the piece {over} longer than the {wanted} asked for here. Check the [gauge] and the rows.',
  'not a multiple':
    '{count} stitches are no multiple of {of} plus {plus}, which {name} needs. Check the count before it.',
  'pattern row does not come out':
    'Row {row} uses {takes} stitches in a repeat and does not come out on {count} stitches, a multiple of {of} plus {plus}.',
  'pattern does not return':
    'After its {rows} rows the stitch pattern has {after} stitches where it began with {start}.',
  'sizes differ': 'The sizes do not agree here. Give one number for each size, or take one size alone.',
  'rows already worked': 'This stretch has {worked} rows already; it cannot have {rows}.',
  'side of the last row':
    'With {rows} rows the next row would begin on the other side. Take one row more or less.',
  'text reads otherwise':
    'The text is no longer read as it was when these rows were knitted. The rows stay as they are.',
  'text missing': 'The text that this garment was read from is not here.',
  'not stored': 'The new plan could not be stored. Try again.',
  'no sizes': 'Choose a size to write.',
} as const;
