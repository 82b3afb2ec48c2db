import type { Fault } from '../../knit/fault.ts';
import type { Change } from '../box/changes.ts';
import type { Door } from '../box/door.ts';
import { journalIn } from '../place/journal.ts';
import type { LastSeen } from '../place/last-seen.ts';
import type { Wish } from '../place/write-log.ts';
import type { PlaceRecord } from '../records.ts';
import type { SentinelKeeper } from './sentinel.ts';
import type { SmallKeep } from './small-keep.ts';
import { writeHeld } from './write-held.ts';

/** What becomes of taps that the box does not take: in memory before that happens, and no sooner (src/app/start/later.ts). */
export interface Beside {
  readonly count: () => number;
  /** keeps them outside the box, all or none; gives the places with them, undefined where they cannot be kept */
  hold(wishes: readonly Wish[]): readonly PlaceRecord[] | undefined;
  /** writes what is held into the box; resolves to the reason where that does not take it */
  drain(): Promise<Fault | undefined>;
  /** why something that was held was not written in the end; once told it is forgotten */
  dropped(): Fault | undefined;
  /** the place with what is held worked in */
  placeWith(place: PlaceRecord): PlaceRecord;
  stop(): void;
}

export interface BesideNeed {
  readonly door: Door;
  readonly keep: SmallKeep | undefined;
  /** of the box */
  readonly name: string;
  readonly sentinel: SentinelKeeper;
  readonly tell: (change: Change) => void;
  readonly seen: LastSeen;
}

const DRAIN_EVERY_MS = 3000;

export function openBeside({ door, keep, name, sentinel, tell, seen }: BesideNeed): Beside {
  const journal = journalIn(keep, name);
  let draining: Promise<Fault | undefined> | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let refused: Fault | undefined;

  function again(): void {
    clearTimeout(timer);
    timer = setTimeout(() => void drain().then((away) => away && again()), DRAIN_EVERY_MS);
  }

  function drain(): Promise<Fault | undefined> {
    if (journal.taps().length === 0) return Promise.resolve(undefined);
    draining ??= drainOnce().finally(() => {
      draining = undefined;
    });
    return draining;
  }

  async function drainOnce(): Promise<Fault | undefined> {
    const written = await writeHeld(door, journal);
    if (!written.ok) return written.faults[0];
    if (written.value === undefined) return undefined;
    const { places, entries } = written.value;
    refused = written.value.refused ?? refused;
    for (const place of places) seen.saw(place);
    sentinel.change((was) => ({ entries: was.entries + entries }));
    tell({ kind: 'all' });
    return undefined;
  }

  return {
    count: () => journal.taps().length,
    hold(wishes) {
      const places: PlaceRecord[] = [];
      for (const wish of wishes) {
        const base = seen.place(wish.make);
        const place = base && journal.hold(wish, base);
        if (place) places.push(place);
      }
      if (places.length < wishes.length) {
        for (const { id } of wishes) journal.drop(id);
        return undefined;
      }
      for (const { make } of wishes) tell({ kind: 'place', key: make });
      again();
      return places;
    },
    drain,
    dropped() {
      const told = refused;
      refused = undefined;
      return told;
    },
    placeWith: journal.placeWith,
    stop: () => clearTimeout(timer),
  };
}
