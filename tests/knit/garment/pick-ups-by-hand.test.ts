import { describe, expect, it } from 'vitest';
import type { FabricName } from '../../../src/knit/fabric.ts';
import { frontBorder, roomForHoles } from '../../../src/knit/garment/band-piece.ts';
import { bandsOf } from '../../../src/knit/garment/bands.ts';
import type { Design } from '../../../src/knit/garment/design.ts';
import { headFit, headWarning, neckEdgeMm } from '../../../src/knit/garment/head-through-neck.ts';
import { cornerAt, lapCorner } from '../../../src/knit/garment/lap-corners.ts';
import type { Neck } from '../../../src/knit/garment/neck.ts';
import {
  collarPickUp,
  holesAlong,
  lapBorder,
  opensMoreMm,
  shoulderPickUp,
} from '../../../src/knit/garment/neck-opening.ts';
import { frontNeckStitches } from '../../../src/knit/garment/open-front.ts';
import { type PanelCounts, panelCounts } from '../../../src/knit/garment/panel-counts.ts';
import {
  alongBack,
  alongSleeve,
  type BandEdges,
  fittedPickUp,
  frontEdgeMm,
  frontNeckSide,
  halfBackPickUp,
  neckSide,
  openNeckSide,
  sharedPickUp,
} from '../../../src/knit/garment/pick-up.ts';
import { besidePlacket, placketBorder, placketStitches } from '../../../src/knit/garment/placket.ts';
import { type Targets, targetsOf } from '../../../src/knit/garment/targets.ts';
import type { PickUp } from '../../../src/knit/piece/recipe.ts';
import type { EdgeStep } from '../../../src/knit/shape/edge-steps.ts';
import { even } from './spelled.ts';

/* Counted on paper from the even design of `spelled.ts`: a stitch is 5 mm wide and a row 4 mm high, in rib 4 mm by 4 mm. */
const { neck, neckband, frontBand, gauges } = even;
const counts = panelCounts(even, targetsOf(even));
const banded = (heightMm: number, more: Partial<Design> = {}): Design => ({
  ...even,
  ...more,
  neckband: { ...neckband, heightMm },
});

/** '12 along back neck' */
const said = (order: readonly PickUp[]): readonly string[] =>
  order.map(({ along, stitches, held }) => `${stitches} along ${along}${held ? ', held' : ''}`);

describe('a band of two edges that are as long as each other', () => {
  const shared = (fabric: FabricName, each: number) =>
    sharedPickUp({ fabric, heightMm: 16 }, each, ['front', 'back']).map(({ stitches }) => stitches);
  it.each<[string, FabricName, number, readonly [number, number]]>([
    ['79 are 78 in a rib of 4 n + 2', 'rib 2x2', 39.6, [39, 39]],
    ['80 are 82: the larger of two as near', 'rib 2x2', 40, [41, 41]],
    ['81 are 82', 'rib 2x2', 40.4, [41, 41]],
    ['three are six: two of them are too few to knit round', 'rib 2x2', 1.5, [1, 1]],
    ['an odd count has its odd stitch at the second', 'garter', 10.7, [10, 11]],
    ['one at each at the least', 'garter', 0.2, [1, 1]],
    ['20 are 21 where the rib is odd', 'rib 1x1 matched', 10, [10, 11]],
    ['two are three there, not one', 'rib 1x1 matched', 1, [1, 2]],
  ])('%s', (_, fabric, each, stitches) => {
    expect(shared(fabric, each)).toEqual(stitches);
  });
});

