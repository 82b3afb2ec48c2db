import { describe, expect, it } from 'vitest';
import { mirrorWords } from '../../../src/knit/piece/mirror-words.ts';
import type { PartRecipe, Section } from '../../../src/knit/piece/recipe.ts';
import { expandRow } from '../../../src/knit/row/expand.ts';
import type { Step } from '../../../src/knit/row/step.ts';
import type { StitchName } from '../../../src/knit/stitch.ts';

/*
 * The second front, its rows written out by hand beside those of the first: 'k4 b2' knits four and binds off two. c is cast
 * on, u left unworked, d a double stitch, w the next stitch wrapped, g said of the gap; t is two together, s two slipped
 * ones, x and y the same purled.
 */

const called: Readonly<Record<string, StitchName>> = {
  k: 'k',
  p: 'p',
  b: 'bo',
  c: 'co',
  u: 'unworked',
  d: 'ds',
  w: 'wrap next st',
  g: 'picking up each wrap',
  t: 'k2tog',
  s: 'ssk',
  x: 'p2tog',
  y: 'ssp',
};
const word = (row: string): Step[] =>
  row.split(' ').map((one) => ({ work: called[one.slice(0, 1)] as StitchName, times: Number(one.slice(1)) }));

const section = (rows: number, words?: readonly string[], over: Partial<Section> = {}): Section => ({
  name: 'rows',
  rows,
  fabric: 'stocking',
  needle: 4,
  shaping: [],
  ...(words ? { words: words.map(word) } : {}),
  ...over,
});

const letterOf = (work: StitchName): string =>
  Object.entries(called).find(([, name]) => name === work)?.[0] ?? work;

/** A row in the letters that it is written in above, one after the other alike counted. */
function said(steps: readonly Step[], before: number): string {
  const out: [string, number][] = [];
  for (const letter of expandRow(steps, before).map(letterOf)) {
    const last = out.at(-1);
    if (last?.[0] === letter) last[1] += 1;
    else out.push([letter, 1]);
  }
  return out.map(([letter, times]) => `${letter}${times}`).join(' ');
}

const mirrored = (from: PartRecipe['from'], ...sections: readonly Section[]) =>
  mirrorWords({ name: 'front', from, end: 'hold', sections });

/** The rows of the mirror image, where each has as many stitches as `counts` tells. */
const rowsOf = (counts: readonly number[], ...sections: readonly Section[]) =>
  mirrored({ castOn: counts[0] ?? 0 }, ...sections)
    .flatMap(({ words = [] }) => words)
    .map((steps, i) => said(steps, counts[i] ?? 0));

describe('a second front', () => {
  it.each<[string, counts: readonly number[], rows: readonly string[], wanted: readonly string[]]>([
    [
      'decreases at its other edge, leaning the other way',
      [8, 7, 7],
      ['k6 t1', 'p7', 'k7'],
      ['s1 k6', 'p7', 'k7'],
    ],
    [
      'casts on where its first one does at the end of the row',
      [6, 8, 8],
      ['k6 c2', 'p8', 'k8'],
      ['c2 k6', 'p8', 'k8'],
    ],
    [
      'casts on at the end of a row where its first one does at the beginning',
      [6, 6, 8],
      ['k6', 'c2 p6', 'k8'],
      ['k6', 'p6 c2', 'k8'],
    ],
    [
      'binds off on the wrong side what its first one does on the right side before it',
      [8, 8, 6],
      ['b2 k6', 'p6', 'k6'],
      ['k8', 'b2 p6', 'k6'],
    ],
    [
      'and a row earlier what its first one does on the wrong side',
      [8, 6, 6],
      ['k8', 'b2 p6', 'k6'],
      ['b2 k6', 'p6', 'k6'],
    ],
    ['each of two groups, at the edges', [9, 6, 4], ['b2 k7', 'b3 p4', 'k4'], ['b3 k6', 'b2 p4', 'k4']],
    ['in the row before where none comes after it', [8, 8, 6], ['k8', 'p8', 'b2 k6'], ['k8', 'b2 p6', 'k6']],
    ['at the end of the row where there is no other', [8], ['b2 k6'], ['k6 b2']],
    // no plain stitch tells how: knitted, as on the right side
    ['over decreases alone', [6, 4], ['b2 s2', 'p2'], ['t2 k2', 'b2 p2']],
    ['all that there are at once', [8, 8], ['k8', 'b8'], ['k8', 'b8']],
  ])('%s', (_, counts, rows, wanted) => {
    expect(rowsOf(counts, section(rows.length, rows))).toEqual(wanted);
  });
});

