import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import {
  capCurve,
  neckCurve,
  raglanCurve,
  setInCurve,
  slantCurve,
} from '../../../src/knit/garment/curves.ts';
import { necks } from '../../../src/knit/garment/kinds/necks.ts';
import type { Gauge } from '../../../src/knit/gauge.ts';
import { type Edges, shapingOf, stepsOf, turned } from '../../../src/knit/shape/edge-steps.ts';
import { type EdgeWish, heightOfPair, knitEdge, uprightEdge } from '../../../src/knit/shape/outline.ts';
import { stairsOf } from '../../../src/knit/shape/stairs.ts';
import { someGauge } from '../../arbitraries/design.ts';

// random sweeps take their time on a busy machine
vi.setConfig({ testTimeout: 60_000 });

const count = (min: number, max: number): fc.Arbitrary<number> => fc.integer({ min, max });

describe('stairs', () => {
  it('round every target by half a stitch at most and end exactly, whatever the line', () => {
    fc.assert(
      fc.property(
        count(1, 200),
        count(0, 120),
        count(1, 150),
        fc.boolean(),
        (start, change, pairs, grows) => {
          const end = grows ? start + change : start - change;
          const targets = Array.from({ length: pairs }, (_, i) => start + ((end - start) * (i + 1)) / pairs);
          const { at, worst } = stairsOf(targets, start, end);
          expect(at[at.length - 1]).toBe(end);
          for (const [i, stair] of at.entries())
            expect(Math.abs(stair - (targets[i] ?? 0))).toBeLessThanOrEqual(0.5 + 1e-9);
          expect(worst.stitches).toBeLessThanOrEqual(0.5 + 1e-9);
        },
      ),
    );
  });

  it('a neck goes from big groups to small ones: 4, 2, 3 becomes 4, 3, 2', () => {
    const targets = [4.4, 6.4, 8.6, 9.2, 10];
    const { at } = stairsOf(targets, 0, 10, 'falling');
    const steps = at.map((stair, i) => stair - (at[i - 1] ?? 0));
    expect(steps).toEqual([4, 3, 2, 0, 1]);
  });

  it('groups of a falling curve never grow again', () => {
    fc.assert(
      fc.property(count(8, 90), count(4, 60), someGauge(), (half, pairs, gauge) => {
        const mm = (half * 100) / gauge.stitches;
        const curve = neckCurve(necks.round, 0, mm, (pairs * 200) / gauge.rows, 100 / gauge.rows);
        const { steps } = knitEdge({
          curve,
          gauge,
          pairs,
          start: 0,
          end: half,
          order: 'falling',
          outward: -1,
        });
        const groups = steps.filter((step) => step.as === 'group').map((step) => -step.by);
        for (let i = 1; i < groups.length; i += 1) expect(groups[i]).toBeLessThanOrEqual(groups[i - 1] ?? 0);
      }),
    );
  });
});

