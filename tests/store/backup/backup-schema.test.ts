import { readFileSync, writeFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { backupSchema } from './backup-schema.ts';

const published = new URL('../../../public/backup.schema.json', import.meta.url);

it('the published schema says what the door lets in', () => {
  const now = `${JSON.stringify(backupSchema(), null, 1)}\n`;
  if (process.env.RIDGELINE_WRITE_SCHEMA === '1') writeFileSync(published, now);
  expect(readFileSync(published, 'utf8'), 'written anew by RIDGELINE_WRITE_SCHEMA=1 npm test').toBe(now);
});
