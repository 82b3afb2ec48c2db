import { describe, expect, it } from 'vitest';
import type { PartBuild } from '../../../../../src/knit/pattern/follow/build/build.ts';
import { simplify } from '../../../../../src/knit/pattern/follow/build/cycle.ts';
import type { Edit, Shaped } from '../../../../../src/knit/pattern/follow/build/edit.ts';
import { makeFabricRow } from '../../../../../src/knit/pattern/follow/build/fabric-row.ts';
import type { FabricState } from '../../../../../src/knit/pattern/follow/build/fabric-state.ts';
import { gapOf } from '../../../../../src/knit/pattern/follow/build/gap.ts';
import { makeOwnRow, makeSpreadRow } from '../../../../../src/knit/pattern/follow/build/make-row.ts';
import { mergeEdits } from '../../../../../src/knit/pattern/follow/build/merge-edits.ts';
import { pushRow } from '../../../../../src/knit/pattern/follow/build/push-row.ts';
import { looksOf, plainWork, spellFabric } from '../../../../../src/knit/pattern/follow/build/spell.ts';
import { printRow } from '../../../../../src/knit/row/print.ts';
import { parseRow } from '../../../../../src/knit/row/read/parse.ts';
import type { Side, Step } from '../../../../../src/knit/row/step.ts';
import type { StitchName } from '../../../../../src/knit/stitch.ts';
import { castOn } from './in-hand.ts';

const face = (...rows: string[]): FabricState => ({ is: 'face', name: 'stocking', rows, label: 'a fabric' });

/** One row of a pattern whose rows were worked: how it looked over the columns from `column` on. */
const worked = (looks: string | undefined, column = 0, of = 1): FabricState => ({
  is: 'rows',
  rows: new Array(of).fill([]),
  label: 'pattern',
  faces: looks === undefined ? [] : [{ column, looks }],
});

