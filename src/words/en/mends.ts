/** What a change of one piece breaks in the making up, and what mends it. */
export const words = {
  title: 'What no longer matches',
  places: { one: '{count} place no longer matches', other: '{count} places no longer match' },
  matchesAll: 'Everything that it is sewn to still matches.',
  looking: 'Looking for what mends it …',
  offRows: '{piece} and {to} are sewn together: {now} rows against {other} (before: {was}), {length} apart.',
  offStitches: '{piece} and {to} are sewn together: {now} stitches against {other} (before: {was}).',
  offLength: '{piece} and {to} are sewn together: an edge of {now} against {other}, {length} apart.',
  offAbove:
    '{piece} and {to} lie side by side above the underarm: {now} rows against {other} (before: {was}), {length} apart.',
  offBands:
    '{piece} and {to} lie over each other: {now} rows against {other} (before: {was}), {length} apart.',
  offPair: '{piece}: {now} rows on one and {other} on the other (before: {was}).',
  offEdgeLonger:
    '{band}: its edge “{edge}” is {length} longer now, with room for {fit} stitches instead of {stitches}.',
  offEdgeShorter:
    '{band}: its edge “{edge}” is {length} shorter now, with room for {fit} stitches instead of {stitches}.',
  unjoined: '{piece}, no. {make}: nothing is joined to some of its edges.',
  rowsMore: {
    one: 'Make {piece} {count} row longer too, in “{section}”',
    other: 'Make {piece} {count} rows longer too, in “{section}”',
  },
  rowsFewer: {
    one: 'Make {piece} {count} row shorter too, in “{section}”',
    other: 'Make {piece} {count} rows shorter too, in “{section}”',
  },
  wider: 'Make {piece} {count} stitches wider at its top',
  narrower: 'Make {piece} {count} stitches narrower at its top',
  shoulderWider: {
    one: 'Make the shoulder of {piece} {count} stitch wider too, its neck as much narrower',
    other: 'Make the shoulder of {piece} {count} stitches wider too, its neck as much narrower',
  },
  shoulderNarrower: {
    one: 'Make the shoulder of {piece} {count} stitch narrower too, its neck as much wider',
    other: 'Make the shoulder of {piece} {count} stitches narrower too, its neck as much wider',
  },
  castOnMore: {
    one: 'Cast on more for {piece}, {count} stitch for each shoulder: all of it is wider',
    other: 'Cast on more for {piece}, {count} stitches for each shoulder: all of it is wider',
  },
  castOnFewer: {
    one: 'Cast on fewer for {piece}, {count} stitch for each shoulder: all of it is narrower',
    other: 'Cast on fewer for {piece}, {count} stitches for each shoulder: all of it is narrower',
  },
  pickUp: '{band}: pick up {now} instead of {was} along {edges}',
  pickUpEach: '{band}: pick up {now} instead of {was} along each of {edges}',
  and: '{first}; {second}',
  makeNo: '{piece}, no. {list},',
  begun: 'It is on the needles: only rows not yet knitted change.',
  done: 'The other piece is knitted already.',
  ease: 'Take one more of the longer edge after every {every} when you sew.',
  tooFar: 'That is too far apart to be eased in: look at both before you go on.',
  bandDone: 'The band is picked up already: its edge will be held in or stretched there.',
  noMend: 'No other length of the other piece mends this by itself: look at both.',
  withIt: 'Saved together with it',
  leave: 'Leave it out',
} as const;
