import { type Fault, ok, type Result } from '../knit/fault.ts';
import type { LogEntry } from '../progress/log.ts';
import { type Sentinel, type SentinelKeeper, sentinelIn } from './beside/sentinel.ts';
import { type SmallKeep, smallKeep } from './beside/small-keep.ts';
import { type Change, type Listener, openChanges } from './box/changes.ts';
import { type Door, type DoorState, openDoor } from './box/door.ts';
import { type Migration, migrations } from './box/schema.ts';
import { together } from './box/together.ts';
import { makeCalls } from './calls.ts';
import { noneWhenRefused } from './faults.ts';
import type { Rework } from './garment/rework.ts';
import type { GarmentChange } from './garment/write-garment.ts';
import { randomId } from './ids.ts';
import { lastSeenIn, type Seen } from './place/last-seen.ts';
import { readAtOpening } from './place/read-at-opening.ts';
import { type InHand, inHandStores, readInHand, readSettings, type Settings } from './place/reads.ts';
import type { RowMeant } from './place/rows-together.ts';
import { openTaps, type Tapped } from './place/taps.ts';
import type { GarmentRecord, GarmentSummary, NewEntry, PlaceRecord, PlanRecord } from './records.ts';

export type { InHand, Settings } from './place/reads.ts';
export type { RowMeant } from './place/rows-together.ts';
export type { Tapped } from './place/taps.ts';

export interface StoreOptions {
  readonly name?: string;
  readonly factory?: () => IDBFactory | undefined;
  readonly spareFactory?: () => Promise<IDBFactory | undefined>;
  readonly keep?: SmallKeep | undefined;
  readonly now?: () => number;
  /** what will be asked first is read in the transaction that opens it: this make; without a key the last knitted */
  readonly first?: { readonly make?: string | undefined } | undefined;
  readonly migrations?: readonly Migration[];
  /** how long the box may give no answer before it is opened anew, ms */
  readonly patienceMs?: number;
  /** the same for work on the whole box, such as a backup read in, ms */
  readonly longPatienceMs?: number;
  /** the shortest wait before it is opened anew, ms */
  readonly pauseMs?: number;
}

/** What writes into the box. tests/store/box/write-paths.ts has each of them, and what writes beside them. */
export interface Writes {
  /**
   * The only way to change a garment: what the change makes of it as it now is, with the plans of pieces that get other
   * rows, in one transaction. The change is pure; it cannot alter id or beginning. Gives the garment as stored.
   */
  changeGarment(
    id: string,
    change: GarmentChange,
    plans?: readonly PlanRecord[],
  ): Promise<Result<GarmentRecord>>;
  /** For a new garment. One transaction: the garment, the plans (the store gives the versions), a place for every part and make. */
  saveGarment(garment: GarmentRecord, plans: readonly PlanRecord[]): Promise<Result<readonly PlaceRecord[]>>;
  deleteGarment(id: string): Promise<Result<void>>;
  /**
   * this row (from 1) and no other: 'place-moved' where another one comes, 'plan-moved' where it is of another plan
   * @param by id of the plan that was shown, here and below
   */
  finishRow(key: string, row: number, by?: string): Promise<Result<Tapped>>;
  /** a row of each of several makes, all of them or none */
  finishRows(rows: readonly RowMeant[]): Promise<Result<readonly PlaceRecord[]>>;
  /** takes back the last change of place that still stands; again and again walks further back. `from`: rows as shown */
  undo(key: string, from: number, by?: string): Promise<Result<Tapped>>;
  goTo(key: string, rows: number, kind: 'place' | 'rip back', by?: string): Promise<Result<Tapped>>;
  /** a check, note, lifeline, or the striking out of one; the place stays */
  append(key: string, entry: NewEntry): Promise<Result<Tapped>>;
  /** new plans for makes, all of them or none: what one gives up another takes. Gives their places. */
  rework(reworks: readonly Rework[]): Promise<Result<readonly PlaceRecord[]>>;
  setSetting(name: string, value: unknown): Promise<Result<void>>;
  /** asks the box whether it answers and writes what is held into it: for when the app comes into view */
  probe(): Promise<Result<void>>;
}

/**
 * Everything that is kept. Every call answers with a Result and never throws; a write that answers ok is on disk.
 * Faults: see `StoreFaults`. Rows and makes count as in the log; times are ms since 1970.
 */
