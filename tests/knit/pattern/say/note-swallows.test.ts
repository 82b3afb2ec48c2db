import { expect, it } from 'vitest';
import { reading } from './said.ts';

it.each([
  ['Tie a marker at each end and knit straight for 10 cm.', 'note: about marker'],
  ['Place a marker for the armhole and cont in patt until work measures 30 cm.', 'note: about marker'],
])('a marker swallows no order behind it: %s', (words, first) => {
  const read = reading(words);
  expect(read).toContain(first);
  expect(read).toMatch(/\| @\d+ even/);
});

it.each([
  'Do not make a garter edge on these rows.',
  'Do not turn.',
  'Press lightly, then cast on 12 sts at the same edge.',
])('what makes no row ends where an order begins: %s', (words) => {
  expect(reading(words)).toContain('✗');
});

it.each([
  'Do not break the yarn.',
  'Do not press the ribbing.',
  'Sew side seams, and press.',
  'Tie a marker at 3rd, and 6th st.',
  'Press, and work as follows:',
])('and takes the rest: %s', (words) => {
  expect(reading(words)).toMatch(/^note: about ['m][^|]*$/);
});
