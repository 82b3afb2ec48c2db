import type { Page } from 'playwright-core';
import type { Subject } from './subject.ts';

/** Times of one tap, ms; those to the screen after the finger was lifted (the event's own time stamp). */
export interface TapTimes {
  /** from the handler being called to its transaction being complete */
  readonly durable: number;
  /** Event Timing's duration of the tap, to the next paint, 8 ms steps; 0 when shorter than it reports */
  readonly event: number;
  /**
   * the frame that has the words of what comes next was on the screen; 0 where they were changed before the browser was
   * done with the event, and so are in its next paint
   */
  readonly read: number;
  /** the frame that says that the tap is done was on the screen */
  readonly shown: number;
}

interface Probe {
  /** taps that are shown as done */
  readonly tapped: () => number;
  readonly take: () => TapTimes;
}

declare global {
  var tapProbe: Probe;
}

/** Watches the page's taps from its next load on. */
export const watchTaps = (page: Page, { shows, reads }: Subject): Promise<unknown> =>
  page.addInitScript(probe, { shows, reads });

/** Runs in the page, before its own scripts, and uses nothing from outside. */
function probe(texts: Pick<Subject, 'shows' | 'reads'>): void {
  const sights = ['read', 'shown'] as const;
  const selectors = { read: texts.reads, shown: texts.shows };
  const textOf = (sight: (typeof sights)[number]) =>
    document.querySelector(selectors[sight])?.textContent ?? '';
  const fresh = (at: number) => ({
    at,
    begun: performance.now(),
    before: { read: textOf('read'), shown: textOf('shown') },
    times: { durable: 0, event: 0, read: 0, shown: 0 },
    changed: { read: false, shown: false },
  });
  let tap = fresh(0);
  let taps = 0;
  let isHandled = true;
  const begin = (event: Event) => {
    tap = fresh(event.timeStamp);
    isHandled = false;
    setTimeout(() => {
      isHandled = true;
    });
  };
  // a page takes the tap by the one or the other
  addEventListener('touchend', begin, true);
  addEventListener('click', begin, true);

  const transaction = IDBDatabase.prototype.transaction;
  IDBDatabase.prototype.transaction = function (this: IDBDatabase, ...args: Parameters<typeof transaction>) {
    const tx = transaction.apply(this, args);
    const { times, begun } = tap;
    if (args[1] === 'readwrite') {
      tx.addEventListener('complete', () => {
        if (times.durable === 0) times.durable = performance.now() - begun;
      });
    }
    return tx;
  };

  /** Tiny new texts, each painted in the same frame as a change: the browser says when that was presented. */
  const newMark = () => {
    const mark = document.createElement('div');
    mark.style.cssText = 'position:fixed;inset:0 auto auto 0;font-size:4px;pointer-events:none';
    return mark;
  };
  const marks = { read: newMark(), shown: newMark() };
  const presented = new Map<string, (at: number) => void>();
  const onChange = () => {
    if (tap.at === 0) return;
    for (const sight of sights) {
      const { at, before, times, changed } = tap;
      if (changed[sight] || textOf(sight) === before[sight]) continue;
      changed[sight] = true;
      // no mark where none is needed: it would cost what is measured
      if (sight === 'read' && !isHandled) continue;
      const id = `tap ${taps} ${sight}`;
      const text = document.createElement('div');
      text.textContent = '.';
      text.setAttribute('elementtiming', id);
      const mark = marks[sight];
      if (mark.parentNode === null) document.body.append(mark);
      mark.replaceChildren(text);
      presented.set(id, (renderTime) => {
        times[sight] = renderTime - at;
        if (sight === 'shown') taps += 1;
      });
    }
  };
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries() as (PerformanceEntry & {
      identifier: string;
      renderTime: number;
    })[]) {
      presented.get(entry.identifier)?.(entry.renderTime);
      presented.delete(entry.identifier);
    }
  }).observe({ type: 'element', buffered: true });
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries() as (PerformanceEntry & { interactionId: number })[])
      if (entry.interactionId > 0) tap.times.event = Math.max(tap.times.event, entry.duration);
  }).observe({ type: 'event', durationThreshold: 16 } as PerformanceObserverInit);

  addEventListener('DOMContentLoaded', () => {
    new MutationObserver(onChange).observe(document.documentElement, {
      subtree: true,
      childList: true,
      characterData: true,
    });
  });
  globalThis.tapProbe = { tapped: () => taps, take: () => ({ ...tap.times }) };
}
