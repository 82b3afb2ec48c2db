import { openStore, type Store } from '../store/store.ts';
import { openDrawing, openGarment } from './intents/garments.ts';
import { openMake } from './intents/knit.ts';
import { takeSettings } from './intents/settings.ts';
import { tryAgain } from './intents/taps.ts';
import { drawings, garmentShown, inHand, readFault } from './state.ts';
import { giveStore, readOr } from './store.ts';

/** Opens the store and keeps the screens true to it, whichever window writes. */
export async function startStore(): Promise<void> {
  const opened = await openStore();
  if (!opened.ok) {
    readFault.value = opened.faults[0];
    return;
  }
  const open = opened.value;
  const stored = readOr(await open.settings());
  await takeSettings(stored ?? {}, navigator.languages);
  giveStore(open);
  open.onChange((change, fromElsewhere) => {
    if (!fromElsewhere) return;
    if (change.kind === 'place' && change.key === inHand.value?.make) void openMake(change.key);
    if (change.kind === 'settings') void settingsAgain(open);
    if (change.kind === 'garment' || change.kind === 'all') readAgain();
  });
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') comeBack();
  });
}

async function settingsAgain(open: Store): Promise<void> {
  const stored = readOr(await open.settings());
  if (stored) await takeSettings(stored, navigator.languages);
}

/** A window that slept may have missed another one's rows. */
function comeBack(): void {
  void tryAgain();
  const make = inHand.value?.make;
  if (make !== undefined) void openMake(make);
}

function readAgain(): void {
  comeBack();
  const shown = garmentShown.value?.garment.id;
  if (shown !== undefined) void openGarment(shown);
  for (const id of Object.keys(drawings.value)) void openDrawing(id);
}
