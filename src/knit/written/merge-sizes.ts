import type { ListWords } from './written-words.ts';

/** A line by what is the same in every size. */
interface Aligned {
  readonly skeleton: string;
  /** as each size has it; undefined where a size has no such line */
  readonly lines: readonly (string | undefined)[];
}

const skeletonOf = (line: string, { many, figure }: ListWords): string => many(line).replace(figure, '#');

/**
 * Texts of one size each as one text: numbers that differ as a list, 'cast on 92 (100, 108) sts', and a line that only some
 * sizes have with their names before it, 'Sizes S and M only: …'. Every size finds its own lines in their order.
 * @param texts lines of each size, the smallest first
 */
export function mergeTexts(
  texts: readonly (readonly string[])[],
  names: readonly string[],
  words: ListWords,
): string[] {
  const [first = [], ...others] = texts;
  let all: readonly Aligned[] = first.map((line) => ({
    skeleton: skeletonOf(line, words),
    lines: [line],
  }));
  others.forEach((lines, i) => {
    all = aligned(all, lines, i + 1, words);
  });
  return all.map(({ lines }) => written(lines, names, words));
}

/** The longest common run of lines of those so far and those of another size; what only one has stands where it was. */
function aligned(
  all: readonly Aligned[],
  lines: readonly string[],
  sizes: number,
  words: ListWords,
): Aligned[] {
  const skeletons = lines.map((line) => skeletonOf(line, words));
  // longest[i][j]: lines in common behind the i-th and the j-th
  const longest = Array.from({ length: all.length + 1 }, () => new Uint32Array(lines.length + 1));
  for (let i = all.length - 1; i >= 0; i -= 1)
    for (let j = lines.length - 1; j >= 0; j -= 1)
      (longest[i] as Uint32Array)[j] =
        all[i]?.skeleton === skeletons[j]
          ? at(longest, i + 1, j + 1) + 1
          : Math.max(at(longest, i + 1, j), at(longest, i, j + 1));
  const out: Aligned[] = [];
  const none = Array.from({ length: sizes }, () => undefined);
  for (let i = 0, j = 0; i < all.length || j < lines.length; ) {
    const known = all[i];
    const same = known !== undefined && known.skeleton === skeletons[j];
    if (known && same) out.push({ ...known, lines: [...known.lines, lines[j]] });
    else if (known && (j === lines.length || at(longest, i + 1, j) >= at(longest, i, j + 1)))
      out.push({ ...known, lines: [...known.lines, undefined] });
    else out.push({ skeleton: skeletons[j] ?? '', lines: [...none, lines[j]] });
    if (out.at(-1)?.lines[sizes] !== undefined) j += 1;
    if (known && (same || out.at(-1)?.lines[sizes] === undefined)) i += 1;
  }
  return out;
}

const at = (table: readonly Uint32Array[], i: number, j: number): number => table[i]?.[j] ?? 0;

function written(lines: readonly (string | undefined)[], names: readonly string[], words: ListWords): string {
  const there = names.filter((_, i) => lines[i] !== undefined);
  const line = listed(lines, words);
  return there.length === names.length || line === '' ? line : `${words.only(there)}${line}`;
}

/** The line with a list where its numbers differ; a dash for a size that has no such line. */
function listed(
  lines: readonly (string | undefined)[],
  { many, one, figure, between, to }: ListWords,
): string {
  const own = lines.filter((line) => line !== undefined);
  const [first = ''] = own;
  if (own.every((line) => line === first)) return first;
  const numbers = lines.map((line) => (line === undefined ? undefined : (many(line).match(figure) ?? [])));
  let n = -1;
  const all = many(first).replace(figure, (number) => {
    n += 1;
    const values = numbers.map((list) => (list === undefined ? undefined : (list[n] ?? number)));
    if (values.every((value) => value === undefined || value === number)) return number;
    const [head, ...rest] = values.map((value) => value ?? '–');
    // a comma within a figure is none between two
    return `${head} (${rest.join(rest.some((value) => value.includes(',')) ? between : ', ')})`;
  });
  return one(all.replace(STRETCH, to));
}

/** The dash of 'rows 5 (7)–8' and of 'rows 5–8 (9)', beside a list. */
const STRETCH = /(?<=\))–(?=[\d–])|(?<=\d)–(?=[\d–.,]+ \()/g;
