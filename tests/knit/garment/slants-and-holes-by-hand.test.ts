import { describe, expect, it } from 'vitest';
import { buttonholePlaces, holeStitches } from '../../../src/knit/garment/buttonholes.ts';
import type { Design } from '../../../src/knit/garment/design.ts';
import { impossibleSlants, impossibleSleeve } from '../../../src/knit/garment/impossible.ts';
import type { PanelEdge } from '../../../src/knit/garment/panel.ts';
import { inRuns } from '../../../src/knit/garment/slant.ts';
import type { SleeveCounts } from '../../../src/knit/garment/sleeve-counts.ts';
import { even } from './spelled.ts';

/* Counted by hand: 20 stitches to 10 cm, so that 12.5 mm from the end of a band are two or three stitches. */

describe('a slant in regular stretches', () => {
  it.each([
    ['a stitch in each pair of rows', { pairs: 4, from: 0, start: 10, end: 6, last: 4 }, [9, 8, 7, 6]],
    [
      'six in four pairs: both rows of the first two',
      { pairs: 4, from: 0, start: 10, end: 4, last: 4 },
      [8, 6, 5, 4],
    ],
    ['eight: both rows of each', { pairs: 4, from: 0, start: 10, end: 2, last: 4 }, [8, 6, 4, 2]],
    ['nine have no room', { pairs: 4, from: 0, start: 10, end: 1, last: 4 }, undefined],
    ['widening', { pairs: 4, from: 0, start: 2, end: 7, last: 4 }, [4, 5, 6, 7]],
    [
      'after two pairs of rest, and with one behind',
      { pairs: 6, from: 2, start: 10, end: 6, last: 7 },
      [10, 10, 9, 8, 7, 6, 6],
    ],
    [
      'two pairs of rest, six in four',
      { pairs: 6, from: 2, start: 10, end: 4, last: 6 },
      [10, 10, 8, 6, 5, 4],
    ],
    ['nothing to shape', { pairs: 3, from: 0, start: 5, end: 5, last: 3 }, [5, 5, 5]],
  ] as const)('%s', (_, wish, stairs) => {
    expect(inRuns(wish)).toEqual(stairs);
  });
});

describe('button holes', () => {
  const wish = {
    fabric: 'garter',
    gauge: { stitches: 20, rows: 28 },
    stitches: 40,
    over: 40,
    at: 'right',
    buttons: 3,
    buttonMm: undefined,
  } as const;

  it.each([
    // 12.5 mm are 2.5 stitches: three from either end; the last hole takes 35 and 36
    ['three of two stitches over 40', {}, [3, 19, 35]],
    ['one, in the middle', { buttons: 1 }, [19]],
    ['two, at the ends', { buttons: 2 }, [3, 35]],
    ['none', { buttons: 0 }, undefined],
    ['over the last 20 of 40', { over: 20, at: 'left' }, [23, 29, 35]],
    ['over the first 20', { over: 20 }, [3, 9, 15]],
    // three stitches must lie between two holes of two
    ['five stitches from one to the next', { over: 18 }, [3, 8, 13]],
    ['four are too close', { over: 16 }, undefined],
    ['a button of 25 mm: five stitches, a hole of four', { buttonMm: 25 }, [3, 18, 33]],
  ])('%s', (_, more, places) => {
    expect(buttonholePlaces({ ...wish, ...more } as typeof wish)).toEqual(places);
  });

  it.each([
    ['garter', undefined, 2],
    ['garter', 10, 2],
    ['garter', 20, 3],
    ['garter', 25, 4],
    ['rib 1x1', 20, 3],
    ['rib 1x1', 25, 5],
    ['rib 2x2', 25, 4],
  ] as const)('in %s for a button of %s mm take %i stitches', (fabric, buttonMm, stitches) => {
    expect(holeStitches({ fabric, buttonMm, gauge: wish.gauge })).toBe(stitches);
  });
});

