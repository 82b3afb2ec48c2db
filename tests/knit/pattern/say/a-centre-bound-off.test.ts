import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('a centre that is bound off,', () => {
  it.each(
    table(`
      Bind off {center|centre|the center|middle|the middle} 12 sts → row: items 'bo ×12 in the middle'
      Bind off center 12 sts {for the back neck|for neck|for front neck|for back of the neck|for the neckline|for v|loosely} → row: items 'bo ×12 in the middle'
      {Bind off center 12 sts, k to end|Bind off center 12 sts and k to end|Bind off center 12 sts, then k to end} → row: items 'bo ×12 in the middle, k to {left 0}'
      Bind off center 12 sts; p to end → row: items 'bo ×12 in the middle, p to {left 0}'
      {Bind off center 12 sts, patt to end|Bind off center 12 sts, rib to end} → row: items 'bo ×12 in the middle, patt to {left 0}'
      Bind off center 12 sts and sl 1, k to end → row: items 'bo ×12 in the middle, sl, k to {left 0}'
      Bind off center 12 sts, * k1, p1; rep from * → row: items 'bo ×12 in the middle, (k, p) to {left 'what follows'}'
      Bind off center 12 sts, (k1, p1) twice → row: items 'bo ×12 in the middle, (k, p) ×2'
      Bind off center 12 sts and work each side separately → row: items 'bo ×12 in the middle' | @28 work on: which 'each side'
      Bind off center 12 sts and work both sides at once → row: items 'bo ×12 in the middle' | @28 work on: which 'both at once'
      Bind off center 12 sts , k each side separately → row: items 'bo ×12 in the middle' | @26 work on: which 'each side'
      Bind off center 12 sts and work across → row: items 'bo ×12 in the middle, patt to {left 'what follows'}'
      Bind off center 12 sts and work to end → row: items 'bo ×12 in the middle, patt to {left 0}'
      Bind off center 12 sts and join a second ball → row: items 'bo ×12 in the middle'
      Bind off center 1 sts → row: items 'bo in the middle'
      Bind off center 1 st → row: items 'bo in the middle'
      Bind off 12 sts → bind off: stitches 12
    `),
  )('is a row of its own, or begins one: $line', expectReading);
});
