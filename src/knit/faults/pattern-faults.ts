/** What keeps a text from being read as a pattern, or a garment from being written as one. */
export interface PatternFaults {
  'pattern does not return': 'rows' | 'afterStitches' | 'startStitches';
  'pattern row does not come out': 'row' | 'takesStitches' | 'stitches' | 'ofStitches' | 'plusStitches';
  'fabric not known': 'name';
  'not a multiple': 'name' | 'ofStitches' | 'plusStitches' | 'stitches';
  'longer already': 'overMm' | 'wantedMm';
  'place not known': never;
  'piece not known': 'pieceName';
  'no rows to repeat': never;
  'row not known': 'rowName';
  'count contradicts': 'statedStitches' | 'foundStitches';
  'bound off too many': 'wantedStitches' | 'haveStitches';
  'centre not in the middle': 'stitches' | 'centreStitches';
  'nothing rests': never;
  'nothing to match': never;
  'stitches wait': 'stitches';
  'nothing on the needle': never;
  'too many stitches': 'stitches';
  'worked in rounds': never;
  'side differs': 'saidSide' | 'foundSide';
  'too many parts begun': 'pieceName' | 'mostTimes';
  'too many pieces read': 'mostPieces';
  'too long': 'mostRows';
  'sizes differ': 'sizes';
  'no sizes': never;
  'rows already worked': 'workedRows' | 'rows';
  'side of the last row': 'rows';
  'text reads otherwise': never;
}