describe('a pick-up is made to fit the rib, 4 n + 2', () => {
  const taken = (
    order: readonly (readonly [string, number] | readonly [string, number, 'held'])[],
    hasCorners = false,
    edition?: 2,
  ) =>
    fittedPickUp(
      neckband,
      order.map(([along, stitches, held]) => ({ along, stitches, ...(held && { held: true }) })),
      hasCorners,
      edition,
    ).map(({ stitches }) => stitches);

  it('at its last stretch, by as little as can be: the larger of two as near', () => {
    expect([29, 30, 31, 32, 33].map((n) => taken([['left front edge', n]])[0])).toEqual([30, 30, 30, 34, 34]);
    expect(
      taken([
        ['right front edge', 20],
        ['left front edge', 20],
      ]),
    ).toEqual([20, 22]);
  });

  it('behind, wherever that lies', () => {
    expect(
      taken([
        ['left front neck', 10],
        ['back neck', 20],
        ['right front neck', 11],
      ]),
    ).toEqual([10, 21, 11]);
    expect(
      taken(
        [
          ['back neck', 20],
          ['left front neck', 11],
          ['right front neck', 10],
        ],
        true,
      ),
    ).toEqual([21, 11, 10]);
  });

  it('and where nothing would be left of that, by one repeat more', () => {
    expect(
      taken([
        ['left front neck', 9],
        ['back neck', 1],
        ['right front neck', 9],
      ]),
    ).toEqual([9, 4, 9]);
    expect(
      taken([
        ['left front neck', 9],
        ['back neck', 2],
        ['right front neck', 8],
      ]),
    ).toEqual([9, 1, 8]);
  });

  it('with both sides of the back where its middle rests, as evenly as can be', () => {
    const held = (right: number, left: number) =>
      taken([
        ['left front neck', 20],
        ['middle of the front neck', 14, 'held'],
        ['right front neck', 20],
        ['right back neck', right],
        ['middle of the back neck', 26, 'held'],
        ['left back neck', left],
      ]);
    expect(held(7, 7)).toEqual([20, 14, 20, 7, 26, 7]);
    expect(held(8, 7)).toEqual([20, 14, 20, 7, 26, 7]);
    expect(held(8, 8)).toEqual([20, 14, 20, 9, 26, 9]);
    expect(held(6, 7)).toEqual([20, 14, 20, 7, 26, 7]);
  });

  it('of a raglan before and behind, but at no corner', () => {
    const raglan = (hasCorners: boolean) =>
      taken(
        [
          ['left sleeve top', 6],
          ['left front neck', 20],
          ['middle of the front neck', 10],
          ['right front neck', 20],
          ['right sleeve top', 6],
          ['back neck', 18],
        ],
        hasCorners,
      );
    // 80 are 82
    expect(raglan(false)).toEqual([6, 20, 11, 20, 6, 19]);
    expect(raglan(true)).toEqual([6, 20, 10, 20, 6, 20]);
    expect(
      taken([
        ['left sleeve top', 6],
        ['front neck', 12],
        ['right sleeve top', 6],
        ['back neck', 12],
      ]),
    ).toEqual([6, 13, 6, 13]);
  });

  it('of a raglan all of whose back rests, at both sides of its front from the second edition on', () => {
    const order = [
      ['right front neck', 20],
      ['right sleeve top', 6, 'held'],
      ['back neck', 28, 'held'],
      ['left sleeve top', 6, 'held'],
      ['left front neck', 20],
    ] as const;
    expect(taken(order)).toEqual([20, 6, 28, 6, 22]);
    expect(taken(order, false, 2)).toEqual([21, 6, 28, 6, 21]);
    expect(taken(order, true, 2)).toEqual([20, 6, 28, 6, 22]);
  });

  it('of an envelope’s front at its corners, or at one of them where a mitre lies beside the other', () => {
    const order = [
      ['left front shoulder', 18],
      ['left front corner', 4],
      ['left front neck', 18],
      ['right front neck', 18],
      ['right front corner', 4],
      ['right front shoulder', 18],
    ] as const;
    expect(taken(order)).toEqual([18, 5, 18, 18, 5, 18]);
    expect(taken(order, true)).toEqual([18, 4, 18, 18, 6, 18]);
  });
});

