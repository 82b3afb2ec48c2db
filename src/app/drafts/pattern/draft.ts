import type { MeasuredGauge } from '../../../knit/measured-gauge.ts';
import type { ReadOptions } from '../../../knit/pattern/read-pattern.ts';
import { MEND, withLines } from '../../../knit/pattern/text/with-lines.ts';

/** A pattern that is being copied in, as it is kept while it is typed. */
export interface PatternDraft {
  readonly version: 1;
  readonly name: string;
  readonly text: string;
  /** which size, from 0 */
  readonly size: number;
  /** her own gauge as far as it is typed, per 100 mm, with what it was measured in */
  readonly gauge: Partial<MeasuredGauge>;
}

/** How a garment's text is read: kept in its record as `design`, with the text itself in `texts`. */
export interface ReadDesign {
  readonly kind: 'read';
  readonly version: 1;
  readonly options: ReadOptions;
}

export const emptyDraft: PatternDraft = { version: 1, name: '', text: '', size: 0, gauge: {} };

/** The gauge once both numbers are there. */
export function wholeGauge(typed: Partial<MeasuredGauge>): MeasuredGauge | undefined {
  const { stitches, rows, needle, ...rest } = typed;
  const known = (n: number | undefined): n is number => n !== undefined && n > 0 && Number.isFinite(n);
  if (!known(stitches) || !known(rows)) return undefined;
  return { stitches, rows, ...rest, ...(known(needle) ? { needle } : {}) };
}

/** What she says herself of a line that was not understood; `stitches` after its rows. */
export interface OwnMend {
  readonly rows: number;
  readonly stitches?: number;
}

/** The text with what she says of a line written behind it, in place of what she said before: '[6 rows, 24 sts]'. */
export function withMend(text: string, line: number, { rows, stitches }: OwnMend): string {
  const old = text.split('\n')[line - 1];
  if (old === undefined) return text;
  const of = rows === 0 ? 'no rows' : `${rows} ${rows === 1 ? 'row' : 'rows'}`;
  const count = rows === 0 || stitches === undefined ? '' : `, ${stitches} ${stitches === 1 ? 'st' : 'sts'}`;
  return withLines(text, line, line, `${old.replace(MEND, '').trimEnd()} [${of}${count}]`);
}

/** The text with the count that a line asked for written behind it, as patterns do: '(24 sts)'. */
export function withCount(text: string, line: number, stitches: number): string {
  const old = text.split('\n')[line - 1];
  if (old === undefined) return text;
  const count = `(${stitches} ${stitches === 1 ? 'st' : 'sts'})`;
  return withLines(text, line, line, `${old.replace(/[\s.]+$/, '')} ${count}`);
}
