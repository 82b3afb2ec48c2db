/** Longest side of a kept photo, CSS px: enough to tell a colour and a texture, about 150 KB. */
const LONGEST_PX = 1200;
const QUALITY = 0.8;

/** The picture made small, upright, and without where and when it was taken; undefined where it cannot be read. */
export async function shrinkPhoto(file: Blob): Promise<Blob | undefined> {
  const picture = await createImageBitmap(file, { imageOrientation: 'from-image' }).catch(() => undefined);
  if (picture === undefined) return undefined;
  const scale = Math.min(1, LONGEST_PX / Math.max(picture.width, picture.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(picture.width * scale));
  canvas.height = Math.max(1, Math.round(picture.height * scale));
  canvas.getContext('2d')?.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  return new Promise((resolve) =>
    canvas.toBlob((small) => resolve(small ?? undefined), 'image/jpeg', QUALITY),
  );
}
