import { describe, expect, it } from 'vitest';
import type { FabricName } from '../../../src/knit/fabric.ts';
import type { Shaping } from '../../../src/knit/piece/recipe.ts';
import { englishRowWords } from '../../../src/knit/row/row-words.ts';
import { rowWords as germanRowWords } from '../../../src/words/de/row.ts';
import { across, at, group, rowOf, type Swatch } from './swatch-row.ts';

/** Row 3 is a right-side row, which begins at the right edge; row 4 a wrong-side row, which begins at the left one. */
const RS = 3;
const WS = 4;

/** What is worked, over how many stitches, on which row, and the row as a knitter reads it: reckoned by hand. */
type Spelled = readonly [
  fabric: FabricName,
  castOn: number,
  row: number,
  shaping: readonly Shaping[],
  text: string,
];

const check = (spelled: readonly Spelled[]) =>
  it.each(
    spelled.map(([fabric, castOn, row, shaping, text]) => [fabric, castOn, row, text, shaping] as const),
  )('%s over %i, row %i: %s', (fabric, castOn, row, text, shaping) => {
    expect(rowOf({ fabric, castOn, shaping }, row)).toBe(text);
  });

describe('a row of a fabric alone', () => {
  check([
    ['stocking', 40, RS, [], 'knit'],
    ['stocking', 40, WS, [], 'purl'],
    ['garter', 40, RS, [], 'knit'],
    ['garter', 40, WS, [], 'knit'],
    ['reverse stocking', 40, RS, [], 'purl'],
    ['reverse stocking', 40, WS, [], 'knit'],
    ['rib 1x1', 40, RS, [], '*k1, p1; repeat from * to end'],
    ['rib 1x1', 40, WS, [], '*k1, p1; repeat from * to end'],
    ['rib 1x1 matched', 41, RS, [], '*k1, p1; repeat from * to last st, k1'],
    ['rib 1x1 matched', 41, WS, [], '*p1, k1; repeat from * to last st, p1'],
    ['rib 2x2', 40, RS, [], '*k2, p2; repeat from * to end'],
    ['rib 2x2', 40, WS, [], '*k2, p2; repeat from * to end'],
    ['rib 2x2', 42, RS, [], '*k2, p2; repeat from * to last 2 sts, k2'],
    ['rib 2x2', 42, WS, [], '*p2, k2; repeat from * to last 2 sts, p2'],
    ['moss', 40, RS, [], '*k1, p1; repeat from * to end'],
    ['moss', 40, WS, [], '*p1, k1; repeat from * to end'],
    ['moss', 41, RS, [], '*k1, p1; repeat from * to last st, k1'],
    ['moss', 41, WS, [], '*k1, p1; repeat from * to last st, k1'],
  ]);
});