describe('a row of a fabric, from the right edge to the left,', () => {
  it.each<[string, FabricState, number, Side, number, number, string | undefined]>([
    ['has its own row', face('kkpp', 'p'), 0, 'RS', 0, 6, 'kkppkk'],
    ['has its second row', face('kkpp', 'p'), 1, 'RS', 0, 3, 'ppp'],
    ['begins again', face('kkpp', 'p'), 2, 'RS', 0, 4, 'kkpp'],
    ['is said for the side', face('kkpp'), 0, 'WS', 0, 4, 'ppkk'],
    ['lies on its column', face('kkpp'), 0, 'RS', 1, 4, 'kppk'],
    ['lies on a column before the first', face('kkpp'), 0, 'RS', -1, 4, 'pkkp'],
    ['lies on a column far before the first', face('kkp'), 0, 'RS', -4, 4, 'pkkp'],
    ['is empty over none', face('kkpp'), 0, 'RS', 0, 0, ''],
    ['is as it looked', worked('kkpkkpkkp'), 0, 'RS', 0, 9, 'kkpkkpkkp'],
    ['is as it looked, said for the side', worked('kkp'), 0, 'WS', 0, 3, 'ppk'],
    ['goes on beyond in its period', worked('kkpkkpkkp'), 0, 'RS', 0, 12, 'kkpkkpkkpkkp'],
    ['goes on before in its period', worked('kkpkkpkkp'), 0, 'RS', -4, 6, 'pkkpkk'],
    ['lies where it was worked', worked('kkpkkpkkp', 2), 0, 'RS', 1, 4, 'pkkp'],
    ['comes again in every row of a pattern of one', worked('kp'), 3, 'RS', 0, 4, 'kpkp'],
    ['is not known of the second row', worked('kp', 0, 2), 1, 'RS', 0, 4, undefined],
    ['is the first of two again', worked('kp', 0, 2), 2, 'RS', 0, 4, 'kpkp'],
    ['has a period without its edge stitches', worked('ppkpkpkpkpkk'), 0, 'RS', 0, 14, 'ppkpkpkpkpkkkp'],
    [
      'has a period without two edge stitches of twelve',
      worked('pkkpkpkpkppk'),
      0,
      'RS',
      0,
      14,
      'pkkpkpkpkppkkp',
    ],
    [
      'has no period where the fourth stitch of many breaks it',
      worked(`kpkk${'kp'.repeat(10)}`),
      0,
      'RS',
      22,
      4,
      'kpkk',
    ],
    ['is one stitch over and over', worked('p'), 0, 'RS', 0, 3, 'ppp'],
    ['has no period where all differ', worked('kkkp'), 0, 'RS', 0, 6, 'kkkpkk'],
    ['is not known where it did not look', worked(''), 0, 'RS', 0, 2, undefined],
    ['is not known where it was never worked', worked(undefined), 0, 'RS', 0, 2, undefined],
    ['is not known of what nobody can say', { is: 'patt', label: 'pattern' }, 0, 'RS', 0, 2, undefined],
  ])('%s', (_, fabric, row, side, column, count, stitches) => {
    expect(spellFabric(fabric, row, side, column, count)?.join('')).toBe(stitches);
  });

  it.each<[readonly StitchName[], Side, string | undefined]>([
    [['k', 'p', 'p'], 'RS', 'kpp'],
    [['k', 'p', 'p'], 'WS', 'kkp'],
    [['k', 'yo', 'p'], 'RS', undefined],
    [[], 'RS', ''],
  ])('%j worked on %s looks so: %s', (works, side, looks) => {
    expect(looksOf(works, side)).toBe(looks);
  });

  it.each<[string, number, Side, Side, string | undefined]>([
    ['k2, k2tog, k2', 6, 'RS', 'RS', 'k'],
    ['p2, k2tog, p2', 6, 'WS', 'WS', 'p'],
    ['p2, k2tog, k2', 6, 'RS', 'RS', undefined],
    ['k6', 6, 'RS', 'WS', undefined],
    ['k2tog', 2, 'RS', 'RS', undefined],
  ])('of %s over %i is plain on one side: %s, asked for %s', (text, before, side, asked, work) => {
    expect(plainWork({ steps: stepsOf(text), before, side }, asked)).toBe(work);
  });
});

function stepsOf(text: string): readonly Step[] {
  const read = parseRow(text);
  if (!read.ok) throw new Error(`${text}: ${read.faults.map(({ code }) => code).join(', ')}`);
  return read.value;
}

const print = (steps: readonly Step[] | undefined): string => (steps ? printRow(steps) : 'none');

const at = (edge: 'right' | 'left', change: number): Shaped => ({ at: edge, change });

describe('a spelled row whose edges are shaped beside', () => {
  it.each<[string, number, Edit[], Side, string]>([
    ['k10', 10, [{ at: 'right', work: 'bo', stitches: 4 }], 'RS', 'bind off 4 sts, knit to end'],
    ['p10', 10, [{ at: 'left', work: 'bo', stitches: 4 }], 'WS', 'bind off 4 sts, purl to end'],
    ['k10', 10, [{ at: 'left', work: 'bo', stitches: 4 }], 'RS', 'k6, bind off 4 sts'],
    ['k10', 10, [{ at: 'right', work: 'co', stitches: 4 }], 'RS', 'cast on 4 sts, knit to end'],
    ['k2, yo, k2tog, k6', 10, [{ at: 'right', work: 'bo', stitches: 3 }], 'RS', 'k2, yo, k2tog, knit to end'],
    ['k3', 3, [{ at: 'right', work: 'bo', stitches: 4 }], 'RS', 'knit'],
    ['k10', 10, [at('right', -1)], 'RS', 'dec, knit to end'],
    ['k10', 10, [at('right', -1)], 'WS', 'knit to last 2 sts, dec'],
    ['k10', 10, [at('left', -1)], 'RS', 'knit to last 2 sts, dec'],
    ['k10', 10, [at('right', 1)], 'RS', 'inc, knit to end'],
    ['k10', 10, [at('left', 1)], 'RS', 'knit to last st, inc'],
    ['k10', 10, [at('left', 1)], 'WS', 'inc, knit to end'],
    ['k10', 10, [at('right', -2)], 'RS', '[dec] 2 times, knit to end'],
    ['k10', 10, [at('right', -1), at('left', -1)], 'RS', 'dec, k6, dec'],
    ['yo, k2tog, k8', 10, [at('right', -1)], 'RS', 'yo, k2tog, dec, knit to end'],
    [
      'yo, k2tog, k1, yo, k2tog, k5',
      10,
      [at('right', -1)],
      'RS',
      'yo, k2tog, k1, yo, k2tog, dec, knit to end',
    ],
    ['yo, k2tog', 2, [at('right', -1)], 'RS', 'yo, k2tog'],
    ['k10', 10, [], 'RS', 'knit'],
  ])('%s over %i, %j on %s: %s', (text, before, edits, side, row) => {
    expect(print(mergeEdits(stepsOf(text), before, edits, side))).toBe(row);
  });
});

