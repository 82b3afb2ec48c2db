import { expect, it } from 'vitest';
import { abbreviationsIn } from '../../src/knit/written/abbreviations.ts';
import { englishWritten } from '../../src/knit/written/english.ts';

/**
 * What abbreviations stand for in published lists: those of sweaterbabe.com ('Knitting abbreviations', of the standard
 * ones), nevernotknitting.com ('Techniques') and knittingmagic.biz ('Knitting abbreviations'), looked up for this.
 */
it.each([
  ['foll', /^following/],
  ['k', /^knit$/],
  ['k2tog', /^knit 2 (stitches )?together/],
  ['k3tog', /^knit 3 (stitches )?together/],
  ['kfb', /^knit into front and back/],
  ['m1', /^make 1/],
  ['m1l', /^make 1 .*left/],
  ['m1r', /^make 1 .*right/],
  ['mm', /^millimetres/],
  ['p', /^purl$/],
  ['p2tog', /^purl 2 (stitches )?together/],
  ['rem', /^remain/],
  ['Rep', /^repeat/],
  ['RS', /^right side/],
  ['sk2p', /^slip 1 .*knit 2 together, pass .*slipped stitch over/],
  ['s2kp', /^slip 2 .*together.*, knit 1, pass both/],
  ['sl', /^slip$/],
  ['ssk', /^slip 2 .*one by one, knit them together through the back loops/],
  ['ssp', /^slip 2 .*one by one, purl them together/],
  ['st', /^stitch$/],
  ['tbl', /^through the back loop/],
  ['WS', /^wrong side/],
  ['yo', /^yarn over/],
])('%s stands for what published lists say', (used, means) => {
  const [line = '', ...others] = abbreviationsIn([used], englishWritten('US'));
  expect(others).toEqual([]);
  expect(line.split(' = ')[0]).toBe(used === 'Rep' ? 'rep' : used);
  expect(line.split(' = ')[1]).toMatch(means);
});
