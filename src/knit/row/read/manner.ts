import { type Cursor, takeAnyPhrase } from './cursor.ts';

const MANNERS = [
  'in pattern|patt|pat|rib|ribbing|knitting|knit|purl',
  'in k|p 1',
  'ribwise',
  'at beg|beginning|start of row|rows|needle',
  'at beg|beginning|start of each|every|both|the row|rows',
  'knitwise',
  'purlwise',
  'kwise',
  'pwise',
  'loosely',
  'firmly',
  'tightly',
  'very loosely',
  'not too tightly',
  'for neck|armhole|armholes|underarm|underarms|shoulder|front|back|pocket|buttonhole|thumb',
  'for the neck|armhole|shoulder|back',
  'for back|front of neck',
  'for front neck|edge',
  'for back neck',
  'for left|right shoulder|front|armhole|underarm',
  'for 1st|first shoulder',
  'as if to k|p|knit|purl',
];

export function skipManner(c: Cursor): void {
  while (takeAnyPhrase(c, ...MANNERS)) {
    // how it is done changes no count
  }
}
