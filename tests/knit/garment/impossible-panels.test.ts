import { describe, expect, it } from 'vitest';
import type { Design } from '../../../src/knit/garment/design.ts';
import { impossiblePanels } from '../../../src/knit/garment/impossible.ts';
import type { PanelCounts } from '../../../src/knit/garment/panel-counts.ts';
import type { Targets } from '../../../src/knit/garment/targets.ts';
import { even } from './spelled.ts';

/*
 * Where a back can be knitted no more, a stitch or a pair of rows on either side of the border. 20 stitches and 28 rows to
 * 10 cm: a stitch is 5 mm. Common practice, no published source.
 */

const pairs = { hem: 5, side: 40, armhole: 25, slope: 4, neck: 12, backNeck: 3, waist: 20 };
type Over = Partial<Omit<PanelCounts, 'pairs'>> & { readonly pairs?: Partial<typeof pairs> };

const told = (over: Over, more: Partial<Design> = {}, targets: Partial<Targets> = {}): string[] => {
  const counts = {
    underarm: 80,
    across: 60,
    neck: 30,
    low: 78,
    step: 4,
    seam: 1,
    gauge: { stitches: 20, rows: 28 },
    ...over,
    pairs: { ...pairs, ...over.pairs },
  } as unknown as PanelCounts;
  const wanted = {
    length: 560,
    armholeDepth: 200,
    waistHeight: 160,
    neck: 160,
    underarm: 400,
    frontBand: 20,
  };
  return impossiblePanels({ ...even, ...more }, { ...wanted, ...targets } as Targets, counts).map(
    ({ code, figures, at }) => [code, ...Object.entries(figures).flat(), 'at', at.field].join(' '),
  );
};

describe('a back and a front that can be knitted', () => {
  it.each<[string, Over]>([
    ['as they are', {}],
    ['cast on with two', { low: 2 }],
    ['of one stitch at the neck', { neck: 1 }],
    ['as wide across as at the underarm', { across: 80 }],
    [
      'that lose three stitches in each pair of rows of their armholes',
      { across: 20, neck: 16, pairs: { armhole: 10 } },
    ],
    ['with two stitches for each shoulder', { neck: 56 }],
    ['with an armhole of two pairs of rows', { across: 80, pairs: { armhole: 2 } }],
    ['with two pairs of rows below it', { pairs: { side: 2 } }],
    // 40 + 25 + 4 above the rib, less one
    ['with necks that begin right above the rib', { pairs: { neck: 68, backNeck: 68 } }],
  ])('%s', (_, over) => {
    expect(told(over)).toEqual([]);
  });

  it('with a waist two pairs of rows from either end of the side', () => {
    expect(told({ pairs: { waist: 2 } }, { silhouette: 'waist' })).toEqual([]);
    expect(told({ pairs: { waist: 38 } }, { silhouette: 'waist' })).toEqual([]);
    const outside = ['waist outside the side waistMm 160 at lengthMm'];
    expect(told({ pairs: { waist: 1 } }, { silhouette: 'waist' })).toEqual(outside);
    expect(told({ pairs: { waist: 39 } }, { silhouette: 'waist' })).toEqual(outside);
  });

  it('with a raglan from six stitches at the neck, a stitch taken off to one in every row', () => {
    const raglan = (neck: number, armhole = 25) => told({ neck, pairs: { armhole } }, { armhole: 'raglan' });
    expect(raglan(6)).toEqual([]);
    expect(raglan(5)).toEqual(['raglan neck too narrow neckStitches 5 leastStitches 6 at neck.widthMm']);
    // 40 of half the back less four at the underarm less half the neck
    expect(raglan(70)).toEqual([]);
    expect(raglan(72)).toEqual(['raglan neck too wide neckStitches 72 underarmStitches 80 at neck.widthMm']);
    expect(raglan(36, 10)).toEqual([]);
    expect(raglan(34, 10)).toEqual(['more shapings than rows stitches 19 rows 18 at body.armholeDepth']);
    expect(told({}, { armhole: 'raglan', kind: 'vest' })).toEqual(['raglan without sleeves at armhole']);
  });

  it('with bands that leave a stitch of each half of the neck', () => {
    const open = (frontBand: number) => told({}, { kind: 'cardigan' }, { frontBand });
    expect(open(150)).toEqual([]);
    expect(open(160)).toEqual(['band wider than neck bandMm 160 neckMm 150 at frontBand.heightMm']);
  });
});

describe('that cannot', () => {
  it.each<[string, Over]>([
    ['too few stitches stitches 3 at body.chest', { underarm: 3 }],
    ['too few stitches stitches 80 at body.chest', { low: 1 }],
    ['no neck at neck.widthMm', { neck: 0 }],
    ['back wider than chest acrossMm 405 underarmMm 400 at body.crossBack', { across: 81 }],
    ['armhole too shallow rows 20 at body.armholeDepth', { across: 19, neck: 15, pairs: { armhole: 10 } }],
    ['neck too wide neckMm 285 acrossMm 300 at neck.widthMm', { neck: 57 }],
    ['armhole too shallow rows 2 at body.armholeDepth', { across: 80, pairs: { armhole: 1 } }],
    ['too short lengthMm 560 armholeMm 200 at lengthMm', { pairs: { side: 1 } }],
    // 68 pairs of rows
    ['neck too deep mostMm 485 at neck.depthMm', { pairs: { neck: 69 } }],
    ['neck too deep mostMm 485 at neck.depthMm', { pairs: { backNeck: 69 } }],
  ])('%s', (fault, over) => {
    expect(told(over)).toContain(fault);
  });
});
