import { afterEach, describe, expect, it, vi } from 'vitest';
import { takeSharedFile, takeSharedText } from '../../../src/app/backup/shared-file.ts';

/** The browser's caches with what the worker has put aside for the app at an address. */
function withShared(at: string, kept: Readonly<Record<string, string>>) {
  const lying = new Map(Object.entries(kept));
  const named = `shared-${at}`;
  vi.stubGlobal('document', { baseURI: `${at}index.html` });
  vi.stubGlobal('caches', {
    match: async (what: string, { cacheName }: { cacheName: string }) => {
      const text = cacheName === named ? lying.get(what) : undefined;
      return text === undefined ? undefined : new Response(text);
    },
    open: async (name: string) => ({ delete: async (what: string) => name === named && lying.delete(what) }),
  });
  return lying;
}

afterEach(() => vi.unstubAllGlobals());

describe('what another app shared', () => {
  it('is handed out once, a file as a file', async () => {
    const lying = withShared('https://a.test/knit/', { file: '{"a":1}', text: 'Cast on 20.' });
    const file = await takeSharedFile();
    expect([file?.name, await file?.text()]).toEqual(['shared', '{"a":1}']);
    expect([...lying.keys()]).toEqual(['text']);
    expect(await takeSharedFile()).toBeUndefined();
  });

  it('is handed out once, a text as a text', async () => {
    const lying = withShared('https://a.test/knit/', { file: '{}', text: 'Cast on 20.' });
    expect(await takeSharedText()).toBe('Cast on 20.');
    expect([...lying.keys()]).toEqual(['file']);
    expect(await takeSharedText()).toBeUndefined();
  });

  it('is none where the browser has no such store', async () => {
    vi.stubGlobal('caches', undefined);
    Reflect.deleteProperty(globalThis, 'caches');
    expect([await takeSharedFile(), await takeSharedText()]).toEqual([undefined, undefined]);
  });
});
