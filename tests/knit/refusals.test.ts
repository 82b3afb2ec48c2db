import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const sources = readdirSync('src/knit', { recursive: true, encoding: 'utf8' }).filter((path) =>
  path.endsWith('.ts'),
);

/** What functions return, as it is written. */
const returned = (text: string): string[] =>
  [...text.matchAll(/\)(?:: | => )([^=\n]*?)(?: \{$| =>|;$)/gm)].map(([, type = '']) => type);

/** A fault beside a value: neither a `Result` nor a check. */
function isOdd(type: string): boolean {
  const members = type.replace(/\).*$/, '').split(' | ');
  const others = members.filter((member) => member !== 'Fault' && member !== 'undefined');
  return (members.includes('Fault') && others.length > 0) || /\bfault\??: Fault\b/.test(type);
}

describe('a refusal in knit', () => {
  it('is a Result where a value is asked for, and a fault or nothing where something is checked', () => {
    const odd = sources.flatMap((path) =>
      returned(readFileSync(`src/knit/${path}`, 'utf8'))
        .filter(isOdd)
        .map((type) => `${path}: ${type}`),
    );
    expect(odd).toEqual([]);
  });

  it('of another shape is seen', () => {
    const text = [
      'function a(): Step[] | Fault {',
      'function b(): { rows: Rows; fault?: Fault } {',
      "const c = (n: number): Fault | undefined | 'no' =>",
      'function d(): Fault | undefined {',
      'function e(): Result<Step[]> {',
    ].join('\n');
    expect(returned(text).filter(isOdd)).toEqual([
      'Step[] | Fault',
      '{ rows: Rows; fault?: Fault }',
      "Fault | undefined | 'no'",
    ]);
  });
});
