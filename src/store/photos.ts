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

/** Keeps a picture of a garment. Faults: 'not-storable', 'no-such-garment'. */
export function addPhoto(
  box: Box,
  garment: string,
  image: Blob,
  caption?: string,
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
    await tx.objectStore('photos').put(photo);
    return photo;
  });
}

export const photosOf = (box: Box, garment: string): Promise<Result<PhotoRecord[]>> =>
  box.door.read(['photos'], (tx) => tx.objectStore('photos').index('garment').getAll(garment));

export const deletePhoto = (box: Box, id: string): Promise<Result<void>> =>
  box.door.write(['photos'], (tx) => tx.objectStore('photos').delete(id));
