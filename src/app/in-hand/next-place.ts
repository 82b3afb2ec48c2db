import type { PlaceRecord } from '../../store/records.ts';
import type { GarmentView } from '../state.ts';
import { nextMake } from './next-make.ts';

/** Where a make goes on: its part that was knitted last while rows are left in it, else its first part with rows left, else its last. */
export function nextPlace(places: readonly PlaceRecord[]): PlaceRecord | undefined {
  const open = places.filter(({ rows, total }) => rows < total);
  const last = latestKnitted(places);
  return last && last.rows < last.total ? last : (open[0] ?? places.at(-1));
}

/**
 * Where a garment goes on: what was knitted last while rows are left in it, else what comes after that, as the end of a
 * part and the workbasket say; undefined when all is knitted.
 */
export function nextOf(view: GarmentView): PlaceRecord | undefined {
  const places = view.pieces.flatMap(({ makes }) => makes.flatMap((make) => make.places));
  const last = latestKnitted(places);
  if (last && last.rows >= last.total) return nextMake(view, last)?.place;
  return last ?? places.find(({ rows, total }) => rows < total);
}

/** The place knitted last; undefined before the first row. */
export const latestKnitted = (places: readonly PlaceRecord[]): PlaceRecord | undefined =>
  lastTouched(places.filter(({ touched }) => touched > 0));

/** Of places that were touched alike the first one. */
const lastTouched = (places: readonly PlaceRecord[]): PlaceRecord | undefined =>
  places.reduce<PlaceRecord | undefined>(
    (best, place) => (best === undefined || place.touched > best.touched ? place : best),
    undefined,
  );