/** The last row of a part: what it says, the count after it, the column at its right edge and the row of the fabric that is next. */
function lastRow(part: PartBuild): string {
  const row = part.rows.at(-1);
  return `${print(row?.steps)} (${part.live}) column ${part.column} row ${part.fabricRow} ${row?.kind}${row?.own === undefined ? '' : ` '${row.own}'`}`;
}

describe('a row of the fabric with its edges shaped', () => {
  it.each<[string, Edit[], Side, string]>([
    ['nothing', [], 'RS', '*k2, p1; repeat from * to end (12) column 0 row 1 shape markers 3,11'],
    [
      'one less at the right',
      [at('right', -1)],
      'RS',
      'dec, *p1, k2; repeat from * to last st, p1 (11) column 1 row 1 shape markers 2,10',
    ],
    [
      'one less at the left',
      [at('left', -1)],
      'RS',
      '*k2, p1; repeat from * to last 3 sts, k1, dec (11) column 0 row 1 shape markers 3,11',
    ],
    [
      'one more at the right',
      [at('right', 1)],
      'RS',
      'inc, k1, *p1, k2; repeat from * to last st, p1 (13) column -1 row 1 shape markers 4,12',
    ],
    [
      'two less',
      [at('left', -2)],
      'WS',
      'dec 2 at once, *p1, k2; repeat from * to end (10) column 0 row 2 shape markers 3,10',
    ],
    [
      'two more',
      [at('right', 2)],
      'WS',
      '*p1, k2; repeat from * to last 3 sts, p1, k1, inc 2 in next st (14) column -2 row 2 shape markers 5,13',
    ],
    [
      'three less',
      [at('right', -3)],
      'RS',
      '[dec] 3 times, *k2, p1; repeat from * to end (9) column 3 row 1 shape markers 0,8',
    ],
    [
      'three more',
      [at('left', 3)],
      'RS',
      '*k2, p1; repeat from * to last 3 sts, [inc] 3 times (15) column 0 row 1 shape markers 3,11',
    ],
    [
      'four bound off',
      [{ at: 'right', work: 'bo', stitches: 4 }],
      'RS',
      'bind off 4 sts, k1, *p1, k2; repeat from * to last st, p1 (8) column 4 row 1 shape markers 0,7',
    ],
    [
      'four cast on',
      [{ at: 'right', work: 'co', stitches: 4 }],
      'RS',
      'cast on 4 sts, *k2, p1; repeat from * to end (16) column -4 row 1 shape markers 7,15',
    ],
    [
      'four bound off at its end',
      [{ at: 'right', work: 'bo', stitches: 4 }],
      'WS',
      '*p1, k2; repeat from * to last 6 sts, p1, k1, bind off 4 sts (8) column 4 row 2 shape markers 0,7',
    ],
    [
      'four cast on at its end',
      [{ at: 'left', work: 'co', stitches: 4 }],
      'RS',
      '*k2, p1; repeat from * to end, cast on 4 sts (16) column 0 row 1 shape markers 3,11',
    ],
    [
      'all at both',
      [at('right', -4), at('left', -2)],
      'RS',
      '[dec] 4 times, p1, dec 2 at once (6) column 4 row 1 shape markers 0,6',
    ],
    [
      'more than there are',
      [at('right', -4), at('left', -5)],
      'RS',
      'not enough stitches {"needStitches":18,"haveStitches":12}',
    ],
  ])('%s', (_, edits, side, row) => {
    const { build, part } = castOn(12, side);
    part.fabric = face('kkp', 'ppk');
    part.markers = [3, 11];
    const wrong = makeFabricRow(build, part, edits, 'shape');
    expect(
      wrong
        ? `${wrong.code} ${JSON.stringify(wrong.figures)}`
        : `${lastRow(part)} markers ${part.markers.join()}`,
    ).toBe(row);
  });
});

