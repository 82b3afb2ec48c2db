import type { GarmentId } from '../../progress/log.ts';
import { addPhoto, deletePhoto, photosOf } from '../../store/garment/photos.ts';
import type { PhotoRecord } from '../../store/records.ts';
import { shrinkPhoto } from '../device/shrink-photo.ts';
import { readOr, store } from '../store.ts';

/** The photo of the yarn: the newest of the garment's; undefined where there is none. */
export async function openPhoto(garment: GarmentId): Promise<PhotoRecord | undefined> {
  const photos = readOr(await photosOf((await store()).box, garment)) ?? [];
  return photos.reduce<PhotoRecord | undefined>(
    (newest, photo) => (newest && newest.at > photo.at ? newest : photo),
    undefined,
  );
}

/** Keeps a photo in the place of the one before; undefined where the picture cannot be read or kept. */
export async function keepPhoto(garment: GarmentId, file: Blob): Promise<PhotoRecord | undefined> {
  const before = await openPhoto(garment);
  const small = await shrinkPhoto(file);
  if (small === undefined) return undefined;
  const { box } = await store();
  return readOr(await addPhoto(box, garment, small, { instead: before?.id }));
}

/** Whether it is gone. */
export async function removePhoto(id: string): Promise<boolean> {
  const gone = await deletePhoto((await store()).box, id);
  readOr(gone);
  return gone.ok;
}
