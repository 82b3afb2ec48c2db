import { describe, expect, it } from 'vitest';
import { inFabrics } from '../../../../../src/knit/pattern/follow/build/in-fabrics.ts';
import { mergeEdits } from '../../../../../src/knit/pattern/follow/build/merge-edits.ts';
import { printRow } from '../../../../../src/knit/row/print.ts';
import type { Item } from '../../../../../src/knit/row/read/notation.ts';
import { shortenWorks } from '../../../../../src/knit/row/shorten.ts';
import type { Side } from '../../../../../src/knit/row/step.ts';
import type { StitchName } from '../../../../../src/knit/stitch.ts';

const works = (text: string): StitchName[] => [...text].map((letter) => (letter === 'p' ? 'p' : 'k'));

const some = (times: number, fabric?: 'garter' | 'stocking' | 'moss'): Item => ({
  is: 'stitches',
  work: 'patt',
  times,
  ...(fabric && { fabric }),
});

const rest = (fabric?: 'garter' | 'stocking' | 'moss'): Item => ({
  is: 'stitches to',
  work: 'patt',
  goal: { left: 0 },
  ...(fabric && { fabric }),
});

/** Each stitch of the row by its letter, '.' for one of the pattern; '…' behind one that goes on. */
const inWords = (items: readonly Item[]): string =>
  items
    .map((item) => {
      if (!('work' in item)) return '?';
      const letter = item.work === 'patt' ? '.' : item.work;
      return item.is === 'stitches' ? letter.repeat(item.times) : `${letter}…`;
    })
    .join(' ');

describe('what a row names a fabric for', () => {
  it.each<[string, readonly Item[], Side, string | undefined, string | undefined, string]>([
    [
      'is knit in garter stitch, on either side',
      [some(3, 'garter'), rest()],
      'WS',
      undefined,
      undefined,
      'kkk .…',
    ],
    [
      'is knit in stocking stitch on the right side',
      [some(3, 'stocking'), rest()],
      'RS',
      undefined,
      undefined,
      'kkk .…',
    ],
    [
      'is purled in stocking stitch on the wrong side',
      [some(3), rest('stocking')],
      'WS',
      undefined,
      undefined,
      '... p…',
    ],
    [
      'is left to the fabric that is on the needle anyway',
      [some(3, 'garter'), rest()],
      'RS',
      'garter',
      undefined,
      '... .…',
    ],
    ['is by turns in moss stitch', [some(4, 'moss'), rest()], 'RS', 'stocking', undefined, 'k p k p .…'],
    [
      'goes on in moss stitch: knit where a stitch looks purled',
      [some(4, 'moss'), rest()],
      'RS',
      'stocking',
      'pkpkkkkkkk',
      'k p k p .…',
    ],
    [
      'goes on in moss stitch: purled where it looks knit',
      [some(4, 'moss'), rest()],
      'RS',
      'stocking',
      'kpkpkkkkkk',
      'p k p k .…',
    ],
    [
      'begins anew in moss stitch where none is there yet',
      [some(4, 'moss'), rest()],
      'RS',
      'stocking',
      'kkkkkkkkkk',
      'k p k p .…',
    ],
    [
      'is looked for where it stands, counted from the beginning',
      [some(5), some(3, 'moss'), some(2)],
      'RS',
      'stocking',
      'kkkkkkpkkk',
      '..... p k p ..',
    ],
    [
      'or from the end, behind stitches of no number',
      [rest(), some(3, 'moss')],
      'RS',
      'stocking',
      'kkkkkkkpkp',
      '.… k p k',
    ],
    [
      'or from the end, where it looks knit first',
      [rest(), some(3, 'moss')],
      'RS',
      'stocking',
      'kkkkkkkkpk',
      '.… p k p',
    ],
    [
      'is spelled in moss stitch to the end, as many as are there',
      [some(2), rest('moss')],
      'RS',
      'stocking',
      undefined,
      '.. k p k p k p k p',
    ],
  ])('%s', (_, items, side, main, looks, row) => {
    expect(inWords(inFabrics(items, side, 10, main, looks === undefined ? undefined : works(looks)))).toBe(
      row,
    );
  });
});

describe('a spelled row with stitches bound off or cast on beside', () => {
  const merged = (
    row: string,
    at: 'right' | 'left',
    work: 'bo' | 'co',
    stitches: number,
    side: Side,
  ): string => printRow(mergeEdits(shortenWorks(works(row)), row.length, [{ at, work, stitches }], side));

  it.each<[string, 'right' | 'left', 'bo' | 'co', number, Side, string]>([
    ['kkppkkppkk', 'right', 'bo', 3, 'RS', 'bind off 3 sts, p1, k2, p2, k2'],
    ['kkppkkppkk', 'left', 'bo', 3, 'WS', 'bind off 3 sts, p1, k2, p2, k2'],
    ['kkppkkppkk', 'right', 'co', 2, 'RS', 'cast on 2 sts, *k2, p2; repeat from * to last 2 sts, k2'],
    ['kkppkkppkk', 'left', 'co', 2, 'RS', '*k2, p2; repeat from * to last 2 sts, k2, cast on 2 sts'],
    ['kkpp', 'right', 'bo', 6, 'RS', 'k2, purl to end'],
  ])('%s at the %s edge, %s %i on %s: %s', (row, at, work, stitches, side, words) => {
    expect(merged(row, at, work, stitches, side)).toBe(words);
  });
});
