import type { PhotoRecord } from '../records.ts';
import type { Backup } from './document.ts';

type PhotoText = Backup['photos'][number];

/** A photo as it stands in a backup: a data URL of the picture. */
export async function photoToText({ image, ...photo }: PhotoRecord): Promise<PhotoText> {
  const bytes = new Uint8Array(await image.arrayBuffer());
  let binary = '';
  // in pieces: a call takes only so many arguments
  for (let i = 0; i < bytes.length; i += 8192) binary += String.fromCharCode(...bytes.subarray(i, i + 8192));
  return { ...photo, image: `data:${image.type};base64,${btoa(binary)}` };
}

/** The picture of a text that passed the door of backups. */
export function textToPhoto({ image, ...photo }: PhotoText): PhotoRecord {
  const [head = '', body = ''] = image.split(',', 2);
  const type = head.slice('data:'.length, -';base64'.length);
  return { ...photo, image: new Blob([Uint8Array.from(atob(body), (sign) => sign.charCodeAt(0))], { type }) };
}
