/** What goes out of the app to another program on this device; each says whether it could. */

export async function copyText(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

export const shareLink = (title: string, url: string): Promise<boolean> => share({ title, url });

/** As a text file where the platform takes files, else as text. */
export function shareText(title: string, text: string): Promise<boolean> {
  const files = [new File([text], safeName(`${title}.txt`), { type: 'text/plain' })];
  return share(navigator.canShare?.({ files }) ? { title, files } : { title, text });
}

/** The platform's share sheet; false where there is none, true also when she thought better of it. */
async function share(what: ShareData): Promise<boolean> {
  if (typeof navigator.share !== 'function') return false;
  try {
    await navigator.share(what);
    return true;
  } catch (error) {
    return error instanceof DOMException && error.name === 'AbortError';
  }
}

/** Saves text as a file through the browser's own download. */
export function saveFile(name: string, text: string, type = 'text/plain'): void {
  const url = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = safeName(name);
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}

/** File names take no slashes, colons or control signs, and are not endless. */
export const safeName = (name: string): string => {
  const safe = [...name].filter((sign) => sign >= ' ' && !'\\/:*?"<>|'.includes(sign)).join('');
  return safe.slice(-120).replace(/^\.+/, '') || 'ridgeline';
};