describe('decreases at the edges', () => {
  check([
    ['stocking', 40, RS, [at('both', -1, 0, RS)], 'ssk, knit to last 2 sts, k2tog'],
    ['stocking', 40, RS, [at('both', -1, 1, RS)], 'k1, ssk, knit to last 3 sts, k2tog, k1'],
    ['stocking', 40, RS, [at('both', -1, 2, RS)], 'k2, ssk, knit to last 4 sts, k2tog, k2'],
    ['stocking', 40, RS, [at('both', -1, 3, RS)], 'k3, ssk, knit to last 5 sts, k2tog, k3'],
    ['stocking', 40, WS, [at('both', -1, 0, WS)], 'p2tog, purl to last 2 sts, ssp'],
    ['stocking', 40, WS, [at('both', -1, 1, WS)], 'p1, p2tog, purl to last 3 sts, ssp, p1'],
    ['stocking', 40, WS, [at('both', -1, 2, WS)], 'p2, p2tog, purl to last 4 sts, ssp, p2'],
    ['stocking', 40, RS, [at('right', -1, 2, RS)], 'k2, ssk, knit to end'],
    ['stocking', 40, RS, [at('left', -1, 2, RS)], 'knit to last 4 sts, k2tog, k2'],
    ['stocking', 40, WS, [at('right', -1, 1, WS)], 'purl to last 3 sts, ssp, p1'],
    ['stocking', 40, WS, [at('left', -1, 1, WS)], 'p1, p2tog, purl to end'],
    ['stocking', 40, RS, [at('both', -1, 1, RS, 'plain')], 'k1, k2tog, knit to last 3 sts, k2tog, k1'],
    ['stocking', 40, WS, [at('both', -1, 1, WS, 'plain')], 'p1, p2tog, purl to last 3 sts, p2tog, p1'],
    ['stocking', 40, RS, [at('right', -1, 0, RS, 'plain')], 'k2tog, knit to end'],
    ['stocking', 40, WS, [at('left', -1, 0, WS, 'plain')], 'p2tog, purl to end'],
    ['stocking', 40, RS, [at('both', -2, 1, RS)], 'k1, sk2p, knit to last 4 sts, k3tog, k1'],
    ['stocking', 40, WS, [at('both', -2, 1, WS)], 'p1, p3tog, purl to last 4 sts, sssp, p1'],
    ['stocking', 40, RS, [at('right', -2, 0, RS)], 'sk2p, knit to end'],
    ['stocking', 40, RS, [at('left', -2, 2, RS)], 'knit to last 5 sts, k3tog, k2'],
    ['garter', 40, RS, [at('both', -1, 1, RS)], 'k1, ssk, knit to last 3 sts, k2tog, k1'],
    ['garter', 40, WS, [at('both', -1, 1, WS)], 'k1, ssk, knit to last 3 sts, k2tog, k1'],
    ['garter', 40, WS, [at('right', -1, 2, WS)], 'knit to last 4 sts, k2tog, k2'],
    ['garter', 40, WS, [at('left', -2, 2, WS)], 'k2, sk2p, knit to end'],
    ['reverse stocking', 40, RS, [at('both', -1, 1, RS)], 'p1, ssp, purl to last 3 sts, p2tog, p1'],
    ['reverse stocking', 40, WS, [at('both', -1, 1, WS)], 'k1, ssk, knit to last 3 sts, k2tog, k1'],
  ]);
});

describe('decreases in ribs and moss, and the row after them: every rib stays in line', () => {
  const ribs = (row: number) => [at('both', -1, 2, row)];
  const close = [at('both', -1, 0, RS)];
  check([
    ['rib 2x2', 40, RS, ribs(RS), 'k2, ssp, *k2, p2; repeat from * to last 4 sts, k2tog, p2'],
    ['rib 2x2', 40, RS + 1, ribs(RS), 'k2, p1, *k2, p2; repeat from * to last 3 sts, k1, p2'],
    ['rib 2x2', 40, RS + 2, ribs(RS), 'k2, p1, *k2, p2; repeat from * to last 3 sts, k1, p2'],
    ['rib 1x1', 40, RS, close, 'ssk, *k1, p1; repeat from * to last 2 sts, p2tog'],
    ['rib 1x1', 40, RS + 1, close, 'k2, *p1, k1; repeat from * to last 2 sts, p2'],
    ['moss', 41, RS, [at('both', -1, 1, RS)], 'k1, ssk, *p1, k1; repeat from * to last 4 sts, p1, k2tog, k1'],
    ['moss', 41, RS + 1, [at('right', -1, 0, RS)], '*k1, p1; repeat from * to last 2 sts, k2'],
  ]);
});

