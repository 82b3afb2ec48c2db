/** Making up: seams, the neckband's pick-up, where the markers go. */
export const words = {
  title: 'Making up',
  none: 'Its pieces do not yet tell what is sewn to what. Say in the editor what each piece is in the garment.',
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
    one: 'Sew the {count} stitch [bound off] at the underarm to the sleeve’s sides.',
    other: 'Sew the {count} stitches [bound off] at the underarm to the sleeve’s sides.',
  },
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
  ends: 'Weave in the ends',
  endsHelp: 'Along the seams, not across the fabric.',
  cords:
    'For a child’s garment: no cords or ribbons at the neck, buttons sewn so that they hold. Follow your local rules.',
  tick: 'Done: {step}',
} as const;
