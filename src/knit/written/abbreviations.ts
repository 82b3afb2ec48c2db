import type { WrittenWords } from './written-words.ts';

/** Those that the lines use and no others, in the order of the list: 'k2tog = knit 2 stitches together'. */
export function abbreviationsIn(
  lines: readonly string[],
  { abbreviations }: Pick<WrittenWords, 'abbreviations'>,
): string[] {
  const text = lines.join('\n');
  return abbreviations.flatMap(
    ([name, means, word = new RegExp(`(?<![\\p{L}\\d])${name}(?![\\p{L}\\d])`, 'u')]) =>
      word.test(text) ? [`${name} = ${means}`] : [],
  );
}
