import { Signal, signal } from '@preact/signals';
import { vi } from 'vitest';
import { fault, refuse } from '../../src/knit/fault.ts';
import type { Store } from '../../src/store/store.ts';

/** The app's own modules, once more for each page: pages share nothing but what their device keeps. */
async function load() {
  vi.resetModules();
  const [
    start,
    appStore,
    state,
    knit,
    taps,
    count,
    fresh,
    garments,
    change,
    rework,
    editor,
    saving,
    backup,
    wayBack,
    ways,
  ] = await Promise.all([
    import('../../src/app/start/start.ts'),
    import('../../src/app/store.ts'),
    import('../../src/app/state.ts'),
    import('../../src/app/in-hand/knit.ts'),
    import('../../src/app/in-hand/taps.ts'),
    import('../../src/app/in-hand/count.ts'),
    import('../../src/app/fresh.ts'),
    import('../../src/app/garments/open-garments.ts'),
    import('../../src/app/garments/change-garment.ts'),
    import('../../src/app/in-hand/rework-draft.ts'),
    import('../../src/app/drafts/editor/editor.ts'),
    import('../../src/app/drafts/editor/save-garment.ts'),
    import('../../src/app/backup/backup.ts'),
    import('../../src/app/backup/way-back.ts'),
    import('../../src/app/in-hand/ways.ts'),
  ]);
  const modules = {
    start,
    appStore,
    state,
    knit,
    taps,
    count,
    fresh,
    garments,
    change,
    rework,
    editor: { ...editor, ...saving },
    backup,
    wayBack,
    ways,
  };
  return { ...modules, clean: cleaner(Object.values(modules)) };
}

export type App = Awaited<ReturnType<typeof load>>;

const isOwn = (value: unknown): value is Signal =>
  value instanceof Signal && Object.getPrototypeOf(value) === Object.getPrototypeOf(signal(0));

/** The way back to what the modules showed when they were loaded. */
function cleaner(modules: readonly object[]): () => void {
  const atFirst = modules
    .flatMap((module): unknown[] => Object.values(module))
    .filter(isOwn)
    .map((own) => ({ own, value: own.peek() as unknown }));
  return () => {
    for (const { own, value } of atFirst) own.value = value;
  };
}

const nothing = () => Promise.resolve(refuse(fault('no-such-make')));

/** A store in which there is nothing: taps that still stand in a page's line come to their end. */
const emptyStore: Store = new Proxy({} as Store, {
  get: (_, call) => (call === 'held' ? () => 0 : call === 'then' ? undefined : nothing),
});

const free: App[] = [];

/** Loading takes longer than all that a page does: a page that was closed leaves its modules to the next. */
export const takeApp = async (): Promise<App> => free.pop() ?? (await load());

/** Loaded beforehand, so that none is loaded while another waits for a part that comes later. */
export async function loadApps(many: number): Promise<void> {
  while (free.length < many) free.push(await load());
}

export async function leaveApp(app: App): Promise<void> {
  app.appStore.forgetStore();
  if (app.state.waiting.value > 0) {
    app.appStore.giveStore(emptyStore);
    await app.taps.tryAgain();
    app.appStore.forgetStore();
  }
  app.clean();
  free.push(app);
}
