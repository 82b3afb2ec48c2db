import { describe, expect, it } from 'vitest';
import { at, group, rowOf, type Swatch } from '../knit/piece/swatch-row.ts';
import { knitRow } from '../knitter/knit-row.ts';

/** Row 3 is a right-side row, row 4 a wrong-side one. */
const RS = 3;
const WS = 4;

interface Printed {
  readonly source: string;
  /** stitches on the needle */
  readonly over: number;
  /** the row as it is printed, in the abbreviations that are used here */
  readonly printed: string;
  readonly swatch: Omit<Swatch, 'castOn'>;
  readonly row: number;
}

/** Where the wording of the source differs ('k1, *p1, k1*' for '*k1, p1* … k1'), the stitches are the same. */
const printed: readonly Printed[] = [
  {
    source: 'Begin to Knit, Star Book No. 201, American Thread Co. (PG 61105), stockinette: the knit row',
    over: 35,
    printed: 'knit',
    swatch: { fabric: 'stocking' },
    row: RS,
  },
  {
    source: 'Begin to Knit (PG 61105), stockinette: the purl row',
    over: 35,
    printed: 'purl',
    swatch: { fabric: 'stocking' },
    row: WS,
  },
  {
    source:
      'Begin to Knit (PG 61105), preteen slip-over, seed stitch over 53: k1, p1, ending with k1, every row',
    over: 53,
    printed: '*k1, p1; repeat from * to last st, k1',
    swatch: { fabric: 'moss' },
    row: RS,
  },
  {
    source: 'Begin to Knit (PG 61105), the same, coming back',
    over: 53,
    printed: '*k1, p1; repeat from * to last st, k1',
    swatch: { fabric: 'moss' },
    row: WS,
  },
  {
    source: 'R. Stroot, Hastings Tribune, 22 April 2021, seed stitch over an even number, row 1',
    over: 30,
    printed: '[k1, p1] to end',
    swatch: { fabric: 'moss' },
    row: RS,
  },
  {
    source: 'R. Stroot, Hastings Tribune, 22 April 2021, row 2',
    over: 30,
    printed: '[p1, k1] to end',
    swatch: { fabric: 'moss' },
    row: WS,
  },
  {
    source: 'Clem, Berroco, berroco.com/patterns/clem, back over 57, row 1 (RS)',
    over: 57,
    printed: 'k1, *p1, k1; repeat from * to end',
    swatch: { fabric: 'rib 1x1 matched' },
    row: RS,
  },
  {
    source: 'Clem, Berroco, row 2',
    over: 57,
    printed: 'p1, *k1, p1; repeat from * to end',
    swatch: { fabric: 'rib 1x1 matched' },
    row: WS,
  },
  {
    source: 'Handbook of Wool Knitting and Crochet, 1918 (PG 26113), Red Cross sweater over 80: k2, p2',
    over: 80,
    printed: '[k2, p2] 20 times',
    swatch: { fabric: 'rib 2x2' },
    row: RS,
  },
  {
    source: 'Duo, Knitty, spring 2003, ISSUEspring03/PATTduo.html, raglan armhole over 42, RS',
    over: 42,
    printed: 'k2, ssk, knit to last 4 sts, k2tog, k2',
    swatch: { fabric: 'stocking', shaping: [at('both', -1, 2, RS)] },
    row: RS,
  },
  {
    source:
      'Intermediate Knitting Projects, ch. 15, raglan baby sweater, sleeve, steps 7 and 8: 45 − 3 − 3, RS',
    over: 39,
    printed: 'k3, ssk, knit to last 5 sts, k2tog, k3',
    swatch: { fabric: 'stocking', shaping: [at('both', -1, 3, RS)] },
    row: RS,
  },
  {
    source: 'Nob Hill, Knitty, spring 2008, ISSUEspring08/PATTnobhill.html, increase row 1 over 36, RS',
    over: 36,
    printed: 'sl1, k1, m1, knit to last 2 sts, m1, k2',
    swatch: { fabric: 'stocking', selvedge: 'slipped', shaping: [at('both', 1, 2, RS, 'plain')] },
    row: RS,
  },
  {
    source: 'Leaf, Knitty, spring 2007, ISSUEspring07/PATTleaf.html, body over 112, RS',
    over: 112,
    printed: 'kfb, knit to last st, kfb',
    swatch: { fabric: 'stocking', shaping: [at('both', 1, 0, RS)] },
    row: RS,
  },
  {
    source: 'Bias garter scarf, embeeknits.blogspot.com, 20 December 2008, over 35, RS',
    over: 35,
    printed: 'k1, m1, knit to last 3 sts, k2tog, k1',
    swatch: {
      fabric: 'garter',
      shaping: [at('right', 1, 1, RS, 'plain'), at('left', -1, 1, RS)],
    },
    row: RS,
  },
  {
    source: 'Deep V, L. Gentry for Moda Dea, left front over 27, row 1 (RS)',
    over: 27,
    printed: 'k25, k2tog',
    swatch: { fabric: 'stocking', shaping: [at('left', -1, 0, RS)] },
    row: RS,
  },
  {
    source: 'Grace, Knitty, spring 2004, ISSUEspring04/PATTgrace.html, shoulder over 91, purl row',
    over: 91,
    printed: 'bind off 7 sts, purl to end',
    swatch: { fabric: 'stocking', shaping: [group('bind off', 'left', 7, WS)] },
    row: WS,
  },
];

describe('rows as published patterns print them', () => {
  const named = printed.map((one) => [one.source, one.printed, one] as const);
  it.each(named)('%s: %s', (_source, text, { over, swatch, row }) => {
    const ours = rowOf({ ...swatch, castOn: over }, row);
    const needle = Array.from({ length: over }, () => ({ face: undefined }));
    const side = row === RS ? 'RS' : 'WS';
    expect(knitRow(ours, side, needle).worked).toEqual(knitRow(text, side, needle).worked);
  });

  // a cardigan with pockets, left front over 45, issuhub.com/view/index/25655, p. 87: k2tog tbl on RS rows, p2tog tbl
  // at the end of WS rows, which lean as ssk and ssp do
  it('a raglan edge that is shaped on both sides of the work leans the same way on each', () => {
    const over: Swatch = { fabric: 'stocking', castOn: 45 };
    expect(rowOf({ ...over, shaping: [at('right', -1, 2, RS)] }, RS)).toBe('k2, ssk, knit to end');
    expect(rowOf({ ...over, shaping: [at('right', -1, 2, WS)] }, WS)).toBe('purl to last 4 sts, ssp, p2');
  });
});
