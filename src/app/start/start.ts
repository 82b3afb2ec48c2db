import type { MakeKey } from '../../progress/log.ts';
import { openStore, type Store } from '../../store/store.ts';
import { openMake, rereadMake } from '../in-hand/open-make.ts';
import { tryAgain } from '../in-hand/taps.ts';
import { makeAt, parseRoute } from '../routes.ts';
import { takeSettings } from '../settings/wear-settings.ts';
import { inHand, missing, readFault, saving, tapFault } from '../state.ts';
import { giveStore, readOr } from '../store.ts';

/** Opens the store and keeps the screens true to it, whichever window writes. */
export async function startStore(): Promise<void> {
  const first = askedFirst(location.hash);
  // given by the script in the page's head (src/app/start/box-name.ts); the development server has none
  const opened = await openStore({ first, name: document.documentElement.dataset.box ?? 'ridgeline' });
  if (!opened.ok) {
    readFault.value = opened.faults[0];
    return;
  }
  const open = opened.value;
  await takeSettings(open.atOpening, navigator.languages);
  missing.value = open.missing();
  giveStore(open);
  tellHeld(open);
  open.onChange((change, fromElsewhere) => {
    if (change.kind === 'all') {
      readAgain(open);
      void settingsAgain(open);
    }
    if (!fromElsewhere) return;
    if (change.kind === 'place' && change.key === inHand.value?.make) void openMake(change.key);
    if (change.kind === 'settings') void settingsAgain(open);
    if (change.kind === 'garment') readAgain(open);
  });
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void comeBack(open);
  });
}

/** The make that the first screen will ask for: at this address, or the last one knitted. */
function askedFirst(hash: string): { readonly make?: MakeKey } | undefined {
  const at = parseRoute(hash);
  if (at?.screen === 'workbasket' || at?.screen === 'continue') return {};
  return at?.screen === 'knitting' ? { make: makeAt(at) } : undefined;
}

async function settingsAgain(open: Store): Promise<void> {
  const stored = readOr(await open.settings());
  if (stored) await takeSettings(stored, navigator.languages);
}

/** A window that slept may have missed another one's rows. */
async function comeBack(open: Store): Promise<void> {
  await open.probe();
  void tryAgain();
  rereadMake();
}

/** A backup came in, or what was held outside the database went into it. */
function readAgain(open: Store): void {
  tellHeld(open);
  missing.value = open.missing();
  rereadMake();
}

/** Whether taps lie outside the database, and what became of those that did. */
function tellHeld(open: Store): void {
  if (open.held() > 0) saving.value = 'held';
  else if (saving.value === 'held') {
    saving.value = 'saved';
    tapFault.value = undefined;
  }
  tapFault.value = open.dropped() ?? tapFault.value;
}
