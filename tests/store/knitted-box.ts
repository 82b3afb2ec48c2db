import type { Backup } from '../../src/store/backup/document.ts';
import { exportAll } from '../../src/store/backup/export.ts';
import { addPhoto } from '../../src/store/garment/photos.ts';
import type { Store } from '../../src/store/store.ts';
import { freshStore, given, LONG, nextRow, planOf, scarf, undoLast } from './scenario.ts';

/** A picture of one red dot, PNG. */
export const dot = (): Blob =>
  new Blob(
    [
      Uint8Array.from(
        atob(
          'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR4nGP4z8DwHwAFAAH/iZk9HQAAAABJRU5ErkJggg==',
        ),
        (sign) => sign.charCodeAt(0),
      ),
    ],
    { type: 'image/png' },
  );

/** A box in which every kind of thing has been done once. */
export async function knittedBox(
  now = () => 1_700_000_000_000,
): Promise<Awaited<ReturnType<typeof freshStore>>> {
  const store = await freshStore({ now });
  const { garment, plans } = scarf();
  const full = {
    ...garment,
    notes: 'for a windy beach',
    yarns: [{ name: 'Harbour', fibre: 'wool', grams: 50, metres: 110, balls: 4 }],
    design: { ease: { chest: 60 }, shape: 'straight' },
    texts: { long: 'Cast on 20. Knit every row.' },
    ticked: ['weave in'],
  };
  given(await store.saveGarment(full, plans));
  for (let i = 0; i < 6; i += 1) given(await nextRow(store, LONG));
  given(await undoLast(store, LONG));
  given(await store.append(LONG, { kind: 'check', count: 20 }));
  given(await store.append(LONG, { kind: 'note', text: 'left the blue marker in' }));
  given(await store.append(LONG, { kind: 'lifeline', text: 'red thread' }));
  given(await store.goTo(LONG, 4, 'rip back'));
  given(await store.rework([{ key: LONG, plan: planOf('scarf', 'long', 26) }]));
  given(await nextRow(store, LONG));
  given(await nextRow(store, 'scarf/cuff/0/2'));
  given(await store.setSetting('hand', 'left'));
  given(await addPhoto(store.box, 'scarf', dot(), { caption: 'the first hand of rows' }));
  return store;
}

/** What two boxes must agree on: everything but when and where the backup was made. */
export async function everything(store: Store): Promise<Omit<Backup, 'madeAt' | 'device'>> {
  const { madeAt: _madeAt, device: _device, ...rest } = given(await exportAll(store.box));
  return rest;
}

/** Places as the log tells them, without what belongs to the device. */
export async function places(store: Store, garment = 'scarf') {
  const all = given(await store.placesOf(garment));
  return all.map(({ touched: _touched, ...place }) => place);
}
