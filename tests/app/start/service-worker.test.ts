import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import {
  appVersion,
  startServiceWorker,
  updatedElsewhere,
  updateReady,
} from '../../../src/app/start/service-worker.ts';

/** A window with or without a worker that holds it. */
function open(
  { controlled = true, workers = true }: { controlled?: boolean; workers?: boolean } = {},
  start = startServiceWorker,
) {
  const window = new EventTarget();
  const serviceWorker = Object.assign(new EventTarget(), { controller: controlled ? {} : null });
  const dataset: Record<string, string> = {};
  let reloads = 0;
  vi.stubGlobal('addEventListener', window.addEventListener.bind(window));
  vi.stubGlobal('navigator', workers ? { serviceWorker } : {});
  vi.stubGlobal('document', { documentElement: { dataset } });
  vi.stubGlobal('location', {
    reload: () => {
      reloads += 1;
    },
  });
  start();
  const missed = () => {
    const event = new Event('vite:preloadError', { cancelable: true });
    window.dispatchEvent(event);
    return event.defaultPrevented;
  };
  const changes = () => serviceWorker.dispatchEvent(new Event('controllerchange'));
  return { dataset, changes, missed, reloads: () => reloads };
}

describe('a window of the app', () => {
  beforeEach(() => {
    updatedElsewhere.value = false;
    updateReady.value = false;
  });
  afterEach(() => vi.unstubAllGlobals());

  it('says its version, by which the page’s head knows that it started, also where there are no workers', () => {
    expect(open().dataset.version).toBe(appVersion);
    expect(open({ workers: false }).dataset.version).toBe(appVersion);
  });

  it('hears that another window took a newer version, and offers no longer to take it', () => {
    const { changes } = open();
    updateReady.value = true;
    changes();
    expect(updatedElsewhere.value).toBe(true);
    expect(updateReady.value).toBe(false);
  });

  it('of a first visit is not outdated when its worker comes, but is when the next one does', () => {
    const { changes } = open({ controlled: false });
    changes();
    expect(updatedElsewhere.value).toBe(false);
    changes();
    expect(updatedElsewhere.value).toBe(true);
  });

  it('that is outdated is read anew when a screen of its version is gone; else that is not its doing', () => {
    const { changes, missed, reloads } = open();
    expect(missed()).toBe(false);
    expect(reloads()).toBe(0);
    changes();
    expect(missed()).toBe(true);
    expect(reloads()).toBe(1);
  });

  it('that is outdated is read anew when she wants the newer version, and does not count that as another’s', async () => {
    // a window of its own: it never forgets that it took a version
    vi.resetModules();
    const own = await import('../../../src/app/start/service-worker.ts');
    const { changes, reloads } = open({}, own.startServiceWorker);
    changes();
    expect(own.updatedElsewhere.value).toBe(true);
    own.applyUpdate();
    expect(reloads()).toBe(1);
    own.updatedElsewhere.value = false;
    changes();
    expect(own.updatedElsewhere.value).toBe(false);
  });
});
