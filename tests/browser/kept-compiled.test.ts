import { statSync } from 'node:fs';
import { join } from 'node:path';
import type { BrowserContext } from 'playwright-core';
import { afterAll, expect, it } from 'vitest';
import { dist } from '../run/built.ts';
import { serve } from '../run/serve.ts';
import { initialScripts } from '../run/sizes.ts';
import { openPhone, removeProfiles } from './drive.ts';
import { until } from './until.ts';
import { workerReady } from './worker.ts';

afterAll(removeProfiles);

// what it takes from a file that the worker needs too is a few lines
const script = initialScripts(dist).find((path) => path.includes('row-in-hand')) ?? '';

it('is compiled once: later starts take the first script as it was kept, with all of its functions', async () => {
  const host = await serve({ root: dist });
  const { context, page, close } = await openPhone();
  await page.goto(host.url);
  await workerReady(page);
  await page.close();
  await host.close();
  // the first start with no network compiles it, and keeps that
  expect(await bytesTakenCompiled(context, host.url)).toBe(0);
  // without the functions that had not run when it was kept it is less than one and a half times the script
  const size = statSync(join(dist, script)).size;
  // what was compiled is written down beside the page, and on a busy machine not before the next start
  await until(
    () => bytesTakenCompiled(context, host.url),
    (bytes) => bytes > 2 * size,
    30_000,
  );
  await close();
});

interface TraceEvent {
  readonly name: string;
  readonly args: { readonly data?: { readonly url?: string; readonly consumedCacheSize?: number } };
}

/** Starts the app, and reads in the browser's own trace how much of the first script it had compiled already. */
async function bytesTakenCompiled(context: BrowserContext, url: string): Promise<number> {
  const page = await context.newPage();
  const beside = await context.newPage();
  const cdp = await context.newCDPSession(beside);
  const events: TraceEvent[] = [];
  cdp.on('Tracing.dataCollected', ({ value }) => events.push(...(value as unknown as TraceEvent[])));
  await cdp.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: { includedCategories: ['v8'] },
  });
  await page.goto(url);
  await page.locator('.empty').waitFor();
  // what was compiled is kept a moment later
  await page.waitForTimeout(1000);
  const complete = new Promise((resolve) => cdp.once('Tracing.tracingComplete', resolve));
  await cdp.send('Tracing.end');
  await complete;
  await beside.close();
  await page.close();
  const compiled = events.filter(
    ({ name, args }) => name === 'v8.compileModule' && args.data?.url?.endsWith(script),
  );
  expect(compiled).toHaveLength(1);
  return compiled[0]?.args.data?.consumedCacheSize ?? 0;
}
