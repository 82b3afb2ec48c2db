import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { byTurns } from '../by-turns.ts';
import { type Mutant, mutantsOf, plant, plantAll, plantPrograms } from './plant.ts';
import { sourcesIn } from './sources.ts';
import { noProgram } from './syntax.ts';

/** What the language forbids: `??` beside `&&` or `||` without brackets, and what is no name though it is one elsewhere. */
const beside = [
  'const a = (b: 1, c: 1, d: 1) => b ?? c ?? d;',
  'const a = (b: 1, c: 1, d: 1) => b || (c ?? d);',
  'const a = (b: 1, c: 1, d: 1) => (b && c) ?? d;',
  'const a = (b: 1, c: 1, d: 1, e: 1) => b ?? c ?? d ?? e;',
  'const a = (b: { c: 1 } | undefined, d: 1, e: 1) => b?.c ?? d ?? !e;',
  'const a = (b: number[]) => b.toString(2).constructor(3);',
];

const named = (file: string, text: string, mutants: readonly Mutant[]) =>
  mutants.flatMap((mutant) => {
    const why =
      noProgram(file, plant(text, mutant)) ?? noProgram(file, plantAll(text, new Map([[1, mutant]])));
    return why === undefined ? [] : [`${mutant.before} -> ${mutant.after}: ${why}`];
  });

describe('a mutant', () => {
  it.each(beside)('of %s is a program', (text) => {
    expect(named('a.ts', text, mutantsOf('a.ts', text))).toEqual([]);
  });

  it('of `a ?? b ?? c` has the rest of it worked as before', () => {
    const text = 'export default b ?? c ?? d;';
    const texts = mutantsOf('a.ts', text).map((mutant) => plant(text, mutant));
    expect(texts).toEqual(['export default ((b ?? c) && (d));', 'export default ((b) && (c)) ?? d;']);
  });

  it('of any source is a program, with all others of that source planted beside it', () => {
    const none = byTurns(sourcesIn('.'), 0, 8).filter((file) => {
      const source = readFileSync(file, 'utf8');
      const mutants = mutantsOf(file, source).map((mutant, id) => [id + 1, mutant] as const);
      return noProgram(file, plantAll(source, new Map(mutants))) !== undefined;
    });
    expect(none).toEqual([]);
  });

  it('that is no program is refused by its name, and those beside it are not', () => {
    const text = 'const a = b + c;\nconst d = e - f;\n';
    const numbered = (mutants: readonly Mutant[]) => new Map(mutants.map((mutant, id) => [id + 1, mutant]));
    const [sum, ...others] = mutantsOf('a.ts', text);
    if (sum === undefined) throw new Error('There is a sign to change.');
    expect(noProgram('a.ts', plantPrograms('a.ts', text, numbered([sum, ...others])))).toBeUndefined();
    const mutants = numbered([{ ...sum, after: '+*' }, ...others]);
    expect(() => plantPrograms('a.ts', text, mutants)).toThrow(/^No program: a\.ts:1 \+ -> \+\* \(/);
  });
});
