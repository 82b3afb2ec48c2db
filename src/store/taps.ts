import { ok, type Result } from '../knit/fault.ts';
import type { Change } from './changes.ts';
import type { Door } from './door.ts';
import { noneWhenRefused } from './faults.ts';
import { entryId } from './ids.ts';
import type { Journal } from './journal.ts';
import type { NewEntry, PlaceRecord } from './records.ts';
import type { SentinelKeeper } from './sentinel.ts';
import { tapStores, type Wish, writeWish } from './write-log.ts';

/** What a tap gave: the place after it. */
export interface Tapped {
  readonly place: PlaceRecord;
  /** true while the box does not answer: kept outside it, and written into it as soon as it answers */
  readonly held?: true;
}

export interface Taps {
  tap(key: string, entry: NewEntry): Promise<Result<Tapped>>;
  /** writes what is held into the box; resolves to whether nothing is held any more */
  drain(): Promise<boolean>;
  /** remembers a place that was read, to go on from when the box falls silent */
  saw(place: PlaceRecord): PlaceRecord;
  /** the place as last seen, with what is held worked in */
  seen(key: string): PlaceRecord | undefined;
  stop(): void;
}

export interface TapsNeed {
  readonly door: Door;
  readonly journal: Journal;
  readonly sentinel: SentinelKeeper;
  readonly device: string;
  readonly now: () => number;
  readonly tell: (change: Change) => void;
}

const DRAIN_EVERY_MS = 3000;

export function openTaps({ door, journal, sentinel, device, now, tell }: TapsNeed): Taps {
  const known = new Map<string, PlaceRecord>();
  /** wishes of which nobody can say whether they were written; the same tap again is the same wish */
  const unsure = new Map<string, Wish>();
  let draining: Promise<boolean> | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;

  async function tap(key: string, entry: NewEntry): Promise<Result<Tapped>> {
    const wish = wishFor(key, entry);
    if (!(await drain())) return hold(wish) ?? write(wish);
    return write(wish);
  }

  function wishFor(key: string, entry: NewEntry): Wish {
    const before = unsure.get(key);
    const same =
      before !== undefined &&
      before.kind === entry.kind &&
      before.row === entry.row &&
      before.from === entry.from &&
      before.by === entry.by;
    return same ? before : { ...entry, id: entryId(device), make: key, at: now() };
  }

  async function write(wish: Wish): Promise<Result<Tapped>> {
    const doubted = unsure.has(wish.make);
    const written = await door.write(tapStores, (tx, again) =>
      writeWish(tx, wish, again || doubted, known.get(wish.make)),
    );
    if (!written.ok) return refused(wish, written);
    unsure.delete(wish.make);
    known.set(wish.make, written.value);
    sentinel.change((was) => ({ entries: was.entries + 1 }), true);
    tell({ kind: 'place', key: wish.make });
    return ok({ place: written.value });
  }

  function refused(wish: Wish, answer: Result<never>): Result<Tapped> {
    const code = answer.ok ? undefined : answer.faults[0]?.code;
    const unsaid = code === 'store-not-answering' || code === 'storage-full';
    if (unsaid) unsure.set(wish.make, wish);
    else unsure.delete(wish.make);
    return (code === 'store-not-answering' ? hold(wish) : undefined) ?? answer;
  }

  function hold(wish: Wish): Result<Tapped> | undefined {
    const base = known.get(wish.make);
    const place = base === undefined ? undefined : journal.hold(wish, base);
    if (place === undefined) return undefined;
    unsure.delete(wish.make);
    again();
    tell({ kind: 'place', key: wish.make });
    return ok({ place, held: true });
  }

  function again(): void {
    clearTimeout(timer);
    timer = setTimeout(() => void drain().then((empty) => (empty ? undefined : again())), DRAIN_EVERY_MS);
  }

  function drain(): Promise<boolean> {
    if (journal.taps().length === 0) return Promise.resolve(true);
    draining ??= drainOnce().finally(() => {
      draining = undefined;
    });
    return draining;
  }

  async function drainOnce(): Promise<boolean> {
    const held = journal.taps();
    const written = await door.write([...tapStores, 'summaries'], async (tx) => {
      const places = new Map<string, PlaceRecord>();
      // a box that has lost its garments may get them back from a backup: the taps wait for that
      if ((await tx.objectStore('summaries').count()) === 0) return undefined;
      for (const { wish } of held) {
        // one that makes no sense any more (the garment is gone, the part was ended elsewhere) holds up no other
        const place = await writeWish(tx, wish, true).catch(noneWhenRefused);
        if (place !== undefined) places.set(place.id, place);
      }
      return places;
    });
    if (!written.ok) return false;
    if (written.value === undefined) return true;
    for (const { wish } of held) journal.drop(wish.id);
    for (const [key, place] of written.value) known.set(key, place);
    sentinel.change((was) => ({ entries: was.entries + held.length }));
    tell({ kind: 'all' });
    return journal.taps().length === 0;
  }

  return {
    tap,
    drain,
    saw(place) {
      known.set(place.id, place);
      return place;
    },
    seen(key) {
      const base = known.get(key);
      return base === undefined ? undefined : journal.placeWith(base);
    },
    stop: () => clearTimeout(timer),
  };
}
