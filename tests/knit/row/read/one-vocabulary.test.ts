import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

/** The reader of patterns and of rows: what asks the text for words. */
const folders = ['src/knit/pattern', 'src/knit/row/read'];

const sources = folders.flatMap((folder) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.ts'))
    .map((path) => {
      const text = readFileSync(`${folder}/${path}`, 'utf8');
      return { path: `${folder}/${path}`, code: text.replace(/\/\*[\s\S]*?\*\/|(^|\s)\/\/.*$/gm, '$1') };
    }),
);

/** By file, how often a pattern is found in its code; files without are left out. */
const found = (
  pattern: RegExp,
  counts: (all: string) => boolean = () => true,
): Readonly<Record<string, number>> =>
  Object.fromEntries(
    sources
      .map(
        ({ path, code }) =>
          [path, [...code.matchAll(pattern)].filter(([all]) => counts(all)).length] as const,
      )
      .filter(([, times]) => times > 0),
  );

describe('the reader', () => {
  it('goes back to where it was only by an attempt', () => {
    expect(found(/\bc\.at\s*(?:-=|=(?!=))|\btail\.at\s*=(?!=)/g)).toEqual({
      // attempt and ahead themselves, and what takes all up to a token further on
      'src/knit/row/read/cursor.ts': 3,
    });
  });

  it('asks for words by their meaning: no list of words stands in a regular expression', () => {
    const literals =
      /(?<=[(=,:[!&|?>]\s*|\breturn\s+)\/(?:\\.|\[[^\]\n]*\]|[^/\\\n[*])(?:\\.|\[[^\]\n]*\]|[^/\\\n[])*\//g;
    expect(found(literals, (literal) => /[a-z?)]\|[a-z(]/i.test(literal))).toEqual({
      // whole lines about sizes, read before there are tokens: 'To fit bust 32 (34)', 'Changes for 14 are in brackets'
      'src/knit/pattern/text/size-line.ts': 1,
      'src/knit/pattern/text/size-names.ts': 1,
      // words of other languages, counted before anything is read
      'src/knit/pattern/text/other-tongue.ts': 3,
    });
  });
});
