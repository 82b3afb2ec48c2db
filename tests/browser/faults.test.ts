import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { chromiumEngine } from '../faults/engine.ts';
import type { Figure } from '../faults/figure.ts';
import { killWhileTapping } from '../faults/kills.ts';
import { cleared, fullDisk, refusedStorage } from '../faults/promises.ts';
import { tapInTwoTabs } from '../faults/two-tabs.ts';
import { dist } from '../run/built.ts';
import { type Served, serve } from '../run/serve.ts';
import { removeProfiles } from './drive.ts';

/** Short runs of what `npm run faults` does at length. */

/** Each takes some seconds; a machine that does much else beside needs many times as long. */
vi.setConfig({ testTimeout: 180_000 });

let host: Served;
beforeAll(async () => {
  host = await serve({ root: dist });
});
afterAll(async () => {
  await host.close();
  removeProfiles();
});

const shouldMeet = ({ met, measured, bar }: Figure) =>
  expect({ met, measured }, `${bar}; ${measured}`).toMatchObject({ met: true });

describe('a browser killed at random moments while she taps', () => {
  it('keeps every row that it showed as done, and invents none', async () => {
    const { lost, invented, corrupted, shown } = await killWhileTapping(chromiumEngine, host, 3);
    expect({ lost, invented, corrupted }).toEqual({ lost: 0, invented: 0, corrupted: [] });
    expect(shown).toBeGreaterThan(0);
  });
});

describe('two windows tapped at once', () => {
  it('take each row once, and both show what is stored', async () =>
    shouldMeet(await tapInTwoTabs(chromiumEngine, host, 50)));
});

describe('storage', () => {
  it('that is full is said, shows no row as done, and goes on when there is room', async () =>
    shouldMeet(await fullDisk(host)));

  it('that was cleared behind her back is said to be missing, with the way to restore it', async () =>
    shouldMeet(await cleared(host)));

  it('that is refused is said', async () => shouldMeet(await refusedStorage(host)));
});
