import { describe, expect, it } from 'vitest';
import type { FabricName } from '../../../src/knit/fabric.ts';
import { BIND_OFF } from '../../../src/knit/piece/plan.ts';
import { needleIn } from '../../../src/knit/written/row-lines.ts';
import { linesOf, partOf, type Rows, said } from './rows-by-hand.ts';

/** What a leaflet says beside the rows themselves: common practice, no published source. */

describe('what is said beside the rows', () => {
  const knit = (name: string, over: Partial<Rows> = {}): Rows => ({ name, rows: ['k'], ...over });
  const heads = (...sections: readonly Rows[]) =>
    linesOf(partOf(10, sections)).filter((line) => !line.startsWith('Row '));

  it('is a section’s name, its fabric and how many rows it is', () => {
    expect(heads(knit('hem', { fabric: 'rib 2x2', rows: ['k x 16'] }), knit('Ärmel 2'))).toEqual([
      'Hem, in k2, p2 rib, 16 rows:',
      'Rep rows 1 and 2, 7 times more.',
      'Ärmel 2, in stockinette stitch, 1 row:',
    ]);
  });

  it.each([
    ['one two three four five six', 'One two three four five six, in k2, p2 rib, 1 row:'],
    ['one two three four five six seven', 'K2 p2 rib, in k2, p2 rib, 1 row:'],
    ['hem (deep)', 'K2 p2 rib, in k2, p2 rib, 1 row:'],
    ['hem, deep', 'K2 p2 rib, in k2, p2 rib, 1 row:'],
    ['2 hem', 'K2 p2 rib, in k2, p2 rib, 1 row:'],
    ['', 'K2 p2 rib, in k2, p2 rib, 1 row:'],
  ])(
    'a name that is more than plain words (%s) gives way to the fabric’s, without its comma',
    (called, wanted) => {
      expect(heads(knit(called, { fabric: 'rib 2x2' }))).toEqual([wanted]);
    },
  );

  it('is another needle where it is taken, and none where it stays', () => {
    expect(heads(knit('a'), knit('b', { needle: 3.5 }), knit('c', { needle: 3.5 }), knit('d'))).toEqual([
      'A, in stockinette stitch, 1 row:',
      'B, in stockinette stitch, 1 row:',
      'Change to 3.5 mm needles.',
      'C, in stockinette stitch, 1 row:',
      'D, in stockinette stitch, 1 row:',
      'Change to 4 mm needles.',
    ]);
    expect(needleIn({ point: ',' }, 3.25)).toBe('3,25');
    expect(needleIn({ point: ',' }, 4)).toBe('4');
  });

  // that a rib is bound off in rib, and loosely where it goes over a head: common practice, no published source
  it.each<[FabricName, boolean, string]>([
    ['stocking', false, 'Row 2 (WS): Bind off all sts.'],
    ['stocking', true, 'Row 2 (WS): Bind off all sts loosely.'],
    ['rib 1x1', false, 'Row 2 (WS): Bind off all sts in rib.'],
    ['rib 2x2', true, 'Row 2 (WS): Bind off all sts loosely in rib.'],
    ['moss', false, 'Row 2 (WS): Bind off all sts in pattern.'],
  ])('is how all is bound off: %s, loosely %s', (fabric, isLoose, wanted) => {
    const part = partOf(10, [knit('hem'), { name: BIND_OFF, fabric, rows: ['bo all > 0'] }]);
    expect(linesOf(part, isLoose)).toEqual([
      'Hem, in stockinette stitch, 1 row:',
      'Row 1 (RS): knit.',
      wanted,
    ]);
  });

  it('is no such thing where stitches are worked before the last are bound off', () => {
    expect(said(10, ['k', 'k2, k2tog, bo all > 0']).at(-1)).toBe(
      'Row 2 (WS): k2, k2tog, bind off to end. (0 sts)',
    );
  });
});

