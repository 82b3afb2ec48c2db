import { afterAll, describe, expect, it, vi } from 'vitest';
import { updateWhileKnitting } from '../faults/updates.ts';
import { removeProfiles } from './drive.ts';

afterAll(removeProfiles);

/** Each takes some seconds; a machine that does much else beside needs many times as long. */
vi.setConfig({ testTimeout: 180_000 });

describe('a newer version that comes while she knits', () => {
  it('breaks no row, mixes no files, and can be rolled back', async () => {
    for (const { measured, met } of await updateWhileKnitting(2))
      expect({ met, measured }).toMatchObject({ met: true });
  });
});
