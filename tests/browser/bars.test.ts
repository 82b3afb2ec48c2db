import { readdirSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { serve } from '../run/serve.ts';
import { initialScripts, totalGzipBytes } from '../run/sizes.ts';
import { openPhone, removeProfiles } from './drive.ts';
import { precacheList } from './worker.ts';

afterAll(removeProfiles);

const kb = 1024;
const report = (what: string, bytes: number) => console.log(`${what}: ${(bytes / kb).toFixed(1)} KB gzip`);

describe('what has to be fetched', () => {
  it('is at most 35 KB of script until the knitting screen can be used, by the list of the build', () => {
    const scripts = initialScripts('dist', ['src/screens/knitting/knitting-screen.tsx']);
    const bytes = totalGzipBytes('dist', scripts);
    report(`knitting screen, ${scripts.length} scripts`, bytes);
    expect(bytes).toBeGreaterThan(10 * kb);
    expect(bytes).toBeLessThanOrEqual(35 * kb);
  });

  it('is at most 250 KB in all for a garment with no network', () => {
    const files = precacheList('dist');
    const bytes = totalGzipBytes('dist', files);
    report(`all ${files.length} files`, bytes);
    expect(files.length).toBeGreaterThan(10);
    expect(bytes).toBeLessThanOrEqual(250 * kb);
  });

  it('is at most 45 KB of fonts', () => {
    const fonts = readdirSync('dist', { recursive: true, encoding: 'utf8' }).filter((path) =>
      path.endsWith('.woff2'),
    );
    const bytes = totalGzipBytes('dist', fonts);
    report(`${fonts.length} fonts`, bytes);
    expect(bytes).toBeLessThanOrEqual(45 * kb);
  });
});

describe('what a phone really fetches', () => {
  it('is at most 35 KB of script, words included, when it starts at the row in hand', async () => {
    const host = await serve({ root: 'dist' });
    const phone = await openPhone();
    await phone.page.goto(`${host.url}#/sample`);
    const pad = phone.page.getByRole('button', { name: 'Row done', exact: true });
    await pad.waitFor();
    const address = phone.page.url();
    const scripts = new Set<string>();
    await phone.page.goto('about:blank');
    phone.page.on('request', (request) => {
      if (request.resourceType() === 'script') scripts.add(new URL(request.url()).pathname.slice(1));
    });
    await phone.page.goto(address);
    await pad.waitFor();
    const bytes = totalGzipBytes(
      'dist',
      [...scripts].filter((path) => !path.includes('workbox-window')),
    );
    report(`row in hand, ${scripts.size} scripts`, bytes);
    expect(bytes).toBeGreaterThan(10 * kb);
    expect(bytes).toBeLessThanOrEqual(35 * kb);
    await phone.close();
    await host.close();
  });
});