describe('a row that changes its count all over', () => {
  it.each<[number, number | undefined, Side, StitchName | undefined, string]>([
    [2, undefined, 'RS', undefined, 'k3, m1, k6, m1, k3 (14) column 0 row 1 across'],
    [-2, undefined, 'RS', undefined, 'k2, k2tog, k4, k2tog, k2 (10) column 0 row 1 across'],
    [2, undefined, 'WS', undefined, 'p3, m1p, p6, m1p, p3 (14) column 0 row 2 across'],
    [-2, undefined, 'WS', undefined, 'p2, p2tog, p4, p2tog, p2 (10) column 0 row 2 across'],
    [-2, undefined, 'WS', 'k', 'k2, k2tog, k4, k2tog, k2 (10) column 0 row 2 across'],
    [2, 6, 'RS', undefined, 'k5, m1, k3, m1, k4 (14) column 0 row 1 across'],
    [-2, 6, 'RS', 'p', 'p4, p2tog, p1, p2tog, p3 (10) column 0 row 1 across'],
    [2, 99, 'RS', undefined, 'k3, m1, k6, m1, k3 (14) column 0 row 1 across'],
    [12, undefined, 'RS', undefined, '[kfb] 12 times (24) column 0 row 1 across'],
    [12, undefined, 'RS', 'p', '[pfb] 12 times (24) column 0 row 1 across'],
    [13, undefined, 'RS', undefined, 'too many for one row {"stitches":12,"times":13,"mostTimes":11}'],
    [6, 6, 'RS', undefined, 'k3, [kfb] 6 times, k3 (18) column 0 row 1 across'],
    [-7, undefined, 'RS', undefined, 'too many for one row {"stitches":12,"times":7,"mostTimes":6}'],
    [0, undefined, 'RS', undefined, 'knit (12) column 0 row 1 across'],
  ])('by %i over %s on %s in %s', (change, over, side, work, row) => {
    const { build, part } = castOn(12, side);
    part.column = 2;
    const wrong = makeSpreadRow(build, part, change, over, work);
    expect(wrong ? `${wrong.code} ${JSON.stringify(wrong.figures)}` : lastRow(part)).toBe(row);
  });

  it.each([
    [10, 12, "work in pattern to end, [m1] 2 times (12) column 0 row 1 row 'wibble'"],
    [10, 11, "work in pattern to end, m1 (11) column 0 row 1 row 'wibble'"],
    [10, 9, "dec, work in pattern to end (9) column 1 row 1 row 'wibble'"],
    [10, 10, "work in pattern (10) column 0 row 1 row 'wibble'"],
    [10, 8, "[dec] 2 times, work in pattern to end (8) column 2 row 1 row 'wibble'"],
    [10, 5, "[dec] 5 times, work in pattern to end (5) column 3 row 1 row 'wibble'"],
    [10, 4, "bind off 6 sts, work in pattern to end (4) column 5 row 1 row 'wibble'"],
    [10, 0, "bind off all sts in pattern (0) column 5 row 1 row 'wibble'"],
    [0, 6, "work in pattern to end, cast on 6 sts (6) column -6 row 1 row 'wibble'"],
  ])('in her own words from %i to %i', (before, after, row) => {
    const { build, part } = castOn(before);
    expect(makeOwnRow(build, part, 'wibble', after)).toBeUndefined();
    expect(lastRow(part)).toBe(row);
  });
});

