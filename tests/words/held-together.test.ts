import { describe, expect, it } from 'vitest';
import { heldTogether } from '../../src/words/row.ts';

/** Where a line may end, as `|`. */
const breaks = (words: string) => heldTogether(words).replaceAll(' ', '|').replaceAll('\xa0', ' ');

describe('a row in words', () => {
  it('may be broken after its commas and before a phrase, never within one', () => {
    const of = [
      'k2, ssk, knit to last 4 sts, k2tog, k2',
      'bind off 6 sts, purl to end',
      '*k2, p2; repeat from * to last 2 sts, k2',
      '2 re, 2 M abgeh re zusstr, rechts bis 4 M vor dem Ende, 2 re',
      '6 M abketten, links bis Ende',
      'rab 6 m, end jusqu’à la fin',
    ];
    expect(of.map(breaks)).toEqual([
      'k2,|ssk,|knit|to last 4 sts,|k2tog,|k2',
      'bind|off 6 sts,|purl|to end',
      '*k2,|p2;|repeat|from|*|to last 2 sts,|k2',
      '2 re,|2 M|abgeh|re|zusstr,|rechts|bis 4 M|vor|dem|Ende,|2 re',
      '6 M|abketten,|links|bis Ende',
      'rab 6 m,|end|jusqu’à|la fin',
    ]);
  });
});
