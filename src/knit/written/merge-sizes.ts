/** Numbers of a line that may differ by size, with their ordinal ending; not those within a stitch's name ('k2tog', 's2kp'). */
const NUMBER = /\d+(?:\.\d+)?(?:st|nd|rd|th)?(?![a-z\d])/g;

/** A line by what is the same in every size. */
interface Aligned {
  readonly skeleton: string;
  /** as each size has it; undefined where a size has no such line */
  readonly lines: readonly (string | undefined)[];
}

/** One and many are said alike, so that sizes of which one has a single stitch left are one line. */
const plural = (line: string): string =>
  line
    .replace(/\b1 st\b/g, '1 sts')
    .replace(/\bto last st\b/g, 'to last 1 sts')
    .replace(/\bonce more\b/g, '1 times more');

const skeletonOf = (line: string): string => plural(line).replace(NUMBER, '#');

/**
 * Texts of one size each as one text: numbers that differ as a list, 'cast on 92 (100, 108) sts', and a line that only some
 * sizes have with their names before it, 'Sizes S and M only: …'. Every size finds its own lines in their order.
 * @param texts lines of each size, the smallest first
 */
export function mergeTexts(texts: readonly (readonly string[])[], names: readonly string[]): string[] {
  const [first = [], ...others] = texts;
  let all: readonly Aligned[] = first.map((line) => ({ skeleton: skeletonOf(line), lines: [line] }));
  others.forEach((lines, i) => {
    all = aligned(all, lines, i + 1);
  });
  return all.map(({ lines }) => written(lines, names));
}

/** The longest common run of lines of those so far and those of another size; what only one has stands where it was. */
function aligned(all: readonly Aligned[], lines: readonly string[], sizes: number): Aligned[] {
  const skeletons = lines.map(skeletonOf);
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

function written(lines: readonly (string | undefined)[], names: readonly string[]): string {
  const there = names.filter((_, i) => lines[i] !== undefined);
  const line = listed(lines);
  return there.length === names.length || line === '' ? line : `${onlyFor(there)}: ${line}`;
}

/** 'Sizes S, M and L only' */
const onlyFor = (names: readonly string[]): string =>
  names.length === 1
    ? `Size ${names[0]} only`
    : `Sizes ${names.slice(0, -1).join(', ')} and ${names.at(-1)} only`;

/** The line with a list where its numbers differ; a dash for a size that has no such line. */
function listed(lines: readonly (string | undefined)[]): string {
  const own = lines.filter((line) => line !== undefined);
  const [first = ''] = own;
  if (own.every((line) => line === first)) return first;
  const numbers = lines.map((line) => (line === undefined ? undefined : (plural(line).match(NUMBER) ?? [])));
  let n = -1;
  return plural(first)
    .replace(NUMBER, (number) => {
      n += 1;
      const all = numbers.map((list) => (list === undefined ? undefined : (list[n] ?? number)));
      if (all.every((one) => one === undefined || one === number)) return number;
      const [head, ...rest] = all.map((one) => one ?? '–');
      return `${head} (${rest.join(', ')})`;
    })
    .replace(/(^|[^\d.])1 times more/g, '$1once more')
    .replace(/to last 1 sts\b/g, 'to last st')
    .replace(/(^|[^\d.])1 sts\b/g, (_, before: string) => `${before}1 st`);
}
