/** A garment of straight panels, by its figures. */
export const words = {
  straight: 'Straight panels',
  straightHint:
    'No armholes, sleeves widened in one row. Type a length, or stitches or rows: the other follows. Afterwards every number of the pieces is yours to change.',
  straightNeedsGauge: 'With your [gauge] filled in above, stitches and rows follow from the lengths.',
  neckBoat: 'Boat neck',
  neckV: 'V neck',
  inLength: '{what}, {unit}',
  inStitches: '{what}, stitches',
  inRows: '{what}, rows',
  figureWidth: 'Width',
  figureLength: 'Length',
  figureBorder: 'Border',
  figureNeckWidth: 'Neck width',
  figureNeckDepth: 'Neck depth',
  figureCuff: 'Cuff',
  figureSleeveTop: 'Sleeve top',
  figureSleeveLength: 'Sleeve',
  takeStraight: 'Make back, front and sleeves',
  straightMissing: 'A figure is still missing.',
  straightShoulders: {
    one: 'Each shoulder has {count} stitch, the neck {neck}.',
    other: 'Each shoulder has {count} stitches, the neck {neck}.',
  },
  straightOddV: 'A V begins between two stitches: give the width an even number of stitches.',
  straightNeckWide: 'The neck leaves no shoulders: make it narrower, or the pieces wider.',
  straightShort: 'The rows do not suffice: make the pieces longer, or border and neck shorter.',
  straightSteep: 'The V takes more decreases than it has rows: make it deeper or narrower.',
  straightSleeve:
    'One row can at most double the stitches of the cuff, and a sleeve is no narrower than its cuff: change one of the two.',
} as const;