export interface Store extends Writes {
  /** cheap with hundreds of garments; in no order */
  list(): Promise<Result<readonly GarmentSummary[]>>;
  garment(id: string): Promise<Result<GarmentRecord>>;
  plan(planId: string): Promise<Result<PlanRecord>>;
  place(key: string): Promise<Result<PlaceRecord>>;
  placesOf(garment: string): Promise<Result<readonly PlaceRecord[]>>;
  /** begun makes, the last one knitted first */
  latestPlaces(n: number): Promise<Result<readonly PlaceRecord[]>>;
  /** a make with its plan and the settings; without a key the make last knitted */
  inHand(key?: string): Promise<Result<InHand>>;
  /** in order; only the newest ones where `lastN` is given */
  entriesOf(key: string, options?: { readonly lastN?: number }): Promise<Result<readonly LogEntry[]>>;
  /** of all makes of a garment; the order within each make is the log's */
  entriesOfGarment(id: string): Promise<Result<readonly LogEntry[]>>;
  settings(): Promise<Result<Settings>>;
  /** as they were when it was opened: known without another transaction */
  readonly atOpening: Settings;
  /** this window's writes and those of other windows; returns the way to stop listening */
  onChange(listener: Listener): () => void;
  state(): DoorState;
  /** taps kept outside the box until it takes them */
  held(): number;
  /** why something that was kept outside was not written in the end; asked for once */
  dropped(): Fault | undefined;
  /** what this device knew of a box that is now empty: her garments are missing, she is not new */
  missing(): Sentinel | undefined;
  /** she goes on without what is missing */
  forgetMissing(): void;
  /** how much was logged since the last backup */
  sinceBackup(): Sentinel;
  /** the door itself, for what is loaded only when it is asked for (backup, photos) */
  readonly box: Box;
  close(): void;
}

/** What the parts that are loaded later need. */
export interface Box {
  readonly door: Door;
  readonly sentinel: SentinelKeeper;
  readonly now: () => number;
  readonly device: string;
  readonly tell: (change: Change) => void;
}

/** Needed when storage fails, and there by then: the file comes once the first screen stands (src/app/start/later.ts). */
const frameOfOurs = () =>
  import('./box/frame-factory.ts').then(({ frameFactory }) => frameFactory()).catch(() => undefined);

export async function openStore(options: StoreOptions = {}): Promise<Result<Store>> {
  const name = options.name ?? 'ridgeline';
  const keep = 'keep' in options ? options.keep : smallKeep();
  const changes = openChanges(name);
  const door = openDoor({
    name,
    factory: options.factory ?? (() => globalThis.indexedDB),
    spareFactory: options.spareFactory ?? frameOfOurs,
    migrations: options.migrations ?? migrations,
    patienceMs: () => options.patienceMs ?? 8000,
    longPatienceMs: () => options.longPatienceMs ?? 300_000,
    pauseMs: options.pauseMs,
    onState: () => changes.tellHere({ kind: 'state' }),
  });
  const lastSeen = lastSeenIn(keep, name);
  const start = await readStart(door, options.first, lastSeen.seen());
  if (!start.ok) {
    changes.close();
    door.close();
    return start;
  }
  const { device, isEmpty, settings, inHand } = start.value;
  const sentinel = sentinelIn(keep, name);
  const box: Box = { door, sentinel, device, now: options.now ?? Date.now, tell: changes.tell };
  const taps = openTaps({ ...box, keep, name });
  // before what is held goes into the box: that is a change
  const first = readAtOpening(options.first?.make, inHand, changes);
  await taps.drain();
  return ok(makeCalls({ ...box, changes, taps, emptied: isEmpty, settings, first, lastSeen }));
}

interface Start {
  /** the device's own letters, made once; a box that may only be read needs none */
  readonly device: string;
  /** it holds no garment */
  readonly isEmpty: boolean;
  readonly settings: Settings;
  /** the make that was asked for; undefined where there is none */
  readonly inHand: InHand | undefined;
}

/** What has to be known before anything can be asked, in one transaction: a start waits for it. */
async function readStart(
  door: Door,
  first: StoreOptions['first'],
  guess: Seen | undefined,
): Promise<Result<Start>> {
  const known = await door.read(['settings', 'summaries', ...(first ? inHandStores : [])], (tx) =>
    together(
      () => readSettings(tx),
      async () => {
        // nothing was ever begun, or the make is gone: said when it is asked for
        const inHand = first && (await readInHand(tx, first.make, guess).catch(noneWhenRefused));
        return { inHand, isEmpty: !inHand && (await tx.objectStore('summaries').count()) === 0 };
      },
    ),
  );
  if (!known.ok) return known;
  const [settings, found] = known.value;
  const start = { ...found, settings };
  const { device } = settings;
  if (typeof device === 'string') return ok({ ...start, device });
  if (door.state() === 'read only') return ok({ ...start, device: '' });
  return door.write(['settings'], async (tx) => {
    const stored = tx.objectStore('settings');
    const other = await stored.get('device');
    if (typeof other === 'string') return { ...start, device: other };
    const made = randomId(8);
    await stored.put(made, 'device');
    return { ...start, device: made };
  });
}
