import { expect, it } from 'vitest';
import { logicalLines, tokensOf } from '../../../../src/knit/pattern/text/lines.ts';

const words = (text: string) =>
  logicalLines(text).flatMap((line) => tokensOf(line).map((token) => token.text));

/** Leaflets before 1940 set a stop behind figures and abbreviations alike: common practice, no published source. */
it.each([
  ['Cast on 40. sts. Knit', 'cast on 40 sts . knit'],
  ['dec 1. st each end', 'dec 1 st each end'],
  // a new sentence
  ['Work 40. St st for', 'work 40 . st st for'],
  ['Work 40. Knit sts', 'work 40 . knit sts'],
  ['Work rows. sts on', 'work rows . sts on'],
])('a stop between a number and its stitches says nothing: %s', (text, wanted) => {
  expect(words(text).join(' ')).toBe(wanted);
});
