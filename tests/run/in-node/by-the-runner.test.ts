import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { expect, it } from 'vitest';
import { forgetting } from './by-the-runner.ts';

const OFFERED_BY_THE_RUNNER = /\bvi\s*\.\s*(?:resetModules|mock|doMock)\b/;

const sources = readdirSync('tests', { recursive: true, encoding: 'utf8' })
  .map((path) => join('tests', path))
  .filter((path) => /\.tsx?$/.test(path) && !/^tests\/(?:browser|mutants\/live)\//.test(path));

const textOf = new Map(sources.map((path) => [path, readFileSync(path, 'utf8')]));

const broughtIn = (path: string): string[] =>
  [...(textOf.get(path) ?? '').matchAll(/from '(\.[^']+)'/g)].map(([, other = '']) =>
    join(dirname(path), other),
  );

/** Does it ask for it itself, or bring in a file of tests that does? */
const asks = (path: string, seen = new Set<string>()): boolean => {
  if (seen.has(path) || !textOf.has(path)) return false;
  seen.add(path);
  return OFFERED_BY_THE_RUNNER.test(textOf.get(path) ?? '') || broughtIn(path).some((one) => asks(one, seen));
};

it('every file of tests that forgets modules or puts others in their place is said to', () => {
  const tests = sources.filter((path) => /\.test\.tsx?$/.test(path));
  expect(tests.length).toBeGreaterThan(700);
  expect(tests.filter((path) => asks(path)).sort()).toEqual(forgetting);
});
