/**
 * Whether the page itself is among the files kept for offline use. It is missing where two versions were
 * installed across each other (a roll-back while the newer one was being taken): online all seems well then,
 * and without a network nothing starts.
 */
export async function pageIsKept(): Promise<boolean> {
  const page = new URL('index.html', document.baseURI).href;
  return (await caches.match(page, { ignoreSearch: true })) !== undefined;
}
