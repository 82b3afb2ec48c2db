/** Files of the first screen of a visit that begins with the workbasket, by what they are; and the font of every one. */
export interface FirstFiles {
  readonly scripts: readonly string[];
  readonly styles: readonly string[];
  /** its words, in the language that the device asks for */
  readonly words: Readonly<Record<string, string>> & { readonly en: string };
  readonly font: string;
}

/**
 * Stands in the page's head as text (src/build/head.ts), so it can use nothing from outside itself, and runs before any
 * file of the app is there. It begins what the app is about to ask for, which nothing depends on.
 */
export function askEarly({ scripts, styles, words, font }: FirstFiles): void {
  // A box of many years takes the browser a while to open; asking for the names of all boxes opens it, and no more.
  try {
    indexedDB.databases().catch(() => undefined);
  } catch {
    // an older browser, or one that keeps nothing
  }
  // asked for as the app will ask, or it would be fetched twice
  const need = (href: string, rel: string, as: string) =>
    document.head.append(Object.assign(document.createElement('link'), { rel, as, href, crossOrigin: '' }));
  // Where it is on the device, the first row is set in it at once and not a second time; over a line it would be in the way.
  if (navigator.serviceWorker?.controller) need(font, 'preload', 'font');
  if (!/^(#\/?)?$/.test(location.hash)) return;
  const known = navigator.languages.map((tag) => words[tag.slice(0, 2).toLowerCase()]).find(Boolean);
  for (const href of [...scripts, known ?? words.en]) need(href, 'modulepreload', 'script');
  for (const href of styles) need(href, 'preload', 'style');
}
