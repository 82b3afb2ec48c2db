/** Files of the screens that a visit may begin with, by what they are; and the font of every one. */
export interface FirstFiles {
  /** scripts and styles, each once */
  readonly files: readonly string[];
  /** of each screen, by its address without '#/': which of these it needs, beside the first script */
  readonly screens: Readonly<Record<string, readonly number[]>>;
  /** of each language: what the workbasket says, and what the others say */
  readonly words: Readonly<Record<string, readonly [first: string, rest: string]>>;
  readonly font: string;
}

/**
 * Stands in the page's head as text (src/build/head.ts), so it can use nothing from outside itself, and runs before any
 * file of the app is there. It begins what the app is about to ask for, which nothing depends on.
 */
export function askEarly({ files, screens, words, font }: FirstFiles): void {
  // A box of many years takes the browser a while to open; asking for the names of all boxes opens it, and no more.
  try {
    indexedDB.databases().catch(() => undefined);
  } catch {
    // an older browser, or one that keeps nothing
  }
  // asked for as the app will ask, or it would be fetched twice
  const need = (href: string, rel: string, as: string) =>
    document.head.append(Object.assign(document.createElement('link'), { rel, as, href, crossOrigin: '' }));
  const kept = navigator.serviceWorker?.controller;
  // Where it is on the device, the first row is set in it at once and not a second time; over a line it would be in the way.
  if (kept) need(font, 'preload', 'font');
  const [, screen] = /^(?:#\/?)?([a-z]*)$/.exec(location.hash) ?? [];
  if (screen === undefined || !Object.hasOwn(screens, screen)) return;
  for (const i of screens[screen] ?? []) {
    const href = files[i] ?? '';
    if (href.endsWith('.css')) need(href, 'preload', 'style');
    else need(href, 'modulepreload', 'script');
  }
  // once it is on the device she may read another language than the device's
  if (kept) return;
  const language = navigator.languages
    .map((tag) => tag.slice(0, 2).toLowerCase())
    .find((tag) => Object.hasOwn(words, tag));
  const [first, rest] = words[language ?? 'en'] ?? [];
  for (const href of [first, ...(screen === '' ? [] : [rest])])
    if (href !== undefined) need(href, 'modulepreload', 'script');
}
