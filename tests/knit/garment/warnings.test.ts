import { describe, expect, it } from 'vitest';
import type { Fault } from '../../../src/knit/fault.ts';
import type { Design } from '../../../src/knit/garment/design.ts';
import { type Warned, warningsOf } from '../../../src/knit/garment/warnings.ts';
import { even } from './spelled.ts';

/*
 * Each caution at the figure from which it is said, reckoned by hand: 5 mm a stitch, 4 mm a row; an armhole of 25 pairs of rows
 * is 200 mm deep.
 */
const gauge = { stitches: 20, rows: 25 };
type Counts = { readonly hem?: number; readonly hemPairs?: number; readonly shoulder?: readonly number[] };
interface Asked {
  readonly design?: Partial<Design>;
  readonly counts?: Counts;
  readonly cap?: number;
  readonly wide?: number;
  readonly targets?: object;
  readonly edges?: readonly object[];
  readonly holes?: object;
  readonly withoutSleeve?: true;
}

function warned({ design, counts = {}, cap, wide = 60, targets, edges = [], holes, withoutSleeve }: Asked) {
  const found = warningsOf({
    design: { ...even, overruled: [], ...design },
    targets: { cuff: 200, sleeveTop: 300, neckDepth: 80, backNeckDepth: 24, hem: 500, ...targets },
    counts: {
      gauge,
      pairs: { armhole: 25, hem: counts.hemPairs ?? 5 },
      hem: counts.hem ?? 80,
      shoulder: counts.shoulder ?? [6, 6, 6],
    },
    head: undefined,
    edges,
    sleeve: withoutSleeve ? undefined : { wide, ...(cap !== undefined && { cap: { heightMm: cap } }) },
    holes,
  } as unknown as Warned);
  return found.map(said);
}
const said = ({ code, figures, at }: Fault): string =>
  `${[code, ...Object.entries(figures).map(([name, value]) => `${name} ${value}`)].join(', ')} at ${at.field}`;

it('a design of usual figures is not warned of', () => {
  expect(warned({ cap: 120 })).toEqual([]);
});

describe('a cap', () => {
  it.each([
    [79, true],
    [80, false],
    [180, false],
    [181, true],
    // to the nearest mm
    [79.5, false],
    [180.4, false],
  ])('of %d mm in an armhole of 200 mm is out of proportion: %s', (cap, is) => {
    expect(warned({ cap })).toEqual(
      is
        ? [`cap out of proportion, capMm ${Math.round(cap)}, depthMm 200, widthMm 300 at ease.upperArm`]
        : [],
    );
  });
});

describe('the top of a sleeve that is sewn in straight', () => {
  const drop = { armhole: 'drop' } as const;
  it('is narrower than the arm where it is so without its ease', () => {
    // 56 stitches are 280 mm, as the arm is
    expect(warned({ design: drop, wide: 56 })).toEqual([]);
    expect(warned({ design: drop, wide: 55 })).toEqual([
      'sleeve top narrower than the arm, widthMm 275, armMm 280 at body.armholeDepth',
    ]);
    const tight = { ...drop, ease: { ...even.ease, upperArm: -20 } };
    expect(warned({ design: tight, wide: 52 }).filter((one) => one.startsWith('sleeve'))).toEqual([]);
    expect(warned({ design: tight, wide: 51 }).filter((one) => one.startsWith('sleeve'))).toHaveLength(1);
    expect(warned({ wide: 10, cap: 120 })).toEqual([]);
    expect(warned({ design: drop, wide: 10, withoutSleeve: true })).toEqual([]);
  });
});

describe('a cuff', () => {
  it('is wider than its sleeve only where the sleeve has one of its own', () => {
    const wide = { targets: { cuff: 301, sleeveTop: 300.4 } };
    expect(warned(wide)).toEqual(['cuff wider than sleeve, cuffMm 301, topMm 300 at ease.wrist']);
    expect(warned({ targets: { cuff: 300, sleeveTop: 300 } })).toEqual([]);
    expect(warned({ ...wide, design: { sleeve: { ...even.sleeve, shape: 'straight' } } })).toEqual([]);
  });
});

describe('a side', () => {
  const edge = (name: string, ...by: readonly number[]) => ({
    name,
    at: [1, 2, 3],
    steps: by.map((n) => ({ by: n })),
  });
  it('is shaped in more rows than there are of the right side where it needs two at once', () => {
    expect(warned({ edges: [edge('side', 1, -1)] })).toEqual([]);
    expect(warned({ edges: [edge('side', 1, -2)] })).toEqual([
      'more shapings than right side rows, stitches 3, rows 6 at silhouette',
    ]);
    expect(warned({ edges: [edge('sleeve', 2, 2)] })).toEqual([
      'more shapings than right side rows, stitches 4, rows 6 at sleeve.shape',
    ]);
    expect(warned({ edges: [edge('neck', 2, 2)] })).toEqual([]);
  });
});

describe('a rib', () => {
  const asIs = { hem: { ...even.hem, count: 'as it is' } } as unknown as Partial<Design>;
  it('does not come out where its count is not made to', () => {
    expect(warned({ design: asIs, counts: { hem: 81 } })).toEqual([
      'rib multiple, stitches 81, fabric rib 2x2, belowStitches 80, aboveStitches 82 at hem.count',
    ]);
    expect(warned({ design: asIs, counts: { hem: 82 } })).toEqual([]);
    expect(warned({ counts: { hem: 81 } })).toEqual([]);
    expect(warned({ design: asIs, counts: { hem: 81, hemPairs: 0 } })).toEqual([]);
  });
});

describe('a shape', () => {
  it('has its front neck above the one behind', () => {
    expect(warned({ targets: { neckDepth: 23.4, backNeckDepth: 24 } })).toEqual([
      'front neck above back neck, frontMm 23, backMm 24 at neck.depthMm',
    ]);
    expect(warned({ targets: { neckDepth: 24, backNeckDepth: 24 } })).toEqual([]);
  });

  it('is narrow at the hip where it goes below it: 180 mm below the waist, which is 400 mm below the nape', () => {
    const narrow = { targets: { hem: 419.9 } };
    expect(warned({ ...narrow, design: { lengthMm: 581 } })).toEqual([
      'narrow at the hip, hipMm 840, hemMm 840 at silhouette',
    ]);
    expect(warned({ ...narrow, design: { lengthMm: 580 } })).toEqual([]);
    expect(warned({ targets: { hem: 420 }, design: { lengthMm: 581 } })).toEqual([]);
  });

  it('has a shoulder of which a step is less than two stitches', () => {
    expect(warned({ counts: { shoulder: [1, 2, 2] } })).toEqual([
      'narrow shoulder, stitches 5 at neck.widthMm',
    ]);
    expect(warned({ counts: { shoulder: [2, 1] } })).toEqual([]);
    expect(warned({ counts: { shoulder: [] } })).toEqual([]);
  });
});

it('a caution that she has overruled says so', () => {
  const at = (overruled: readonly string[]) =>
    warningsOf({
      design: { ...even, ease: { ...even.ease, chest: 900 }, overruled },
      targets: { cuff: 200, sleeveTop: 300, neckDepth: 80, backNeckDepth: 24, hem: 500 },
      counts: { gauge, pairs: { armhole: 25, hem: 5 }, hem: 80, shoulder: [6] },
      edges: [],
    } as unknown as Warned).map(({ code, overruled: is }) => [code, is]);
  expect(at([])).toEqual([['unusual ease', false]]);
  expect(at(['unusual ease'])).toEqual([['unusual ease', true]]);
  expect(at(['narrow shoulder'])).toEqual([['unusual ease', false]]);
});
