import type { PlaceRecord } from '../../store/records.ts';

/** Where a make goes on: its part that was knitted last while rows are left in it, else its first part with rows left, else its last. */
export function nextPlace(places: readonly PlaceRecord[]): PlaceRecord | undefined {
  const open = places.filter(({ rows, total }) => rows < total);
  const last = latestKnitted(places);
  return last && last.rows < last.total ? last : (open[0] ?? places.at(-1));
}

/** Where a garment goes on: what was knitted last of all that is not done, else what is not begun yet; undefined when all is knitted. */
export function nextOf(
  makes: readonly { readonly places: readonly PlaceRecord[] }[],
): PlaceRecord | undefined {
  const open = makes
    .flatMap(({ places }) => nextPlace(places) ?? [])
    .filter(({ rows, total }) => rows < total);
  return lastTouched(open);
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
