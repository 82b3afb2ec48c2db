import type { BrowserContext } from 'playwright-core';
import { built } from './build.ts';
import { byMedian, type Figure } from './figure.ts';
import { compressingHost } from './host.ts';
import { inTurns } from './statistics.ts';
import { openSlowed } from './subject.ts';

/** A slow line, as Chromium's own tools have it under 'Slow 4G' (from memory): 1.6 Mbit/s less a tenth, 150 ms × 3.75. */
const slow4G = {
  offline: false,
  latency: 562.5,
  downloadThroughput: (1.6e6 / 8) * 0.9,
  uploadThroughput: (0.75e6 / 8) * 0.9,
};

/** The largest paint of a first visit on a slow line and a slow phone. */
export async function visitFigures(context: BrowserContext, times: number): Promise<readonly Figure[]> {
  const visits = (root: string) => async () => [await firstVisit(context, root, 4)];
  const { ours, theirs } = await inTurns(times, { ours: visits(built.app), theirs: visits(built.bare) });
  const what = 'first visit, slow 4G, 4× slower: largest paint';
  return [byMedian({ what, against: 'bare page', unit: 'ms', times: 1.6 }, { ours, theirs })];
}

/** ms until the largest thing of a first visit was painted: nothing of the page is on the device yet. */
async function firstVisit(context: BrowserContext, root: string, rate: number): Promise<number> {
  // a new port is a new origin: no worker, no database, nothing in the cache
  const host = await compressingHost(root);
  const { page, cdp } = await openSlowed(context, rate);
  await cdp.send('Network.enable');
  await cdp.send('Network.emulateNetworkConditions', slow4G);
  await page.addInitScript(watchLargest);
  await page.goto(host.url);
  await page.waitForFunction(() => document.querySelector('button, a') !== null, undefined, {
    timeout: 60_000,
  });
  // a font may come late and paint the text again
  await page.waitForTimeout(4000);
  const ms = await page.evaluate(() => visitProbe.largest);
  await page.close();
  await host.close();
  if (ms === 0) throw new Error(`Nothing was painted of ${root}.`);
  return ms;
}

declare global {
  var visitProbe: { largest: number };
}

function watchLargest(): void {
  globalThis.visitProbe = { largest: 0 };
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) visitProbe.largest = entry.startTime;
  }).observe({ type: 'largest-contentful-paint', buffered: true });
}
