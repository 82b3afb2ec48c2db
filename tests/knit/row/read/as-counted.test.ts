import { describe, expect, it } from 'vitest';
import { asCounted } from '../../../../src/knit/row/read/as-counted.ts';
import { END, type Goal, type Item, TO_END } from '../../../../src/knit/row/read/notation.ts';
import type { StitchName } from '../../../../src/knit/stitch.ts';

/* Rows whose words do not come out on the stitches there are, and what is meant by them then; common practice, no published source. */
const st = (work: StitchName, times = 1): Item => ({ is: 'stitches', work, times });
const to = (work: StitchName, goal: Goal): Item => ({ is: 'stitches to', work, goal });
const group = (times: number, ...items: readonly Item[]): Item => ({ is: 'group', items, times });
const groupTo = (goal: Goal, ...items: readonly Item[]): Item => ({ is: 'group to', items, goal });

type Case = readonly [string, readonly Item[], number, readonly Item[]];
const asItIs = (said: string, items: readonly Item[], live: number): Case => [said, items, live, items];

describe('an increase for which no stitch is left', () => {
  const row = (left: number, ...end: readonly Item[]) => [st('k', 2), st('inc'), to('k', { left }), ...end];
  it.each<Case>([
    [
      'is made between two, and so is the other one',
      row(2, st('inc'), st('k', 2)),
      20,
      [st('k', 2), st('m1'), to('k', { left: 2 }), st('m1'), st('k', 2)],
    ],
    [
      'two of them at the end',
      row(1, st('inc'), st('k'), st('inc')),
      20,
      [st('k', 2), st('m1'), to('k', { left: 1 }), st('m1'), st('k'), st('m1')],
    ],
    asItIs('is not where there is one for it', row(3, st('inc'), st('k', 2)), 20),
    asItIs('is not where two are missing', row(1, st('inc'), st('k', 2)), 20),
    asItIs('is none where nothing is increased behind it', row(2, st('k', 2)), 20),
    asItIs('nor where all is worked to the end', [st('inc'), to('k', TO_END)], 20),
  ])('%s', (_, items, live, is) => {
    expect(asCounted(items, live)).toEqual(is);
  });
});

describe('the stitch that is left on the needle by binding off', () => {
  const row = [st('k', 15), st('bo', 4), st('k', 25), st('bo', 4), st('k', 15)];
  it.each<Case>([
    [
      'is not counted by some: one more behind each gap',
      row,
      65,
      [st('k', 15), st('bo', 4), st('k', 26), st('bo', 4), st('k', 16)],
    ],
    asItIs('is counted where the row comes out', row, 63),
    asItIs('is not what is missing where one is', row, 64),
    asItIs('nor where three are', row, 66),
    [
      'behind the last stitches that are left',
      [to('k', { left: 20 }), st('bo', 4), st('k', 15)],
      50,
      [to('k', { left: 20 }), st('bo', 4), st('k', 16)],
    ],
    asItIs('not counted out, where those come out', [to('k', { left: 19 }), st('bo', 4), st('k', 15)], 50),
    asItIs('lies behind no gap where the row begins with it', [st('bo', 4), st('k', 10)], 15),
    asItIs('nor between two gaps', [st('k', 5), st('bo', 4), st('bo', 4)], 14),
  ])('%s', (_, items, live, is) => {
    expect(asCounted(items, live)).toEqual(is);
  });
});

describe('what is said across the row', () => {
  it.each<Case>([
    [
      'is repeated whole where its last stitches alone do not come out',
      [st('k2tog'), groupTo(END, st('k', 3))],
      25,
      [groupTo(END, st('k2tog'), st('k', 3))],
    ],
    [
      'with all that stands before its last',
      [st('k'), st('p'), groupTo(END, st('k', 3))],
      25,
      [groupTo(END, st('k'), st('p'), st('k', 3))],
    ],
    asItIs('is repeated from its last on where that comes out', [st('k2tog'), groupTo(END, st('k', 3))], 20),
    asItIs('or where neither does', [st('k2tog'), groupTo(END, st('k', 3))], 24),
    [
      'so are stitches that are worked to the end',
      [st('k'), to('k2tog', TO_END)],
      6,
      [groupTo(TO_END, st('k'), st('k2tog'))],
    ],
    asItIs('which come out by themselves', [st('k'), to('k2tog', TO_END)], 9),
    asItIs(
      'not where it has a group within',
      [st('k2tog'), group(2, st('k'), st('p')), groupTo(END, st('k', 5))],
      22,
    ),
    asItIs('nor begins with one', [group(1, st('k'), st('p')), st('k2tog'), groupTo(END, st('k', 5))], 18),
    asItIs('not behind what is not counted', [to('k', { left: 4 }), groupTo(END, st('k', 3))], 25),
    asItIs('not where the row is nothing else', [groupTo(END, st('k2tog'), st('k', 3))], 24),
  ])('%s', (_, items, live, is) => {
    expect(asCounted(items, live)).toEqual(is);
  });
});

describe('a rib', () => {
  const [one, two] = [groupTo(END, st('k'), st('p')), groupTo(END, st('k', 2), st('p', 2))];
  it.each<Case>([
    ['is cut where the row ends', [one], 35, [one, st('k')]],
    asItIs('is whole where it comes out', [one], 36),
    ['of two is cut behind its knit stitches', [two], 34, [two, st('k', 2)]],
    [
      'of four stretches is cut behind any of them',
      [groupTo(END, st('k', 2), st('p'), st('k'), st('p'))],
      23,
      [groupTo(END, st('k', 2), st('p'), st('k'), st('p')), st('k', 2), st('p')],
    ],
    asItIs('and not within them', [two], 33),
    asItIs('nor within the purl ones', [two], 35),
    ['to the end in so many words', [groupTo(TO_END, st('k'), st('p'))], 35, [one, st('k')]],
    asItIs('before other stitches ends with them', [groupTo({ left: 2 }, st('k'), st('p')), st('k', 2)], 35),
    ['is cut before a last increase', [one, st('inc')], 36, [one, st('k'), st('inc')]],
    ['behind stitches that are counted', [st('p', 3), one], 38, [st('p', 3), one, st('k')]],
    asItIs('is none with an over in it', [groupTo(END, st('k'), st('yo'), st('p'))], 35),
    asItIs('is not cut before a stitch that is said', [one, st('k')], 36),
    asItIs('is not worked on fewer stitches than it has', [two], 2),
  ])('%s', (_, items, live, is) => {
    expect(asCounted(items, live)).toEqual(is);
  });
});

describe('every tenth stitch', () => {
  const nth: Item = { is: 'group to', items: [st('k', 9), st('inc')], goal: END, nth: true };
  it('is counted from the first on, and what is left over is worked as it is', () => {
    expect(asCounted([nth], 86)).toEqual([group(8, st('k', 9), st('inc')), to('k', END)]);
    expect(asCounted([nth], 80)).toEqual([group(8, st('k', 9), st('inc')), to('k', END)]);
    expect(asCounted([nth, st('k')], 86)).toEqual([nth, st('k')]);
    const { nth: _nth, ...plain } = nth;
    expect(asCounted([plain], 86)).toEqual([plain]);
  });
});
