import { type Cursor, takeAnyPhrase } from './cursor.ts';

const MANNERS = [
  'in rib patt',
  'in patt|rib|knitting|k|p',
  'ribwise',
  'at beg|start of row|rows|needle',
  'at beg|start of each|every|both|the row|rows',
  'kwise|pwise',
  'very? loosely',
  ', loose',
  'firmly|tightly',
  'not too tightly',
  'for back|front of neck',
  'for front neck line',
  'for front neck|neckline|edge',
  'for front|neck|back|button|buttonhole border|band',
  'for back neck',
  'for left|right shoulder|front|armhole|underarm',
  'for first|1 st? shoulder',
  // after the longer ones, which begin with some of its words
  'for the? neck|armhole|underarm|shoulder|front|back|pocket|buttonhole|thumb',
  'as if to k|p',
];

export function skipManner(c: Cursor): void {
  while (takeAnyPhrase(c, ...MANNERS)) {
    // how it is done changes no count
  }
}
