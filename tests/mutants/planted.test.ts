import { describe, expect, it } from 'vitest';
import { turn } from '../run/turn.ts';
import { sitesOf } from './change.ts';
import { planted } from './planted.ts';
import { greenUnder } from './try-planted.ts';

/** So many are tried in every run; all of them with `npm run mutants -- planted`. */
const TRIED = 2;

function sample(): typeof planted {
  const first = turn % planted.length;
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