/** An edge of a neck that stands for so many pairs of rows, with its steps. */
const neckOf = (pairs: number, steps: readonly EdgeStep[], middle = 0, from = 57): Neck => ({
  middle,
  edge: {
    name: 'neck',
    from,
    gauge: counts.gauge,
    at: Array.from({ length: pairs }, () => 0),
    steps,
    worst: { stitches: 0, pair: 0 },
    curve: [],
  },
});
const edgesOf = (more: Partial<BandEdges> = {}): BandEdges => ({
  counts,
  front: undefined,
  back: undefined,
  frontHalf: 0,
  sleeveTop: 0,
  tip: 0,
  armhole: neckOf(25, []).edge as BandEdges['armhole'],
  ...more,
});
const group = (pair: number, by: number): EdgeStep => ({ pair, by, as: 'group' });

describe('the side of a neck', () => {
  it('is as many stitches as its rows are high: ten pairs of 8 mm are 16 of 5', () => {
    expect(neckSide(neckOf(10, []), counts)).toBe(16);
    // 24 and 40 mm; a row by itself is a stitch at the least
    expect([3, 5, 0].map((pairs) => neckSide(neckOf(pairs, []), counts))).toEqual([5, 8, 1]);
  });

  it('of a V that binds off at once has those too, from the third edition on', () => {
    const V = { ...even, neck: { ...neck, shape: 'V' } } as const;
    const shallow = neckOf(10, [group(0, -3)]);
    const side = (design: Design, one: Neck) => frontNeckSide(design, one, counts) - neckSide(one, counts);
    expect(side({ ...V, edition: 3 }, shallow)).toBe(3);
    expect(side({ ...V, edition: 2 }, shallow)).toBe(0);
    expect(side({ ...even, edition: 3 }, shallow)).toBe(0);
    expect(side({ ...V, edition: 3 }, neckOf(10, [group(1, -3)]))).toBe(0);
    expect(side({ ...V, edition: 3 }, neckOf(10, [{ pair: 0, by: -1, as: 'single' }]))).toBe(0);
  });

  it('of a cardigan begins at its first decrease: the rows below it are its front edge', () => {
    const single = { pair: 4, by: -1, as: 'single' } as const;
    // six pairs of rows are 48 mm, with one stitch of slant in them
    expect(openNeckSide(neckOf(10, [single]), counts)).toBe(10);
    expect(openNeckSide(neckOf(10, []), counts)).toBe(16);
    // what is bound off there lies beside it
    expect(openNeckSide(neckOf(10, [group(0, -5)]), counts)).toBe(21);
    expect(openNeckSide(neckOf(10, [group(9, -5)]), counts)).toBe(7);
    // 10 rows of the rib and 52 pairs above it, to the neck at 57, or to its first decrease
    expect(frontEdgeMm(edgesOf({ front: neckOf(10, []) }))).toBe(40 + 52 * 8);
    expect(frontEdgeMm(edgesOf({ front: neckOf(10, [single]) }))).toBe(40 + 56 * 8);
    // to the top: 5, 37, 25 and 3
    expect(frontEdgeMm(edgesOf())).toBe(40 + 65 * 8);
  });

  it('of half a back that is parted leaves out the one stitch of an odd middle', () => {
    const back = neckOf(3, [], 26);
    expect(halfBackPickUp(edgesOf({ back }))).toBe(13 + 5);
    expect(halfBackPickUp(edgesOf({ back: neckOf(3, [], 27), counts: { ...counts, neck: 33 } }))).toBe(
      13 + 5,
    );
    expect(halfBackPickUp(edgesOf())).toBe(0);
  });
});

