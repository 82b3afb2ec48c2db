import { describe, expect, it } from 'vitest';
import type { PartRecipe, Section, Shaping } from '../../../../src/knit/piece/recipe.ts';
import {
  amountsOfEdges,
  boundOffBelow,
  edgeByEdge,
  type TwoEdges,
  twoEdgesOf,
} from '../../../../src/knit/piece/regauge/two-edges.ts';
import { boundOff as off, atEdge as slant } from '../shapings.ts';

/* A shoulder beside its neck, in twice as many stitches: every figure is twice what it was, reckoned by hand. */

const section = (rows: number, ...shaping: readonly Shaping[]): Section => ({
  name: 'section',
  rows,
  fabric: 'stocking',
  needle: 4,
  shaping,
});
const shoulder = (edge: 'right' | 'middle' | 'left', ...sections: readonly Section[]): PartRecipe => ({
  name: 'shoulder',
  from: { part: 'body', stitches: 20, edge },
  sections,
  end: 'bind off',
});
const half = (...sections: readonly Section[]): PartRecipe => ({
  name: 'front',
  from: { castOn: 20 },
  sections,
  end: 'bind off',
});

const twice = { stitches: 2, rows: 1 };
const nothing = { old: 0, now: 0 };
const edgesOf = (part: PartRecipe, left = 0, below = nothing, worn?: 'right' | 'left') =>
  twoEdgesOf(part, left, twice, below, worn);

const neck = section(6, slant('right', -1, 1, 3, 5));
const slope = section(6, off('left', [2, 6], [4, 6], [6, 5]));

describe('of a shoulder', () => {
  it('the outer edge is the one that it lies on; its groups from the first that go on to the end are its slope', () => {
    expect(edgesOf(shoulder('left', neck, slope))).toEqual({
      outer: 'left',
      shoulder: 34,
      slopeFrom: 1,
      left: 0,
    });
    expect(
      edgesOf(shoulder('right', section(6, off('right', [1, 9])), section(6, off('right', [5, 8]))), 0),
    ).toEqual({
      outer: 'right',
      shoulder: 16,
      slopeFrom: 1,
      left: 0,
    });
    expect(edgesOf(shoulder('middle', neck))).toBeUndefined();
    // what is decreased at the neck beside it is none of its stitches
    const beside = section(6, ...slope.shaping, slant('right', -1, 1));
    expect(edgesOf(shoulder('left', neck, beside))?.shoulder).toBe(34);
  });

  it('what its parent bound off belongs to it', () => {
    expect(edgesOf(shoulder('left', neck, slope), 0, { old: 5, now: 10 })?.shoulder).toBe(34);
    // five that became nine leave one more to the part above
    expect(edgesOf(shoulder('left', neck, slope), 0, { old: 5, now: 9 })?.shoulder).toBe(35);
  });

  it('groups end a slope where no more than four rows follow them, and nothing else shapes that edge', () => {
    const from = (...sections: readonly Section[]) => edgesOf(shoulder('left', ...sections), 3)?.slopeFrom;
    expect(from(neck, section(10, off('left', [6, 5])))).toBe(1);
    expect(from(neck, section(11, off('left', [6, 5])))).toBe(2);
    expect(from(neck, section(6, off('left', [6, 5]), slant('left', -1, 3)))).toBe(2);
    expect(from(neck, section(6, off('left', [6, 5]), slant('both', -1, 3)))).toBe(2);
    expect(from(section(6, off('left', [2, 5])), slope)).toBe(0);
    expect(from(neck, section(6))).toBe(2);
  });

  it('a tip of up to four stitches stays as it is, a shoulder without groups does not', () => {
    const bare = shoulder('left', neck);
    expect(edgesOf(bare, 4)).toMatchObject({ shoulder: 4, left: 4 });
    expect(edgesOf(bare, 5)).toMatchObject({ shoulder: 10, left: 10 });
    // what is left behind groups is part of it
    expect(edgesOf(shoulder('left', neck, slope), 3)).toMatchObject({ shoulder: 40, left: 6 });
  });
});

