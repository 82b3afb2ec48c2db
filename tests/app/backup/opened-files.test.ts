import { afterEach, describe, expect, it, vi } from 'vitest';
import { openedFiles, takeOpenedFiles } from '../../../src/app/backup/opened-files.ts';
import { takeSharedFile } from '../../../src/app/backup/shared-file.ts';

afterEach(() => vi.unstubAllGlobals());

/** A system that opens the app with files, and a keep in which the worker has laid what was shared. */
function system({ shared, base = 'https://example.org/app/' }: { shared?: string; base?: string } = {}) {
  let open: ((launched: { files?: readonly { getFile(): Promise<File> }[] }) => void) | undefined;
  const kept = new Map(shared === undefined ? [] : [['https://example.org/app/', shared]]);
  const nameOf = (cacheName: string) => cacheName.replace(/^shared-/, '');
  vi.stubGlobal('window', {
    launchQueue: {
      setConsumer: (take: typeof open) => {
        open = take;
      },
    },
  });
  vi.stubGlobal('document', { baseURI: `${base}#/x` });
  vi.stubGlobal('caches', {
    match: async (name: string, { cacheName }: { cacheName: string }) => {
      const text = name === 'file' ? kept.get(nameOf(cacheName)) : undefined;
      return text === undefined ? undefined : new Response(text);
    },
    open: async (cacheName: string) => ({
      delete: async (name: string) => name === 'file' && kept.delete(nameOf(cacheName)),
    }),
  });
  const opens = (...names: string[]) =>
    open?.({ files: names.map((name) => ({ getFile: async () => new File([name], name) })) });
  return { opens, opensNothing: () => open?.({}), kept };
}

describe('a file that the app is opened with', () => {
  it('waits until the screen listens that it leads to, and is handed out once', async () => {
    const { opens } = system();
    const arrived = vi.fn<() => void>();
    takeOpenedFiles(arrived);
    opens('one.json');
    await vi.waitFor(() => expect(arrived).toHaveBeenCalledTimes(1));
    const got: { file: File; handed: boolean }[] = [];
    const stop = openedFiles((opened) => got.push(opened));
    expect(got.map(({ file, handed }) => [file.name, handed])).toEqual([['one.json', false]]);
    opens('two.json', 'three.json');
    await vi.waitFor(() => expect(arrived).toHaveBeenCalledTimes(2));
    expect(got.map(({ file }) => file.name)).toEqual(['one.json', 'two.json']);
    stop();
    const again: unknown[] = [];
    openedFiles((opened) => again.push(opened))();
    expect(again).toEqual([]);
    opens('four.json');
    await vi.waitFor(() => expect(arrived).toHaveBeenCalledTimes(3));
    expect(got).toHaveLength(2);
    const later: string[] = [];
    openedFiles(({ file }) => later.push(file.name))();
    expect(later).toEqual(['four.json']);
  });

  it('is none where it was opened without: nothing leads anywhere', async () => {
    const { opensNothing } = system();
    const arrived = vi.fn<() => void>();
    takeOpenedFiles(arrived);
    opensNothing();
    await new Promise((resolve) => setTimeout(resolve, 10));
    expect(arrived).not.toHaveBeenCalled();
  });

  it('that another app handed over is said to be so', async () => {
    system({ shared: 'a backup' });
    const arrived = vi.fn<() => void>();
    takeOpenedFiles(arrived);
    await vi.waitFor(() => expect(arrived).toHaveBeenCalledTimes(1));
    const got: { file: File; handed: boolean }[] = [];
    openedFiles((opened) => got.push(opened))();
    expect(got).toMatchObject([{ handed: true }]);
    expect(await got[0]?.file.text()).toBe('a backup');
  });

  it('is taken on a device without such a queue or such a keep as well: there is none', async () => {
    vi.stubGlobal('window', {});
    const arrived = vi.fn<() => void>();
    takeOpenedFiles(arrived);
    vi.stubGlobal('caches', { match: () => Promise.reject(new Error('no keep')) });
    vi.stubGlobal('document', { baseURI: 'https://example.org/' });
    takeOpenedFiles(arrived);
    await new Promise((resolve) => setTimeout(resolve, 10));
    expect(arrived).not.toHaveBeenCalled();
  });
});

describe('a file that another app shared', () => {
  it('is given once, and only to the copy of the app that it was shared to', async () => {
    const other = system({ shared: 'a backup', base: 'https://example.org/other/' });
    expect(await takeSharedFile()).toBeUndefined();
    expect(other.kept.size).toBe(1);
    const own = system({ shared: 'a backup' });
    expect(await (await takeSharedFile())?.text()).toBe('a backup');
    expect(own.kept.size).toBe(0);
    expect(await takeSharedFile()).toBeUndefined();
  });
});