describe('what a band takes up', () => {
  const holding = { ...even, neck: { ...neck, middle: 'hold' } } as const;
  const raglan = { ...holding, armhole: 'raglan' } as const;

  it('behind is one stretch, or three where the middle rests', () => {
    const back = neckOf(3, [], 26);
    expect(said(alongBack(even, edgesOf()))).toEqual(['32 along back neck']);
    expect(said(alongBack(raglan, edgesOf()))).toEqual(['32 along back neck, held']);
    expect(said(alongBack(holding, edgesOf()))).toEqual(['32 along back neck']);
    expect(said(alongBack(even, edgesOf({ back })))).toEqual(['36 along back neck']);
    expect(said(alongBack(holding, edgesOf({ back })))).toEqual([
      '5 along right back neck',
      '26 along middle of the back neck, held',
      '5 along left back neck',
    ]);
    expect(said(alongBack(holding, edgesOf({ back: neckOf(3, []) })))).toEqual(['10 along back neck']);
  });

  it('of a sleeve is its top, less what its seams take from the second edition on', () => {
    const seamed = edgesOf({ sleeveTop: 8, counts: { ...counts, seam: 1 } });
    const { middle: _, ...plain } = raglan.neck;
    const open = { ...raglan, neck: plain };
    expect(said(alongSleeve(open, edgesOf(), 'left'))).toEqual([]);
    expect(said(alongSleeve(open, seamed, 'left'))).toEqual(['8 along left sleeve top']);
    expect(said(alongSleeve({ ...open, edition: 2 }, seamed, 'right'))).toEqual(['6 along right sleeve top']);
    expect(said(alongSleeve({ ...raglan, edition: 2 }, seamed, 'right'))).toEqual([
      '8 along right sleeve top, held',
    ]);
  });

  it('at the end of a neckband is its height: 24 mm are five stitches', () => {
    expect([0, 1, 12, 18, 24, 40].map((mm) => collarPickUp(banded(mm), counts))).toEqual([0, 1, 2, 4, 5, 8]);
    const fine = { gauges: { ...gauges, 'rib 2x2': { stitches: 25, rows: 60 } } };
    expect(collarPickUp(banded(1, fine), counts)).toBe(1);
  });

  it('along a shoulder is its slant between the first step and the last: 60 mm of those, and 30 by 24', () => {
    expect(shoulderPickUp(even, counts)).toBe(20);
    expect(shoulderPickUp({ ...even, shoulder: 'short rows' }, counts)).toBe(18);
    expect(shoulderPickUp({ ...even, shoulder: 'short rows' }, { ...counts, shoulder: [1] })).toBe(2);
  });

  it('round a corner is a quarter of a circle halfway up the band, from the second edition on', () => {
    // 24 mm are six rows: 18.8 mm; 20 mm, which bands that lap have at the least, five: 15.7 mm
    const corner = (mm: number) => lapCorner(banded(mm, { edition: 2 }), counts);
    expect([24, 12, 80].map(corner)).toEqual([4, 3, 13]);
    expect(lapCorner(even, counts)).toBe(0);
    expect(lapCorner(banded(24, { edition: 2 }), { ...counts, gauge: { stitches: 2, rows: 25 } })).toBe(1);
    expect(said(cornerAt('left back', 4))).toEqual(['4 along left back corner']);
    expect(cornerAt('left back', 0)).toEqual([]);
  });
});

describe('the height of a band', () => {
  it('that lies over another is 20 mm at the least', () => {
    expect(lapBorder(banded(24))).toEqual({ fabric: 'rib 2x2', heightMm: 24 });
    expect(lapBorder(banded(12))).toEqual({ fabric: 'rib 2x2', heightMm: 20 });
  });

  it('with holes is four rows at the least', () => {
    const front = (heightMm: number, buttons = 4): Design => ({
      ...even,
      frontBand: { ...frontBand, heightMm, buttons },
    });
    expect(roomForHoles(even, { fabric: 'rib 1x1 matched', heightMm: 15 }).heightMm).toBe(16);
    expect(roomForHoles(even, { fabric: 'rib 1x1 matched', heightMm: 17 }).heightMm).toBe(17);
    expect([0, 10, 20].map((mm) => frontBorder(front(mm)).heightMm)).toEqual([0, 16, 20]);
    expect(frontBorder(front(10, 0)).heightMm).toBe(10);
    expect(frontBorder(front(10, 1)).heightMm).toBe(16);
    expect([0, 10, 25].map((mm) => placketBorder(front(mm)))).toEqual(
      [20, 16, 25].map((heightMm) => ({ fabric: 'rib 1x1 matched', heightMm })),
    );
  });
});

