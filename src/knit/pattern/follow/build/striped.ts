import { colourOf } from '../../../yarn/stripes.ts';
import type { PartBuild } from './build.ts';

/** The yarn of the part's next row; of rows that she measures herself all the stripes, for her to count. */
export function yarnOf({ stripes, rows, yarn }: PartBuild, measured: boolean): string | undefined {
  if (stripes === undefined) return yarn;
  if (measured) return stripes.of.map((one) => `${one.rows} ${one.yarn}`).join(', ');
  const of = stripes.of.map((one) => ({ rows: one.rows, colour: one.yarn }));
  return colourOf(of, rows.length - stripes.first + 1);
}
