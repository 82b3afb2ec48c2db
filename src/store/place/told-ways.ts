import { waysIn } from '../../progress/ways.ts';
import type { Tx } from '../box/schema.ts';
import type { PlaceRecord } from '../records.ts';
import { logOf } from './write-log.ts';

/**
 * A place that was just written, with as many other ways as its log tells of by now: with each entry one of them may come
 * to lie on the way that is shown. Loaded where a place tells of any, which is seldom.
 */
export async function withWaysTold(tx: Tx<'readwrite'>, place: PlaceRecord): Promise<PlaceRecord> {
  if (place.ways === undefined) return place;
  const { ways: before, ...rest } = place;
  const ways = waysIn(await logOf(tx, place.id)).open.length;
  if (ways === before) return place;
  const told = ways > 0 ? { ...rest, ways } : rest;
  await tx.objectStore('places').put(told);
  return told;
}
