import type { MakeKey } from '../../src/progress/log.ts';
import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { openSample } from '../../src/app/garments/sample.ts';
import {
  inHand,
  looking,
  noRows,
  readFault,
  saving,
  tapFault,
  tapped,
  waiting,
} from '../../src/app/state.ts';
import { forgetStore, giveStore } from '../../src/app/store.ts';
import { openStore, type Store } from '../../src/store/store.ts';
import { told } from '../told.ts';
import './tasks-here.ts';

export interface OpenApp {
  readonly store: Store;
  /** key of the sample's first make */
  readonly back: MakeKey;
}

type Wrap = (store: Store) => Store;

/** The app over a fresh database with the sample garment in it. `wrap` puts something between the app and its store. */
export async function openApp(wrap?: Wrap): Promise<OpenApp> {
  const store = await openEmptyApp(wrap);
  const sample = await openSample('sample', 1_800_000_000_000);
  if (!sample.ok) throw new Error(told(sample.faults));
  return { store, back: sample.value };
}

/** The same without any garment, which is opened in a fifth of the time. */
export async function openEmptyApp(wrap: Wrap = (store) => store): Promise<Store> {
  forgetStore();
  const factory = new IDBFactory();
  const opened = await openStore({
    factory: () => factory,
    keep: undefined,
    spareFactory: async () => undefined,
  });
  if (!opened.ok) throw new Error(told(opened.faults));
  giveStore(wrap(opened.value));
  inHand.value = undefined;
  looking.value = undefined;
  readFault.value = undefined;
  tapFault.value = undefined;
  saving.value = 'saved';
  waiting.value = 0;
  tapped.value = noRows;
  return opened.value;
}
