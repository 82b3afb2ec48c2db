import { expect, it } from 'vitest';
import { abbreviationsIn } from '../../../src/knit/written/abbreviations.ts';
import { englishWritten } from '../../../src/knit/written/english.ts';

const names = (...lines: readonly string[]) =>
  abbreviationsIn(lines, englishWritten('US')).map((line) => line.split(' = ')[0]);

/** A list explains what its pattern uses and nothing else, in the order of the alphabet: common practice, no published source. */
it.each<readonly [string, readonly string[]]>([
  ['k2, p1, sl1', ['k', 'p', 'sl']],
  ['k, p, sl', ['k', 'p', 'sl']],
  ['k2tog, ssk', ['k2tog', 'ssk']],
  ['sssp, p3tog', ['p3tog', 'sssp']],
  ['knit to end, purl, slip, repeat', []],
  ['Rep rows 1 and 2', ['rep']],
  ['*k1; repeat from *', ['k']],
  ['(3 sts)', ['sts']],
  ['knit to last st', ['st']],
  ['m1l, m1r, m1, m1p', ['m1', 'm1l', 'm1p', 'm1r']],
  ['Row 1 (RS): on 4 mm needles', ['mm', 'RS']],
  ['on every foll row, rem sts (ws)', ['foll', 'rem', 'sts']],
  ['4mm, stst, yo2', []],
  ['yo, kfb, tbl, WS', ['kfb', 'tbl', 'WS', 'yo']],
])('%s', (line, wanted) => {
  expect(names(line)).toEqual(wanted);
});

it('what stands in several lines is explained once, with its meaning', () => {
  expect(abbreviationsIn(['k2, k2tog', 'k1, k2tog'], englishWritten('US'))).toEqual([
    'k = knit',
    'k2tog = knit 2 stitches together',
  ]);
});

it('a word ends where its line does', () => {
  expect(names('knit one k', 'st left')).toEqual(['k', 'st']);
  expect(names('k', 'k')).toEqual(['k']);
});

/* Whose names they are: tests/outside/abbreviations.test.ts. */
it('the list has these, each once and in the order of the alphabet, and explains each where it stands', () => {
  const all = englishWritten('US').abbreviations.map(([name]) => name);
  expect(all.join(' ')).toBe(
    'ds foll k k2tog k3tog kfb m1 m1l m1p m1r mm p p2tog p3tog rem rep RS s2kp s2pp sk2p sl ssk ssp sssp st sts tbl WS yo',
  );
  expect(new Set(all).size).toBe(all.length);
  const written = (name: string) => (name === 'rep' ? 'Rep' : name);
  for (const name of all) expect(names(`on ${written(name)}, to end`), name).toEqual([name]);
});