describe('a placket', () => {
  const asked = (heightMm: number): Design => ({ ...even, frontBand: { ...frontBand, heightMm } });
  const stitches = (heightMm: number, middle: number, ofNeck = 32) =>
    placketStitches(asked(heightMm), { ...counts, neck: ofNeck }, neckOf(10, [], middle));

  it('binds off as many as one of its bands is wide, even or odd as the neck is, and no more than lie level', () => {
    expect([20, 25, 30, 35].map((mm) => stitches(mm, 14))).toEqual([4, 6, 6, 8]);
    expect([20, 25, 30, 35].map((mm) => stitches(mm, 15, 33))).toEqual([5, 5, 7, 7]);
    expect([stitches(20, 2), stitches(20, 0), stitches(20, 0, 33)]).toEqual([2, 0, 1]);
  });

  it('leaves what lies level beside it to the side of the neck', () => {
    // 14 less 4, half of it; ten pairs of rows
    expect(besidePlacket(asked(20), counts, neckOf(10, [], 14))).toBe(5 + 16);
  });
});

describe('the buttons along a band that is buttoned from its end', () => {
  const holes = (stitches: number, edition?: 2, fabric: FabricName = 'garter') =>
    holesAlong({ ...even, ...(edition && { edition }) }, { fabric, heightMm: 20 }, counts.gauge, stitches)
      ?.buttons;

  it('are 35 mm apart, as near as can be', () => {
    // 50, 85, 90, 200 mm
    expect([10, 17, 18, 40].map((n) => holes(n))).toEqual([1, 2, 3, 6]);
  });

  it('in the second edition with the room that each end needs, and the last hole', () => {
    // beside 12.5 mm at either end and a hole of 10 mm: 70 mm and 65 have two distances and one, 140 four
    expect([20, 21, 27, 28, 35].map((n) => holes(n, 2))).toEqual([2, 3, 3, 4, 5]);
    expect([holes(4, 2), holes(3, 2)]).toEqual([1, undefined]);
    expect(holesAlong({ ...even, edition: 2 }, neckband, counts.gauge, 40)?.isEven).toBe(true);
    expect(holesAlong(even, neckband, counts.gauge, 40)?.isEven).toBeUndefined();
  });
});

describe('a neck that is held against the head', () => {
  it('is as long as its middles and sides, with the tops of both sleeves and the tips beside them', () => {
    expect(neckEdgeMm(edgesOf())).toBe(320);
    expect(neckEdgeMm(edgesOf({ sleeveTop: 6, tip: 2 }))).toBe(320 + 2 * 40);
    // 14 stitches and twice ten pairs of rows; 26 and twice three
    expect(neckEdgeMm(edgesOf({ front: neckOf(10, [], 14) }))).toBe(160 + 70 + 160);
    expect(neckEdgeMm(edgesOf({ back: neckOf(3, [], 26) }))).toBe(160 + 130 + 48);
  });

  it('opens as far as its band stretches, and by what else opens', () => {
    const taken = (more: Partial<Design>, edges: Partial<BandEdges> = {}) =>
      headFit({ ...even, ...more }, edgesOf(edges));
    expect(taken({})).toEqual({ neckMm: 320, opensMm: 320 * 1.4, headMm: 560 });
    expect(taken({ neckband: { ...neckband, heightMm: 0 } })?.opensMm).toBe(320 * 1.2);
    expect(taken({ kind: 'cardigan' })).toBeUndefined();
    // 80 mm of a back that is parted, twice
    expect(taken({ neck: { ...neck, opening: 'back', openingMm: 80 } })?.opensMm).toBeCloseTo(
      320 * 1.4 + 160,
      6,
    );
    // four stitches between the edges of a placket are none of its edge
    const placket = { neck: { ...neck, opening: 'placket', openingMm: 80 } } as const;
    expect(taken(placket, { front: neckOf(10, [], 14) })?.neckMm).toBe(160 + 70 + 160 - 20);
  });

  it('opens by both edges of each shoulder that does: 90 mm, rising 24 in steps', () => {
    const opens = (opening: 'left shoulder' | 'envelope', more: Partial<Design> = {}) =>
      opensMoreMm({ ...even, ...more, neck: { ...neck, opening } }, counts, 1.4);
    const slant = Math.hypot(90, 24);
    expect(opens('left shoulder')).toBeCloseTo(2 * 1.4 * slant, 6);
    expect(opens('envelope')).toBeCloseTo(4 * 1.4 * slant, 6);
    expect(opens('left shoulder', { shoulder: 'short rows' })).toBeCloseTo(2 * 1.4 * 90, 6);
  });

  it('is warned of where the head is wider, in whole millimetres', () => {
    const warned = (opensMm: number) => headWarning({ neckMm: 399.6, opensMm, headMm: 560 });
    expect(warned(560)).toEqual([]);
    expect(warned(559.6)).toMatchObject([
      {
        code: 'head does not pass',
        figures: { neckMm: 400, opensMm: 560, headMm: 560 },
        at: { field: 'neck.widthMm' },
      },
    ]);
    expect(headWarning(undefined)).toEqual([]);
  });
});

