import { expect, it } from 'vitest';
import { readPattern } from '../../../../src/knit/pattern/read-pattern.ts';

/** So many parts of one piece are begun: each cast-on is one. */
const parts = (n: number) => `SCARF\n${'Cast on 20 sts.\nRow 1: Knit.\nBind off.\n'.repeat(n)}`;
const pieces = (n: number) =>
  Array.from({ length: n }, (_, i) => `PIECE ${i}\nCast on 20 sts.\nRow 1: Knit.\nBind off.\n`).join('\n');
const full = (text: string) =>
  readPattern(text, {})
    .lines.flatMap(({ faults }) => faults)
    .filter(({ code }) => code.startsWith('too many p'));

it('a text with more pieces or parts than a garment can have is told so once, with how many there may be', () => {
  const told = (text: string) => full(text).map(({ code, figures }) => ({ code, figures }));
  expect([99, 100].map((n) => told(parts(n)))).toEqual([[], []]);
  const tooMany = { code: 'too many parts begun', figures: { pieceName: 'scarf', mostTimes: 100 } };
  expect([101, 110].map((n) => told(parts(n)))).toEqual([[tooMany], [tooMany]]);
  expect(told(pieces(40))).toEqual([]);
  const beyond = { code: 'too many pieces read', figures: { mostPieces: 40 } };
  expect([41, 44].map((n) => told(pieces(n)))).toEqual([[beyond], [beyond]]);
  expect(readPattern(pieces(44), {}).pieces).toHaveLength(40);
});
