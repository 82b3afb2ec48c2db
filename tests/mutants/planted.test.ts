import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { sitesOf } from './change.ts';
import { planted } from './planted.ts';
import { greenUnder } from './try-planted.ts';

/** So many are tried in every run; all of them with `npm run mutants -- planted`. */
const TRIED = 3;

/** Which ones is said by the sources: the same for the same tree, others when something has changed. */
function sample(): typeof planted {
  const hash = createHash('sha1');
  for (const file of new Set(planted.flatMap(({ changes }) => changes.map((change) => change.file))))
    hash.update(readFileSync(file));
  const first = hash.digest().readUInt32BE() % planted.length;
  return [...planted, ...planted].slice(first, first + TRIED);
}

describe('faults planted by hand', () => {
  it('each fit their sources at one place', () => {
    for (const { name, changes } of planted)
      for (const change of changes) expect(sitesOf('.', change), name).toBe(1);
  });

  const tried = sample();
  it(`turn the tests red that are named for them: ${tried.map(({ name }) => name).join('; ')}`, async () => {
    expect(await greenUnder(tried, '.cache/mutants/sample')).toEqual([]);
  }, 300_000);
});
