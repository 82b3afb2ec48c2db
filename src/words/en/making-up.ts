/** Making up: seams, the neckband's pick-up, where the markers go. */
export const words = {
  title: 'Making up',
  none: 'Its pieces do not yet tell what is sewn to what. Say in the editor what each piece is in the garment.',
  drawn: 'Drawing of {pieces}: the edges that are joined are marked.',
  done: '{count} of {all} steps done',
  block: 'Block {piece}',
  blockMakes: 'Block {piece}, {count} times',
  nos: '{step}, no. {list}',
  blockTo: '{width} wide, {height} high. Wet it, pin it to these measurements, let it dry.',
  shoulders: 'Shoulder seams',
  shouldersEqual: {
    one: '{count} stitch on each side of both seams: stitch to stitch.',
    other: '{count} stitches on each side of both seams: stitch to stitch.',
  },
  shouldersEased:
    '{back} on the back, {front} on the front: take one more of the longer edge after every {every}.',
  doNotMatch:
    '{first} on the one, {second} on the other: these do not match. One of the two pieces is planned otherwise than the other asks for; look at both before you sew.',
  shoulderFirst: 'Right shoulder seam',
  shoulderEqual: {
    one: '{count} stitch on each side: stitch to stitch.',
    other: '{count} stitches on each side: stitch to stitch.',
  },
  shoulderLater: 'The left shoulder stays open until the band is done: it is worked in rows.',
  grafted: 'Graft the two edges together, off both needles.',
  threeNeedle: 'Right sides together, [bind off] both edges at once with a third needle.',
  shouldersOrder: 'For a band worked flat, leave one shoulder open until the band is done.',
  pickUp: 'Pick up the {band}',
  neckband: 'neckband',
  pickUpSide: 'each side of the neck: {stitches}, that is {ratio} of its {rows} rows',
  pickUpFront: 'front neck: {stitches}, one for each',
  pickUpBack: 'back neck: {stitches}, one for each',
  pickUpRatio: '{stitches} of {rows}',
  pickUpTotal: 'In all {total}.',
  neckTotal: 'In all about {total}, to suit a 2×2 rib. No band is planned yet.',
  pickUpAlong: 'along the {along}: {stitches}',
  pickUpRows: 'Along rows, pick up {ratio}.',
  pickUpKnit: 'Knit the band',
  sleeves: 'Set in the {piece}',
  sleevesMarker: 'Put a marker on each side seam edge {rows} rows ({length}) below the shoulder seam.',
  sleevesQuarters: 'Quarter points, counted up from the underarm: rows {rows}.',
  sleevesUnderarm: {
    one: 'Sew the {count} stitch [bound off] at the underarm to the sleeve’s own: stitch to stitch.',
    other: 'Sew the {count} stitches [bound off] at the underarm to the sleeve’s own: stitch to stitch.',
  },
  sleevesNotch: {
    one: 'Sew the {count} stitch [bound off] at the underarm to the {rows} topmost rows of the sleeve’s side.',
    other:
      'Sew the {count} stitches [bound off] at the underarm to the {rows} topmost rows of the sleeve’s side.',
  },
  raglan: 'Sew in the {piece}: raglan lines',
  raglanFour: 'All four lines, from the underarm up to the neck:',
  raglanThree:
    'Three lines, from the underarm up to the neck: left front, right front, right back. The left one at the back stays open until the band is done.',
  raglanEased:
    '{first} rows on the sleeve, {second} on the body: take one more of the longer edge after every {every}.',
  close: 'Close the {band}',
  closeShoulder: 'First the left shoulder seam:',
  closeRaglan: 'First the raglan line that is open, left at the back:',
  closeEnds: {
    one: 'The ends of the {band}: {count} row on each side, row to row.',
    other: 'The ends of the {band}: {count} rows on each side, row to row.',
  },
  forgotten: 'Not joined to anything',
  forgottenRows: {
    one: '{count} row of {piece}: {edge}.',
    other: '{count} rows of {piece}: {edge}.',
  },
  forgottenStitches: {
    one: '{count} stitch of {piece}: {edge}.',
    other: '{count} stitches of {piece}: {edge}.',
  },
  edgeRight: '{part}, right edge',
  edgeLeft: '{part}, left edge',
  edgeTop: '{part}, top',
  edgeStart: '{part}, beginning',
  offTitle: 'What does not meet',
  offPickUp: 'The {band} picks up {stitches} where the edge has room for about {fit}.',
  offTwice: 'An edge of {piece} would be sewn to two others.',
  offNotYet: '{piece} would be picked up or sewn across a seam that is not sewn yet.',
  finished: 'Measures when it is made up',
  finishedChest: 'Round the chest: {length}',
  finishedLength: 'Length: {length}',
  finishedNape: 'From the nape to the cuff: {length}',
  finishedArm: 'Round the upper arm: {length}',
  finishedWrist: 'Round the wrist: {length}',
  finishedNeck: 'Round the neck: {length}',
  finishedSeams: 'One stitch of each sewn edge is taken off for the seams.',
  sleevesFit: 'The sleeve’s top is {top}, the armhole {armhole}: they meet.',
  sleevesEase:
    'The sleeve’s top is {top}, the armhole {armhole}: ease the longer one in evenly between the quarter points.',
  side: 'Side seams',
  seamEqual: {
    one: '{count} row on each side: row to row, in mattress stitch.',
    other: '{count} rows on each side: row to row, in mattress stitch.',
  },
  seamEased:
    '{first} rows on the {a}, {second} on the {b}: take one more of the longer edge after every {every}.',
  sleeveSeams: 'Sleeve seams',
  opening: 'Fasten the opening of the back',
  openingLoop: {
    one: 'It is {count} row deep. Sew a button to one side at the neck. At the other lay two strands across as a loop that the button just passes, and work over them in buttonhole stitch.',
    other:
      'It is {count} rows deep. Sew a button to one side at the neck. At the other lay two strands across as a loop that the button just passes, and work over them in buttonhole stitch.',
  },
  openingTry:
    'Try it over the head first. For a small child the button has to hold; follow your local rules.',
  ends: 'Weave in the ends',
  endsHelp: 'Along the seams, not across the fabric.',
  cords:
    'For a child’s garment: no cords or ribbons at the neck, buttons sewn so that they hold. Follow your local rules.',
  tick: 'Done: {step}',
} as const;
