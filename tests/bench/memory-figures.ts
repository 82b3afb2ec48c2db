import type { BrowserContext, CDPSession } from 'playwright-core';
import { knitterAt } from '../browser/knitter.ts';
import type { Figure } from './figure.ts';
import type { Subject } from './subject.ts';

const MB = 1024 * 1024;

/** What the page holds on to after so many rows knitted in one sitting, against what it holds after ten. */
export async function memoryFigures(
  context: BrowserContext,
  subject: Subject,
  rows: number,
): Promise<readonly Figure[]> {
  const page = await context.newPage();
  const cdp = await context.newCDPSession(page);
  const knitter = knitterAt(page, subject.address);
  await page.goto(subject.address);
  await knitter.pad.waitFor();
  await page.waitForTimeout(1500);
  await knitter.knit(10);
  const theirs = await heldBytes(cdp);
  await knitter.knit(rows - 10);
  const ours = await heldBytes(cdp);
  await page.close();
  return [
    {
      what: `memory after ${rows.toLocaleString('en')} rows in one sitting`,
      against: 'after 10',
      unit: 'MB',
      ours: ours / MB,
      theirs: theirs / MB,
      times: 1.1,
    },
  ];
}

/** Script's heap, the page's own objects (nodes, styles) and buffers, once what nobody holds is gone. */
async function heldBytes(cdp: CDPSession): Promise<number> {
  // timers that end after a row let go of what they hold
  await new Promise((resolve) => setTimeout(resolve, 1500));
  await cdp.send('HeapProfiler.enable');
  for (let n = 0; n < 3; n += 1) await cdp.send('HeapProfiler.collectGarbage');
  const { usedSize, embedderHeapUsedSize, backingStorageSize } = await cdp.send('Runtime.getHeapUsage');
  return usedSize + embedderHeapUsedSize + backingStorageSize;
}
