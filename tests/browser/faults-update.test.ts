import { afterAll, describe, expect, it, vi } from 'vitest';
import { brokenDeploys } from '../faults/deploys.ts';
import { brokenDeploysLeaveItWorking, updateWhileKnitting } from '../faults/updates.ts';
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

/** A host that answers with 200, so that only the contents can tell; the other ways are tried on a running page. */
const answered = brokenDeploys.filter(([name]) => name === 'one script is a page');

describe('a newer version with a wrong answer in it', () => {
  it.each(answered)('leaves the installed one working where %s', async (...deploy) => {
    const [figure] = await brokenDeploysLeaveItWorking([deploy]);
    expect(figure).toMatchObject({ met: true });
  });
});
