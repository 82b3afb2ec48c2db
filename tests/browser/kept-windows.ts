import type { Browser, BrowserContext, BrowserContextOptions, CDPSession, Page } from 'playwright-core';

/**
 * A test's windows open in a browsing context that the tests before it used: one that is new fetches every file of the
 * app again, and a page of the app took a quarter longer in it. What it begins with is as empty as new: no page, nothing
 * in any store of an address.
 */
interface Kept {
  readonly context: BrowserContext;
  /** a page without a script, by which it is emptied; at the app's address it keeps the process that the next page takes */
  readonly keeper: Page;
  readonly devtools: CDPSession;
  /** the addresses that something was stored for, if anything was */
  readonly origins: Set<string>;
}

export interface Borrowed {
  readonly context: BrowserContext;
  readonly page: Page;
  giveBack(): Promise<void>;
}

/** Those that nobody uses now, by the browser and what was asked for. */
const idle = new WeakMap<Browser, Map<string, Kept[]>>();

/** A new page in a context of these options: in one that was given back, if there is one. */
export async function borrowWindow(browser: Browser, options: BrowserContextOptions): Promise<Borrowed> {
  const { viewport = null, ...look } = options;
  const all = idle.get(browser) ?? new Map<string, Kept[]>();
  idle.set(browser, all);
  const key = JSON.stringify(look);
  const alike = all.get(key) ?? [];
  all.set(key, alike);
  const kept = alike.pop() ?? (await newWindow(browser, options));
  const { context } = kept;
  const page = await context.newPage();
  if (viewport) await page.setViewportSize(viewport);
  return {
    context,
    page,
    async giveBack() {
      await empty(kept);
      alike.push(kept);
    },
  };
}

async function newWindow(browser: Browser, options: BrowserContextOptions): Promise<Kept> {
  const context = await browser.newContext(options);
  const keeper = await context.newPage();
  const origins = new Set<string>();
  context.on('request', (request) => {
    if (request.isNavigationRequest() && request.frame().page() !== keeper)
      origins.add(new URL(request.url()).origin);
  });
  return { context, keeper, devtools: await context.newCDPSession(keeper), origins };
}

async function empty({ context, keeper, devtools, origins }: Kept): Promise<void> {
  for (const page of context.pages()) if (page !== keeper) await page.close();
  for (const origin of origins) {
    if (origin === 'null') continue;
    // whatever host it was, it may be gone by now
    if (!keeper.url().startsWith(origin))
      await keeper.goto(`${origin}/icons/icon-192.png`).catch(() => undefined);
    await devtools.send('Storage.clearDataForOrigin', { origin, storageTypes: 'all' });
  }
  origins.clear();
}
