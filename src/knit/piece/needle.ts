import type { Edge } from './recipe.ts';

/**
 * The live stitches by their column, from the right edge. A column is where a stitch stands in the fabric,
 * so that 'as established' has a meaning: a decrease removes a column, an increase at an edge pushes the
 * columns between it and the edge outward.
 */
export type Columns = readonly number[];

/** Columns 0, 1, 2 ... from the right edge. */
export const freshColumns = (count: number): number[] => Array.from({ length: count }, (_, i) => i);

/** The columns without `count` of them from `at` on (index from the right edge). */
export const without = (columns: Columns, at: number, count: number): number[] => [
  ...columns.slice(0, at),
  ...columns.slice(at + count),
];

/** `count` new columns outside the right edge. */
export const grownRight = (columns: Columns, count: number): number[] => {
  const first = columns[0] ?? 0;
  return [...Array.from({ length: count }, (_, i) => first - count + i), ...columns];
};

/** `count` new columns outside the left edge. */
export const grownLeft = (columns: Columns, count: number): number[] => {
  const last = columns[columns.length - 1] ?? -1;
  return [...columns, ...Array.from({ length: count }, (_, i) => last + 1 + i)];
};

/**
 * `count` new columns between the body of the piece and the `inset` stitches outside it at an edge: from the body on
 * outward the fabric goes on without a gap, also where earlier decreases had closed some of its columns.
 */
export function pushedOut(columns: Columns, edge: Edge, inset: number, count: number): number[] {
  const outside = inset + count;
  if (edge === 'right') return grownRight(columns.slice(inset), outside);
  return grownLeft(columns.slice(0, columns.length - inset), outside);
}
