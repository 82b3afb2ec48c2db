/** The text with source lines (from 1, both included) replaced by what she wrote instead. */
export function withLines(text: string, first: number, last: number, instead: string): string {
  const lines = text.split('\n');
  lines.splice(first - 1, last - first + 1, ...instead.split('\n'));
  return lines.join('\n');
}
