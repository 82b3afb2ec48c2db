import { readFileSync } from 'node:fs';
import { afterAll, expect, it } from 'vitest';
import { serve } from '../run/serve.ts';
import { violations } from './axe.ts';
import { openPhone, removeProfiles } from './drive.ts';

afterAll(removeProfiles);

it('what was knitted goes out in one file and comes in on another device, unites, and is taken back', async () => {
  const host = await serve({ root: 'dist' });
  const one = await openPhone();
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
  expect(await violations(one.page)).toEqual([]);
  const [download] = await Promise.all([
    one.page.waitForEvent('download'),
    one.page.getByRole('button', { name: 'Make a backup' }).tap(),
  ]);
  await one.page.getByText('Saved: 1 garment, 3 entries.').waitFor();
  await one.page.getByText(/Last backup: .* 0 entries since then/).waitFor();
  const file = await download.path();
  const text = readFileSync(file, 'utf8');
  expect(JSON.parse(text)).toMatchObject({ format: 'ridgeline-backup', version: 1 });
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
  await two.page.getByText(/the file is 1 row behind, row 3 afterwards/).waitFor();
  await two.page.getByRole('button', { name: 'Replace everything' }).tap();
  await two.page.getByRole('button', { name: 'Take it back' }).tap();
  await two.page.getByText('Taken back: everything is as it was.').waitFor();
  await two.page.goto(`${host.url}#/continue`);
  await two.page
    .getByText(/^Row 5 of/)
    .first()
    .waitFor();
  expect([...one.strangers, ...two.strangers]).toEqual([]);
  await two.close();
  await host.close();
});
