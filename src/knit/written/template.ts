import { lex, type Token } from '../row/read/lex.ts';

/**
 * A sentence with places for what differs, '{rows} rows to {rows} rows.', and brackets round what may be left out,
 * '[, {times} times]'. It is written by `fill` and read by `matchAt`: both from the one sentence.
 */
type SlotsIn<T extends string> = T extends `${string}{${infer S}}${infer R}` ? S | SlotsIn<R> : never;

type SlotValues<T extends string> = { readonly [S in SlotsIn<T>]?: string | number | undefined };

const OPTIONAL = /\[([^[\]]*)\]/g;
const SLOT = /\{(\w+)\}/g;

/** The sentence with its figures; what stands in brackets only where all of its figures are given. */
export function fill<T extends string>(template: T, values: SlotValues<T>): string {
  const known = values as Readonly<Record<string, string | number | undefined>>;
  return template
    .replace(OPTIONAL, (_, inner: string) =>
      [...inner.matchAll(SLOT)].every(([, slot = '']) => known[slot] !== undefined) ? inner : '',
    )
    .replace(SLOT, (_, slot: string) => String(known[slot] ?? ''));
}

/** What a place of a sentence takes: tokens from `at` on; undefined where it takes none of them. */
export type SlotReader = (
  tokens: readonly Token[],
  at: number,
) => { readonly value: SlotValue; readonly to: number } | undefined;

export type SlotValue = number | string | readonly number[];

type Part = { readonly word: string } | { readonly slot: string };

/** One way to say a sentence: with or without what may be left out. */
export interface Compiled<K extends string> {
  readonly key: K;
  readonly parts: readonly Part[];
}

/** Every way to say every sentence of a table, the longest first: a shorter one may be the beginning of it. */
export function compiled<K extends string>(table: Readonly<Record<K, string>>): readonly Compiled<K>[] {
  const keys = Object.keys(table) as K[];
  return keys
    .flatMap((key) => waysOf(table[key]).map((way) => ({ key, parts: partsOf(way) })))
    .sort((a, b) => b.parts.length - a.parts.length);
}

function waysOf(template: string): string[] {
  const [found] = template.matchAll(OPTIONAL);
  if (!found) return [template];
  const [whole, inner = ''] = found;
  return [inner, ''].flatMap((way) => waysOf(template.replace(whole, () => way)));
}

const partsOf = (template: string): Part[] =>
  template.split(/(\{\w+\})/).flatMap((piece): Part[] => {
    const slot = /^\{(\w+)\}$/.exec(piece)?.[1];
    return slot === undefined ? wordsOf(piece).map((word) => ({ word })) : [{ slot }];
  });

/** Stops part sentences, and shorten words: in what is compared there are none. */
export const isStop = ({ text }: Token): boolean => text === '.';

export const wordsOf = (text: string): string[] =>
  lex(text)
    .filter((token) => !isStop(token))
    .map((token) => token.text);

export interface Matched<K extends string> {
  readonly key: K;
  readonly values: Readonly<Record<string, SlotValue>>;
  readonly to: number;
}

/** The sentence that stands here; `tokens` without stops. */
export function matchAt<K extends string>(
  all: readonly Compiled<K>[],
  tokens: readonly Token[],
  at: number,
  slots: Readonly<Record<string, SlotReader>>,
): Matched<K> | undefined {
  for (const { key, parts } of all) {
    const found = follow(parts, tokens, at, slots);
    if (found) return { key, ...found };
  }
  return undefined;
}

function follow(
  parts: readonly Part[],
  tokens: readonly Token[],
  from: number,
  slots: Readonly<Record<string, SlotReader>>,
): Omit<Matched<string>, 'key'> | undefined {
  const values: Record<string, SlotValue> = {};
  let at = from;
  for (const [i, part] of parts.entries()) {
    if ('word' in part) {
      if (tokens[at]?.text !== part.word) return undefined;
      at += 1;
      continue;
    }
    const next = parts[i + 1];
    const found = slots[part.slot]?.(tokens, at) ?? nameUpTo(next, tokens, at);
    if (!found) return undefined;
    values[part.slot] = found.value;
    at = found.to;
  }
  return { values, to: at };
}

const LONGEST_NAME = 6;

/** A place that nothing else is known of takes a name: words up to what follows it. */
function nameUpTo(next: Part | undefined, tokens: readonly Token[], from: number): ReturnType<SlotReader> {
  if (next === undefined || !('word' in next)) return undefined;
  let to = from;
  while (to - from < LONGEST_NAME && tokens[to] && tokens[to]?.text !== next.word) to += 1;
  if (to === from || tokens[to]?.text !== next.word) return undefined;
  const value = tokens
    .slice(from, to)
    .map(({ text }) => text)
    .join(' ');
  return { value, to };
}