describe('a sleeve that cannot be knitted', () => {
  const raglan = { armhole: 'raglan' } as const;
  const counts = (low: number, cuff: number, pairs = 20) =>
    ({ low, cuff, pairs: { cuff: 4, sleeve: pairs, cap: 10 } }) as unknown as SleeveCounts;
  const faults = (one: SleeveCounts) =>
    impossibleSleeve({ ...even, armhole: 'drop' }, one).map(({ code, figures, at }) => ({
      code,
      figures,
      field: at.field,
    }));
  const narrow = (low: number, cuff: number) => [
    {
      code: 'cuff too narrow to widen',
      figures: { cuffStitches: cuff, sleeveStitches: low },
      field: 'sleeve.shape',
    },
  ];
  it.each([
    ['two pairs of rows are a sleeve', counts(40, 40, 2), []],
    ['one is none', counts(40, 40, 1), [{ code: 'sleeve too short', figures: {}, field: 'sleeve.lengthMm' }]],
    ['between every two stitches of the cuff one more', counts(39, 20), []],
    ['one more than that', counts(40, 20), narrow(40, 20)],
    ['a third of a cuff may go', counts(20, 30), []],
    ['more than that', counts(20, 31), narrow(20, 31)],
    ['two stitches', counts(2, 2), []],
    [
      'a cuff of one',
      counts(2, 1),
      [{ code: 'too few stitches', figures: { stitches: 1 }, field: 'body.wrist' }],
    ],
    [
      'one above it',
      counts(1, 2),
      [{ code: 'too few stitches', figures: { stitches: 1 }, field: 'body.wrist' }],
    ],
  ])('%s', (_, one, found) => {
    expect(faults(one)).toEqual(found);
  });

  it.each<[string, Partial<Design>, object, object, readonly string[]]>([
    // 30 less 4 less 3 are 23 on either side: in 12 pairs of rows but the last one at the most 22
    ['a raglan’s line of 22 in 11 pairs of rows', raglan, { wide: 58 }, { cap: 12 }, []],
    ['one more', raglan, {}, { cap: 12 }, ['more shapings than rows stitches 23 rows 22 at ease.upperArm']],
    [
      'or as many in a pair less',
      raglan,
      { wide: 58 },
      { cap: 11 },
      ['more shapings than rows stitches 22 rows 20 at ease.upperArm'],
    ],
    ['that loses one at either edge', raglan, { wide: 16 }, {}, []],
    ['that loses none', raglan, { wide: 14 }, {}, ['sleeve too narrow stitches 14 at ease.upperArm']],
    ['a cap of three pairs of rows', { armhole: 'set-in' }, { cap: {} }, { cap: 3 }, []],
    [
      'of two',
      { armhole: 'set-in' },
      { cap: {} },
      { cap: 2 },
      ['cap does not fit widthMm 300 at ease.upperArm'],
    ],
    ['none', { armhole: 'set-in' }, {}, { cap: 3 }, ['cap does not fit widthMm 300 at ease.upperArm']],
    [
      'of a third of a mm',
      { armhole: 'set-in' },
      { gauge: { stitches: 18, rows: 25 } },
      {},
      ['cap does not fit widthMm 333 at ease.upperArm'],
    ],
    ['what is let in has no line', { armhole: 'indented' }, { wide: 14 }, { cap: 0 }, []],
  ])('by its top: %s', (_, design, more, pairs, found) => {
    const top = { wide: 60, step: 4, top: 6, gauge: { stitches: 20, rows: 25 } };
    const one = counts(40, 40);
    const asked = { ...one, ...top, ...more, pairs: { ...one.pairs, ...pairs } };
    expect(
      impossibleSleeve({ ...even, ...design }, asked).map(({ code, figures, at }) =>
        [code, ...Object.entries(figures).flat(), 'at', at.field].join(' '),
      ),
    ).toEqual(found);
  });

  const edge = (name: string, pairs: number, ...steps: readonly (readonly ['single' | 'group', number])[]) =>
    ({
      name,
      at: Array.from({ length: pairs }, () => 0),
      steps: steps.map(([as, by], pair) => ({ as, by, pair })),
    }) as unknown as PanelEdge;
  it.each([
    ['a side in single steps', [edge('side', 5, ['single', -1], ['single', -1])], []],
    [
      'a side with a group: five stitches in ten rows',
      [edge('side', 5, ['single', -1], ['group', -4])],
      ['silhouette 5 in 10'],
    ],
    ['a sleeve widened in groups', [edge('sleeve', 3, ['group', 4], ['group', 5])], ['sleeve.shape 9 in 6']],
    ['an armhole, which is bound off in groups', [edge('armhole', 3, ['group', -4])], []],
    [
      'each of two',
      [edge('side', 2, ['group', 3]), edge('sleeve', 1, ['group', 2])],
      ['silhouette 3 in 4', 'sleeve.shape 2 in 2'],
    ],
  ])('%s', (_, edges, found) => {
    const told = impossibleSlants(edges).map(
      ({ code, figures, at }) => `${code}: ${at.field} ${JSON.stringify(figures)}`,
    );
    expect(told).toEqual(
      found.map((one) => {
        const [field, stitches, , rows] = one.split(' ');
        return `more shapings than rows: ${field} ${JSON.stringify({ stitches: Number(stitches), rows: Number(rows) })}`;
      }),
    );
  });
});
