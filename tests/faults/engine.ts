import type { Page } from 'playwright-core';
import { newProfile, openPhone } from '../browser/drive.ts';

/** A browser with a profile that outlives it, whichever engine it is. */
export interface Machine {
  readonly page: Page;
  readonly profile: string;
  /** what the console and the page said went wrong */
  readonly complaints: readonly string[];
  /** addresses outside this machine that were asked for; undefined where the driver does not tell */
  readonly strangers?: readonly string[];
  /** a second window on the same profile; undefined where the driver has none */
  readonly newPage?: () => Promise<Page>;
  tap(x: number, y: number): Promise<void>;
  /** SIGKILL to every process of it */
  kill(): Promise<void>;
  close(): Promise<void>;
}

export interface Engine {
  readonly name: 'Chromium' | 'Firefox' | 'WebKit';
  /** switches it on, with a profile from before or a new one */
  open(profile?: string): Promise<Machine>;
}

export const chromiumEngine: Engine = {
  name: 'Chromium',
  async open(profile = newProfile()) {
    const phone = await openPhone({ profile });
    return {
      page: phone.page,
      profile,
      complaints: phone.complaints,
      strangers: phone.strangers,
      newPage: () => phone.context.newPage(),
      tap: (x, y) => phone.page.touchscreen.tap(x, y),
      kill: () => atMost(phone.kill(), 15_000),
      close: phone.close,
    };
  },
};

/** Goes on after so long: a driver may not notice that its browser is gone. */
export const atMost = (work: Promise<unknown>, ms: number): Promise<void> =>
  Promise.race([work, new Promise((resolve) => setTimeout(resolve, ms))]).then(() => undefined);
