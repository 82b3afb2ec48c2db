import { type Fault, fault, ok, type Result } from '../../knit/fault.ts';
import type { MakeKey } from '../../progress/log.ts';
import type { Beside, BesideNeed } from '../beside/beside.ts';
import { heldIn, keysFrom } from '../beside/small-keep.ts';
import { mayStill } from '../faults.ts';
import { entryId } from '../ids.ts';
import type { NewEntry, PlaceRecord } from '../records.ts';
import { tapStores, type Wish, writeWish } from './write-log.ts';

/** What a tap gave: the place after it. */
export interface Tapped {
  readonly place: PlaceRecord;
  /** why the box does not take it: kept outside, and written into it as soon as it does */
  readonly held?: Fault;
}

export interface Taps {
  tap(key: MakeKey, entry: NewEntry): Promise<Result<Tapped>>;
  /** keeps them outside the box, all or none; gives the places with them, undefined where they cannot be kept */
  hold(wishes: readonly Wish[]): Promise<readonly PlaceRecord[] | undefined>;
  /** writes what is held into the box; resolves to the reason where that does not take it */
  drain(): Promise<Fault | undefined>;
  /** how many are held */
  held(): number;
  /** why something that was held was not written in the end; once told it is forgotten */
  dropped(): Fault | undefined;
  /** remembers a place that was read, to go on from when the box takes nothing; gives it with what is held worked in */
  saw(place: PlaceRecord): PlaceRecord;
  /** the place as last seen, with what is held worked in */
  seen(key: MakeKey): PlaceRecord | undefined;
  stop(): void;
}

export interface TapsNeed extends BesideNeed {
  readonly device: string;
  readonly now: () => number;
}

export function openTaps(need: TapsNeed): Taps {
  const { door, keep, name, sentinel, device, now, tell, seen } = need;
  /** wishes of which nobody can say whether they were written; the same tap again is the same wish */
  const unsure = new Map<MakeKey, Wish>();
  let beside: Beside | undefined;

  /** Undefined where that part of the app is not to be had. */
  const opened = async (): Promise<Beside | undefined> => {
    const part = await import('../beside/beside.ts').catch(() => undefined);
    beside ??= part?.openBeside(need);
    return beside;
  };

  async function tap(key: MakeKey, entry: NewEntry): Promise<Result<Tapped>> {
    const wish = wishFor(key, entry);
    const away = await drain();
    return (away && (await heldTap(wish, away))) ?? write(wish);
  }

  function wishFor(key: MakeKey, entry: NewEntry): Wish {
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
    const was = seen.place(wish.make);
    const ways = was?.ways ? await import('./told-ways.ts').catch(() => undefined) : undefined;
    const written = await door.write(tapStores, async (tx, again) => {
      const place = await writeWish(tx, wish, again || doubted, ways ? undefined : was);
      return ways ? ways.withWaysTold(tx, place) : place;
    });
    if (!written.ok) return refused(wish, written);
    unsure.delete(wish.make);
    seen.saw(written.value);
    sentinel.change((was) => ({ entries: was.entries + 1 }), true);
    tell({ kind: 'place', key: wish.make });
    return ok({ place: written.value });
  }

  async function refused(wish: Wish, answer: Result<never>): Promise<Result<Tapped>> {
    const why = mayStill(answer);
    if (why) unsure.set(wish.make, wish);
    else unsure.delete(wish.make);
    return (why && (await heldTap(wish, why))) ?? answer;
  }

  async function heldTap(wish: Wish, held: Fault): Promise<Result<Tapped> | undefined> {
    const [place] = (await hold([wish])) ?? [];
    return place && ok({ place, held });
  }

  async function hold(wishes: readonly Wish[]): Promise<readonly PlaceRecord[] | undefined> {
    const places = (await opened())?.hold(wishes);
    if (places) for (const { make } of wishes) unsure.delete(make);
    return places;
  }

  const held = () => beside?.count() ?? keysFrom(keep, heldIn(name)).length;

  const drain = async () => (held() > 0 ? ((await opened())?.drain() ?? fault('app-incomplete')) : undefined);

  const placeWith = (place: PlaceRecord) => beside?.placeWith(place) ?? place;

  return {
    tap,
    hold,
    drain,
    held,
    dropped: () => beside?.dropped(),
    saw(place) {
      seen.saw(place);
      return placeWith(place);
    },
    seen(key) {
      const base = seen.place(key);
      return base && placeWith(base);
    },
    stop: () => beside?.stop(),
  };
}
