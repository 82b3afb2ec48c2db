import { describe, expect, it } from 'vitest';
import type { Shaping } from '../../../src/knit/piece/recipe.ts';
import {
  changeBefore,
  type EdgeStep,
  shapingOf,
  shifted,
  stepsOf,
  turned,
} from '../../../src/knit/shape/edge-steps.ts';

/** 'pair:by', with a g where it is worked in one go. */
const told = (steps: readonly EdgeStep[]): string =>
  steps.map(({ pair, by, as }) => `${pair}:${by}${as === 'group' ? 'g' : ''}`).join(' ');

/** All orders of one edge: groups of two stand at the ends that an order gives to groups. */
describe('the steps between stairs', () => {
  // adds 2, 2, 1, 2, 0, 3, 2
  const stairs = [2, 4, 5, 7, 7, 10, 12];

  it.each([
    ['free', '0:2 1:2 2:1 3:2 5:3g 6:2'],
    ['falling', '0:2g 1:2g 2:1 3:2 5:3g 6:2'],
    ['rising', '0:2 1:2 2:1 3:2 5:3g 6:2g'],
    ['falling then rising', '0:2g 1:2g 2:1 3:2 5:3g 6:2g'],
  ] as const)('in the order %s: twos are groups in a run of groups only, threes always', (order, steps) => {
    expect(told(stepsOf(stairs, 0, order))).toBe(steps);
  });

  it('are less where a neck grows wider and more where a side does', () => {
    expect(told(stepsOf([13, 15, 14], 10, 'falling', -1))).toBe('0:-3g 1:-2g 2:1');
    expect(told(stepsOf([13, 15, 14], 10, 'falling', 1))).toBe('0:3g 1:2g 2:-1');
    expect(told(stepsOf([13, 15, 14], 10, 'falling'))).toBe('0:3g 1:2g 2:-1');
    expect(told(stepsOf([7, 5, 5], 10, 'falling'))).toBe('0:-3g 1:-2g');
  });

  it('of an edge that is all groups are all groups, and one that stands has none', () => {
    for (const order of ['falling', 'rising', 'falling then rising'] as const)
      expect(told(stepsOf([2, 4, 6], 0, order))).toBe('0:2g 1:2g 2:2g');
    expect(stepsOf([4, 4, 4], 4, 'falling')).toEqual([]);
  });

  it('read from the other end are cast on where they were bound off, each as it was worked', () => {
    const steps = stepsOf([-4, -6, -6, -7], 0, 'falling');
    expect(told(steps)).toBe('0:-4g 1:-2g 3:-1');
    expect(told(turned(steps, 4))).toBe('1:1 3:2g 4:4g');
  });

  it('begin so many pairs later', () => {
    expect(told(shifted(stepsOf([-4, -5], 0, 'falling'), 6))).toBe('6:-4g 7:-1');
  });

  it('add up to what is gone before a pair, without that of the pair itself', () => {
    const steps = stepsOf([-4, -6, -6, -7], 0, 'falling');
    expect([0, 1, 2, 3, 4, 9].map((pair) => changeBefore(steps, pair))).toEqual([0, -4, -6, -6, -7, -7]);
  });
});

