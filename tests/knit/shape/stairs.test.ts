import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stairsOf } from '../../../src/knit/shape/stairs.ts';
import { share } from '../../by-turns.ts';

/** What each pair adds, from its stairs. */
const stepsOf = (stairs: readonly number[], start = 0): number[] =>
  stairs.map((stair, i) => stair - (stairs[i - 1] ?? start));

const worstOf = (stairs: readonly number[], targets: readonly number[]): number =>
  Math.max(...stairs.map((stair, i) => Math.abs(stair - (targets[i] ?? 0))));

const falls = (steps: readonly number[]): boolean =>
  steps.every((step, i) => step <= (steps[i - 1] ?? Number.POSITIVE_INFINITY));

/** Every way to come to `total` in so many steps, none bigger than the one before and each at least one stitch. */
function fallingRuns(total: number, times: number, most = total): number[][] {
  if (times === 0) return total === 0 ? [[]] : [];
  return Array.from({ length: Math.min(most, total) }, (_, i) => i + 1).flatMap((step) =>
    fallingRuns(total - step, times - 1, step).map((rest) => [step, ...rest]),
  );
}

const stairsFrom = (steps: readonly number[]): number[] => {
  let at = 0;
  return steps.map((step) => (at += step));
};

/** Targets that rise by so much each, in quarters and fifths of a stitch: halves, ties and whole ones among them. */
const rises = (most: number): fc.Arbitrary<number[]> =>
  fc
    .array(
      fc.oneof(
        fc.integer({ min: 0, max: most * 4 }).map((n) => n / 4),
        fc.integer({ min: 0, max: most * 5 }).map((n) => n / 5),
      ),
      { minLength: 1, maxLength: 7 },
    )
    .map((steps) => stairsFrom(steps));

describe('a curve in whole stitches', () => {
  it('is the nearest stitch of each pair, but the last one, which is where the edge ends', () => {
    expect(stairsOf([1.4, 1.6, 3.5, 4.2], 0, 6).at).toEqual([1, 2, 4, 6]);
    expect(stairsOf([51.4, 51.6, 53.5, 54.2], 50, 56).at).toEqual([51, 52, 54, 56]);
    // downwards: half a stitch goes on, away from where it began
    expect(stairsOf([48.6, 48.4, 46.5, 45.8], 50, 44).at).toEqual([49, 48, 46, 44]);
    expect(stairsOf([], 7, 7).at).toEqual([]);
  });

  it('never goes beyond its end nor back behind its start, however its curve swings', () => {
    expect(stairsOf([-3, 4, 12, 9.7, 10], 0, 10).at).toEqual([0, 4, 10, 10, 10]);
    expect(stairsOf([33, 26, 18, 20.3, 20], 30, 20).at).toEqual([30, 26, 20, 20, 20]);
    expect(stairsOf([29, 31.2], 30, 30).at).toEqual([30, 30]);
  });

  it('that ends level leaves what is not yet done to be bound off', () => {
    expect(stairsOf([2.2, 4.4], 0, 10, 'free', true).at).toEqual([2, 4]);
    expect(stairsOf([2.2, 4.4], 0, 10, 'free', false).at).toEqual([2, 10]);
    expect(stairsOf([2.2, 4.4], 0, 10).at).toEqual([2, 10]);
    expect(stairsOf([2.2, 14.4], 0, 10, 'free', true).at).toEqual([2, 10]);
  });

  it('says how far off it is at most, and at which pair first', () => {
    expect(stairsOf([1, 2.25, 3.25, 4], 0, 4).worst).toEqual({ stitches: 0.25, pair: 1 });
    expect(stairsOf([1, 2.25, 3.5, 4], 0, 4).worst).toEqual({ stitches: 0.5, pair: 2 });
    expect(stairsOf([29, 27.75, 26.5, 26], 30, 24).worst).toEqual({ stitches: 2, pair: 3 });
    expect(stairsOf([1, 2], 0, 2).worst).toEqual({ stitches: 0, pair: 0 });
    // a pair laid where its group comes in order is off by what the order costs
    expect(stairsOf([4.4, 6.4, 8.6, 9.2, 10], 0, 10, 'falling').worst.stitches).toBeCloseTo(0.6, 9);
    expect(stairsOf([4.4, 6.4, 8.6, 9.2, 10], 0, 10, 'falling').worst.pair).toBe(1);
  });
});