/** The column at the right edge after a written row: only what changes in the half next to that edge moves it. */
describe('the column after a written row', () => {
  it.each<[string, Side, number]>([
    ['k2tog, k8', 'RS', 6],
    ['k8, k2tog', 'RS', 5],
    ['k2tog, k8', 'WS', 5],
    ['k8, k2tog', 'WS', 6],
    ['yo, k10', 'RS', 4],
    ['k5, yo, k5', 'RS', 4],
    ['k5, yo, k5', 'WS', 5],
    ['k4, k2tog, k4', 'RS', 6],
    ['k4, k2tog, k4', 'WS', 5],
    ['k10', 'RS', 5],
    ['yo, k2tog, k8', 'RS', 5],
  ])('%s on %s is %i', (text, side, column) => {
    const { build, part } = castOn(10, side);
    part.column = 5;
    expect(pushRow(build, part, stepsOf(text), { kind: 'row', advance: true })).toBeUndefined();
    expect(part.column).toBe(column);
  });
});

describe('stitches that a row parts', () => {
  it.each<[string, number[], number[] | undefined]>([
    ['k4, bo 2, k4', [], [4, 4]],
    ['bo 4, k6', [], undefined],
    ['k6, bo 4', [], undefined],
    ['k2, bo 2, k2, bo 1, k3', [], [2, 2, 3]],
    ['k10', [], undefined],
    ['k10', [4], [4, 6]],
    ['k10', [4, 6], [4, 2, 4]],
    ['k10', [10], undefined],
    ['k2tog, k8', [4], [4, 5]],
    ['yo, k10', [4], [4, 7]],
    ['k2, bo 2, k6', [2], [2, 6]],
  ])('%s, cut at %j: %j', (text, cuts, sets) => {
    const { build, part } = castOn(10);
    expect(gapOf(part, cuts)).toBeUndefined();
    expect(pushRow(build, part, stepsOf(text), { kind: 'row', advance: true })).toBeUndefined();
    expect(gapOf(part, cuts)).toEqual(sets);
  });
});

describe('rows that are all one face', () => {
  it.each<[(string | undefined)[], Side, string, number]>([
    [['kkk', 'kk'], 'RS', 'stocking', 0],
    [['kkk', 'kk'], 'WS', 'stocking', 1],
    [['pp', 'pp'], 'RS', 'reverse stocking', 0],
    [['kk', 'pp'], 'RS', 'garter', 0],
    [['pp', 'kk'], 'WS', 'garter', 1],
    // one row, worked on both sides
    [['kk'], 'RS', 'garter', 0],
    [['kp', 'kk'], 'RS', 'mine', 7],
    [['kk', undefined], 'RS', 'mine', 7],
    [['kk', ''], 'RS', 'mine', 7],
    [['kk', 'kk', 'kk'], 'RS', 'mine', 7],
  ])('%j, next on %s, are %s', (looks, side, label, next) => {
    const { part } = castOn(10, side);
    part.fabric = {
      is: 'rows',
      rows: looks.map(() => []),
      label: 'mine',
      faces: looks.map((one) => (one === undefined ? undefined : { column: 0, looks: one })),
    };
    part.fabricRow = 7;
    simplify(part);
    expect([part.fabric.label, part.fabricRow]).toEqual([label, next]);
  });
});
