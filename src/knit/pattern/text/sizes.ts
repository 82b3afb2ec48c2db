import { isOneOf, isWord } from '../../row/read/cursor.ts';
import type { Token } from '../../row/read/lex.ts';
import { means } from '../../row/read/meanings.ts';

/**
 * A list of sizes in one line of numbers: `92 (100, 108)`, `92 [100: 108]`, `92 (100, 108) 116, 124`, `9 (9, 10)–10, 11, 12`.
 * A `0`, a `–` or 'K-O' skips the step for that size (Star Book No. 201, American Thread Co., p. 4).
 */
export interface List {
  /** tokens that it covers: from, up to but not with */
  readonly from: number;
  readonly to: number;
  /** a size's number with its unit or ordinal ending; none where the size skips the step */
  readonly values: readonly (readonly Token[])[];
  /** what each is for is said with it */
  readonly named?: true;
}

export const OPEN: Readonly<Record<string, string>> = { '(': ')', '[': ']', '{': '}' };
/** Sizes that any pattern has. */
const MOST = 20;
const PARTING = new Set([',', ';', ':', '-', '/', '|']);

/** How many sizes the lists of a text have: what the most of them agree on, at least 1. */
export function countSizes(lines: readonly (readonly Token[])[]): number {
  const votes = new Map<number, number>();
  for (const tokens of lines) {
    for (let i = 0; i < tokens.length; i += 1) {
      const list = listAt(tokens, i, undefined);
      if (!list) continue;
      const n = list.values.length;
      if (n > 2 || list.named || (n === 2 && looksLikeSizes(tokens, list)))
        votes.set(n, (votes.get(n) ?? 0) + 1);
      i = list.to - 1;
    }
  }
  let best = 1;
  let most = 0;
  for (const [n, count] of votes) {
    if (count > most || (count === most && n > best)) {
      best = n;
      most = count;
    }
  }
  return best;
}

/** 'k2 (24)' may be a count after a row; '24 (26) sts' is two sizes. */
function looksLikeSizes(tokens: readonly Token[], list: List): boolean {
  const next = tokens[list.to]?.text ?? '';
  return means(next, 'after a list of sizes');
}

/** The list of sizes that starts at a token; `wanted` is how many sizes there are, where that is known. */
export function listAt(tokens: readonly Token[], at: number, wanted: number | undefined): List | undefined {
  const around = inTurn(tokens, at, wanted) ?? bracketFirst(tokens, at, wanted) ?? byAges(tokens, at);
  if (around) return around;
  const first = valueAt(tokens, at);
  if (!first) return undefined;
  // '77, (83, 89)'
  const comma =
    wanted !== undefined &&
    tokens[first.to]?.text === ',' &&
    OPEN[tokens[first.to + 1]?.text ?? ''] !== undefined;
  const close = OPEN[tokens[comma ? first.to + 1 : first.to]?.text ?? ''];
  if (close === undefined) return plainList(tokens, at, wanted);
  const values: (readonly Token[])[] = [first.value];
  let to = comma ? first.to + 1 : first.to;
  while (OPEN[tokens[to]?.text ?? ''] !== undefined && (wanted === undefined || values.length < wanted)) {
    const inner = bracketed(tokens, to);
    if (!inner) break;
    values.push(...inner.values);
    to = inner.to;
  }
  if (endsBehind(values, tokens[to])) values[0] = (values[0] ?? []).slice(0, 1);
  if (values.length < 2 || !sameEndings(values)) return undefined;
  return wanted !== undefined && values.length < wanted
    ? (continued(tokens, at, to, values, wanted) ?? { from: at, to, values })
    : { from: at, to, values };
}

/** '44 sts. (10 yrs.—48 sts.) (12 yrs.—52 sts.)', '42 sts (size 10, 46 sts)': each further size by its age, or its name. */
function byAges(tokens: readonly Token[], at: number): List | undefined {
  const first = tokens[at];
  const unit = tokens[at + 1];
  if (first?.kind !== 'number' || unit?.kind !== 'word') return undefined;
  const values: (readonly Token[])[] = [[first, unit]];
  let to = at + 2;
  while (isWord(tokens[isWord(tokens[to], '.') ? to + 1 : to], '(')) {
    const open = isWord(tokens[to], '.') ? to + 1 : to;
    const near = tokens.slice(open + 1, open + 12);
    const close = near.findIndex((token) => isWord(token, ')'));
    const inner = near.slice(0, Math.max(0, close)).filter((token) => !isWord(token, '.'));
    const size = inner.findIndex((token) => isWord(token, 'size'));
    const aged = size >= 0 || inner.slice(0, -3).some(({ text }) => means(text, 'age of a size'));
    const [n, end] = size < 0 ? inner.slice(-2) : size === 0 ? inner.slice(3) : inner.slice(0, size - 1);
    if (!aged || n?.kind !== 'number' || end?.word !== unit.word) break;
    values.push([n, end]);
    to = open + close + 2;
  }
  return values.length > 1 ? { from: at, to, values, named: true } : undefined;
}

