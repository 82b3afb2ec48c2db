import type { Token } from '../../row/read/lex.ts';
import { meantFor } from './size-names.ts';

/** 'Sizes 1 and 2 only: …', 'All sizes': for which a line is, and the token at which the order begins. */
export function sizesSaid(
  tokens: readonly Token[],
  names: readonly string[],
): { readonly sizes: readonly number[]; readonly from: number } | undefined {
  const { from } = meantFor(tokens, names, 0);
  if (from === 0) return undefined;
  return { sizes: names.flatMap((_, i) => (meantFor(tokens, names, i).meant ? [i] : [])), from };
}

/** The sizes of a line that says nothing else. */
export function sizesAlone(
  tokens: readonly Token[],
  names: readonly string[],
): readonly number[] | undefined {
  const said = names.length > 1 ? sizesSaid(tokens, names) : undefined;
  return said && said.from >= tokens.length ? said.sizes : undefined;
}
