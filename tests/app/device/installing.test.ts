import { afterEach, describe, expect, it, vi } from 'vitest';
import { whereOpened } from '../../../src/app/device/installing.ts';

/** The page's side of being put on the home screen, read anew for each test: a page listens once in its life. */
async function page(outcome: 'accepted' | 'dismissed' = 'accepted') {
  const window = new EventTarget();
  vi.stubGlobal('addEventListener', window.addEventListener.bind(window));
  vi.resetModules();
  const { holdOffer, install, offer } = await import('../../../src/app/device/installing.ts');
  holdOffer();
  const asked: string[] = [];
  const offers = () => {
    const event = Object.assign(new Event('beforeinstallprompt', { cancelable: true }), {
      prompt: async () => asked.push('prompt'),
      userChoice: Promise.resolve({ outcome }),
    });
    window.dispatchEvent(event);
    return event;
  };
  return { window, holdOffer, install, offer, offers, asked };
}

describe('the browser’s offer to put the app on the home screen', () => {
  afterEach(() => vi.unstubAllGlobals());

  it('is kept until she wants it, instead of the browser’s own bar, and made to her once', async () => {
    const { install, offer, offers, asked } = await page();
    expect(await install()).toBe(false);
    const event = offers();
    expect(event.defaultPrevented).toBe(true);
    expect(offer.value).toBe(event);
    expect(asked).toEqual([]);
    expect(await install()).toBe(true);
    expect(asked).toEqual(['prompt']);
    expect(offer.value).toBeUndefined();
    expect(await install()).toBe(false);
    expect(asked).toHaveLength(1);
  });

  it('that she turns down is not taken', async () => {
    const { install, offers } = await page('dismissed');
    offers();
    expect(await install()).toBe(false);
  });

  it('is over once the app is installed, however that came', async () => {
    const { window, offer, offers } = await page();
    offers();
    window.dispatchEvent(new Event('appinstalled'));
    expect(offer.value).toBeUndefined();
  });

  it('is listened for once, however often it is asked', async () => {
    const heard: string[] = [];
    const { holdOffer } = await page();
    vi.stubGlobal('addEventListener', (type: string) => heard.push(type));
    holdOffer();
    expect(heard).toEqual([]);
  });
});

describe('where the app is opened', () => {
  afterEach(() => vi.unstubAllGlobals());

  it.each([
    // only browsers of iPhone and iPad have `navigator.standalone`; display modes: Web Application Manifest, W3C
    [undefined, 'browser', 'browser'],
    [undefined, 'standalone', 'home'],
    [false, 'browser', 'safari'],
    [true, 'browser', 'home'],
    [false, 'standalone', 'home'],
  ] as const)('standalone %s, shown as %s: %s', (standalone, mode, opened) => {
    vi.stubGlobal('navigator', standalone === undefined ? {} : { standalone });
    vi.stubGlobal('matchMedia', (asked: string) => ({ matches: asked === `(display-mode: ${mode})` }));
    expect(whereOpened()).toBe(opened);
  });
});