/** Further sizes after the bracket: '(71, 75), 79, 83' or '(9, 10)–10, 11, 12'. */
function continued(
  tokens: readonly Token[],
  from: number,
  start: number,
  found: readonly (readonly Token[])[],
  wanted: number,
): List | undefined {
  const values = [...found];
  let to = start;
  while (values.length < wanted) {
    if (OPEN[tokens[to]?.text ?? ''] !== undefined) {
      const inner = bracketed(tokens, to);
      if (!inner) return undefined;
      values.push(...inner.values);
      to = inner.to;
      continue;
    }
    const parted = PARTING.has(tokens[to]?.text ?? '') || tokens[to]?.text === 'and';
    const next = valueAt(tokens, parted ? to + 1 : to);
    if (!next) return undefined;
    values.push(next.value);
    to = next.to;
  }
  return values.length === wanted ? { from, to, values } : undefined;
}

/** '96 (104) 112 (120)', '[96] 104 [112]': every second one in brackets; what tells how many there are grows. */
function inTurn(tokens: readonly Token[], at: number, wanted: number | undefined): List | undefined {
  const values: (readonly Token[])[] = [];
  const opens = (i: number): boolean => OPEN[tokens[i]?.text ?? ''] !== undefined;
  let to = at;
  let open = opens(at);
  while (values.length < MOST && opens(to) === open) {
    const one = open ? bracketed(tokens, to) : valueAt(tokens, to);
    const value = one && ('values' in one ? one.values : [one.value]);
    const n = value?.length === 1 ? value[0]?.[0]?.value : undefined;
    if (one === undefined || value === undefined || n === undefined) break;
    if (wanted === undefined && values.length > 0 && !(n > (values.at(-1)?.[0]?.value ?? Number.NaN)))
      return undefined;
    values.push(...value);
    to = one.to;
    open = !open;
  }
  const closed = isOneOf(tokens[to - 1]?.text ?? '', ') ] }');
  const fits = values.length === wanted || (wanted === undefined && values.length > (opens(at) ? 2 : 3));
  return closed && fits && sameEndings(values) ? { from: at, to, values } : undefined;
}

/** '(34) 37-44-48-52 (55-62)': brackets around the smallest sizes, and around the largest. */
function bracketFirst(tokens: readonly Token[], at: number, wanted: number | undefined): List | undefined {
  if (OPEN[tokens[at]?.text ?? ''] === undefined) return undefined;
  const inner = bracketed(tokens, at);
  if (!inner) return undefined;
  const values = [...inner.values];
  let to = inner.to;
  for (let next = valueAt(tokens, to); next && next.value.length > 0; next = valueAt(tokens, to + 1)) {
    values.push(next.value);
    to = next.to;
    if (tokens[to]?.text !== '-') break;
  }
  if (values.length < inner.values.length + 2) return undefined;
  const last = OPEN[tokens[to]?.text ?? ''] === undefined ? undefined : bracketed(tokens, to);
  if (last) {
    values.push(...last.values);
    to = last.to;
  }
  const fits = wanted === undefined || values.length === wanted;
  return fits && sameEndings(values) ? { from: at, to, values } : undefined;
}

/** '92/100/108 sts', '92, 100, 108 sts' or '92-100-108-116 sts', with exactly as many numbers as there are sizes. */
function plainList(tokens: readonly Token[], at: number, wanted: number | undefined): List | undefined {
  if (wanted !== undefined && wanted < 3) return undefined;
  const values: (readonly Token[])[] = [];
  let to = at;
  const parting = tokens[at + 1]?.text;
  // how many sizes there are is told only by dashes: nothing else is written so
  if (parting !== '-' && (wanted === undefined || (parting !== '/' && parting !== ','))) return undefined;
  if (means(tokens[at - 1]?.text, 'before numbers of rows')) return undefined;
  while (tokens[to]?.kind === 'number') {
    values.push([tokens[to] as Token]);
    to += 1;
    const part = tokens[to]?.text ?? '';
    const parts = parting === '-' ? part === '-' : PARTING.has(part);
    if (!parts || tokens[to + 1]?.kind !== 'number') break;
    to += 1;
  }
  if (parting === '-' && values.length < 4) return undefined;
  // 'bind off 3-2-1-1 sts' is one group after the other: no size has fewer than the one before
  if (isWord(tokens[at - 1], 'off') && (tokens[to - 1] as Token).value < (tokens[at] as Token).value)
    return undefined;
  return values.length === wanted || wanted === undefined ? { from: at, to, values } : undefined;
}

