import type { Page } from 'playwright-core';
import { firefox } from 'pwff';
import { newProfile } from '../browser/drive.ts';
import { pathOf } from './debian.ts';
import { atMost, type Engine } from './engine.ts';
import { killTree, processWith } from './process-tree.ts';

/** The long-term Firefox of the system, by way of WebDriver BiDi; later drivers ask it for what it has not. */
export const firefoxEngine: Engine = {
  name: 'Firefox',
  async open(profile = newProfile()) {
    const context = await firefox.launchPersistentContext(profile, {
      channel: 'moz-firefox',
      executablePath: process.env.RIDGELINE_FIREFOX ?? pathOf('firefox'),
      headless: true,
      viewport: { width: 390, height: 844 },
    });
    const page = (context.pages()[0] ?? (await context.newPage())) as unknown as Page;
    const complaints: string[] = [];
    const strangers: string[] = [];
    const hear = (one: Page) => {
      one.on('console', (message) => message.type() === 'error' && complaints.push(message.text()));
      one.on('pageerror', (error) => complaints.push(error.message));
    };
    hear(page);
    context.on('request', (request) => {
      if (!/^(?:http:\/\/localhost:\d+\/|blob:|data:|about:|moz-)/.test(request.url()))
        strangers.push(request.url());
    });
    return {
      page,
      profile,
      complaints,
      strangers,
      newPage: async () => (await context.newPage()) as unknown as Page,
      tap: (x, y) => page.mouse.click(x, y),
      async kill() {
        const closed = new Promise((resolve) => context.once('close', resolve));
        const root = processWith(profile);
        if (root === undefined) throw new Error(`No Firefox runs with ${profile}.`);
        killTree(root);
        await atMost(closed, 3000);
      },
      close: () => context.close(),
    };
  },
};
