import { readFileSync } from 'node:fs';
import type { ServerResponse } from 'node:http';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { dist } from '../run/built.ts';
import { serve } from '../run/serve.ts';
import { openPhone, removeProfiles } from './drive.ts';
import { workerReady } from './worker.ts';

afterAll(removeProfiles);

const page = () => readFileSync(join(dist, 'index.html'), 'utf8');

const answer = (response: ServerResponse, html: string) => {
  response.writeHead(200, { 'Content-Type': 'text/html; charset=utf-8' });
  response.end(html);
  return true;
};

/** A host that puts a line of its own into every page, as some do for counting visits. */
const changing = () =>
  serve({
    root: dist,
    instead: (path, response) =>
      (path === '/' || path === '/index.html') &&
      answer(response, page().replace('</body>', '<!-- counted --></body>')),
  });

describe('a host that changes the page on its way', () => {
  it('is named in the settings, since nothing of it can be kept, instead of asking her to wait for ever', async () => {
    const host = await changing();
    const phone = await openPhone({ once: true });
    await phone.page.goto(`${host.url}#/settings`);
    await phone.page.getByText('changes its files on the way').waitFor();
    expect(await phone.page.getByText('Leave it open a moment').count()).toBe(0);
    await phone.close();
    await host.close();
  });

  it('is not named where the page comes as it was built', async () => {
    const host = await serve({ root: dist });
    const phone = await openPhone({ once: true });
    await phone.page.goto(`${host.url}#/settings`);
    await workerReady(phone.page);
    await phone.page.getByText('needs no network').waitFor();
    expect(await phone.page.getByText('changes its files').count()).toBe(0);
    await phone.close();
    await host.close();
  });
});

describe('an address without its last slash', () => {
  it('where the host gives the page all the same, the app goes to the address with it, and starts', async () => {
    const host = await serve({
      root: dist,
      base: '/knitting/',
      instead: (path, response) => path === '/knitting' && answer(response, page()),
    });
    const phone = await openPhone({ once: true });
    await phone.page.goto(`${host.url.slice(0, -1)}?from=home#/settings`);
    await phone.page.getByRole('radio').first().waitFor();
    const { pathname, search, hash } = new URL(phone.page.url());
    expect(pathname + search + hash).toBe('/knitting/?from=home#/settings');
    await phone.close();
    await host.close();
  });
});
