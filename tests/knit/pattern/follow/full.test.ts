import { expect, it } from 'vitest';
import { readPattern } from '../../../../src/knit/pattern/read-pattern.ts';

/** So many parts of one piece are begun: each cast-on is one. */
const parts = (n: number) => `SCARF\n${'Cast on 4 sts.\nRow 1: Knit.\nBind off.\n'.repeat(n)}`;
const pieces = (n: number) =>
  Array.from({ length: n }, (_, i) => `PIECE ${i}\nCast on 4 sts.\nRow 1: Knit.\nBind off.\n`).join('\n');
const full = (text: string) =>
  readPattern(text, {})
    .lines.flatMap(({ faults }) => faults)
    .filter(({ code }) => code.startsWith('too many p'));

it('a text with more pieces or parts than a garment can have is told so once, with how many there may be', () => {
  const told = (text: string) => full(text).map(({ code, figures }) => ({ code, figures }));
  expect(told(parts(100))).toEqual([]);
  const tooMany = { code: 'too many parts begun', figures: { pieceName: 'scarf', mostTimes: 100 } };
  expect(told(parts(102))).toEqual([tooMany]);
  expect(told(pieces(40))).toEqual([]);
  const beyond = { code: 'too many pieces read', figures: { mostPieces: 40 } };
  expect(told(pieces(41))).toEqual([beyond]);
});
