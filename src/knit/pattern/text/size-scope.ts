import type { Token } from '../../row/read/lex.ts';
import { pickSize } from './pick-size.ts';
import { sentences } from './sentences.ts';
import { LONGEST_SCOPE, meantFor } from './size-names.ts';

/** 'Sizes 1 and 2 only: …', 'All sizes': for which a line is. */
export interface SizesSaid {
  readonly sizes: readonly number[];
  /** the line says nothing else */
  readonly alone: boolean;
}

export function sizesSaid(tokens: readonly Token[], names: readonly string[]): SizesSaid | undefined {
  const { from } = meantFor(tokens, names, 0);
  if (from === 0) return undefined;
  const sizes = names.flatMap((_, i) => (meantFor(tokens, names, i).meant ? [i] : []));
  return { sizes, alone: from >= tokens.length };
}

/** '(24 sts)', '24 sts': what a sentence comes to. */
export const isCount = (token: Token | undefined): boolean => token?.kind === 'number' || token?.text === '(';

/** The tokens as one size has them; behind 'On sizes 4 and 6 only' the lists have as many numbers as sizes are named. */
export function pickSizes(
  tokens: readonly Token[],
  {
    size,
    sizes,
    names,
  }: { readonly size: number; readonly sizes: number; readonly names: readonly string[] },
  some: readonly number[] | undefined,
): { tokens: readonly Token[]; odd: readonly Token[] } {
  if (some || sizes < 2 || !tokens.some(({ text }) => text === 'only'))
    return pickSize(tokens, size, sizes, some);
  const parts = sentences(tokens);
  let few: readonly number[] | undefined;
  const read = parts.map(({ from, to }, i) => {
    const said = sizesSaid(tokens.slice(from, Math.min(to, from + LONGEST_SCOPE)), names);
    few = said ? said.sizes : isCount(tokens[from]) ? few : undefined;
    const end = parts[i + 1]?.from ?? tokens.length;
    return pickSize(tokens.slice(i === 0 ? 0 : from, end), size, sizes, few);
  });
  return { tokens: read.flatMap((one) => one.tokens), odd: read.flatMap((one) => one.odd) };
}
