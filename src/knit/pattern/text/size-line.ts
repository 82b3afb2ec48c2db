/** What follows 'Sizes:' or 'To fit' on its line; undefined where a line is about something else. */
export function headingLine(text: string): string | undefined {
  const found =
    /(?<!\ball )\bsizes\b\s*[:\-–—]?\s*([^.:]{1,24}\(.+)$/is.exec(text) ??
    /^\s*(?:size range|sizes?|ages?|to fit(?:\s+(?:bust|chest|ages?|sizes?))?|finished (?:bust|chest))\b\s*[:\-–—]?\s*(.+)$/is.exec(
      text,
    );
  const rest = found?.[1];
  return rest === undefined || /\bonly\b/i.test(rest) ? undefined : rest.split('\n')[0];
}
