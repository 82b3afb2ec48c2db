import type { Tx } from '../box/schema.ts';
import { each, together } from '../box/together.ts';
import { toldPlaces } from '../garment/places.ts';
import { summaryOf } from '../garment/write-garment.ts';
import type { PlaceRecord } from '../records.ts';
import type { Deed } from './preview.ts';
import { stableJson } from './stable.ts';

type Write = Tx<'readwrite'>;

/** The garment with all that is not laid aside; what it no longer has is cleared away later where all of it goes. */
export async function writeDeed(
  tx: Write,
  { id, here, after }: Omit<Deed, 'change'>,
  old: readonly PlaceRecord[],
): Promise<void> {
  const [garment] = after?.garments ?? [];
  if (after === undefined || garment === undefined) {
    await together(
      () => each(old, (place) => tx.objectStore('places').delete(place.id)),
      () => tx.objectStore('garments').delete(id),
      () => tx.objectStore('summaries').delete(id),
    );
    return;
  }
  const places = toldPlaces(garment, after.plans, after.entries, old);
  const kept = new Set(places.map((place) => place.id));
  await together(
    () => tx.objectStore('garments').put(garment),
    () => tx.objectStore('summaries').put(summaryOf(garment, places)),
    () => each(places, (place) => tx.objectStore('places').put(place)),
    () =>
      each(
        old.filter((place) => !kept.has(place.id)),
        (place) => tx.objectStore('places').delete(place.id),
      ),
    async () => here && writeDifference(tx, 'plans', here.backup.plans, after.plans),
    async () => here && writeDifference(tx, 'log', here.backup.entries, after.entries),
  );
}

async function writeDifference(
  tx: Write,
  name: 'plans' | 'log',
  before: readonly { readonly id: string }[],
  after: readonly { readonly id: string }[],
): Promise<void> {
  const old = new Map(before.map((item) => [item.id, stableJson(item)]));
  const kept = new Set(after.map((item) => item.id));
  const store = tx.objectStore(name);
  await each(
    after.filter((item) => old.get(item.id) !== stableJson(item)),
    (item) => store.put(item as never),
  );
  await each(
    before.filter((item) => !kept.has(item.id)),
    (item) => store.delete(item.id),
  );
}
