import type { Token } from '../row/read/lex.ts';
import {
  BEHIND_TITLE,
  eitherSide,
  figured,
  laps,
  lengthWords,
  loops,
  plain,
  raglanLines,
  THEN,
  titles,
  unitWords,
  ways,
} from './making-up-table.ts';
import { compiled, isStop, type Matched, matchAt, type SlotReader, wordsOf } from './template.ts';

/** Every sentence that is written of the making up, under one key each. */
const all = {
  ...prefixed('title', titles, `[${BEHIND_TITLE.nos}]${BEHIND_TITLE.colon}`),
  ...prefixed('way', ways),
  ...prefixed('plain', plain),
  ...prefixed('raglan', raglanLines),
  ...prefixed('lap', laps),
  ...prefixed('loop', loops),
  ...prefixed('said', figured),
};

function prefixed<P extends string, K extends string>(
  prefix: P,
  table: Readonly<Record<K, string>>,
  behind = '',
): Readonly<Record<`${P} ${K}`, string>> {
  const entries = Object.entries<string>(table).map(([key, said]) => [
    `${prefix} ${key}`,
    `${said}${behind}`,
  ]);
  return Object.fromEntries(entries) as Record<`${P} ${K}`, string>;
}

type SentenceKey = keyof typeof all;

/** A sentence of ours, and where it ends. */
export type Sentence = Matched<SentenceKey>;

/** What is said: by a sentence of ours, or by a seam that one of others names. */
export type Said = Pick<Matched<SentenceKey | 'plain'>, 'key' | 'values'>;

const sentences = compiled(all);

const number: SlotReader = (tokens, at) => {
  const token = tokens[at];
  return token?.kind === 'number' ? { value: token.value, to: at + 1 } : undefined;
};

/** Numbers with a mark between them, or with `THEN`. */
const numbers: SlotReader = (tokens, from) => {
  const value: number[] = [];
  let at = from;
  while (tokens[at]?.kind === 'number') {
    value.push(tokens[at]?.value ?? 0);
    const mark = tokens[at + 1]?.kind === 'mark' ? 1 : 0;
    const next = at + 1 + mark + (tokens[at + 1 + mark]?.text === THEN ? 1 : 0);
    at = tokens[next]?.kind === 'number' ? next : at + 1;
  }
  return value.length === 0 ? undefined : { value, to: at };
};

/** A length in mm; said in two units it is what the first says. */
const length: SlotReader = (tokens, at) => {
  const first = oneLength(tokens, at);
  if (!first) return undefined;
  const again = tokens[first.to]?.text === '/' ? oneLength(tokens, first.to + 1) : undefined;
  return { value: first.value, to: again?.to ?? first.to };
};

function oneLength(tokens: readonly Token[], at: number): { value: number; to: number } | undefined {
  const unit = tokens[at + 1]?.text ?? '';
  const value = tokens[at]?.value ?? Number.NaN;
  if (!(unit in lengthWords) || Number.isNaN(value)) return undefined;
  return { value: value * lengthWords[unit as keyof typeof lengthWords], to: at + 2 };
}

/** One of several words, or runs of them. */
const oneOf =
  (...said: readonly string[]): SlotReader =>
  (tokens, at) => {
    for (const value of said) {
      const words = wordsOf(value);
      if (words.every((word, i) => tokens[at + i]?.text === word)) return { value, to: at + words.length };
    }
    return undefined;
  };

/** What the places of the sentences take; one that is not named here takes a name. */
const slots: Readonly<Record<string, SlotReader>> = {
  ...Object.fromEntries(
    ['times', 'first', 'second', 'every', 'total', 'stitches', 'rows', 'percent'].map((slot) => [
      slot,
      number,
    ]),
  ),
  nos: numbers,
  list: numbers,
  width: length,
  height: length,
  unit: oneOf(...unitWords),
  side: oneOf('left', 'right'),
  off: oneOf(...Object.values(eitherSide.off)),
  offing: oneOf(...Object.values(eitherSide.offing)),
};

/** The sentence that stands at a place of a line, and where it ends, its stops taken. */
export function sentenceAt(tokens: readonly Token[], at: number): Sentence | undefined {
  const places = tokens.flatMap((token, i) => (i >= at && !isStop(token) ? [i] : []));
  const found = matchAt(
    sentences,
    places.map((i) => tokens[i] as Token),
    0,
    slots,
  );
  if (!found) return undefined;
  let to = (places[found.to - 1] ?? at) + 1;
  while (tokens[to] && isStop(tokens[to] as Token)) to += 1;
  return { ...found, to };
}
