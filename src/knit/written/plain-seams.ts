import type { ToldSeam } from '../making-up/told.ts';
import type { Token } from '../row/read/lex.ts';
import { means } from '../row/read/meanings.ts';
import { seamNames } from './making-up-table.ts';

/** 'Sew side and sleeve seams', 'Set in sleeves': the seams that a sentence in anybody's words says are sewn; none where it says something else. */
export function plainSeams(tokens: readonly Token[]): readonly ToldSeam[] {
  if (!means(tokens[0]?.text, 'joins edges')) return [];
  const at = (name: string) => tokens.findIndex(({ text }) => text === name || text === `${name}s`);
  const sleeve = at(seamNames.sleeve);
  const goesIn = [tokens[sleeve - 1], tokens[sleeve + 1], tokens[1]];
  const isSetIn = sleeve > 0 && goesIn.some((token) => means(token?.text, 'into an armhole'));
  return (Object.keys(seamNames) as (keyof typeof seamNames)[]).flatMap((seam): ToldSeam[] => {
    if (at(seamNames[seam]) < 0) return [];
    return [seam === 'sleeve' && isSetIn ? 'armhole' : seam];
  });
}
