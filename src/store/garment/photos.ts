import { fault, ok, type Result } from '../../knit/fault.ts';
import type { GarmentId } from '../../progress/log.ts';
import type { Box } from '../box/box.ts';
import type { Tx } from '../box/schema.ts';
import { mayStill, Refusal } from '../faults.ts';
import { randomId } from '../ids.ts';
import type { PhotoRecord } from '../records.ts';
import { withoutPhotos } from '../uniting/stamped-change.ts';

/** The kinds of picture that a backup can carry, and the largest, bytes. */
export const photoTypes: readonly string[] = [
  'image/png',
  'image/jpeg',
  'image/webp',
  'image/gif',
  'image/avif',
];
export const LARGEST_PHOTO = 8_000_000;

/** All pictures together, bytes: as text in a backup they are a third more, and it must hold the rest too. */
const MOST_OF_PHOTOS = 250_000_000;

interface PhotoWish {
  readonly caption?: string;
  /** id of a picture in whose place it comes */
  readonly instead?: string | undefined;
  /** most of all pictures together, bytes */
  readonly most?: number;
}

/** One of which nobody can say whether it was written: kept once more, it is the same one. */
const unsure = new WeakMap<Box, { readonly asked: string; readonly photo: PhotoRecord }>();

/** Keeps a picture of a garment, once. Faults: 'not-storable', 'photos-full', 'no-such-garment'. */
export async function addPhoto(
  box: Box,
  garment: GarmentId,
  image: Blob,
  { caption, instead, most = MOST_OF_PHOTOS }: PhotoWish = {},
): Promise<Result<PhotoRecord>> {
  const asked = JSON.stringify([garment, image.type, image.size, caption, instead]);
  const before = unsure.get(box);
  const photo: PhotoRecord =
    before?.asked === asked
      ? before.photo
      : {
          id: `${box.device}-${randomId(14)}`,
          garment,
          at: box.now(),
          ...(caption === undefined ? {} : { caption }),
          image,
        };
  const written = await box.door.write(['photos', 'garments'], async (tx) => {
    if (!photoTypes.includes(image.type))
      throw new Refusal(fault('not-storable', { detailText: image.type }));
    if (image.size > LARGEST_PHOTO) throw new Refusal(fault('not-storable', { detailText: `${image.size}` }));
    if ((await tx.objectStore('garments').count(garment)) === 0) throw new Refusal(fault('no-such-garment'));
    const store = tx.objectStore('photos');
    if (instead !== undefined) await takeAway(tx, box, instead);
    const others = (await store.getAll()).reduce((sum, one) => sum + one.image.size, 0);
    if (others + image.size > most)
      throw new Refusal(fault('photos-full', { mostMillions: Math.floor(most / 1e6) }));
    await store.put(photo);
    return photo;
  });
  if (mayStill(written)) unsure.set(box, { asked, photo });
  else unsure.delete(box);
  if (written.ok) box.tell({ kind: 'garment', id: garment });
  return written;
}

export const photosOf = (box: Box, garment: GarmentId): Promise<Result<PhotoRecord[]>> =>
  box.door.read(['photos'], (tx) => tx.objectStore('photos').index('garment').getAll(garment));

/** The garment remembers that it is gone: devices that still have it hear of it when they are united. */
export async function deletePhoto(box: Box, id: string): Promise<Result<void>> {
  const gone = await box.door.write(['photos', 'garments'], (tx) => takeAway(tx, box, id));
  if (!gone.ok) return gone;
  if (gone.value !== undefined) box.tell({ kind: 'garment', id: gone.value });
  return ok(undefined);
}

/** Gives the garment of which it was one. */
async function takeAway(tx: Tx<'readwrite'>, { device, now }: Box, id: string): Promise<string | undefined> {
  const photo = await tx.objectStore('photos').get(id);
  if (photo === undefined) return undefined;
  const garment = await tx.objectStore('garments').get(photo.garment);
  await tx.objectStore('photos').delete(id);
  if (garment !== undefined)
    await tx.objectStore('garments').put(withoutPhotos(garment, [id], { device, at: now() }));
  return photo.garment;
}
