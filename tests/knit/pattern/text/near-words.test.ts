import { describe, expect, it } from 'vitest';
import { nearWords, rightSpelling, slipsBetween } from '../../../../src/knit/pattern/text/near-words.ts';

/** Slips of the finger: a letter left out, put in, changed, or two in the wrong order (Damerau, CACM 7, 1964: the four kinds). */
describe('a word that a slip of the finger made', () => {
  it.each([
    // two in the wrong order
    ['knti', 'knit'],
    ['repaet', 'repeat'],
    ['armhloe', 'armhole'],
    ['needels', 'needles'],
    ['rwos', 'rows'],
    ['bcak', 'back'],
    ['fornt', 'front'],
    // left out
    ['begining', 'beginning'],
    ['ribing', 'ribbing'],
    ['nedle', 'needle'],
    ['sleve', 'sleeve'],
    // put in
    ['slevee', 'sleeve'],
    ['neckk', 'neck'],
    ['worrk', 'work'],
    ['castt', 'cast'],
    // changed
    ['decreace', 'decrease'],
    ['wprk', 'work'],
    ['eech', 'each'],
  ])('is the one that it can be: %s for %s', (word, meant) => {
    expect(rightSpelling(word)).toBe(meant);
  });

  it.each([
    ['knit', 'a word that there is'],
    ['stitchs', 'stitch or stitches'],
    ['knitt', 'knit or knits'],
    ['purll', 'purl or purls'],
    ['holdr', 'hold or holder'],
    ['shoulde', 'should or shoulder'],
    ['xnit', 'its first letter is another'],
    ['kni', 'short as it is, it may be anything'],
    ['wok', 'short as it is, it may be anything'],
    ['knnitt', 'two slips'],
    ['frumple', 'no word near it'],
  ])('is left as it is where nobody can know: %s, %s', (word) => {
    expect(rightSpelling(word)).toBeUndefined();
  });

  it.each([
    ['knit', 'knit', 0],
    ['kit', 'knit', 1],
    ['knit', 'kit', 1],
    ['knot', 'knit', 1],
    ['kint', 'knit', 1],
    ['nkit', 'knit', 1],
    ['knti', 'knit', 1],
    ['tink', 'knit', 3],
    ['', 'knit', 4],
    ['knit', '', 4],
    ['purl', 'knit', 4],
    ['nkti', 'knit', 2],
    ['repaet', 'repeats', 2],
  ])('%s is as many slips from %s as it takes: %d', (word, other, slips) => {
    expect(slipsBetween(word, other)).toBe(slips);
  });

  it('may be told as one of a few, the nearest first, those that are as near in their order', () => {
    expect(nearWords('decrese', 3)).toEqual(['decrease', 'decreased', 'decreases']);
    expect(nearWords('needels', 3)).toEqual(['needles', 'needle']);
    expect(nearWords('Needels', 1)).toEqual(['needles']);
    expect(nearWords('armhloe', 3)).toEqual(['armhole', 'armholes']);
    // of four letters one may be another, of five two
    expect(nearWords('knti', 3)).toEqual(['knit']);
    expect(nearWords('shoulde', 3)).toEqual(['should', 'shoulder', 'shoulders']);
    expect(nearWords('frumple', 3)).toEqual([]);
  });
});
