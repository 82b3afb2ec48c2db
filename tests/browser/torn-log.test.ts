import { readdirSync, statSync, truncateSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { corruptionsOf, storedOf } from '../faults/stored.ts';
import { sampleBack } from '../faults/tapping.ts';
import { dist } from '../run/built.ts';
import { serve } from '../run/serve.ts';
import { openPhone, type Phone, removeProfiles } from './drive.ts';
import { knitterAt } from './knitter.ts';
import { until } from './until.ts';

afterAll(removeProfiles);

/** The log in which Chromium's database (LevelDB) keeps what was written last, in a profile. */
function logIn(profile: string): string {
  const databases = join(profile, 'Default', 'IndexedDB');
  const folder = join(databases, readdirSync(databases).find((name) => name.endsWith('.leveldb')) ?? '');
  const logs = readdirSync(folder).filter((name) => name.endsWith('.log'));
  return join(folder, logs.sort().at(-1) ?? '');
}

it('a write that a kill tore costs no more than itself: two starts later everything is still there', async () => {
  const host = await serve({ root: dist });
  const knitAndKill = async (phone: Phone, done: number, rows: number) => {
    const knitter = knitterAt(phone.page, host.url);
    await knitter.openSample();
    await knitter.shows(done + 1);
    if (rows > 0) await knitter.knit(rows);
    const stored = await storedOf(phone.page, sampleBack);
    expect(corruptionsOf(stored)).toEqual([]);
    expect(stored.place?.rows).toBe(done + rows);
    await phone.kill();
  };
  const first = await openPhone();
  const { profile } = first;
  await knitAndKill(first, 0, 3);
  const torn = logIn(profile);
  // the last write, whatever it was, lacks its end, as it does where the process died in it
  truncateSync(torn, statSync(torn).size - 3);

  const second = await openPhone({ profile });
  await second.page.goto(`${host.url}#/sample`);
  await until(
    async () => logIn(profile),
    (log) => log !== torn,
  );
  await knitAndKill(second, 3, 2);
  await knitAndKill(await openPhone({ profile }), 5, 0);
  await host.close();
});
