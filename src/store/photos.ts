import { fault, type Result } from '../knit/fault.ts';
import { Refusal } from './faults.ts';
import { randomId } from './ids.ts';
import type { PhotoRecord } from './records.ts';
import type { Box } from './store.ts';

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

/** Keeps a picture of a garment. Faults: 'not-storable', 'photos-full', 'no-such-garment'. */
export function addPhoto(
  box: Box,
  garment: string,
  image: Blob,
  caption?: string,
  most = MOST_OF_PHOTOS,
): Promise<Result<PhotoRecord>> {
  const photo: PhotoRecord = {
    id: `${box.device}-${randomId(14)}`,
    garment,
    at: box.now(),
    ...(caption === undefined ? {} : { caption }),
    image,
  };
  return box.door.write(['photos', 'garments'], async (tx) => {
    if (!photoTypes.includes(image.type))
      throw new Refusal(fault('not-storable', { detailText: image.type }));
    if (image.size > LARGEST_PHOTO) throw new Refusal(fault('not-storable', { detailText: `${image.size}` }));
    if ((await tx.objectStore('garments').count(garment)) === 0) throw new Refusal(fault('no-such-garment'));
    const others = (await tx.objectStore('photos').getAll()).reduce((sum, one) => sum + one.image.size, 0);
    if (others + image.size > most)
      throw new Refusal(fault('photos-full', { mostMillions: Math.floor(most / 1e6) }));
    await tx.objectStore('photos').put(photo);
    return photo;
  });
}

export const photosOf = (box: Box, garment: string): Promise<Result<PhotoRecord[]>> =>
  box.door.read(['photos'], (tx) => tx.objectStore('photos').index('garment').getAll(garment));

export const deletePhoto = (box: Box, id: string): Promise<Result<void>> =>
  box.door.write(['photos'], (tx) => tx.objectStore('photos').delete(id));
