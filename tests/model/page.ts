import { vi } from 'vitest';
import type { MakeKey } from '../../src/progress/log.ts';
import type { Store } from '../../src/store/store.ts';
import { channelFor } from './air.ts';
import { type App, leaveApp, takeApp } from './apps.ts';
import type { Device } from './device.ts';
import { factoryFor, keepFor } from './disk.ts';

/** Where a page is. */
export type At =
  | { readonly screen: 'knitting' | 'count'; readonly make: MakeKey }
  | { readonly screen: 'garment' | 'editor'; readonly garment: string }
  | { readonly screen: 'workbasket' };

/** One window of the app, from its opening to its end. */
export class Page {
  deaf = false;
  readonly access = { fuse: Number.POSITIVE_INFINITY, dead: false, blown: () => this.#blown() };
  at: At = { screen: 'workbasket' };
  /** what it showed in the moment it was killed */
  last: App['state']['inHand']['value'];
  app!: App;
  store!: Store;
  readonly #whenSeen: (() => void)[] = [];
  #leave: () => void = () => undefined;

  constructor(readonly device: Device) {}

  get dead(): boolean {
    return this.access.dead;
  }

  static async open(device: Device, at: At = { screen: 'workbasket' }): Promise<Page> {
    const page = new Page(device);
    page.app = await takeApp();
    page.stage(at);
    await page.app.start.startStore();
    page.store = await Promise.race([
      page.app.appStore.store(),
      new Promise<never>((_, reject) => {
        const { code } = page.app.state.readFault.value ?? {};
        if (code !== undefined) reject(new Error(`a page did not open: ${code}`));
      }),
    ]);
    await page.go(at);
    return page;
  }

  /** Makes the surroundings this page's own: its device's clock and disk, its address. */
  stage(at: At = this.at): void {
    const { disk, air, name } = this.device;
    vi.setSystemTime(this.device.now());
    vi.stubGlobal('indexedDB', factoryFor(disk, this.access));
    vi.stubGlobal('localStorage', keepFor(disk, this.access));
    vi.stubGlobal('BroadcastChannel', channelFor(air, this));
    vi.stubGlobal('location', { hash: hashOf(at), pathname: '/', search: '' });
    vi.stubGlobal('document', {
      visibilityState: 'visible',
      documentElement: { dataset: { box: name } },
      addEventListener: (kind: string, act: () => void) => {
        if (kind === 'visibilitychange') this.#whenSeen.push(act);
      },
      removeEventListener: () => undefined,
    });
  }

  /** Goes to another screen, which reads what it shows and hears of changes from then on. */
  async go(at: At): Promise<void> {
    this.#leave();
    this.at = at;
    const { knit, count, fresh, garments } = this.app;
    if (at.screen === 'knitting') {
      await knit.openMake(at.make);
      const garment = garmentOf(at.make);
      this.#leave = fresh.keepFresh(() => garments.openGarmentInHand(garment), garment, at.make);
    } else if (at.screen === 'count') {
      await count.openCount(at.make);
      this.#leave = fresh.keepFresh(() => count.openCount(at.make), garmentOf(at.make));
    } else if (at.screen === 'garment') {
      await garments.openGarment(at.garment);
      this.#leave = fresh.keepFresh(() => garments.openGarment(at.garment), at.garment);
    } else if (at.screen === 'editor') {
      await this.app.editor.openEditor(at.garment);
      this.#leave = () => undefined;
    } else {
      await garments.openBasket();
      this.#leave = fresh.keepFresh(garments.openBasket);
    }
  }

  /** She looks at it again, and goes once more to where it is. */
  async seen(): Promise<void> {
    for (const act of this.#whenSeen) act();
    await this.device.quiet();
    await this.go(this.at);
  }

  get inHand() {
    return this.dead ? this.last : this.app.state.inHand.value;
  }

  /** Nothing of it is written any more. */
  async close(): Promise<void> {
    this.access.dead = true;
    this.#leave();
    this.store.close();
    await this.device.quiet();
    await leaveApp(this.app);
  }

  #blown(): void {
    this.last = this.app.state.inHand.value;
  }
}

export const garmentOf = (make: string): string => make.slice(0, make.indexOf('/'));

const hashOf = (at: At): string => {
  if (at.screen === 'knitting') return `#/k/${at.make}`;
  if (at.screen === 'count') return `#/k/${at.make}/tools`;
  if (at.screen === 'editor') return `#/edit/${at.garment}`;
  return at.screen === 'garment' ? `#/g/${at.garment}` : '#/';
};