describe('of half a front', () => {
  it('the outer edge is the one that is shaped first, where its role tells none', () => {
    const armhole = section(8, off('right', [1, 3]), slant('right', -1, 3, 5), slant('left', -1, 7));
    expect(edgesOf(half(armhole))?.outer).toBe('right');
    expect(edgesOf(half(armhole), 0, nothing, 'left')?.outer).toBe('left');
    expect(edgesOf(half(section(8, slant('left', -1, 1), slant('right', -1, 2, 4))))?.outer).toBe('left');
    // in the same row the right one, as an RS row begins there
    expect(edgesOf(half(section(8, slant('left', -1, 1), slant('right', -1, 1, 3))))?.outer).toBe('right');
    // rows of a section further up come later, whatever their number
    expect(edgesOf(half(section(8, slant('left', -1, 7)), section(8, slant('right', -1, 1, 3))))?.outer).toBe(
      'left',
    );
  });

  it('an edge that is never shaped is a straight armhole', () => {
    expect(edgesOf(half(section(8, slant('right', -1, 1, 3))))?.outer).toBe('left');
    expect(edgesOf(half(section(8, slant('left', -1, 1, 3))))?.outer).toBe('right');
  });

  it('both edges are one where they are shaped alike, and none are told apart in a band or in words', () => {
    expect(edgesOf(half(section(8, slant('both', -1, 1, 3))))).toBeUndefined();
    expect(edgesOf(half(section(8, slant('right', -1, 1), slant('left', -1, 3))))).toBeUndefined();
    expect(edgesOf({ ...half(neck), from: { pickUp: [{ along: 'edge', stitches: 20 }] } })).toBeUndefined();
    expect(
      edgesOf(half(neck, { ...section(1), words: [[{ work: 'k', until: { left: 0 } }]] })),
    ).toBeUndefined();
  });
});

describe('what a body binds off of a shoulder before it is split', () => {
  const now = section(6, off('left', [2, 12], [4, 12]));
  const old = section(6, off('left', [2, 6], [4, 6]));

  it('is that of its last section, in the old stitches and in the new', () => {
    expect(boundOffBelow([section(4), old], [section(4), now], 'left')).toEqual({ old: 12, now: 24 });
    expect(boundOffBelow([old, section(4)], [now, section(4)], 'left')).toEqual(nothing);
    expect(boundOffBelow([old], [now], 'right')).toEqual(nothing);
    expect(boundOffBelow([], [], 'left')).toEqual(nothing);
  });
});

describe('shapings told edge by edge', () => {
  it('are each edge’s as one, in the order of their rows, those of another kind apart', () => {
    expect(edgeByEdge([slant('both', -1, 5, 9), slant('right', -1, 3, 7), slant('left', -2, 1)])).toEqual([
      slant('right', -1, 3, 5, 7, 9),
      slant('left', -1, 5, 9),
      slant('left', -2, 1),
    ]);
    const plain: Shaping = { ...slant('right', -1, 4), lean: 'plain' } as Shaping;
    const further: Shaping = { ...slant('right', -1, 6), inset: 2 } as Shaping;
    const all = [slant('right', -1, 2), plain, further, off('right', [8, 2]), off('right', [10, 2])];
    expect(edgeByEdge(all)).toEqual(all);
  });
});

describe('how often each is shaped in twice as many stitches', () => {
  const edges: TwoEdges = { outer: 'left', shoulder: 34, slopeFrom: 1, left: 0 };

  it('the shoulder twice its stitches, the neck what is left', () => {
    const part = shoulder('left', neck, slope);
    expect(amountsOfEdges(part, 0, twice, edges, 40)).toEqual([6]);
    expect(amountsOfEdges(part, 1, twice, edges, 34)).toEqual([34]);
    // a stitch fewer on the needle is one decrease less at the neck
    expect(amountsOfEdges(part, 0, twice, edges, 39)).toEqual([5]);
  });

  it('a shoulder that is to have another number has it in its groups', () => {
    const part = shoulder('left', neck, slope);
    expect(amountsOfEdges(part, 1, twice, { ...edges, shoulder: 35 }, 35)).toEqual([35]);
    // stitches that stay at the end are none of the groups'
    expect(amountsOfEdges(part, 1, twice, { ...edges, left: 4 }, 34)).toEqual([30]);
  });

  it('a neck in two shapings shares what it takes in their proportions, the first larger one takes the rest', () => {
    // three one by one and three at once: of seven three and a half each
    const both = section(6, slant('right', -1, 1, 3, 5), off('right', [1, 3]));
    const part = shoulder('left', both, section(6, off('left', [2, 7], [4, 7])));
    expect(amountsOfEdges(part, 0, twice, { ...edges, shoulder: 28 }, 35)).toEqual([3, 4]);
    expect(amountsOfEdges(part, 0, twice, { ...edges, shoulder: 28 }, 40)).toEqual([6, 6]);
  });

  it('a neck over two sections takes in each its share', () => {
    const part = shoulder('left', neck, section(6, slant('right', -1, 2)), slope);
    const apart = { ...edges, slopeFrom: 2 };
    // three and one of four: of eight six and two
    expect(amountsOfEdges(part, 0, twice, apart, 42)).toEqual([6]);
    expect(amountsOfEdges(part, 1, twice, apart, 36)).toEqual([2]);
  });

  it('an edge without a neck takes up itself what rounding leaves over', () => {
    const part = half(section(8, slant('right', -1, 1, 3)));
    const alone: TwoEdges = { outer: 'right', shoulder: 36, slopeFrom: 1, left: 36 };
    expect(amountsOfEdges(part, 0, twice, alone, 40)).toEqual([4]);
    expect(amountsOfEdges(part, 0, twice, alone, 41)).toEqual([5]);
  });
});
