import { knownToMean } from '../../row/read/meanings.ts';
import { NUMBER_WORDS, PIECES, spellings } from '../../row/read/vocabulary.ts';
import { stitches } from '../../stitch.ts';

/** Words that the reader can do something with. */
let known: ReadonlySet<string> | undefined;

const knownWords = (): ReadonlySet<string> => {
  known ??= new Set([
    ...spellings(),
    ...knownToMean(),
    ...Object.keys(NUMBER_WORDS),
    ...PIECES,
    ...Object.keys(stitches),
  ]);
  return known;
};

export const isKnownWord = (word: string): boolean => knownWords().has(word.toLowerCase());

/** A short word is another one with two letters changed. */
const mostSlips = (word: string): number => (word.length < 5 ? 1 : 2);

/** Known words that a typing slip makes of it, nearest first; none that are shorter than three letters. */
export function nearWords(word: string, most: number): string[] {
  const from = word.toLowerCase();
  return [...knownWords()]
    .filter((one) => one.length >= 3 && Math.abs(one.length - from.length) <= 2 && /^\p{L}+$/u.test(one))
    .map((one) => ({ one, slips: slipsBetween(from, one) }))
    .filter(({ slips }) => slips > 0 && slips <= mostSlips(from))
    .sort((a, b) => a.slips - b.slips || (a.one < b.one ? -1 : 1))
    .slice(0, most)
    .map(({ one }) => one);
}

/** Letters left out, put in, changed, or two in the wrong order (Damerau's distance, of neighbours). */
export function slipsBetween(a: string, b: string): number {
  const width = b.length + 1;
  const d = Array.from({ length: (a.length + 1) * width }, (_, i) =>
    i < width ? i : i % width === 0 ? i / width : 0,
  );
  const at = (i: number, j: number): number => d[i * width + j] as number;
  for (let i = 1; i <= a.length; i += 1)
    for (let j = 1; j <= b.length; j += 1) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min(at(i - 1, j) + 1, at(i, j - 1) + 1, at(i - 1, j - 1) + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, at(i - 2, j - 2) + 1);
      d[i * width + j] = least;
    }
  return at(a.length, b.length);
}

/** Known words of four letters and more by what is left of them without one letter. */
let byRest: ReadonlyMap<string, ReadonlySet<string>> | undefined;

function wordsByRest(): ReadonlyMap<string, ReadonlySet<string>> {
  if (byRest) return byRest;
  const found = new Map<string, Set<string>>();
  for (const word of knownWords()) {
    if (word.length < 4 || !/^\p{L}+$/u.test(word)) continue;
    for (const rest of restsOf(word)) found.set(rest, (found.get(rest) ?? new Set()).add(word));
  }
  byRest = found;
  return found;
}

const restsOf = (word: string): string[] => [
  word,
  ...Array.from(word, (_, i) => word.slice(0, i) + word.slice(i + 1)),
];

/** The one known word that a single slip of the finger makes of it, its first letter kept; undefined where there are more. */
export function rightSpelling(word: string): string | undefined {
  if (word.length < 4 || isKnownWord(word)) return undefined;
  const near = new Set<string>();
  for (const rest of restsOf(word)) for (const one of wordsByRest().get(rest) ?? []) near.add(one);
  const meant = [...near].filter((one) => one[0] === word[0] && slipsBetween(word, one) === 1);
  return meant.length === 1 ? meant[0] : undefined;
}