// 'rib 4, [bind off 3 sts, rib until 12 sts on needle after gap] 5 times': how leaflets tell button holes in a rib; common practice
describe('button holes in a rib', () => {
  const rib = 'k2, *p2, k2; rep from * to end';
  const back = 'p2, *k2, p2; rep from * to end';
  const on = (below: string, row: string, left: string) => said(22, [below, `${row} > ${left}`]).at(-1);

  it.each<[string, string, string, string, string]>([
    [
      'one hole',
      rib,
      'p2, k2, bo 2, k2, p2, k2, p2, k2, p2, k2, p2',
      'by -2',
      'Row 2 (WS): rib 4, bind off 2 sts, rib to end. (20 sts)',
    ],
    [
      'two holes, counted after the gap',
      rib,
      'p2, k2, bo 2, k2, p2, k2, bo 2, k2, p2, k2, p2',
      'by -4',
      'Row 2 (WS): rib 4, bind off 2 sts, rib until 6 sts on needle after gap, bind off 2 sts, rib to end. (18 sts)',
    ],
    [
      'three holes at one distance',
      rib,
      'p2, k2, bo 2, k2, p2, bo 2, p2, k2, bo 2, k2, p2',
      'by -6',
      'Row 2 (WS): rib 4, [bind off 2 sts, rib until 4 sts on needle after gap] 2 times, bind off 2 sts, rib to end. (16 sts)',
    ],
    [
      'stitches cast on again over the gap',
      rib,
      'p2, k2, co 2, p2, k2, p2, k2, p2, k2, p2, k2, p2',
      'by 2',
      'Row 2 (WS): rib 4, cast on 2 sts, rib to end. (24 sts)',
    ],
    [
      'a hole that begins the row',
      rib,
      'bo 2, k2, p2, k2, p2, k2, p2, k2, p2, k2, p2',
      'by -2',
      'Row 2 (WS): bind off 2 sts, k2, p2, k2, p2, k2, p2, k2, p2, k2, p2. (20 sts)',
    ],
    [
      'a hole behind its first stitch',
      rib,
      'p1, bo 2, k1, p2, k2, p2, k2, p2, k2, p2, k2, p2',
      'by -2',
      'Row 2 (WS): rib 1, bind off 2 sts, rib to end. (20 sts)',
    ],
    [
      'a hole at the end',
      rib,
      'p2, k2, p2, k2, p2, k2, p2, k2, p2, k2, bo 2',
      'by -2',
      'Row 2 (WS): p2, k2, p2, k2, p2, k2, p2, k2, p2, k2, bind off 2 sts. (20 sts)',
    ],
    [
      'stitches that do not go on as they look',
      rib,
      'p2, k2, bo 2, p2, k2, p2, k2, p2, k2, p2, k2',
      'by -2',
      'Row 2 (WS): p2, k2, bind off 2 sts, p2, k2, p2, k2, p2, k2, p2, k2. (20 sts)',
    ],
    [
      'a decrease in it',
      rib,
      'p2, k2, bo 2, k2, p2, k2, p2, k2, p2, k2tog, p2',
      'by -3',
      'Row 2 (WS): p2, k2, bind off 2 sts, k2, p2, k2, p2, k2, p2, k2tog, p2. (19 sts)',
    ],
    ['no rib', 'k', 'p4, bo 2, p16', 'by -2', 'Row 2 (WS): p4, bind off 2 sts, p16. (20 sts)'],
    [
      'over a row that binds off',
      'k2, bo 2, k2, p2, k2, p2, k2, p2, k2, p2, k2 > by -2',
      'p2, k2, bo 2, k2, p2, k2, p2, k2, p4',
      'by -2',
      'Row 2 (WS): rib 4, bind off 2 sts, rib to end. (18 sts)',
    ],
    [
      'over the wrong side of the rib',
      back,
      'k2, p2, bo 2, p2, k2, p2, k2, p2, k2, p2, k2',
      'by -2',
      'Row 2 (WS): rib 4, bind off 2 sts, rib to end. (20 sts)',
    ],
  ])('%s', (_, below, row, left, wanted) => {
    expect(on(below, row, left)).toBe(wanted);
  });
});
