import { describe, expect, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading, reading } from './said.ts';

/** What leads on or leaves something to her; how patterns are usually worded: common practice, no published source. */
describe('an aside', () => {
  it.each([
    'as follows:',
    'work as folls:',
    'proceed as follows',
    'work the foll inc row:',
    'or desired length',
    'or any des length to underarm',
    'taking increased sts into patt',
    'working extra sts into patt as they occur',
    'keeping armhole edge straight',
  ])('makes no row: %s', (words) => {
    expect(reading(`Change to 4 mm needles, ${words}`)).toBe('needle: mm 4 | @25 note: about aside');
  });

  it.each(
    table(`
      Work 6 rows, keeping 4 sts at each edge in wibble → ✗ stitch or repeat expected @28
      Bind off and weave in ends → bind off | @14 note: about 'making up'
      Bind off 5 sts and k to end → row: items 'bo ×5, k to {left 0}'
    `),
  )('is not read for more than it says: $line', expectReading);

  it.each(
    table(`
      {On all WS rows|Work all WS rows as|On every RS row}: k1, p to last st, k1 → ✗ stitch or repeat expected @1
    `),
  )('nor is a standing order a row: $line', expectReading);
});
