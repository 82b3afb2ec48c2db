import type { Page } from 'playwright-core';

/** Times of one tap, ms after the finger was lifted (the event's own time stamp). */
export interface TapTimes {
  /** from the click's handler being called to its transaction being complete */
  readonly durable: number;
  /** the frame that shows what the tap changed was on the screen */
  readonly shown: number;
  /** Event Timing's duration of the tap, 8 ms steps; 0 when shorter than it reports */
  readonly event: number;
}

interface Probe {
  readonly tapped: () => number;
  readonly take: () => TapTimes;
}

declare global {
  var tapProbe: Probe;
}

/** Watches the page's taps from its next load on; `shows` is the text that changes with every tap. */
export const watchTaps = (page: Page, shows: string): Promise<unknown> => page.addInitScript(probe, shows);

/** Runs in the page, before its own scripts, and uses nothing from outside. */
function probe(shows: string): void {
  let tap = { at: 0, begun: 0, durable: 0, shown: 0, event: 0, said: '' };
  let taps = 0;
  const said = () => document.querySelector(shows)?.textContent ?? '';
  const begun = (event: Event) => {
    tap = { at: event.timeStamp, begun: performance.now(), durable: 0, shown: 0, event: 0, said: said() };
  };
  // a page takes the tap by the one or the other
  addEventListener('touchend', begun, true);
  addEventListener('click', begun, true);

  const begin = IDBDatabase.prototype.transaction;
  IDBDatabase.prototype.transaction = function (this: IDBDatabase, ...args: Parameters<typeof begin>) {
    const tx = begin.apply(this, args);
    const mine = tap;
    if (args[1] === 'readwrite') {
      tx.addEventListener('complete', () => {
        if (mine.durable === 0) mine.durable = performance.now() - mine.begun;
      });
    }
    return tx;
  };

  /** Holds a tiny new text, painted in the same frame as the change: the browser says when that was presented. */
  const mark = document.createElement('div');
  mark.style.cssText = 'position:fixed;inset:0 auto auto 0;font-size:4px;pointer-events:none';
  const onChange = () => {
    if (mark.parentNode === null) document.body.append(mark);
    if (tap.at === 0 || tap.shown !== 0 || said() === tap.said) return;
    tap.shown = -1;
    const mine = tap;
    const text = document.createElement('div');
    text.textContent = '.';
    text.setAttribute('elementtiming', `tap ${taps}`);
    mark.replaceChildren(text);
    presented.set(`tap ${taps}`, mine);
  };
  const presented = new Map<string, typeof tap>();
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries() as (PerformanceEntry & {
      identifier: string;
      renderTime: number;
    })[]) {
      const mine = presented.get(entry.identifier);
      if (!mine) continue;
      presented.delete(entry.identifier);
      mine.shown = entry.renderTime - mine.at;
      taps += 1;
    }
  }).observe({ type: 'element', buffered: true });
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries() as (PerformanceEntry & { interactionId: number })[])
      if (entry.interactionId > 0) tap.event = Math.max(tap.event, entry.duration);
  }).observe({ type: 'event', durationThreshold: 16 } as PerformanceObserverInit);

  addEventListener('DOMContentLoaded', () => {
    new MutationObserver(onChange).observe(document.documentElement, {
      subtree: true,
      childList: true,
      characterData: true,
    });
  });
  globalThis.tapProbe = {
    tapped: () => taps,
    take: () => ({ durable: tap.durable, shown: tap.shown, event: tap.event }),
  };
}
