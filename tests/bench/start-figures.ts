import type { BrowserContext, Page } from 'playwright-core';
import { byMedian, type Figure } from './figure.ts';
import type { BenchPhone } from './phone.ts';
import { inTurns } from './statistics.ts';
import { openSlowed, type Subject } from './subject.ts';

/** Starts with no network at all, the processor four times slower, against the bare page and against a full device. */
export async function startFigures(phone: BenchPhone, times: number): Promise<readonly Figure[]> {
  const { context, bare, few, many, going, basket } = phone;
  await phone.unplug();
  const starts = (subject: Subject) => async () => [await startOnce(context, subject, SLOWED)];
  const ms = await inTurns(times, {
    bare: starts(bare),
    few: starts(few),
    many: starts(many),
    goingFew: starts(going.few),
    goingMany: starts(going.many),
    basketFew: starts(basket.few),
    basketMany: starts(basket.many),
  });
  const filled = { against: '100 entries, 3 garments', unit: 'ms', times: 1.15 } as const;
  const years = '100,000 entries, 300 garments: start to';
  return [
    figure({ what: 'offline start to the row in hand, 4× slower', ...againstBare }, ms.few, ms.bare),
    figure({ what: 'the same by the address that finds it', ...againstBare }, ms.goingFew, ms.bare),
    figure({ what: `${years} the row in hand`, ...filled }, ms.many, ms.few),
    figure({ what: `${years} the row in hand, found`, ...filled }, ms.goingMany, ms.goingFew),
    figure({ what: `${years} the workbasket's card`, ...filled }, ms.basketMany, ms.basketFew),
  ];
}

const SLOWED = 4;
const againstBare = { against: 'bare page', unit: 'ms', times: 1.6 } as const;

const figure = (
  names: Parameters<typeof byMedian>[0],
  ours: readonly number[],
  theirs: readonly number[],
): Figure => byMedian(names, { ours, theirs });

/**
 * One start, ms from the navigation until what the subject shows was on the screen. The browser runs already; the
 * page's worker does not, as on a phone that was put away.
 */
async function startOnce(context: BrowserContext, subject: Subject, rate: number): Promise<number> {
  const { page, cdp } = await openSlowed(context, rate);
  await stopWorkers(cdp);
  await page.addInitScript(watchStart, subject.shows);
  await page.goto(subject.address);
  const ms = await startOf(page);
  await page.close();
  return ms;
}

/** Time for a start and for what the page does after it, which belongs to this start and not to the next one. */
const START_MS = 2000;

/** The page is left alone while it starts: whatever is asked of it meanwhile is worked on by its own thread. */
const startOf = async (page: Page): Promise<number> => {
  await page.waitForTimeout(START_MS);
  await page.waitForFunction(() => startProbe.shown > 0, undefined, { polling: 50 });
  return page.evaluate(() => startProbe.shown);
};

async function stopWorkers(cdp: Awaited<ReturnType<typeof openSlowed>>['cdp']): Promise<void> {
  await cdp.send('ServiceWorker.enable');
  await cdp.send('ServiceWorker.stopAllWorkers');
  await cdp.send('ServiceWorker.disable');
}

declare global {
  var startProbe: { shown: number };
}

/** Runs in the page before its own scripts: when a figure first stood in `shows`, and was presented. */
function watchStart(shows: string): void {
  globalThis.startProbe = { shown: 0 };
  new PerformanceObserver((list) => {
    const [entry] = list.getEntries() as (PerformanceEntry & { renderTime: number })[];
    if (entry) startProbe.shown = entry.renderTime;
  }).observe({ type: 'element', buffered: true });
  const watch = new MutationObserver(() => {
    if (!/\d/.test(document.querySelector(shows)?.textContent ?? '')) return;
    watch.disconnect();
    const mark = document.createElement('div');
    mark.style.cssText = 'position:fixed;inset:0 auto auto 0;font-size:4px;pointer-events:none';
    mark.textContent = '.';
    mark.setAttribute('elementtiming', 'row');
    document.body.append(mark);
  });
  watch.observe(document, { subtree: true, childList: true, characterData: true });
}
