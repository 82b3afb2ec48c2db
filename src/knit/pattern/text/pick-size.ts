import { isWord } from '../../row/read/cursor.ts';
import type { Token } from '../../row/read/lex.ts';
import { bracketed, type List, listAt, OPEN } from './sizes.ts';

/**
 * The tokens as one size has them; `size` counts from 0. A list of another length is told as `odd`, but for one that has as
 * many as `some`, the sizes that the line is for.
 */
export function pickSize(
  tokens: readonly Token[],
  size: number,
  sizes: number,
  some: readonly number[] = [],
): { tokens: Token[]; odd: Token[] } {
  if (sizes < 2) return { tokens: [...tokens], odd: [] };
  const out: Token[] = [];
  const odd: Token[] = [];
  for (let i = 0; i < tokens.length; i += 1) {
    const list = listAt(tokens, i, sizes) ?? (sizes === 2 ? timesAt(tokens, i) : undefined);
    const token = tokens[i] as Token;
    if (list && list.values.length === sizes) {
      const chosen = list.values[Math.min(size, sizes - 1)] ?? [];
      out.push(...(chosen.length > 0 ? chosen : [zeroAt(token), ...endingOf(list)]));
      i = list.to - 1;
      continue;
    }
    const few = some.length > 1 ? listOf(tokens, i, some.length) : undefined;
    if (few) {
      out.push(...(few.values[some.indexOf(size)] ?? []));
      i = few.to - 1;
      continue;
    }
    if (list && list.values.length > 2) odd.push(token);
    out.push(token);
  }
  return { tokens: out, odd };
}

/** '42 (50, 60)' or '[8: 10: 12]' behind 'Sizes 2, 3 and 4 only'. */
function listOf(tokens: readonly Token[], at: number, n: number): List | undefined {
  const inner = OPEN[tokens[at]?.text ?? ''] === undefined ? undefined : bracketed(tokens, at);
  const list = inner ? { from: at, ...inner } : listAt(tokens, at, n);
  return list?.values.length === n ? list : undefined;
}

/** 'twice (3 times)': a word beside a number. */
function timesAt(tokens: readonly Token[], from: number): List | undefined {
  const to = from + 5;
  const [often, open, n, times, close] = tokens.slice(from, to);
  const isList =
    isWord(often, 'once', 'twice') &&
    isWord(open, '(') &&
    n?.kind === 'number' &&
    isWord(times, 'time', 'times') &&
    isWord(close, ')');
  return isList ? { from, to, values: [[often as Token], [n as Token, times as Token]] } : undefined;
}

/** The ordinal ending or unit that the list's numbers carry. */
const endingOf = (list: List): readonly Token[] =>
  (list.values.find((value) => value.length > 1) ?? []).slice(1);

const zeroAt = (token: Token): Token => ({ ...token, kind: 'number', text: '0', word: '0', value: 0 });
