import { readFileSync } from 'node:fs';
import { afterAll, expect, it, vi } from 'vitest';
import { violations } from './axe.ts';
import { openPhone, removeProfiles } from './drive.ts';
import { plainHost } from './host-and-phone.ts';

/** Three phones one after the other; a machine that does much else beside needs many times as long. */
vi.setConfig({ testTimeout: 180_000 });

afterAll(removeProfiles);

it('what was knitted goes out in one file and comes in on another device, unites, and is taken back', async () => {
  const host = await plainHost();
  const one = await openPhone({ worker: false });
  // without the save dialog (no one is there to answer it) the file is downloaded
  await one.page.addInitScript('delete window.showSaveFilePicker');
  await one.page.goto(`${host.url}#/sample`);
  for (let row = 1; row <= 3; row += 1) {
    await one.page
      .getByText(new RegExp(`^Row ${row} of`))
      .first()
      .waitFor();
    await one.page.getByRole('button', { name: 'Row done' }).tap();
  }
  await one.page
    .getByText(/^Row 4 of/)
    .first()
    .waitFor();
  await one.page.goto(`${host.url}#/backup`);
  await one.page.getByText('No backup was made on this device yet.').waitFor();
  const [download] = await Promise.all([
    one.page.waitForEvent('download'),
    one.page.getByRole('button', { name: 'Make a backup' }).tap(),
  ]);
  await one.page.getByText('Saved: 1 garment, 3 entries.').waitFor();
  await one.page.getByText(/Last backup: .* 0 entries since then/).waitFor();
  const file = await download.path();
  const text = readFileSync(file, 'utf8');
  expect(JSON.parse(text)).toMatchObject({ format: 'ridgeline-backup', version: 2 });
  await one.close();

  const two = await openPhone({ size: 'small' });
  await two.page.goto(`${host.url}#/backup`);
  const choose = two.page.getByLabel('Choose the file').first();
  await choose.setInputFiles({
    name: 'broken.json',
    mimeType: 'application/json',
    buffer: Buffer.from(text.slice(0, 900)),
  });
  await two.page.getByText('This file cannot be taken in. Nothing was changed.').waitFor();
  await choose.setInputFiles({
    name: 'backup.json',
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  });
  await two.page.getByText('Harbour pullover: comes in').first().waitFor();
  expect(await violations(two.page)).toEqual([]);
  await two.page.getByRole('button', { name: 'Unite' }).tap();
  await two.page.getByText('The file is taken in.').waitFor();
  await two.page.getByRole('link', { name: 'To the workbasket' }).last().tap();
  await two.page.getByRole('link', { name: /Continue knitting/ }).tap();
  await two.page
    .getByText(/^Row 4 of/)
    .first()
    .waitFor();
  await two.page.getByRole('button', { name: 'Row done' }).tap();
  await two.page
    .getByText(/^Row 5 of/)
    .first()
    .waitFor();

  await two.page.goto(`${host.url}#/backup`);
  await choose.setInputFiles({
    name: 'backup.json',
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  });
  await two.page.getByText('Nothing would change: it is all here already.').waitFor();
  await two.page.getByText('Back: row \u20664 → 3\u2069 done').waitFor();
  await two.page.getByRole('button', { name: 'Replace everything' }).tap();
  await two.page.getByText('Harbour pullover, 1 row of Back', { exact: true }).waitFor();
  expect(await violations(two.page)).toEqual([]);
  await two.page.getByRole('button', { name: 'Yes, replace' }).tap();
  await two.page.getByText('The file is taken in.').waitFor();
  await two.page.getByRole('button', { name: 'Take it back' }).waitFor();
  expect(await violations(two.page)).toEqual([]);

  // she leaves the screen, and the app; what she knits meanwhile stays
  await two.page.goto(`${host.url}#/continue`);
  await two.page
    .getByText(/^Row 4 of/)
    .first()
    .waitFor();
  await two.close();
  const again = await openPhone({ size: 'small', profile: two.profile });
  await again.page.goto(`${host.url}#/`);
  await again.page.getByText('A backup took the place of what was here').waitFor();
  expect(await violations(again.page)).toEqual([]);
  await again.page.getByRole('button', { name: 'Take it back' }).tap();
  await again.page.getByText('Taken back; what you knitted since is still there.').waitFor();
  await again.page.goto(`${host.url}#/continue`);
  await again.page
    .getByText(/^Row 5 of/)
    .first()
    .waitFor();
  expect([...one.strangers, ...two.strangers, ...again.strangers]).toEqual([]);
  await again.close();
});
