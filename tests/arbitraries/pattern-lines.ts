import fc from 'fast-check';
import { letter } from './typed-fields.ts';

/** Words that patterns are made of, and some that they are not. */
const words = (
  'k p k2 p2 k2tog ssk yo m1 inc dec sl st sts row rows rep from * to end last 2 4 12 100 0 ( ) [ ] , ; : . - – bind off cast on bo co at each ' +
  'end beg of next and every foll alt 4th 3rd 1st row: RS WS work even until piece measures 38 cm 15 in inches ½ ending with a WS row in st st ' +
  'garter rib moss pattern shape armholes neck as for back reversing shaping place on holder rejoin yarn rem turn at the same time times twice ' +
  'more until remain (24 sts) 92 (100, 108) BACK Sleeves make evenly across pick up and knit from ** † ‡ \t \n \n\n 99999999 1/2 -1 1e9 ½½ K-O'
).split(' ');

const word = fc.constantFrom(...words);

/** Lines made of a pattern's words in any order. */
export const scrambledLine: fc.Arbitrary<string> = fc
  .array(
    fc.oneof(
      { weight: 9, arbitrary: word },
      { weight: 1, arbitrary: fc.string({ unit: letter, maxLength: 6 }) },
    ),
    { maxLength: 40 },
  )
  .chain((list) => fc.constantFrom(' ', ' ', '', ', ').map((glue) => list.join(glue)));

/** A good text with a few characters cut, doubled or put in. */
export const mutated = (text: string): fc.Arbitrary<string> =>
  fc
    .array(
      fc.record({
        at: fc.nat(Math.max(0, text.length - 1)),
        cut: fc.nat(6),
        put: fc.oneof(word, fc.string({ maxLength: 3 })),
      }),
      { minLength: 1, maxLength: 6 },
    )
    .map((edits) => {
      let out = text;
      for (const { at, cut, put } of edits) out = out.slice(0, at) + put + out.slice(at + cut);
      return out;
    });
