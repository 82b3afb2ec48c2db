import type { Shaping } from '../../../src/knit/piece/recipe.ts';

/** A stitch in from the edge, mirrored at the other. */
export const atEdge = (edge: 'right' | 'left' | 'both', by: number, ...rows: readonly number[]): Shaping => ({
  kind: 'edge',
  edge,
  by,
  rows,
  inset: 1,
  lean: 'mirrored',
});

export const boundOff = (
  edge: 'right' | 'left',
  ...groups: readonly (readonly [row: number, stitches: number])[]
): Shaping => ({
  kind: 'bind off',
  edge,
  groups: groups.map(([row, stitches]) => ({ row, stitches })),
});