describe('of a second front worked in short rows', () => {
  it.each<[string, rows: readonly string[], wanted: readonly string[]]>([
    [
      'a wrap is made where it turns, and picked up where its first one does not',
      ['k6', 'p4 w1 u2', 'u2 k4', 'p4 g1 p2'],
      ['k4 w1 u2', 'u2 p4', 'k6 g1', 'p6'],
    ],
    // the two at the edge are worked as often as those of its first one: in two rows of three
    ['what rests in the last row is left a row earlier', ['k6', 'p6', 'k4 u2'], ['k6', 'p4 u2', 'k6']],
    [
      'moss is moss where it rests and where it does not',
      ['k1 p1 k1 p1 k1 p1', 'p1 k1 p1 k1 p1 k1', 'k1 p1 k1 p1 u2', 'u2 p1 k1 p1 k1'],
      ['p1 k1 p1 k1 p1 k1', 'k1 p1 k1 p1 u2', 'u2 p1 k1 p1 k1', 'k1 p1 k1 p1 k1 p1'],
    ],
  ])('%s', (_, rows, wanted) => {
    expect(rowsOf([6, 6, 6, 6], section(rows.length, rows))).toEqual(wanted);
  });

  it('a row that is shaped and has no turn beside it only changes its ends', () => {
    const rows = section(6, ['t1 k5', 'p6', 'k6', 'p6', 'k4 u2', 'u2 p4']);
    expect(rowsOf([7, 6, 6, 6, 6, 6], rows)).toEqual(['k5 s1', 'p6', 'k6', 'p4 u2', 'u2 k4', 'p6']);
  });
});

describe('rows in words', () => {
  it('that come again in turn are told once, where they do in the mirror image', () => {
    const twice = mirrored({ castOn: 6 }, section(6, ['k2 p4', 'k4 p2']))[0]?.words;
    expect(twice?.map((steps) => said(steps, 6))).toEqual(['p4 k2', 'p2 k4']);
    // a group is moved in each of them
    const rest: Step = { work: 'k', until: { left: 0 } };
    const [parted] = mirrored(
      { castOn: 12 },
      { ...section(4), words: [[{ work: 'bo', times: 2 }, rest], [rest]] },
    );
    expect(parted?.words?.map((steps, i) => said(steps, [12, 12, 10, 10][i] ?? 0))).toEqual([
      'k12',
      'b2 k10',
    ]);
  });

  it('are told one by one where the first and the last of them differ from those between', () => {
    const turned = ['k4 u2', 'u2 p4', 'k6', 'p6'];
    // the yarn is at the right edge, where two rest: they are worked a row later, and not in the fourth row
    const wanted = ['u2 k4', 'p6', 'k6', 'p4 u2', 'u2 k4', 'p6', 'k6', 'p6'];
    expect(rowsOf([6, 6, 6, 6, 6, 6, 6, 6], section(8, turned))).toEqual(wanted);
    const later = ['k6', 'p6', 'k4 u2', 'u2 p4'];
    expect(rowsOf([6, 6, 6, 6], section(8, later))).toEqual(['k6', 'p4 u2', 'u2 k4', 'p6']);
  });

  it('begin on the wrong side in a band that is picked up, or where the part is told to', () => {
    const rows = section(2, ['b2 p6', 'k6']);
    const ofBand = mirrored({ pickUp: [{ along: 'edge', stitches: 8 }] }, rows)[0]?.words ?? [];
    // the first row has no row before it to be bound off in
    expect(ofBand.map((steps, i) => said(steps, [8, 8][i] ?? 0))).toEqual(['p8', 'b2 k6']);
    const decreased =
      mirrored({ pickUp: [{ along: 'edge', stitches: 6 }] }, section(2, ['b2 x2', 'k2']))[0]?.words ?? [];
    expect(decreased.map((steps, i) => said(steps, [6, 4][i] ?? 0))).toEqual(['y2 p2', 'b2 k2']);
    const told = mirrorWords({
      name: 'front',
      from: { castOn: 8 },
      firstSide: 'WS',
      end: 'hold',
      sections: [rows],
    });
    expect(told[0]?.words?.map((steps) => said(steps, 8))).toEqual(['p8', 'b2 k6']);
  });

  it('between rows that are not are read by the stitches that these leave', () => {
    const narrowed = section(2, undefined, {
      shaping: [{ kind: 'edge', edge: 'both', by: -1, rows: [1], inset: 1, lean: 'mirrored' }],
    });
    const all = mirrored(
      { castOn: 10 },
      narrowed,
      section(2, ['t1 k6', 'p7']),
      section(2),
      section(1, ['b1 k6']),
    );
    expect(all.map(({ words }) => words?.map((steps, i) => said(steps, 8 - i)))).toEqual([
      undefined,
      ['k6 s1', 'p7'],
      undefined,
      // beside rows that are laid by themselves it can only be read from its other end
      ['k6 b1'],
    ]);
    expect(all[0]).toEqual(narrowed);
  });

  it('of which none is in words are left as they are', () => {
    const plain = section(4);
    expect(mirrored({ castOn: 6 }, plain)).toEqual([plain]);
  });

  it('after stitches that were counted anew are read by that count', () => {
    const rest: Step[] = [
      { work: 'k2tog', times: 1 },
      { work: 'k', until: { left: 0 } },
    ];
    const [, counted] = mirrored({ castOn: 10 }, section(2, ['k10', 'p10']), {
      ...section(1, undefined, { onNeedle: 7 }),
      words: [rest],
    });
    expect(counted?.words?.map((steps) => said(steps, 7))).toEqual(['k5 s1']);
  });
});