describe('bands of a neck that is not shaped in front', () => {
  const pickedUp = (design: Design, edges: Partial<BandEdges>) =>
    bandsOf(design, edgesOf(edges)).map(({ name, parts: [part] }) => {
      const along = part && 'pickUp' in part.from ? part.from.pickUp : [];
      return `${name}: ${said(along).join('; ')}`;
    });
  const open = { ...even, kind: 'cardigan', frontBand: { ...frontBand, heightMm: 0 } } as const;

  it('take up half of it at either front, a stitch at the least', () => {
    const narrow = (ofNeck: number) => pickedUp(open, { counts: { ...counts, neck: ofNeck } });
    // 64 are 66; five six; three six as well, since two would leave none behind
    expect(narrow(32)).toEqual([
      'Neckband: 16 along right front neck; 34 along back neck; 16 along left front neck',
    ]);
    expect(narrow(3)).toEqual([
      'Neckband: 1 along right front neck; 4 along back neck; 1 along left front neck',
    ]);
    expect(narrow(1)).toEqual([
      'Neckband: 1 along right front neck; 4 along back neck; 1 along left front neck',
    ]);
  });

  it('of a V in one band round both fronts: what lies level there, from the third edition on', () => {
    // 40 mm of rib and 65 pairs of rows are 560 mm, 112 stitches; the whole is odd
    const V = { ...open, neck: { ...neck, shape: 'V' }, frontBand: { ...frontBand, buttons: 0 } } as const;
    expect(pickedUp({ ...V, edition: 3 }, { frontHalf: 14 })).toEqual([
      'Front band: 112 along right front edge; 14 along right front neck; 33 along back neck; 14 along left front neck; 112 along left front edge',
    ]);
    const without = ['Front band: 112 along right front edge; 33 along back neck; 112 along left front edge'];
    expect(pickedUp({ ...V, edition: 2 }, { frontHalf: 14 })).toEqual(without);
    expect(pickedUp({ ...V, edition: 3 }, { frontHalf: 0 })).toEqual(without);
  });
});

describe('half the neck of an open front', () => {
  const half = (frontBandMm: number, more: Partial<PanelCounts> = {}, targets: Partial<Targets> = {}) =>
    frontNeckStitches({ ...targetsOf(even), ...targets, frontBand: frontBandMm }, { ...counts, ...more });

  it('is what half the band leaves of it, whichever is nearer to neck and front', () => {
    // 160 less 20 are 70 mm each, 14; less 25 67.5, 13.5: the smaller of two as near
    expect([20, 25, 24, 26].map((mm) => half(mm))).toEqual([14, 13, 14, 13]);
    // a neck of 162 mm asks for 14.2, a front of 394 for 39.4, which has 24 beside it: 15.4; 14 is 1.4 off, 15 0.8
    expect(half(20, {}, { neck: 162, underarm: 414 })).toBe(15);
    // a stitch for the seam is one more of the front
    expect(half(20, { seam: 1, underarm: 82 })).toBe(14);
  });
});