describe('outline to rows', () => {
  const gauge: Gauge = { stitches: 22, rows: 30 };

  it('lines stay within half a stitch, ordered curves within one, and the worst place is reported', () => {
    fc.assert(
      fc.property(count(30, 120), count(12, 60), someGauge(), (half, pairs, g) => {
        const mm = (stitches: number): number => (stitches * 100) / g.stitches;
        const pairMm = 200 / g.rows;
        const height = pairs * pairMm;
        const lost = Math.min(half - 10, pairs);
        const wishes: EdgeWish[] = [
          {
            curve: slantCurve(mm(half - lost), mm(half), height, pairMm, pairMm / 2),
            start: half - lost,
            end: half,
            order: 'free',
            gauge: g,
            pairs,
          },
          {
            curve: raglanCurve(mm(half), mm(3), mm(half - lost), height, pairMm),
            start: half,
            end: half - lost,
            order: 'free',
            gauge: g,
            pairs,
          },
          {
            curve: setInCurve(mm(half), mm(half - lost), height),
            start: half,
            end: half - lost,
            order: 'falling',
            gauge: g,
            pairs,
          },
          {
            curve: capCurve(mm(half), mm(3), mm(Math.round(half / 4)), height, pairMm),
            start: half,
            end: Math.round(half / 4),
            order: 'falling then rising',
            gauge: g,
            pairs,
            endsLevel: true,
          },
        ];
        for (const wish of wishes) {
          const { worst, at } = knitEdge(wish);
          expect(worst.stitches).toBeLessThanOrEqual(wish.order === 'free' ? 0.5 + 1e-6 : 1 + 1e-6);
          expect(at).toHaveLength(pairs);
        }
      }),
    );
  });

  it('is read halfway up each pair of rows: 25 rows to 10 cm are pairs of 8 mm', () => {
    const g: Gauge = { stitches: 20, rows: 25 };
    expect([0, 1, 2, 9].map((pair) => heightOfPair(pair, g))).toEqual([4, 12, 20, 76]);
  });

  it('in stitches from the middle, spelled out: 40 mm in over four pairs of 8 mm, at 2 stitches to 10 mm', () => {
    const edge: Omit<EdgeWish, 'order'> = {
      curve: [
        [
          [100, 0],
          [60, 32],
        ],
      ],
      gauge: { stitches: 20, rows: 25 },
      pairs: 4,
      start: 20,
      end: 12,
    };
    // the line is 95, 85, 75 and 65 mm from the middle there: 19, 17, 15 and 13 stitches
    const by = (as: string, last: string) => [
      { pair: 0, by: -1, as: 'single' },
      { pair: 1, by: -2, as },
      { pair: 2, by: -2, as },
      { pair: 3, by: -3, as: last },
    ];
    const free = knitEdge({ ...edge, order: 'free' });
    expect(free).toEqual({
      at: [19, 17, 15, 12],
      steps: by('single', 'group'),
      worst: { stitches: 1, pair: 3 },
    });
    expect(knitEdge({ ...edge, order: 'rising' }).steps).toEqual(by('group', 'group'));
    expect(knitEdge({ ...edge, order: 'free', outward: -1 }).steps).toEqual(
      free.steps.map((step) => ({ ...step, by: -step.by })),
    );
    expect(knitEdge({ ...edge, order: 'free', endsLevel: true }).at).toEqual([19, 17, 15, 13]);
  });

  it('that does not move has no step', () => {
    expect(uprightEdge(3, 25)).toEqual({ at: [25, 25, 25], steps: [], worst: { stitches: 0, pair: 0 } });
  });

  it('an edge of 14 stitches with a curve like an armhole is bound off in falling groups, then decreased', () => {
    const curve = setInCurve((60 * 100) / 22, (46 * 100) / 22, 190);
    const { steps } = knitEdge({ curve, gauge, pairs: 28, start: 60, end: 46, order: 'falling' });
    expect(steps.filter((s) => s.as === 'group').map((s) => -s.by)).toEqual([6, 2]);
    expect(steps.reduce((sum, s) => sum - s.by, 0)).toBe(14);
  });
});

describe('steps in a recipe', () => {
  it('groups lie on RS rows at the right edge and on WS rows at the left one, single shapings on RS rows', () => {
    const steps = stepsOf([-4, -6, -7, -7, -8], 0, 'falling');
    const edges: Edges = { right: steps, left: steps };
    expect(shapingOf(edges, 0, 5, 60)).toEqual([
      {
        kind: 'bind off',
        edge: 'right',
        groups: [
          { row: 1, stitches: 4 },
          { row: 3, stitches: 2 },
        ],
      },
      {
        kind: 'bind off',
        edge: 'left',
        groups: [
          { row: 2, stitches: 4 },
          { row: 4, stitches: 2 },
        ],
      },
      { kind: 'edge', edge: 'both', by: -1, inset: 1, rows: [5, 9], lean: 'mirrored' },
    ]);
  });

  it('two stitches off in the middle of a slant are worked on the RS and on the WS row', () => {
    const steps = stepsOf([-1, -3, -4], 0, 'free');
    expect(shapingOf({ right: steps, left: [] }, 0, 3, 40)).toEqual([
      { kind: 'edge', edge: 'right', by: -1, inset: 1, rows: [1, 3, 4, 5], lean: 'mirrored' },
    ]);
  });

  it('turned round twice an edge is what it was', () => {
    fc.assert(
      fc.property(fc.array(count(-3, 3), { minLength: 1, maxLength: 40 }), (changes) => {
        let at = 0;
        const stairs = changes.map((by) => (at += by));
        const steps = stepsOf(stairs, 0, 'free').filter((step) => step.pair > 0);
        expect(turned(turned(steps, changes.length), changes.length)).toEqual(steps);
      }),
    );
  });
});
