import { expect } from 'vitest';
import { type ReadOptions, type ReadRow, readPattern } from '../../../../src/knit/pattern/read-pattern.ts';
import { printRow } from '../../../../src/knit/row/print.ts';

const CHANGES = /^(dec|inc|bind off|cast on|k2tog|ssk|\[dec|\[inc)/;

/**
 * The last line of a pattern by its counts: how many rows it makes, and of each that changes the count its number, where
 * it is shaped (at its beginning, its end, both, or within) and the stitches after it, as one reckons it on paper:
 * `13 rows: 1 both 58, 5 both 56`. Own words and what was not understood stand behind it.
 */
export function byCounts(text: string, options: ReadOptions = {}): string {
  const { lines } = readPattern(text, options);
  const last = lines.at(-1);
  if (last === undefined) return 'nothing';
  const changed = last.rows.flatMap((row, i) =>
    row.before === row.after ? [] : [`${i + 1} ${where(row)} ${row.after}`],
  );
  const own = last.rows.filter((row) => row.own !== undefined).length;
  const counts = changed.length === 0 ? '' : `: ${changed.join(', ')}`;
  const faults = last.faults.map(({ code }) => ` ✗ ${code}`);
  return `${last.rows.length} rows${counts}${own === 0 ? '' : ` (own ${own})`}${faults.join('')}`;
}

function where({ steps }: ReadRow): string {
  const words = printRow(steps).split(', ');
  const beginning = CHANGES.test(words[0] ?? '');
  const end = words.length > 1 && CHANGES.test(words.at(-1) ?? '');
  return beginning && end ? 'both' : beginning ? 'beg' : end ? 'end' : 'within';
}

/** Behind so many stitches and some rows of garter stitch, a sentence comes out so. */
export const expectCounts =
  (before: string) =>
  ({ texts, reading }: { readonly texts: readonly string[]; readonly reading: string }): void => {
    for (const text of texts) expect(byCounts(`${before}\n${text}`), text).toBe(reading);
  };
