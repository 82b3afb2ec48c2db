/**
 * Tables of sentences and what they are read as, a line each: `{Work|Cont} even {for|} 6 rows → even: until {rows, n 6}`.
 * What stands in curly brackets is said one way or another, and means the same.
 */
export interface Line {
  readonly line: string;
  /** each way of saying it */
  readonly texts: readonly string[];
  readonly reading: string;
}

export const table = (lines: string): Line[] =>
  lines
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')
    .map((line) => {
      const [text = '', reading = ''] = line.split(' → ');
      return { line, texts: waysToSay(text), reading };
    });

function waysToSay(text: string): string[] {
  const found = /\{([^{}]*\|[^{}]*)\}/.exec(text);
  if (found === null) return [text.replace(/ +/g, ' ').trim()];
  return (found[1] ?? '').split('|').flatMap((one) => waysToSay(text.replace(found[0], () => one)));
}

/** A value in few words: `{is rows, n 6}` as `{rows, n 6}`. */
export function inWords(value: unknown): string {
  if (typeof value === 'string') return /^[\w.½-]+$/.test(value) ? value : `'${value}'`;
  if (Array.isArray(value)) return `[${value.map(inWords).join('; ')}]`;
  if (typeof value !== 'object' || value === null) return String(value);
  return `{${fieldsInWords(value)}}`;
}

/** The fields of an object, what it `is` first. */
export function fieldsInWords(value: object): string {
  const { is, ...rest } = value as { is?: string };
  const fields = Object.entries(rest)
    .filter(([, field]) => field !== undefined)
    .map(([name, field]) => (field === true ? name : `${name} ${inWords(field)}`));
  return [...(is === undefined ? [] : [is]), ...fields].join(', ');
}
