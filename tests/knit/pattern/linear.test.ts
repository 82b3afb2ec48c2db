import { describe, expect, it } from 'vitest';
import { readPattern } from '../../../src/knit/pattern/read-pattern.ts';
import { MOST_PIECES } from '../../../src/knit/piece/check-recipe.ts';
import { countingWork } from '../../counted-work.ts';

const repeated = (n: number, of: (i: number) => string): string =>
  Array.from({ length: n }, (_, i) => of(i + 1)).join('');

const back = 'Back\nCast on 40 sts.\nWork 10 rows in st st.\nBind off.\n\n';

/** Texts that can be as long as one likes; none is a pattern that anyone would knit. */
const texts: Readonly<Record<string, (n: number) => string>> = {
  'of many pieces': (n) =>
    repeated(n, (i) => `Piece ${i}\nCast on 40 sts.\nRow 1: knit.\nRow 2: purl.\nBind off.\n\n`),
  'of pieces that all have one name': (n) => repeated(n, () => back),
  'of pieces worked like another': (n) => back + repeated(n, (i) => `Front ${i}\nWork as for back.\n\n`),
  'that says ‘work as for back’ again and again': (n) =>
    `${back}Front\n${repeated(n, () => 'Work as for back.\n')}`,
  'of many cast-ons below one heading': (n) =>
    `Back\n${repeated(n, () => 'Cast on 40 sts.\nRow 1: knit.\n')}`,
  'of many picked-up bands': (n) =>
    back + repeated(n, () => 'Pick up and knit 40 sts.\nKnit 2 rows.\nBind off.\n'),
  'of many rows': (n) => `Back\nCast on 40 sts.\n${repeated(n, () => 'Next row: k to end.\n')}`,
  'of rows that are numbered': (n) => `Back\nCast on 40 sts.\n${repeated(n, (i) => `Row ${i}: k20, p20.\n`)}`,
  'of rows that are repeated': (n) =>
    `Back\nCast on 40 sts.\nRow 1: k.\nRow 2: p.\n${repeated(n, () => 'Repeat last 2 rows.\n')}`,
  'of sides that are divided and joined': (n) =>
    `Back\nCast on 2000 sts.\n${repeated(n, () => 'Next row: k10, place remaining sts on holder.\nRejoin yarn to remaining sts.\n')}`,
  'of stitch patterns': (n) =>
    repeated(
      n,
      (i) =>
        `Pattern ${i} (multiple of 4 sts)\nRow 1: *k2, p2; repeat from *.\nRow 2: *p2, k2; repeat from *.\n\n`,
    ),
  'of talk': (n) => repeated(n, () => 'This is a nice thing of wool for her.\n\n'),
  'in one line of numbers': (n) => `Back\nCast on 40 sts.\n${repeated(n, (i) => `${i}, `)}\n`,
  'in one line of brackets': (n) => `Back\nCast on 40 sts.\n${'('.repeat(n)}k1${')'.repeat(n)}\n`,
  'in one line that never ends': (n) =>
    `Back\nCast on 40 sts.\n${repeated(n, () => 'knit then purl and ')}\n`,
};

describe('what is done to read', () => {
  const countedWork = countingWork();
  it.each(Object.keys(texts))('takes four times the work for four times the text, %s', async (what) => {
    const text = texts[what] as (n: number) => string;
    const work = (n: number) =>
      countedWork(
        () => readPattern(text(n)),
        () => readPattern(text(10)),
      );
    const short = await work(100);
    const long = await work(400);
    expect(short).toBeGreaterThan(0);
    expect(long / short).toBeLessThan(4 * 1.25);
  });
});

it('reads as many pieces as a garment can have, says so at the line that begins one more, and reads on no further', () => {
  const text = repeated(60, (i) => `Piece ${i}\nCast on 40 sts.\nKnit 2 rows.\nBind off.\n\n`);
  const { lines, pieces } = readPattern(text);
  expect(pieces).toHaveLength(MOST_PIECES);
  expect(pieces.at(-1)?.recipe.name).toBe(`Piece ${MOST_PIECES}`);
  const told = lines.filter((line) => line.faults.length > 0);
  expect(told.map((line) => line.faults.map((fault) => fault.code))).toEqual([['too many pieces read']]);
  expect(told[0]?.line).toBe(MOST_PIECES * 5 + 2);
});
