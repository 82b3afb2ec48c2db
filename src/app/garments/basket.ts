import type { GarmentId } from '../../progress/log.ts';
import type { GarmentSummary, PlaceRecord } from '../../store/records.ts';
import type { BasketEntry } from '../state.ts';

/** Where a garment lies: knitted lately, laid aside, not begun, or all rows done. */
export type Shelf = 'on the needles' | 'resting' | 'to begin' | 'finished';

export const shelves: readonly Shelf[] = ['on the needles', 'resting', 'to begin', 'finished'];

/** Laid aside after three weeks: our own choice. */
const RESTS_AFTER_MS = 21 * 24 * 3_600_000;

/** Garments with their progress, the last knitted first, then the newest. `places[i]` are those of `list[i]`. */
export const basketOf = (
  list: readonly GarmentSummary[],
  places: readonly (readonly PlaceRecord[])[],
): readonly BasketEntry[] =>
  list
    .map((garment, i) => entryOf(garment, places[i] ?? []))
    .sort((a, b) => b.at - a.at || b.garment.createdAt - a.garment.createdAt);

const entryOf = (garment: GarmentSummary, places: readonly PlaceRecord[]): BasketEntry => ({
  garment,
  worked: places.reduce((sum, place) => sum + place.rows, 0),
  at: places.reduce((last, place) => Math.max(last, place.at), 0),
});

export function shelfOf(entry: BasketEntry, now: number): Shelf {
  if (entry.worked >= entry.garment.rows && entry.garment.rows > 0) return 'finished';
  if (entry.worked === 0) return 'to begin';
  return now - entry.at > RESTS_AFTER_MS ? 'resting' : 'on the needles';
}

/** What lies on a shelf at a moment (ms since 1970); the garment whose row stands above the shelves rests on none. */
export const onShelf = (
  shelf: Shelf,
  entries: readonly BasketEntry[],
  now: number,
  inHand: GarmentId | undefined,
): readonly BasketEntry[] =>
  entries.filter(
    (entry) => shelfOf(entry, now) === shelf && !(shelf === 'resting' && entry.garment.id === inHand),
  );
