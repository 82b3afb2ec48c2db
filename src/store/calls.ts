import { fault, ok, type Result, refuse } from '../knit/fault.ts';
import type { MakeKey } from '../progress/log.ts';
import type { Box } from './box/box.ts';
import type { Changes } from './box/changes.ts';
import type { Store } from './interface.ts';
import type { LastSeen } from './place/last-seen.ts';
import {
  type InHand,
  inHandStores,
  latest,
  present,
  readEntries,
  readInHand,
  readSettings,
  type Settings,
} from './place/reads.ts';
import type { Taps } from './place/taps.ts';
import { makesRange } from './place/write-log.ts';

interface CallsNeed extends Box {
  readonly changes: Changes;
  readonly taps: Taps;
  /** the box held no garment when it was opened */
  readonly emptied: boolean;
  /** as read when it was opened */
  readonly settings: Settings;
  readonly seen: LastSeen;
}

/** Everything that can be asked of the open box. */
export function makeCalls(need: CallsNeed): Store {
  return { ...garmentCalls(need), ...placeCalls(need), ...boxCalls(need) };
}

type Names<K extends keyof Store> = Pick<Store, K>;

/** Not every part of the app may be there: an offline phone that never had it, a broken deploy. */
async function later<M, T>(load: () => Promise<M>, ask: (part: M) => Promise<Result<T>>): Promise<Result<T>> {
  const part = await load().catch(() => undefined);
  return part === undefined ? refuse(fault('app-incomplete')) : ask(part);
}

function garmentCalls(
  box: CallsNeed,
): Names<
  | 'list'
  | 'garment'
  | 'saveGarment'
  | 'changeGarment'
  | 'deleteGarment'
  | 'plan'
  | 'placesOf'
  | 'entriesOfGarment'
  | 'rework'
> {
  const { door, taps } = box;
  const writes = () => import('./garment/garment-calls.ts');
  return {
    list: () => door.read(['summaries'], (tx) => tx.objectStore('summaries').getAll()),
    garment: (id) =>
      door.read(['garments'], async (tx) =>
        present(await tx.objectStore('garments').get(id), 'no-such-garment'),
      ),
    saveGarment: (garment, plans) => later(writes, (part) => part.saveGarment(box, garment, plans)),
    changeGarment: (id, change, plans = []) =>
      later(writes, (part) => part.changeGarment(box, id, change, plans)),
    deleteGarment: (id) => later(writes, (part) => part.deleteGarment(box, id)),
    plan: (id) =>
      door.read(['plans'], async (tx) => present(await tx.objectStore('plans').get(id), 'no-such-plan')),
    placesOf: (id) =>
      door.read(['places'], async (tx) =>
        (await tx.objectStore('places').index('garment').getAll(id)).map(taps.saw),
      ),
    entriesOfGarment: (id) =>
      door.read(['log'], (tx) => tx.objectStore('log').index('make').getAll(makesRange(id))),
    rework: (reworks, beside) => later(writes, (part) => part.rework(box, reworks, beside)),
  };
}

function placeCalls(
  box: CallsNeed,
): Names<
  'place' | 'latestPlaces' | 'inHand' | 'entriesOf' | 'finishRow' | 'finishRows' | 'undo' | 'goTo' | 'append'
> {
  const { door, taps, seen } = box;

  async function inHand(key?: MakeKey): Promise<Result<InHand>> {
    const known = seen.atOpening(key);
    const read = known ? ok(known) : await door.read(inHandStores, (tx) => readInHand(tx, key));
    if (read.ok) {
      const place = taps.saw(read.value.place);
      return ok(seen.shows(place === read.value.place ? read.value : { ...read.value, place }));
    }
    // the screen goes on with what it shows while the box is away
    const shown = isSilent(read) ? seen.shown(key) : undefined;
    const place = shown && taps.seen(shown.place.id);
    return shown && place ? ok({ ...shown, place }) : read;
  }

  return {
    inHand,
    place: async (key) => {
      const read = await door.read(['places'], async (tx) =>
        present(await tx.objectStore('places').get(key), 'no-such-make'),
      );
      if (read.ok) return ok(taps.saw(read.value));
      const last = taps.seen(key);
      return isSilent(read) && last !== undefined ? ok(last) : read;
    },
    latestPlaces: (n) => door.read(['places'], (tx) => latest(tx, n)),
    entriesOf: (key, { lastN } = {}) => door.read(['log', 'places'], (tx) => readEntries(tx, key, lastN)),
    finishRow: (key, row, by) => taps.tap(key, { kind: 'row', from: row - 1, by }),
    finishRows: (rows) =>
      later(
        () => import('./place/rows-together.ts'),
        (part) => part.finishRows(box, taps, rows),
      ),
    undo: (key, from, by) => taps.tap(key, { kind: 'undo', from, by }),
    goTo: (key, rows, kind, by) => taps.tap(key, { kind, row: rows, by }),
    append: taps.tap,
  };
}

const isSilent = (result: Result<unknown>): boolean =>
  !result.ok && result.faults[0]?.code === 'store-not-answering';

function boxCalls(
  need: CallsNeed,
): Names<
  | 'settings'
  | 'atOpening'
  | 'setSetting'
  | 'onChange'
  | 'state'
  | 'held'
  | 'dropped'
  | 'probe'
  | 'missing'
  | 'forgetMissing'
  | 'sinceBackup'
  | 'box'
  | 'close'
> {
  const { door, changes, taps, sentinel } = need;
  let missing = need.emptied && sentinel.read().garments > 0 ? sentinel.read() : undefined;
  changes.listen((change) => {
    if (change.kind === 'garment' || change.kind === 'all') missing = undefined;
    // garments came back: taps that waited for them can be written
    if (change.kind === 'all') void taps.drain();
  });

  return {
    settings: () => door.read(['settings'], readSettings),
    atOpening: need.settings,
    setSetting: (name, value) =>
      later(
        () => import('./box/set-setting.ts'),
        (part) => part.setSetting(need, name, value),
      ),
    onChange: changes.listen,
    state: door.state,
    held: taps.held,
    dropped: taps.dropped,
    probe: async () => {
      // a window that slept may not have been told of a change
      need.seen.changed();
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
