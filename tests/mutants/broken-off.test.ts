import { appendFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Line, Order, Trial } from './live/orders.ts';
import { type Start, workOrder } from './live/work-order.ts';

/** Processes that break off are made up: what a mutant does to one, alone and among others, is said by the test. */

type Does = 'is found' | 'is found late' | 'is not found' | 'breaks it off' | 'breaks it off among others';

let folder = '';
let said: Line[] = [];

beforeEach(() => {
  mkdirSync('.cache', { recursive: true });
  folder = mkdtempSync('.cache/broken-off-');
  said = [];
  vi.spyOn(console, 'log').mockImplementation(() => undefined);
});
afterEach(() => {
  vi.restoreAllMocks();
  rmSync(folder, { recursive: true });
});

/** A process that tries what its order tells it and has not been tried, as live/all.live.ts does. */
const process =
  (does: readonly Does[]): Start =>
  async (path) => {
    const { out, trials, alone, longer } = JSON.parse(readFileSync(path, 'utf8')) as Extract<
      Order,
      { kind: 'mutants' }
    >;
    const known = readFileSync(out, 'utf8');
    for (const { id } of trials) {
      if (!alone && !longer && known.includes(`"id":${id},`)) continue;
      writeFileSync(`${out}.now`, String(id));
      const what = does[id];
      if (what === 'breaks it off' || (what === 'breaks it off among others' && !alone))
        return { code: 134, said: 'no memory' };
      const isFound = what !== 'is not found' && (longer || what !== 'is found late');
      const late = longer ? {} : ({ late: true } as const);
      const fate = isFound
        ? ({ killed: true, by: 'a test' } as const)
        : { killed: false, why: 'late', ...late };
      appendFileSync(out, `${JSON.stringify({ id, ms: 1, ...fate } as Line)}\n`);
    }
    return { code: 0, said: '' };
  };

async function fates(does: readonly Does[]): Promise<string[]> {
  const trials = does.map((_, id): Trial => ({ id, source: 'a.ts', steps: [], fresh: [] }));
  const order: Order = { kind: 'mutants', root: '.', out: join(folder, 'out'), trials };
  await workOrder(order, (line) => said.push(line), process(does));
  return said.flatMap((line) =>
    'killed' in line ? [`${line.id} ${line.killed ? 'killed' : line.unknown ? 'unknown' : 'survives'}`] : [],
  );
}

describe('a mutant with which the process breaks off', () => {
  it('is not found by that: what becomes of it is unknown, and the others are tried', async () => {
    expect(await fates(['is found', 'breaks it off', 'is found'])).toEqual([
      '0 killed',
      '2 killed',
      '1 unknown',
    ]);
  });

  it('is tried again in a process of its own', async () => {
    expect(await fates(['breaks it off among others', 'is found'])).toEqual(['1 killed', '0 killed']);
  });

  it('is no mutant at all where everything breaks off: that is said, and nothing is counted', async () => {
    const all = Array.from({ length: 9 }, (): Does => 'breaks it off');
    await expect(fates(all)).rejects.toThrow('The tests could not be worked: no memory');
    expect(said).toEqual([]);
  });
});

it('A mutant that is not found in time is tried once more when all have been, and survives if it is not found then', async () => {
  expect(await fates(['is found late', 'is not found', 'is found'])).toEqual([
    '0 survives',
    '1 survives',
    '2 killed',
    '0 killed',
    '1 survives',
  ]);
});
