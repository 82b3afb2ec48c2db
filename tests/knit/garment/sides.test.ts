import { describe, expect, it } from 'vitest';
import type { Design } from '../../../src/knit/garment/design.ts';
import { type PanelCounts, panelCounts } from '../../../src/knit/garment/panel-counts.ts';
import { countBefore, knitSides, shoulderHeight } from '../../../src/knit/garment/sides.ts';
import { targetsOf } from '../../../src/knit/garment/targets.ts';
import { even } from './spelled.ts';

/* From the even design of `spelled.ts`: 80 stitches, a rib of 5 pairs of rows, 37 above it to the underarm, 25 of armhole. */
type More = Partial<Omit<PanelCounts, 'pairs'>> & { readonly pairs?: Partial<PanelCounts['pairs']> };
const countsOf = (more: More = {}, design: Design = even): PanelCounts => {
  const counts = panelCounts(design, targetsOf(design));
  return { ...counts, ...more, pairs: { ...counts.pairs, ...more.pairs } };
};

describe('stitches of a panel before a pair of rows', () => {
  const steps = [
    { pair: 7, by: -4, as: 'group' },
    { pair: 9, by: -1, as: 'single' },
    { pair: 12, by: 2, as: 'single' },
  ] as const;
  const before = (hem: number, ...pairs: readonly number[]) => {
    const counts = countsOf({ hem: 82, low: 80, pairs: { hem } });
    return pairs.map((pair) => countBefore(counts, steps, pair));
  };

  it('are those of the rib up to its end, and twice what each edge lost or gained above it', () => {
    expect(before(5, 0, 4, 5, 6, 7, 8, 9, 10, 12, 13)).toEqual([82, 82, 82, 80, 80, 72, 72, 70, 70, 74]);
  });

  it('are never those of the rib where there is none', () => {
    expect(before(0, 0, 1)).toEqual([80, 80]);
    expect(before(1, 0, 1, 2)).toEqual([82, 82, 80]);
  });
});

describe('a shoulder', () => {
  const laid = (shoulder: readonly number[], slope: number, way?: Design['shoulder']) => {
    const design = { ...even, ...(way && { shoulder: way }) };
    const counts = countsOf({ shoulder, pairs: { slope } });
    const { steps, stretches } = knitSides(design, counts);
    const top = 5 + 37 + 25;
    return {
      steps: steps.filter(({ pair }) => pair >= top).map(({ pair, by, as }) => [pair - top, by, as]),
      heights: shoulder.map((_, i) => shoulderHeight(design, counts, i)),
      rows: stretches.filter(({ name }) => name === 'shoulder').map(({ pairs }) => pairs),
    };
  };

  it('in steps is bound off from the first pair of its slope on, the last step at the top', () => {
    expect(laid([7, 6, 6], 3)).toEqual({
      steps: [
        [0, -7, 'group'],
        [2, -6, 'group'],
      ],
      heights: [0, 2, 3],
      rows: [3],
    });
    expect(laid([5, 5, 4, 4], 6).heights).toEqual([0, 2, 4, 6]);
    expect(laid([9, 9], 5).heights).toEqual([0, 5]);
    // all at once at its top
    expect(laid([18], 3)).toEqual({ steps: [], heights: [3], rows: [3] });
    expect(laid([18], 0)).toEqual({ steps: [], heights: [0], rows: [0] });
  });

  it('in short rows turns before its last pair, which closes all gaps: each step is a pair higher', () => {
    expect(laid([5, 5, 4, 4], 6, 'short rows')).toEqual({
      steps: [
        [0, -5, 'group'],
        [2, -5, 'group'],
        [4, -4, 'group'],
      ],
      heights: [1, 3, 5, 6],
      rows: [5, 1],
    });
    expect(laid([6, 6, 6], 3, 'short rows')).toMatchObject({ heights: [1, 2, 3], rows: [2, 1] });
    expect(laid([9, 9], 4, 'short rows')).toMatchObject({ heights: [1, 4], rows: [3, 1] });
    expect(laid([18], 1, 'short rows')).toMatchObject({ heights: [1], rows: [0, 1] });
    expect(laid([18], 0, 'short rows')).toMatchObject({ heights: [0], rows: [0] });
  });
});

describe('the edge of a panel', () => {
  const edges = (more: More, silhouette: Design['silhouette'] = 'straight') =>
    knitSides({ ...even, silhouette }, countsOf(more, { ...even, silhouette })).edges.map(
      ({ name, from, at }) => `${name} from ${from}, ${at.length}`,
    );

  it('is its side and its armhole, one above the other; no side where there are no rows of it', () => {
    expect(edges({})).toEqual(['side from 5, 37', 'armhole from 42, 25']);
    expect(edges({ pairs: { side: 1 } })).toEqual(['side from 5, 1', 'armhole from 6, 25']);
    expect(edges({ pairs: { side: 0 } })).toEqual(['armhole from 5, 25']);
  });

  it('is parted at a waist, where rows lie on either side of it', () => {
    const waist = (side: number, at: number) => edges({ pairs: { side, waist: at } }, 'waist');
    expect(waist(37, 15)).toEqual(['side from 5, 15', 'side from 20, 22', 'armhole from 42, 25']);
    expect(waist(2, 1)).toEqual(['side from 5, 1', 'side from 6, 1', 'armhole from 7, 25']);
    expect(waist(37, 0)).toEqual(['armhole from 42, 25']);
    expect(waist(37, 37)).toEqual(['armhole from 42, 25']);
  });

  it('is drawn in at the waist from the hip, and let out to the underarm', () => {
    // 440, 320 and 400 mm: 88, 64 and 80 stitches
    const design = { ...even, silhouette: 'waist' } as const;
    const [lower, upper] = knitSides(design, countsOf({}, design)).edges;
    expect([lower?.at[0], lower?.at.at(-1), upper?.at.at(-1)]).toEqual([44, 32, 40]);
    // the first pair above the rib is not shaped, nor are those of the waist by halves
    expect(lower?.steps.every(({ pair, by }) => pair > 0 && by === -1)).toBe(true);
    expect(upper?.steps.map(({ by }) => by)).toEqual(Array.from({ length: 8 }, () => 1));
  });

  it('has its rows on the fabrics and needles of hem and panel, with what its rib needs made up above it', () => {
    const stretches = (more: More) => knitSides(even, countsOf({ hem: 78, low: 80, ...more })).stretches;
    expect(stretches({})).toEqual([
      { name: 'hem', fabric: 'rib 2x2', needle: 3, pairs: 5 },
      { name: 'body', fabric: 'stocking', needle: 4, pairs: 37, across: 2 },
      { name: 'armhole', fabric: 'stocking', needle: 4, pairs: 25, across: 0 },
      { name: 'shoulder', fabric: 'stocking', needle: 4, pairs: 3, across: 0 },
    ]);
    expect(
      knitSides({ ...even, armhole: 'raglan' }, countsOf({}, { ...even, armhole: 'raglan' })).stretches[2],
    ).toMatchObject({ name: 'raglan' });
  });
});
