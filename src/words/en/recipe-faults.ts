/** What keeps a recipe from being knitted, by the fault's code: what, and how to mend it. */
export const words = {
  'no name': 'Give it a name.',
  blank: 'Fill in a number here.',
  'not a whole number': '“{typedText}” is not a whole number.',
  'not a measure': '“{typedText}” is not a number above 0.',
  'number too small': '{foundNumber} is too few; it takes at least {leastNumber}.',
  'part name twice': 'Another part is called “{name}” too. Give this one another name.',
  'no such part': 'Its stitches come from a part that does not stand before it. Choose an earlier part.',
  'bound off': '“{name}” is [bound off], so no stitches rest there. Let “{name}” end in a split.',
  'bad makes': 'A piece is made 1 to 20 times, not {makes} times.',
  'too much to plan':
    'All the rows together have more than {mostStitches} stitches, more than can be planned at once. Take fewer rows, fewer stitches, or fewer pieces.',
  'too many parts': 'A piece has at most {mostParts} parts, not {parts}. Make two pieces of it.',
  'too many sections': 'A part has at most {mostSections} sections, not {sections}. Join some of them.',
  'part too long':
    'A part has at most {mostRows} rows, the row in which it is [bound off] among them, not {rows}. Make two parts of it.',
  'no parts': 'The piece has no part yet. Add one with a cast-on.',
  'nothing picked up': 'Say along which edge the stitches are picked up, and how many.',
  'bad stitches': 'This takes 1 to {mostStitches} stitches, not {stitches}.',
  'bad rows': 'A section has at most {mostRows} rows, not {rows}.',
  'bad needle': 'A needle is up to 50\u00a0mm thick.',
  'bad count': 'This needs whole numbers.',
  'fabric multiple':
    'For {fabric}, {stitches} stitches do not come out even: take {belowStitches} or {aboveStitches}, or another fabric.',
  'split too wide': '“{name}” leaves only {haveStitches} stitches; its parts take more. Take fewer here.',
  'split does not share':
    '“{name}” leaves {leftStitches} stitches and the parts after it take {sumStitches}. Together they must take all of them.',
  'shaping needs more stitches':
    'The shaping needs {needStitches} stitches and only {haveStitches} are there. Shape less often, or begin with more stitches.',
  'mixed shaping': 'Two shapings meet here that each need a row of their own. Move one of them by two rows.',
  'no centre stitch': 'There is no middle stitch with one on either side. Check the stitches to its right.',
  'shaping outside the section':
    'This would shape row {row}, but the section has {rows} rows. Give it more rows, or shape fewer times.',
  'edge step too large':
    'At an edge one or two stitches can go in one row, not {byStitches}. [Bind off] or cast on a group instead.',
  'shaped twice': 'Row {row} is shaped twice in the same way at the same place. Keep one of the two.',
  'group on the wrong side':
    'Row {row} is a {side} row and begins {startsEdge}. Stitches {edge} come one row earlier or later.',
  'too many for one row':
    'A row of {stitches} stitches has room for {mostTimes} of these, not {times}. Put the rest into a later row.',
  'no gauge': '{pieceName} states no [gauge], so it cannot be turned into another. Give it one first.',
  'not as asked':
    'It cannot be knitted so. What may help: another size, or another needle, so that your swatch comes nearer to the planned one.',
  'bad gauge': 'Such a [gauge] cannot be. Count stitches and rows over a flat, washed swatch once more.',
  'rows in words':
    'Its rows are spelled out stitch by stitch and cannot be turned into another [gauge]. Use the [gauge] it was written for.',
  'bad weight': '{pieceName} cannot weigh {grams}. Weigh it once more.',
  'plan disproved':
    'The plan says {expectedStitches} stitches, and working it gives {foundStitches}. This is a defect of Ridgeline; nothing was stored.',
  'repeat does not come out':
    'The repeat does not come out: {spanStitches} stitches cannot be shared by {byStitches}.',
  'shaping does not fit':
    '{rows} rows have room for {mostTimes} shaping rows, and it takes {times}. Give it more rows, or shape fewer times.',
  'stitches left over': 'The row leaves {leftStitches} of {onNeedleStitches} stitches unworked.',
  'endless repeat': 'The repeat uses up no stitch and would never end. Add a stitch to it.',
  'turn on the wrong side':
    'Row {row} is a {side} row and begins {startsEdge}; it can turn only before the other one. Turn one row earlier or later.',
} as const;
