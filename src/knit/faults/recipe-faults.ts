/** What keeps a recipe, or a form that is to become one, from being planned. */
export interface RecipeFaults {
  'bad makes': 'makes';
  'too many parts': 'mostParts' | 'parts';
  'part name twice': 'name';
  'nothing picked up': never;
  'no parts': never;
  'no such part': never;
  'bound off': 'name';
  'bad stitches': 'stitches' | 'mostStitches';
  'bad rows': 'rows' | 'mostRows';
  'bad needle': never;
  'too many sections': 'mostSections' | 'sections';
  'part too long': 'rows' | 'mostRows';
  blank: never;
  'no name': never;
  'not a whole number': 'typedText';
  'not a measure': 'typedText';
  'number too small': 'foundNumber' | 'leastNumber';
  'fabric multiple': 'fabric' | 'stitches' | 'belowStitches' | 'aboveStitches';
  'split too wide': 'name' | 'haveStitches';
  'split does not share': 'name' | 'leftStitches' | 'sumStitches';
  'plan disproved': 'expectedStitches' | 'foundStitches';
  'no gauge': 'pieceName';
  'bad gauge': never;
  'not as asked': never;
  'rows in words': never;
  'mixed shaping': never;
  'no centre stitch': never;
  'shaping outside the section': 'row' | 'rows';
  'edge step too large': 'byStitches';
  'shaped twice': 'row';
  'group on the wrong side': 'row' | 'side' | 'startsEdge' | 'edge';
  'turn on the wrong side': 'row' | 'side' | 'startsEdge';
  'too much to plan': 'mostStitches';
  'bad weight': 'pieceName' | 'grams';
  'shaping needs more stitches': 'needStitches' | 'haveStitches';
}