describe('what is worked of the steps, row by row', () => {
  const group = (pair: number, by: number): EdgeStep => ({ pair, by, as: 'group' });
  const single = (pair: number, by: number): EdgeStep => ({ pair, by, as: 'single' });
  const edge = (where: string, by: number, inset: number, rows: readonly number[]) =>
    ({ kind: 'edge', edge: where, by, inset, rows, lean: 'mirrored' }) as Shaping;

  it('counts its rows from the pair that it begins with, and leaves those before and after it alone', () => {
    const right = [group(2, -3), single(3, -1), single(4, -1), group(5, -2)];
    expect(shapingOf({ right, left: [] }, 3, 5, 30)).toEqual([edge('right', -1, 1, [1, 3])]);
    expect(shapingOf({ right, left: [] }, 2, 3, 30)).toEqual([
      { kind: 'bind off', edge: 'right', groups: [{ row: 1, stitches: 3 }] },
    ]);
    expect(shapingOf({ right, left: [] }, 6, 9, 30)).toEqual([]);
  });

  it('casts on what is added in one go, at either edge, in the order of its rows', () => {
    expect(
      shapingOf({ left: [group(0, 4), group(1, -2)], right: [group(0, 3), group(2, 5)] }, 0, 3, 10),
    ).toEqual([
      {
        kind: 'cast on',
        edge: 'right',
        groups: [
          { row: 1, stitches: 3 },
          { row: 5, stitches: 5 },
        ],
      },
      { kind: 'cast on', edge: 'left', groups: [{ row: 2, stitches: 4 }] },
      { kind: 'bind off', edge: 'left', groups: [{ row: 4, stitches: 2 }] },
    ]);
  });

  it('is worked at both edges in one where they do alike, and at each by itself where not', () => {
    expect(shapingOf({ right: [single(0, -1), single(1, -1)], left: [single(1, -1)] }, 0, 2, 30)).toEqual([
      edge('right', -1, 1, [1]),
      edge('both', -1, 1, [3]),
    ]);
    expect(shapingOf({ right: [single(0, -1)], left: [single(0, 1)] }, 0, 1, 30)).toEqual([
      edge('right', -1, 1, [1]),
      edge('left', 1, 1, [1]),
    ]);
    expect(shapingOf({ right: [], left: [single(0, 2)] }, 0, 1, 30)).toEqual([edge('left', 1, 1, [1, 2])]);
  });

  it('is told in the order of the rows, wherever it came from', () => {
    expect(shapingOf({ right: [single(2, -1)], left: [single(0, -1), single(1, -1)] }, 0, 3, 30)).toEqual([
      edge('left', -1, 1, [1, 3]),
      edge('right', -1, 1, [5]),
    ]);
  });

  describe('a stitch lies between the edge and the shaping where the row is wide enough for it', () => {
    // a decrease beside an edge stitch takes three stitches, an increase two; both edges twice as many
    it.each([
      ['a decrease', [single(0, -1)], [], 3],
      ['a decrease at both edges', [single(0, -1)], [single(0, -1)], 6],
      ['an increase', [], [single(0, 1)], 2],
      ['an increase at both edges', [single(0, 1)], [single(0, 1)], 4],
      ['a decrease at one and an increase at the other', [single(0, -1)], [single(0, 1)], 5],
    ] as const)('%s', (_, right, left, width) => {
      const insets = (count: number) =>
        shapingOf({ right, left }, 0, 1, count).map((one) => (one.kind === 'edge' ? one.inset : undefined));
      expect(new Set(insets(width))).toEqual(new Set([1]));
      expect(new Set(insets(width - 1))).toEqual(new Set([0]));
    });

    it('counted with what the rows before it did: 5, 4, 3 and then 2 stitches', () => {
      const right = [single(0, -1), single(1, -1), single(2, -1), single(3, -1)];
      expect(shapingOf({ right, left: [] }, 0, 4, 5)).toEqual([
        edge('right', -1, 1, [1, 3, 5]),
        edge('right', -1, 0, [7]),
      ]);
    });

    it('3 stitches, one more at each edge and then one fewer at each: 3, 5, 3', () => {
      const both = [single(0, 1), single(1, -1)];
      expect(shapingOf({ right: both, left: both }, 0, 2, 3)).toEqual([
        edge('both', 1, 0, [1]),
        edge('both', -1, 0, [3]),
      ]);
      expect(shapingOf({ right: both, left: both }, 0, 2, 4)).toEqual([
        edge('both', 1, 1, [1]),
        edge('both', -1, 1, [3]),
      ]);
    });

    it('what is bound off in that row is gone before, what is cast on is not there yet', () => {
      const row = (by: number, count: number) =>
        shapingOf({ right: [group(0, by)], left: [single(0, -1)] }, 0, 1, count).flatMap((one) =>
          one.kind === 'edge' ? [one.inset] : [],
        );
      expect(row(-4, 7)).toEqual([1]);
      expect(row(-4, 6)).toEqual([0]);
      expect(row(4, 3)).toEqual([1]);
      expect(row(4, 2)).toEqual([0]);
    });

    it('what was bound off or cast on counts from the next row on', () => {
      const after = (by: number, count: number) =>
        shapingOf({ right: [group(0, by), single(1, -1)], left: [] }, 0, 2, count).flatMap((one) =>
          one.kind === 'edge' ? [one.inset] : [],
        );
      expect(after(-4, 7)).toEqual([1]);
      expect(after(-4, 6)).toEqual([0]);
      expect(after(2, 1)).toEqual([1]);
      expect(after(1, 1)).toEqual([0]);
    });
  });
});
