import { describe, expect, it } from 'vitest';
import { readPattern } from '../../../../src/knit/pattern/read-pattern.ts';

/** Sections of the first part of the first piece: name, fabric and rows. */
const sectionsOf = (text: string) =>
  readPattern(text).pieces[0]?.recipe.parts[0]?.sections.map(
    ({ name, fabric, rows }) => `${rows} ${name}${name === fabric ? '' : ` in ${fabric}`}`,
  );

describe('a section that is named with its fabric', () => {
  it('is called so, and its spelled-out rows are of that fabric', () => {
    expect(
      sectionsOf(`BACK
With 3.5 mm needles, cast on 22 sts.
Hem, in k2, p2 rib, 4 rows:
Row 1 (RS): *k2, p2; repeat from * to last 2 sts, k2.
Row 2 (WS): *p2, k2; repeat from * to last 2 sts, p2.
Rep rows 1 and 2 once more.
Body, in stockinette stitch, 4 rows:
Change to 4 mm needles.
Row 5 (RS): knit.
Row 6 (WS): purl.
Rep rows 5 and 6 once more.
Button holes, in stockinette stitch, 1 row:
Row 9 (RS): knit.
Row 10 (WS): Bind off all sts.
`),
    ).toEqual(['4 hem in rib 2x2', '4 body in stocking', '1 button holes in stocking']);
  });

  it('in a rib of one and one has a stitch more where it begins and ends alike', () => {
    const rib = (count: number) =>
      sectionsOf(`BAND\nCast on ${count} sts.\nBand, in k1, p1 rib:\nRow 1: *k1, p1; rep from * to end.\n`);
    expect(rib(20)).toEqual(['1 band in rib 1x1']);
    expect(
      sectionsOf('BAND\nCast on 21 sts.\nBand, in k1, p1 rib:\nRow 1: *k1, p1; rep from * to last st, k1.\n'),
    ).toEqual(['1 band in rib 1x1 matched']);
  });

  it('goes on in the fabric where its rows are not spelled out', () => {
    const read = readPattern('SCARF\nCast on 20 sts.\nBorder, in garter stitch:\nWork 6 rows.\nBind off.\n');
    expect(read.pieces[0]?.recipe.parts[0]?.sections[0]).toMatchObject({
      name: 'border',
      fabric: 'garter',
      rows: 6,
    });
    expect(read.pieces[0]?.recipe.parts[0]?.sections[0]?.words?.[0]).toEqual([
      { work: 'k', until: { left: 0 } },
    ]);
  });

  it('names a piece where nothing is on the needle', () => {
    const read = readPattern('Pocket, in garter stitch:\nCast on 20 sts.\nKnit 4 rows.\nBind off.\n');
    expect(read.pieces.map(({ recipe }) => recipe.name)).toEqual(['Pocket']);
  });
});

/** What knit and purl stitches in turn are called: Craft Yarn Council, 'Knitting abbreviations and stitch patterns'; from memory. */
describe('rows that are spelled out and not named', () => {
  const cast = (count: number, rows: string) => sectionsOf(`SCARF\nCast on ${count} sts.\n${rows}\n`);

  it.each<[string, number, string, string[]]>([
    [
      'knit and purl in turn from either side',
      20,
      'Row 1: *k1, p1; rep from * to end.\nRow 2: *k1, p1; rep from * to end.\nRep rows 1 and 2, 3 times more.',
      ['8 rib in rib 1x1'],
    ],
    [
      'by twos',
      22,
      'Row 1 (RS): *k2, p2; rep from * to last 2 sts, k2.\nRow 2: *p2, k2; rep from * to last 2 sts, p2.\nRow 3: *k2, p2; rep from * to last 2 sts, k2.',
      ['3 rib in rib 2x2'],
    ],
    [
      'what changes with every row',
      21,
      'Row 1: *k1, p1; rep from * to last st, k1.\nRow 2: *k1, p1; rep from * to last st, k1.\nRow 3: *k1, p1; rep from * to last st, k1.',
      ['3 moss'],
    ],
    [
      'ridges below stocking stitch',
      20,
      'Row 1 (RS): knit.\nRow 2: knit.\nRow 3: knit.\nRow 4: knit.\nRow 5: knit.\nRow 6: purl.\nRow 7: knit.\nRow 8: purl.',
      ['4 garter', '4 stocking'],
    ],
    [
      'the other side of it',
      20,
      'Row 1 (RS): purl.\nRow 2: knit.\nRow 3: purl.\nRow 4: knit.',
      ['4 reverse stocking'],
    ],
    [
      'one ridge is none',
      20,
      'Row 1 (RS): knit.\nRow 2: purl.\nRow 3: purl.\nRow 4: purl.\nRow 5: knit.\nRow 6: purl.',
      ['6 stocking'],
    ],
    [
      'stitches at the edges in something else',
      30,
      'Row 1 (RS): knit.\nRow 2: k3, purl to last 3 sts, k3.\nRow 3: knit.\nRow 4: k3, purl to last 3 sts, k3.',
      ['4 stocking'],
    ],
    [
      'lace is no plain fabric of another name',
      18,
      'Row 1 (RS): *k1, yo, k2tog; rep from * to end.\nRow 2: purl.\nRow 3: *k2tog, yo, k1; rep from * to end.\nRow 4: purl.',
      ['4 stocking'],
    ],
  ])('%s', (_, count, rows, wanted) => {
    expect(cast(count, rows)).toEqual(wanted);
  });

  it('have the gauge of what they are, unless it was counted in the pattern itself', () => {
    const width = (gauge: string) =>
      (() => {
        const plan = readPattern(
          `${gauge}\nSCARF\nCast on 20 sts.\nRow 1: *k1, p1; rep from * to end.\nRow 2: *k1, p1; rep from * to end.\n`,
        ).pieces[0]?.plan;
        return plan?.ok ? plan.value.parts[0]?.cells[0]?.width : undefined;
      })();
    expect(width('Gauge: 20 sts and 28 rows = 10 cm in st st.')).toBeCloseTo(5 / 1.15, 6);
    expect(width('Gauge: 20 sts and 28 rows = 10 cm in pattern.')).toBeCloseTo(5, 6);
  });
});