describe('increases at the edges', () => {
  check([
    ['stocking', 40, RS, [at('both', 1, 1, RS)], 'k1, m1r, knit to last st, m1l, k1'],
    ['stocking', 40, RS, [at('both', 1, 2, RS)], 'k2, m1r, knit to last 2 sts, m1l, k2'],
    ['stocking', 40, WS, [at('both', 1, 1, WS)], 'p1, m1p, purl to last st, m1p, p1'],
    ['stocking', 40, RS, [at('right', 1, 1, RS)], 'k1, m1r, knit to end'],
    ['stocking', 40, RS, [at('left', 1, 1, RS)], 'knit to last st, m1l, k1'],
    ['stocking', 40, WS, [at('right', 1, 2, WS)], 'purl to last 2 sts, m1p, p2'],
    ['stocking', 40, WS, [at('left', 1, 2, WS)], 'p2, m1p, purl to end'],
    ['stocking', 40, RS, [at('both', 1, 1, RS, 'plain')], 'k1, m1, knit to last st, m1, k1'],
    ['stocking', 40, RS, [at('both', 1, 0, RS)], 'kfb, knit to last st, kfb'],
    ['stocking', 40, WS, [at('both', 1, 0, WS)], 'pfb, purl to last st, pfb'],
    ['stocking', 40, RS, [at('both', 2, 1, RS)], '[k1, m1r] 2 times, knit to last 2 sts, [m1l, k1] 2 times'],
    ['stocking', 40, RS, [at('right', 2, 0, RS)], 'kfbf, knit to end'],
    ['garter', 40, RS, [at('both', 1, 1, RS)], 'k1, m1r, knit to last st, m1l, k1'],
    ['garter', 40, WS, [at('both', 1, 1, WS)], 'k1, m1r, knit to last st, m1l, k1'],
    ['garter', 40, WS, [at('right', 1, 2, WS)], 'knit to last 2 sts, m1l, k2'],
    ['reverse stocking', 40, RS, [at('both', 1, 1, RS)], 'p1, m1p, purl to last st, m1p, p1'],
    ['reverse stocking', 40, WS, [at('left', 1, 1, WS)], 'k1, m1r, knit to end'],
    [
      'rib 1x1 matched',
      41,
      RS,
      [at('both', 1, 1, RS)],
      'k1, m1r, *p1, k1; repeat from * to last 2 sts, p1, m1l, k1',
    ],
    ['rib 1x1 matched', 41, RS + 1, [at('both', 1, 1, RS)], '*k1, p1; repeat from * to last st, k1'],
  ]);
});

describe('groups, spread rows, short rows and the middle', () => {
  const middle = (row: number): Shaping => ({ kind: 'middle', rows: [row], from: 10 });
  check([
    ['stocking', 40, RS, [group('bind off', 'right', 5, RS)], 'bind off 5 sts, knit to end'],
    ['stocking', 40, WS, [group('bind off', 'left', 5, WS)], 'bind off 5 sts, purl to end'],
    ['garter', 40, WS, [group('bind off', 'left', 5, WS)], 'bind off 5 sts, knit to end'],
    ['stocking', 40, RS, [group('cast on', 'right', 6, RS)], 'cast on 6 sts, knit to end'],
    ['stocking', 40, WS, [group('cast on', 'left', 6, WS)], 'cast on 6 sts, purl to end'],
    ['rib 2x2', 40, RS, [group('bind off', 'right', 4, RS)], 'bind off 4 sts, *k2, p2; repeat from * to end'],
    [
      'rib 2x2',
      40,
      RS + 1,
      [group('bind off', 'right', 1, RS)],
      '*k2, p2; repeat from * to last 3 sts, k2, p1',
    ],
    [
      'stocking',
      40,
      RS,
      [group('bind off', 'right', 5, RS), at('left', -1, 1, RS)],
      'bind off 5 sts, knit to last 3 sts, k2tog, k1',
    ],
    ['stocking', 40, RS, [across(20, RS)], 'k1, m1l, [k2, m1l] 19 times, k1'],
    ['stocking', 40, WS, [across(20, WS)], 'p1, m1p, [p2, m1p] 19 times, p1'],
    ['garter', 40, WS, [across(20, WS)], 'k1, m1l, [k2, m1l] 19 times, k1'],
    ['stocking', 40, RS, [across(-10, RS)], 'k1, [k2tog, k2] 9 times, k2tog, k1'],
    ['stocking', 40, WS, [across(-10, WS)], 'p1, [p2tog, p2] 9 times, p2tog, p1'],
    ['stocking', 40, RS, [group('turn', 'left', 8, RS)], 'knit to last 8 sts, turn'],
    ['stocking', 40, RS + 1, [group('turn', 'left', 8, RS)], 'leave 8 sts unworked, purl to end'],
    ['stocking', 40, WS, [group('turn', 'right', 8, WS)], 'purl to last 8 sts, turn'],
    ['stocking', 41, RS, [middle(RS)], 'k9, s2kp, knit to end'],
    ['stocking', 41, WS, [middle(WS)], 'purl to last 12 sts, s2pp, p9'],
  ]);
});

