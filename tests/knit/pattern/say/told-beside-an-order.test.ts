import { describe, expect, it } from 'vitest';
import { readPattern } from '../../../../src/knit/pattern/read-pattern.ts';
import { rowsOf } from '../follow/rows-of.ts';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How leaflets word it: common practice, no published source. What each is read as is reckoned by hand. */
describe('what stands beside an order and works nothing', () => {
  it.each(
    table(`
      Knit 14 rows in stockinette st ({knit right side, purl wrong side|k 1 row, p 1 row}) → even: fabric {named, name stocking}, until {rows, n 14}
      Knit 5 rows in garter st (every row knit) → even: fabric {named, name garter}, until {rows, n 5}
      Knit 5 rows in garter st (dec 1 st in each) → ✗ stitch or repeat expected @36
      Repeat last 2 rows 7 times more {–|-} 33 sts when all {incs|increases|decs|decreases} {have been|are} {completed|worked|made} → repeat rows: last 2, times 7 (33)
      Repeat last 2 rows 7 times more – 33 sts when all rows are blocked → repeat rows: last 2, times 7 | ✗ stitch or repeat expected @35
      {Leave|Leaving} a {long|nice long|very long} {tail|end} {for sewing up|to sew the seam with|} → note: about aside
      Leave a long front edge to pick up 20 sts → ✗ stitch or repeat expected @1
      Leave a long tail, cast on 12 sts → @20 cast on: stitches 12
      {Make sure|Be sure} {that|} {the|your|} last row is a {purl|WS} row → ending: end WS
      Make sure the last row is a RS row → ending: end RS
      Make sure the last row is a neat row → ✗ stitch or repeat expected @1
    `),
  )('$line', expectReading);
});

describe('a row', () => {
  it.each(
    table(`
      Next row 1: k → row: label {rows [1]}, items 'k to {left 'what follows'}'
      Next row 1 (RS): k → row: label {rows [1], side RS}, items 'k to {left 'what follows'}'
      Next row 2: *k2, p2; rep from * to end → row: label {rows [2]}, items '(k ×2, p ×2) to {left 0}'
      Next row 2 sts are bound off → ✗ stitch or repeat expected @10
    `),
  )('$line', expectReading);
});

describe('so many rows that are worked again', () => {
  it.each(
    table(`
      Repeat the {2|last 2|above 2} rows twice more → repeat rows: last 2, times 2
      Rep the 3 rows once → repeat rows: last 3, times 1
      Repeat row 2 twice → repeat rows: from 2, to 2, times 2
      Repeat rows 2 and 3 twice → repeat rows: from 2, to 3, times 2
      Repeat the 2nd row twice → repeat rows: from 2, to 2, times 2
    `),
  )('$line', expectReading);

  it('are not the row of that number', () => {
    expect(
      rowsOf(
        'BACK',
        'Cast on 18 sts.',
        'Row 1: knit.',
        'Row 2: k3, p12, k3.',
        'Repeat the 2 rows once more.',
      ),
    ).toEqual(['RS knit 18', 'WS k3, p12, k3 18', 'RS knit 18', 'WS k3, p12, k3 18']);
  });
});

describe('stitches that waited, taken up by their name,', () => {
  it.each(
    table(`
      {Return|Place|Slip} {the|} 26 left front sts {back|} {to|onto} {needle|needles|the needle} → rejoin: edge left, stitches 26
      Return the 26 right front sts to needle and join B → rejoin: edge right, stitches 26 | @45 yarn: name B
      Return the 26 back sts to needles → rejoin: edge middle, stitches 26
      Place 26 back sts on a holder → ✗ stitch or repeat expected @1
    `),
  )('$line', expectReading);

  it('go on in the yarn and on the side that are named', () => {
    const text = [
      'BACK',
      'Cast on 26 sts.',
      'Knit 2 rows.',
      'Next row: k 14, place rem 12 sts on holder.',
      'Knit 3 rows. Bind off.',
      'Return 12 left front sts to needle and join B, ready to work a RS row.',
      'Knit 2 rows. Bind off.',
    ];
    expect(readPattern(text.join('\n')).lines.flatMap(({ faults }) => faults)).toEqual([]);
  });
});

describe('an end that the yarn makes', () => {
  it.each(
    table(`
      Rep rows 1 {and|-} 2 until {1 yard|about 2 yards|a few yards|a little} of {yarn|wool} {is|are} left → repeat rows: from 1, to 2, until {open}
      Rep rows 1 and 2 until {yarn is nearly used up|you run out of yarn|you are out of wool} → repeat rows: from 1, to 2, until {open}
      Rep rows 1 and 2 until a few yards of yarn remain, ending with row 2 → repeat rows: from 1, to 2, until {open, endRow 2}
      Work in st st until 2 yards of yarn remain → even: fabric {named, name stocking}, until {open}
      Rep rows 1 and 2 until the yarn left of the neck → ✗ stitch or repeat expected @18
      Rep rows 1 and 2 until the yarn is joined → ✗ stitch or repeat expected @18
    `),
  )('$line', expectReading);
});

describe('what goes on behind rows of another piece that were not understood', () => {
  const back = [
    'BACK',
    'Cast on 21 sts.',
    'Row 1: K1, *p1, k1; rep from * to end.',
    'Row 2: P1, *k1, p1; rep from * to end.',
    'Now frumple the fringe for 4 rows.**',
    'Work 2 rows in garter st.',
    'Bind off.',
  ];
  const last = (...front: readonly string[]) =>
    rowsOf(...back, 'FRONT', ...front)
      .slice(9)
      .filter((row) => !row.includes('own'))
      .slice(2);

  it('is known to nobody there either', () => {
    expect(last('Work as for back to **.', 'Bind off 2 sts at beg of next 2 rows.')).toEqual([
      'RS bind off 2 sts, work in pattern to end 19',
      'WS bind off 2 sts, work in pattern to end 17',
    ]);
  });

  it('but a fabric that is named is', () => {
    expect(last('Work as for back to **.', 'Work 2 rows in garter st.')).toEqual([
      'RS knit 21',
      'WS knit 21',
    ]);
  });
});
