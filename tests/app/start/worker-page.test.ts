import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { registerWorker } from '../../../src/app/start/register-worker.ts';
import { speak } from '../../../src/words/say.ts';
import { plainSpeech } from '../../../src/words/settings.ts';

/** The page's side of the worker, with a browser that has one. */

const HOUR = 3_600_000;

class Worker extends EventTarget {
  readonly told: unknown[] = [];
  private ports: MessagePort[] = [];
  constructor(public state: string) {
    super();
  }
  readonly scriptURL = 'https://example.org/app/sw.js';
  postMessage = (what: unknown, ports: readonly MessagePort[] = []): void => {
    this.told.push(what);
    this.ports.push(...ports);
  };
  /** Answers all that was asked so far. */
  answer(what: boolean): void {
    for (const port of this.ports.splice(0)) port.postMessage(what);
  }
  become(state: string): void {
    this.state = state;
    this.dispatchEvent(new Event('statechange'));
  }
}

/** A channel that carries at once. */
class Channel {
  readonly port1: { onmessage?: (event: { data: unknown }) => void; close: () => void } = {
    close: () => undefined,
  };
  readonly port2 = { postMessage: (data: unknown) => this.port1.onmessage?.({ data }) };
}

class Registration extends EventTarget {
  installing: Worker | null = null;
  waiting: Worker | null = null;
  active: Worker | null = null;
  updates = 0;
  gone = 0;
  update = async () => {
    this.updates += 1;
    throw new Error('the network is gone again');
  };
  unregister = async () => {
    this.gone += 1;
    return true;
  };
}

interface Given {
  readonly active?: boolean;
  readonly waiting?: boolean;
  readonly controlled?: boolean;
  readonly kept?: boolean;
  readonly missed?: boolean;
}

async function page({
  active = true,
  waiting = false,
  controlled = true,
  kept = true,
  missed = false,
}: Given = {}) {
  const window = new EventTarget();
  const registration = new Registration();
  registration.active = active ? new Worker('activated') : null;
  registration.waiting = waiting ? new Worker('installed') : null;
  const serviceWorker = Object.assign(new EventTarget(), {
    controller: controlled ? registration.active : null,
    register: async () => registration,
  });
  const document = Object.assign(new EventTarget(), {
    baseURI: 'https://example.org/app/#/x',
    visibilityState: 'visible',
    readyState: 'complete',
    documentElement: { dataset: missed ? { missed: '' } : {} },
  });
  const online = { serviceWorker, onLine: true };
  let reloads = 0;
  vi.stubGlobal('window', window);
  vi.stubGlobal('addEventListener', window.addEventListener.bind(window));
  vi.stubGlobal('document', document);
  vi.stubGlobal('navigator', online);
  vi.stubGlobal('location', {
    href: 'https://example.org/app/#/x',
    reload: () => {
      reloads += 1;
    },
  });
  const asked: unknown[] = [];
  vi.stubGlobal('MessageChannel', Channel);
  vi.stubGlobal('caches', {
    match: async (url: string, how: unknown) => {
      asked.push([url, how]);
      return kept ? new Response('page') : undefined;
    },
  });
  const news: string[] = [];
  let take: (() => void) | undefined;
  await registerWorker({
    onReady: () => news.push('ready'),
    onWaiting: () => news.push('waiting'),
    onRegistered: (taken) => {
      news.push('registered');
      take = taken;
    },
  });
  await vi.advanceTimersByTimeAsync(0);
  return {
    registration,
    document,
    online,
    window,
    news,
    asked,
    take: () => take?.(),
    reloads: () => reloads,
  };
}

describe('the worker as the page has it', () => {
  beforeEach(() =>
    vi.useFakeTimers({ toFake: ['setInterval', 'clearInterval', 'setTimeout', 'clearTimeout'] }),
  );
  afterEach(() => {
    vi.useRealTimers();
    vi.unstubAllGlobals();
  });

  it('that is at work has all on this device, and looks whether it is whole', async () => {
    const { news, registration, asked } = await page();
    expect(news).toEqual(['ready', 'registered']);
    expect(registration.active?.told).toEqual(['keep whole']);
    expect(asked).toEqual([['https://example.org/app/index.html', { ignoreSearch: true }]]);
  });

  it('is ready when what she reads is kept as well, and keeps each language that she chooses, the one that waits too', async () => {
    await speak({ language: 'de' });
    const { news, registration } = await page({ waiting: true });
    expect(news).toEqual(['waiting', 'registered']);
    expect(registration.active?.told).toEqual(['keep wanted de', 'keep whole']);
    expect(registration.waiting?.told).toEqual(['keep wanted de']);
    registration.active?.answer(true);
    await vi.advanceTimersByTimeAsync(0);
    expect(news).toEqual(['waiting', 'registered', 'ready']);
    await speak({ language: 'fr' });
    expect(registration.active?.told.at(-1)).toBe('keep wanted fr');
    expect(registration.waiting?.told.at(-1)).toBe('keep wanted fr');
    await speak(plainSpeech);
    expect(registration.active?.told.at(-1)).toBe('keep wanted fr');
  });

  it('is not ready where what she reads could not be kept', async () => {
    await speak({ language: 'fr' });
    const { news, registration } = await page();
    registration.active?.answer(false);
    await vi.advanceTimersByTimeAsync(0);
    expect(news).toEqual(['registered']);
    await speak(plainSpeech);
  });

  it('that is not there yet has nothing', async () => {
    expect((await page({ active: false, controlled: false })).news).toEqual(['registered']);
  });

  it('whose copy has a hole is taken away, and the next start brings it whole', async () => {
    const { news, registration } = await page({ kept: false });
    expect(registration.gone).toBe(1);
    expect(news).toEqual([]);
    expect(registration.active?.told).toEqual([]);
  });

  it('mends at once where a file did not load, before this was there or after', async () => {
    expect((await page({ missed: true })).registration.active?.told).toEqual(['mend']);
    const { registration, window } = await page();
    window.dispatchEvent(new Event('vite:preloadError'));
    await vi.advanceTimersByTimeAsync(0);
    expect(registration.active?.told).toEqual(['keep whole', 'mend']);
  });

  it('is asked every hour and at each return whether there is a newer one, not without a network or while one comes', async () => {
    const { registration, document, online } = await page();
    await vi.advanceTimersByTimeAsync(HOUR - 1);
    expect(registration.updates).toBe(0);
    await vi.advanceTimersByTimeAsync(1);
    expect(registration.updates).toBe(1);
    const returns = (state: string) => {
      document.visibilityState = state;
      document.dispatchEvent(new Event('visibilitychange'));
    };
    returns('hidden');
    expect(registration.updates).toBe(1);
    returns('visible');
    expect(registration.updates).toBe(2);
    online.onLine = false;
    returns('visible');
    online.onLine = true;
    registration.installing = new Worker('installing');
    returns('visible');
    expect(registration.updates).toBe(2);
  });

  it('of a newer version waits until she takes it, and the page is read anew once it is at work', async () => {
    const { registration, take, reloads } = await page({ waiting: true });
    const next = registration.waiting as Worker;
    expect(next.told).toEqual([]);
    take();
    expect(next.told).toEqual([{ type: 'SKIP_WAITING' }]);
    next.become('activating');
    expect(reloads()).toBe(0);
    next.become('activated');
    expect(reloads()).toBe(1);
  });

  it('of a newer version that is no longer waiting is at work already: the page is read anew', async () => {
    const { take, reloads } = await page();
    take();
    expect(reloads()).toBe(1);
  });
});