const stocking: Swatch = { fabric: 'stocking', castOn: 40 };
const vNeck: Swatch = { ...stocking, shaping: [at('right', -1, 2, RS), at('left', 1, 1, RS)] };

const others: readonly (readonly [what: string, text: string, row: string])[] = [
  ['a slipped selvedge, RS', 'sl1, knit to end', rowOf({ ...stocking, selvedge: 'slipped' }, RS)],
  ['a slipped selvedge, WS', 'sl1, purl to end', rowOf({ ...stocking, selvedge: 'slipped' }, WS)],
  [
    'a slipped selvedge in garter',
    'sl1, knit to end',
    rowOf({ ...stocking, fabric: 'garter', selvedge: 'slipped' }, WS),
  ],
  [
    'a slipped selvedge in rib',
    'sl1, *p1, k1; repeat from * to end',
    rowOf({ fabric: 'rib 1x1 matched', castOn: 41, selvedge: 'slipped' }, RS),
  ],
  [
    'a slipped selvedge beside a decrease',
    'sl1, ssk, knit to last 3 sts, k2tog, k1',
    rowOf({ ...stocking, selvedge: 'slipped', shaping: [at('both', -1, 1, RS)] }, RS),
  ],
  [
    'nothing slipped where the decrease lies at the very edge',
    'ssk, knit to last 2 sts, k2tog',
    rowOf({ ...stocking, selvedge: 'slipped', shaping: [at('both', -1, 0, RS)] }, RS),
  ],
  ['a front', 'k2, ssk, knit to last st, m1l, k1', rowOf(vNeck, RS)],
  ['the other front', 'k1, m1r, knit to last 4 sts, k2tog, k2', rowOf({ ...vNeck, mirrored: true }, RS)],
  ['the end', 'bind off all sts in pattern', rowOf({ ...stocking, end: 'bind off' }, 9)],
  [
    'the end, in the UK',
    'cast off all sts in pattern',
    rowOf({ ...stocking, end: 'bind off' }, 9, englishRowWords('UK')),
  ],
  [
    'a row in full words',
    'knit 2, slip slip knit, knit to last 4 stitches, knit 2 together, knit 2',
    rowOf({ ...stocking, shaping: [at('both', -1, 2, RS)] }, RS, englishRowWords('US', 'full')),
  ],
  [
    'a row in German',
    '2 re, 2 M abgeh re zusstr, rechts bis 4 M vor dem Ende, 2 M re zusstr, 2 re',
    rowOf({ ...stocking, shaping: [at('both', -1, 2, RS)] }, RS, germanRowWords({ rows: 'abbreviated' })),
  ],
  [
    'a rib in German',
    '*2 re, 2 li; ab * wiederholen bis 2 M vor dem Ende, 2 re',
    rowOf({ fabric: 'rib 2x2', castOn: 42 }, RS, germanRowWords({ rows: 'abbreviated' })),
  ],
];

describe('selvedges, mirror images, ends, other words', () => {
  it.each(others)('%s: %s', (_, text, row) => expect(row).toBe(text));
});
