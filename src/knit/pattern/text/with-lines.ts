/** The text with source lines (from 1, both included) replaced by what she wrote instead. */
export function withLines(text: string, first: number, last: number, instead: string): string {
  const lines = text.split('\n');
  lines.splice(first - 1, last - first + 1, ...instead.split('\n'));
  return lines.join('\n');
}

/** What she says of a line, behind it, as `mendIn` takes it. */
export const MEND = /\s*\[(?:no|\d+) rows?(?:, \d+ sts?)?\]\s*$/;

/** Where a sentence stands in the source: from its first letter up to but not with `to`, or to the end of its line. */
export interface Span {
  readonly line: number;
  readonly column: number;
  readonly to?: { readonly line: number; readonly column: number };
}

/**
 * The text with a sentence on a line of its own, and the first and last of its source lines: what is said behind it is then
 * said of it alone. `lastLine` is that of the line in which it stands.
 */
export function aloneOnLine(
  text: string,
  { line, column, to }: Span,
  lastLine: number,
): { readonly text: string; readonly line: number; readonly lastLine: number } {
  const lines = text.split('\n');
  const cut = (at: number, column: number): boolean => {
    const whole = lines[at - 1] ?? '';
    const before = whole.slice(0, column - 1).trimEnd();
    if (NOTHING.test(before)) return false;
    lines.splice(at - 1, 1, before, whole.slice(column - 1));
    return true;
  };
  const end = to === undefined ? lastLine : cut(to.line, to.column) ? to.line : to.line - 1;
  const more = cut(line, column) ? 1 : 0;
  return { text: lines.join('\n'), line: line + more, lastLine: end + more };
}

/** Not even words: a bullet, a dash, the number of a step. */
const NOTHING = /^\s*(?:[^\p{L}\d]|\d{1,2}[.)]|step\s+\d{1,2}\s*[:.)])?\s*$/iu;
