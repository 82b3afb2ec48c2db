import { ok, type Result } from '../knit/fault.ts';
import type { Recipe } from '../knit/piece/recipe.ts';
import type { LogEntry } from '../progress/log.ts';
import { type Change, type Changes, type Listener, openChanges } from './changes.ts';
import { type Door, type DoorState, openDoor } from './door.ts';
import { garmentStores, removeGarment, writeGarment } from './garments.ts';
import { entryId, randomId } from './ids.ts';
import { type InHand, inHandStores, latest, present, readEntries, readInHand, readSettings, type Settings } from './reads.ts';
import type { GarmentRecord, GarmentSummary, NewEntry, PlaceRecord, PlanRecord } from './records.ts';
import { writeRework } from './rework.ts';
import { storeNames } from './schema.ts';
import { tapStores, type Wish, writeWish } from './write-log.ts';

export interface StoreOptions {
  readonly name?: string;
  readonly factory?: () => IDBFactory | undefined;
  readonly now?: () => number;
  readonly patienceMs?: number;
}

/** What a tap gave: the place after it. */
export interface Tapped {
  readonly place: PlaceRecord;
}

/**
 * Everything that is kept. Every call answers with a Result and never throws; a write that answers ok is on disk.
 * Faults: see `storeFaults`. Rows and makes count as in the log; times are ms since 1970.
 */
export interface Store {
  /** cheap with hundreds of garments; in no order */
  list(): Promise<Result<readonly GarmentSummary[]>>;
  garment(id: string): Promise<Result<GarmentRecord>>;
  /** One transaction: the garment, the plans (the store gives the versions), a place for every part and make. */
  saveGarment(garment: GarmentRecord, plans: readonly PlanRecord[]): Promise<Result<readonly PlaceRecord[]>>;
  deleteGarment(id: string): Promise<Result<void>>;
  plan(planId: string): Promise<Result<PlanRecord>>;
  place(key: string): Promise<Result<PlaceRecord>>;
  placesOf(garment: string): Promise<Result<readonly PlaceRecord[]>>;
  /** begun makes, the last one knitted first */
  latestPlaces(n: number): Promise<Result<readonly PlaceRecord[]>>;
  /** a make with its plan and the settings; without a key the make last knitted */
  inHand(key?: string): Promise<Result<InHand>>;
  finishRow(key: string): Promise<Result<Tapped>>;
  /** takes back the last change of place that still stands; again and again walks further back */
  undo(key: string): Promise<Result<Tapped>>;
  goTo(key: string, rows: number, kind: 'place' | 'rip back'): Promise<Result<Tapped>>;
  /** a check, note, lifeline, or the striking out of one; the place stays */
  append(key: string, entry: NewEntry): Promise<Result<Tapped>>;
  /** a new plan for a make, with the rows worked on it (as many as now unless said) and the piece's new recipe */
  rework(key: string, plan: PlanRecord, options?: { readonly recipe?: Recipe; readonly rows?: number }): Promise<Result<Tapped>>;
  /** in order; only the newest ones where `lastN` is given */
  entriesOf(key: string, options?: { readonly lastN?: number }): Promise<Result<readonly LogEntry[]>>;
  settings(): Promise<Result<Settings>>;
  setSetting(name: string, value: unknown): Promise<Result<void>>;
  /** this window's writes and those of other windows; returns the way to stop listening */
  onChange(listener: Listener): () => void;
  state(): DoorState;
  close(): void;
}

export async function openStore(options: StoreOptions = {}): Promise<Result<Store>> {
  const name = options.name ?? 'ridgeline';
  const changes = openChanges(name);
  const door = openDoor({
    name,
    factory: options.factory ?? (() => globalThis.indexedDB),
    patienceMs: options.patienceMs ?? 8000,
    onState: () => changes.tellHere({ kind: 'state' }),
  });
  const device = await deviceId(door);
  if (!device.ok) {
    changes.close();
    door.close();
    return device;
  }
  return ok(makeStore(door, changes, device.value, options.now ?? Date.now));
}

/** The device's own letters, made once; a database that may only be read needs none. */
async function deviceId(door: Door): Promise<Result<string>> {
  const known = await door.read(['settings'], (tx) => tx.objectStore('settings').get('device'));
  if (!known.ok) return known;
  if (typeof known.value === 'string') return ok(known.value);
  if (door.state() === 'read only') return ok('');
  return door.write(['settings'], async (tx) => {
    const settings = tx.objectStore('settings');
    const other = await settings.get('device');
    if (typeof other === 'string') return other;
    const made = randomId(8);
    await settings.put(made, 'device');
    return made;
  });
}

function makeStore(door: Door, changes: Changes, device: string, now: () => number): Store {
  async function told<T>(result: Promise<Result<T>>, change: Change): Promise<Result<T>> {
    const got = await result;
    if (got.ok) changes.tell(change);
    return got;
  }

  function tap(key: string, entry: NewEntry): Promise<Result<Tapped>> {
    const wish: Wish = { ...entry, id: entryId(device), make: key, at: now() };
    const written = door.write(tapStores, async (tx, again) => ({ place: await writeWish(tx, wish, again) }));
    return told(written, { kind: 'place', key });
  }

  return {
    list: () => door.read(['summaries'], (tx) => tx.objectStore('summaries').getAll()),
    garment: (id) =>
      door.read(['garments'], async (tx) => present(await tx.objectStore('garments').get(id), 'no-such-garment')),
    saveGarment: (garment, plans) =>
      told(
        door.write(garmentStores, (tx) => writeGarment(tx, garment, plans)),
        { kind: 'garment', id: garment.id },
      ),
    deleteGarment: (id) =>
      told(
        door.write(storeNames, (tx) => removeGarment(tx, id)),
        { kind: 'garment', id },
      ),
    plan: (id) => door.read(['plans'], async (tx) => present(await tx.objectStore('plans').get(id), 'no-such-plan')),
    place: (key) => door.read(['places'], async (tx) => present(await tx.objectStore('places').get(key), 'no-such-make')),
    placesOf: (garment) => door.read(['places'], (tx) => tx.objectStore('places').index('garment').getAll(garment)),
    latestPlaces: (n) => door.read(['places'], (tx) => latest(tx, n)),
    inHand: (key) => door.read(inHandStores, (tx) => readInHand(tx, key)),
    finishRow: (key) => tap(key, { kind: 'row' }),
    undo: (key) => tap(key, { kind: 'undo' }),
    goTo: (key, rows, kind) => tap(key, { kind, row: rows }),
    append: tap,
    rework: (key, plan, { recipe, rows } = {}) => {
      const wish: Wish = {
        kind: 'rework',
        ...(rows === undefined ? {} : { row: rows }),
        id: entryId(device),
        make: key,
        at: now(),
      };
      const written = door.write(garmentStores, async (tx, again) => ({
        place: await writeRework(tx, wish, plan, recipe, again),
      }));
      return told(written, { kind: 'garment', id: plan.garment });
    },
    entriesOf: (key, { lastN } = {}) => door.read(['log', 'places'], (tx) => readEntries(tx, key, lastN)),
    settings: () => door.read(['settings'], readSettings),
    setSetting: (name, value) =>
      told(
        door.write(['settings'], async (tx) => {
          await tx.objectStore('settings').put(value, name);
        }),
        { kind: 'settings' },
      ),
    onChange: changes.listen,
    state: door.state,
    close: () => {
      changes.close();
      door.close();
    },
  };
}
