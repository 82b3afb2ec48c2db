import { ok, type Result, refuse } from '../knit/fault.ts';
import type { Change, Changes } from './changes.ts';
import { storeFault } from './faults.ts';
import { garmentStores, makesRange, removeGarment, writeGarment } from './garments.ts';
import { entryId } from './ids.ts';
import type { Journal } from './journal.ts';
import { type InHand, inHandStores, latest, present, readEntries, readInHand, readSettings } from './reads.ts';
import type { GarmentRecord, PlanRecord } from './records.ts';
import { writeRework } from './rework.ts';
import { storeNames, type Tx } from './schema.ts';
import type { Box, Store } from './store.ts';
import type { Taps } from './taps.ts';
import type { Wish } from './write-log.ts';

interface CallsNeed extends Box {
  readonly changes: Changes;
  readonly taps: Taps;
  readonly journal: Journal;
  /** the box held no garment when it was opened */
  readonly emptied: boolean;
}

/** Everything that can be asked of the open box. */
export function makeCalls(need: CallsNeed): Store {
  return { ...garmentCalls(need), ...placeCalls(need), ...boxCalls(need) };
}

type Names<K extends keyof Store> = Pick<Store, K>;

async function telling<T>(need: CallsNeed, result: Promise<Result<T>>, change: Change): Promise<Result<T>> {
  const got = await result;
  if (got.ok) need.changes.tell(change);
  return got;
}

function garmentCalls(
  need: CallsNeed,
): Names<'list' | 'garment' | 'saveGarment' | 'deleteGarment' | 'plan' | 'placesOf' | 'entriesOfGarment' | 'rework'> {
  const { door, sentinel } = need;

  /** a write that may change how many garments there are; the sentinel learns the number */
  async function counted<T>(id: string, work: (tx: Tx<'readwrite'>, again: boolean) => Promise<T>) {
    const written = await door.write(storeNames, async (tx, again) => {
      const value = await work(tx, again);
      return { value, garments: await tx.objectStore('summaries').count() };
    });
    if (!written.ok) return written;
    sentinel.change(() => ({ garments: written.value.garments }));
    need.changes.tell({ kind: 'garment', id });
    return ok(written.value.value);
  }

  return {
    list: () => door.read(['summaries'], (tx) => tx.objectStore('summaries').getAll()),
    garment: (id) =>
      door.read(['garments'], async (tx) => present(await tx.objectStore('garments').get(id), 'no-such-garment')),
    saveGarment: async (garment, plans) => {
      const trouble = await checked(garment, plans);
      return trouble ?? counted(garment.id, (tx) => writeGarment(tx, garment, plans));
    },
    deleteGarment: (id) => counted(id, (tx, again) => removeGarment(tx, id, again)),
    plan: (id) => door.read(['plans'], async (tx) => present(await tx.objectStore('plans').get(id), 'no-such-plan')),
    placesOf: (id) => door.read(['places'], (tx) => tx.objectStore('places').index('garment').getAll(id)),
    entriesOfGarment: (id) => door.read(['log'], (tx) => tx.objectStore('log').index('make').getAll(makesRange(id))),
    rework: (key, plan, { recipe, rows } = {}) => {
      const row = rows === undefined ? {} : { row: rows };
      const wish: Wish = { kind: 'rework', ...row, id: entryId(need.device), make: key, at: need.now() };
      const written = door.write(garmentStores, async (tx, again) => ({
        place: await writeRework(tx, wish, plan, recipe, again),
      }));
      return telling(need, written, { kind: 'garment', id: plan.garment });
    },
  };
}

/** What is saved must come back out of a backup; the shapes are loaded only here, where a garment is saved. */
async function checked(garment: GarmentRecord, plans: readonly PlanRecord[]): Promise<Result<never> | undefined> {
  const shapes = await import('./shapes/check-record.ts').catch(() => undefined);
  if (shapes === undefined) return refuse(storeFault('app-incomplete'));
  const detail = shapes.troubleIn(garment, plans);
  return detail === undefined ? undefined : refuse(storeFault('not-storable', { detail }));
}

function placeCalls({
  door,
  taps,
}: CallsNeed): Names<'place' | 'latestPlaces' | 'inHand' | 'entriesOf' | 'finishRow' | 'undo' | 'goTo' | 'append'> {
  /** the last one painted: what the screen goes on with while the box is away */
  let painted: InHand | undefined;

  async function inHand(key?: string): Promise<Result<InHand>> {
    const read = await door.read(inHandStores, (tx) => readInHand(tx, key));
    if (read.ok) {
      painted = read.value;
      taps.saw(read.value.place);
      return read;
    }
    const place = painted === undefined ? undefined : taps.seen(painted.place.id);
    const same = painted !== undefined && (key === undefined || key === painted.place.id);
    return isSilent(read) && same && place !== undefined ? ok({ ...(painted as InHand), place }) : read;
  }

  return {
    inHand,
    place: async (key) => {
      const read = await door.read(['places'], async (tx) =>
        present(await tx.objectStore('places').get(key), 'no-such-make'),
      );
      if (read.ok) return ok(taps.saw(read.value));
      const seen = taps.seen(key);
      return isSilent(read) && seen !== undefined ? ok(seen) : read;
    },
    latestPlaces: (n) => door.read(['places'], (tx) => latest(tx, n)),
    entriesOf: (key, { lastN } = {}) => door.read(['log', 'places'], (tx) => readEntries(tx, key, lastN)),
    finishRow: (key) => taps.tap(key, { kind: 'row' }),
    undo: (key) => taps.tap(key, { kind: 'undo' }),
    goTo: (key, rows, kind) => taps.tap(key, { kind, row: rows }),
    append: taps.tap,
  };
}

const isSilent = (result: Result<unknown>): boolean => !result.ok && result.faults[0]?.code === 'store-not-answering';

function boxCalls(
  need: CallsNeed,
): Names<
  | 'settings'
  | 'setSetting'
  | 'onChange'
  | 'state'
  | 'held'
  | 'probe'
  | 'missing'
  | 'forgetMissing'
  | 'sinceBackup'
  | 'box'
  | 'close'
> {
  const { door, changes, taps, journal, sentinel } = need;
  let missing = need.emptied && sentinel.read().garments > 0 ? sentinel.read() : undefined;
  changes.listen((change) => {
    if (change.kind === 'garment' || change.kind === 'all') missing = undefined;
    // garments came back: taps that waited for them can be written
    if (change.kind === 'all') void taps.drain();
  });

  return {
    settings: () => door.read(['settings'], readSettings),
    setSetting: (name, value) =>
      telling(
        need,
        door.write(['settings'], async (tx) => {
          await tx.objectStore('settings').put(value, name);
        }),
        { kind: 'settings' },
      ),
    onChange: changes.listen,
    state: door.state,
    held: () => journal.taps().length,
    probe: async () => {
      const answers = await door.read(['settings'], async (tx) => {
        await tx.objectStore('settings').count();
      });
      if (answers.ok) await taps.drain();
      return answers;
    },
    missing: () => missing,
    forgetMissing: () => {
      missing = undefined;
      sentinel.change(() => ({ garments: 0 }));
    },
    sinceBackup: sentinel.read,
    box: { door, sentinel, now: need.now, device: need.device, tell: changes.tell },
    close: () => {
      taps.stop();
      changes.close();
      door.close();
    },
  };
}
