import type { PartBuild } from './build.ts';

/** The yarn of the part's next row; of rows that she measures herself all the stripes, for her to count. */
export function yarnOf({ stripes, rows, yarn }: PartBuild, measured: boolean): string | undefined {
  if (stripes === undefined) return yarn;
  if (measured) return stripes.of.map((one) => `${one.rows} ${one.yarn}`).join(', ');
  const all = stripes.of.reduce((sum, one) => sum + one.rows, 0);
  let row = (rows.length - stripes.first) % all;
  for (const one of stripes.of) {
    if (row < one.rows) return one.yarn;
    row -= one.rows;
  }
  return undefined;
}