describe('groups in the order of the trade (common practice, no published source), each step spelled out', () => {
  const spelled: readonly [string, readonly number[], number, Parameters<typeof stairsOf>[3], number[]][] = [
    ['a neck, the big ones first', [4.4, 6.4, 8.6, 9.2, 10], 10, 'falling', [4, 3, 2, 0, 1]],
    ['the top of a cap, the big ones last', [0.8, 1.4, 3.6, 5.6, 10], 10, 'rising', [1, 0, 2, 3, 4]],
    ['in no order', [4.4, 6.4, 8.6, 9.2, 10], 10, 'free', [4, 2, 3, 0, 1]],
    ['what falls already stays', [4.4, 7.4, 9], 10, 'falling', [4, 3, 3]],
    ['what rises already stays', [1.4, 3.4, 6], 6, 'rising', [1, 2, 3]],
    ['a row without a step lies in no group', [4.2, 4.4, 8.4, 10], 10, 'falling', [4, 0, 4, 2]],
    [
      'a cap, the big ones at both ends',
      [4.4, 6.4, 8.6, 9.2, 10, 10.8, 11.4, 13.6, 15.6, 20],
      20,
      'falling then rising',
      [4, 3, 2, 0, 1, 1, 0, 2, 3, 4],
    ],
    [
      'of an odd number of pairs the middle one goes with those after it',
      [4.4, 6.4, 8.6, 9.2, 10, 10.4, 10.8, 11.4, 13.6, 15.6, 20],
      20,
      'falling then rising',
      [4, 3, 2, 0, 1, 0, 1, 0, 2, 3, 4],
    ],
    [
      'a cap that is groups all over',
      [5.2, 8.1, 10, 12.6, 14.6, 19],
      19,
      'falling then rising',
      [5, 3, 2, 2, 3, 4],
    ],
    ['of one pair only, all at once', [3.2], 5, 'falling then rising', [5]],
    [
      'a slant of ones and twos is worked as it falls, since no order comes near it',
      [1.5, 3, 4.5, 6, 7.5, 9, 10.5, 12],
      12,
      'falling',
      [2, 1, 2, 1, 2, 1, 2, 1],
    ],
    [
      'behind its steep beginning it is worked as it falls',
      [3.5, 5.6, 9.4, 10.9, 12.4, 13.9, 15.4, 16.9, 18.4, 19.9, 21.4],
      21,
      'falling',
      [3, 3, 3, 2, 1, 2, 1, 2, 1, 2, 1],
    ],
  ];

  for (const [name, targets, end, order, steps] of spelled) {
    it(name, () => {
      expect(stepsOf(stairsOf(targets, 0, end, order).at)).toEqual(steps);
    });

    it(`${name}, and the same where stitches are taken away`, () => {
      const down = targets.map((target) => 50 - target);
      const { at } = stairsOf(down, 50, 50 - end, order);
      expect(stepsOf(at, 50)).toEqual(steps.map((step) => (step === 0 ? 0 : -step)));
    });
  }
});

describe('laying groups in order, against every other way of laying them', () => {
  it('none lies nearer to the curve; and where none lies near, the curve is followed', () => {
    let laid = 0;
    fc.assert(
      fc.property(rises(4), (targets) => {
        const end = Math.round(targets.at(-1) ?? 0);
        const plain = stairsOf(targets, 0, end).at;
        const { at } = stairsOf(targets, 0, end, 'falling');
        const plainSteps = stepsOf(plain);
        const run = plainSteps.findLastIndex((step) => step >= 2) + 1;
        const steepEnd = targets.findIndex((target, i) => target - (targets[i - 1] ?? 0) < 2);
        const parts = [
          { until: run, far: 0.75 },
          { until: Math.min(run, steepEnd === -1 ? run : steepEnd), far: 1 },
        ];
        for (const { until, far } of parts) {
          const steps = plainSteps.slice(0, until);
          const rest = worstOf([...plain.slice(until), 0], [...targets.slice(until), 0]);
          if (falls(steps) || steps.includes(0)) {
            if (worstOf(plain, targets) > far) continue;
            expect(at).toEqual(plain);
            return;
          }
          const ways = fallingRuns(plain[until - 1] ?? 0, until).map((way) => stairsFrom(way));
          const least = Math.min(...ways.map((way) => worstOf(way, targets)));
          if (Math.max(least, rest) > far) continue;
          laid += 1;
          expect(falls(stepsOf(at).slice(0, until))).toBe(true);
          expect(at.slice(until)).toEqual(plain.slice(until));
          expect(worstOf(at.slice(0, until), targets)).toBeCloseTo(least, 9);
          return;
        }
        expect(at).toEqual(plain);
      }),
      { numRuns: share(1500), endOnFailure: true },
    );
    expect(laid).toBeGreaterThan(share(100));
  });

  it('rising is falling read from the other end', () => {
    fc.assert(
      fc.property(rises(5), (targets) => {
        const end = Math.round(targets.at(-1) ?? 0);
        const closed = [...targets.slice(0, -1), end];
        const turned = [0, ...closed.slice(0, -1)].reverse().map((target) => end - target);
        // half a stitch is rounded away from the start, whichever end that is
        fc.pre(closed.every((target) => Math.abs((target % 1) - 0.5) > 0.01));
        const rising = stepsOf(stairsOf(turned, 0, end, 'rising').at);
        expect(rising.reverse()).toEqual(stepsOf(stairsOf(closed, 0, end, 'falling').at));
      }),
      { numRuns: share(500), endOnFailure: true },
    );
  });
});
