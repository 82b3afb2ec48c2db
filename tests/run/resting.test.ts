import { existsSync } from 'node:fs';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { TURNS } from './resting.ts';

afterEach(() => {
  vi.unstubAllEnvs();
  vi.resetModules();
});

const restingIn = async (env: Readonly<Record<string, string>>): Promise<readonly string[]> => {
  for (const [name, value] of Object.entries(env)) vi.stubEnv(name, value);
  vi.resetModules();
  return (await import('./resting.ts')).resting;
};

describe('files that rest in a turn', () => {
  it('are there, and are each tried in one of as many turns as there are', async () => {
    const turns = [];
    for (let turn = 0; turn < TURNS; turn += 1)
      turns.push(await restingIn({ RIDGELINE_TURN: String(turn), RIDGELINE_LOOKS: '' }));
    const all = [...new Set(turns.flat())];
    expect(all.filter((file) => !existsSync(file))).toEqual([]);
    for (const file of all) expect(turns.filter((turn) => !turn.includes(file))).toHaveLength(1);
    for (const turn of turns) expect(all.length - turn.length).toBeGreaterThan(5);
  });

  it('are none where all is asked for', async () => {
    expect(await restingIn({ RIDGELINE_LOOKS: 'all' })).toEqual([]);
  });

  it('go by the sources: the same for the same tree', async () => {
    vi.stubEnv('RIDGELINE_TURN', undefined);
    const once = await restingIn({ RIDGELINE_LOOKS: '' });
    expect(await restingIn({})).toEqual(once);
  });
});