export function bracketed(
  tokens: readonly Token[],
  at: number,
): { values: (readonly Token[])[]; to: number } | undefined {
  const close = OPEN[tokens[at]?.text ?? ''];
  const values: (readonly Token[])[] = [];
  let i = at + 1;
  while (i < tokens.length && i < at + 80) {
    const one = valueAt(tokens, i);
    if (!one) return undefined;
    values.push(one.value);
    i = one.to;
    if (tokens[i]?.text === close) return { values, to: i + 1 };
    if (!PARTING.has(tokens[i]?.text ?? '')) return undefined;
    i += 1;
    // '(16, 18, )'
    if (values.length > 1 && tokens[i]?.text === close) return { values, to: i + 1 };
  }
  return undefined;
}

/** '6½" (7, 8)"': the unit is said of the first and behind them all. */
const endsBehind = (values: readonly (readonly Token[])[], next: Token | undefined): boolean =>
  values[0]?.length === 2 &&
  values[0][1]?.word === next?.word &&
  values.slice(1).every((value) => value.length < 2);

/** '4th (5th, 6th)' or '38 cm (40 cm)', but not '38 cm (15 in)', which is one length said twice. */
function sameEndings(values: readonly (readonly Token[])[]): boolean {
  const endings = new Set(
    values
      .filter((value) => value.length > 0)
      .map((value) => (isWord(value[0], 'next') ? 'th' : ordinalOr(value[1]?.text))),
  );
  return endings.size <= 1;
}

const ordinalOr = (ending: string | undefined): string =>
  means(ending, 'ordinal ending') ? 'th' : (ending ?? '');

/** A number, or what stands for 'not in this size' (no tokens). */
function valueAt(tokens: readonly Token[], at: number): { value: readonly Token[]; to: number } | undefined {
  const token = tokens[at];
  if (token?.kind === 'number') return numberAt(tokens, at, token);
  if (token?.text === '-') {
    const next = tokens[at + 1]?.text ?? '';
    const alone = !token.glued || PARTING.has(next) || isOneOf(next, ') ] }') || OPEN[next] !== undefined;
    return alone ? { value: [], to: at + 1 } : undefined;
  }
  // 'next (next: 3rd: 3rd) and every foll 4th row'
  if (isWord(token, 'next') && nextIsList(tokens, at)) return { value: [token as Token], to: at + 1 };
  if (token?.text === 'k' && tokens[at + 1]?.text === '-' && tokens[at + 2]?.text === 'o')
    return { value: [], to: at + 3 };
  return undefined;
}

/** A size's 'next' stands in a list of ordinals, and is no 'next (RS) row'. */
function nextIsList(tokens: readonly Token[], at: number): boolean {
  const [after, inner, ending] = [tokens[at + 1], tokens[at + 2], tokens[at + 3]];
  if (OPEN[after?.text ?? ''] !== undefined)
    return isWord(inner, 'next') || (inner?.kind === 'number' && means(ending?.text, 'ordinal ending'));
  const closes = isOneOf(after?.text ?? '', ') ] }') || PARTING.has(after?.text ?? '');
  const before = tokens[at - 1]?.text ?? '';
  return closes && (OPEN[before] !== undefined || PARTING.has(before));
}

function numberAt(
  tokens: readonly Token[],
  at: number,
  token: Token,
): { value: readonly Token[]; to: number } {
  let value = token;
  let to = at + 1;
  // '11-1/2'
  const dash = isWord(tokens[at + 1], '-') && isWord(tokens[at + 3], '/') && tokens[at + 2]?.glued ? 1 : 0;
  const half = tokens[at + 1 + dash];
  const over = tokens[at + 3 + dash];
  if (half?.kind === 'number' && half.value < 1 && half.value > 0) {
    value = { ...token, value: token.value + half.value, text: `${token.text}${half.text}` };
    to = at + 2;
  } else if (
    half?.kind === 'number' &&
    tokens[at + 2 + dash]?.text === '/' &&
    over?.kind === 'number' &&
    over.value > half.value &&
    over.value <= 16
  ) {
    value = { ...token, value: token.value + half.value / over.value };
    to = at + 4 + dash;
  }
  const ending = tokens[to];
  if (
    ending !== undefined &&
    means(ending.text, 'ending of a number') &&
    (ending.glued || !means(ending.text, 'ordinal ending'))
  ) {
    const after = tokens[to + 1]?.text ?? '';
    if (isOneOf(after, ', ( [ { ) ] } ; : /') || (after === '-' && tokens[to + 1]?.glued))
      return { value: [value, ending], to: to + 1 };
  }
  return { value: [value], to };
}
