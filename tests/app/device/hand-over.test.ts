import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { copyText, saveFile, shareLink } from '../../../src/app/device/hand-over.ts';

afterEach(() => vi.unstubAllGlobals());

describe('a text for the clipboard', () => {
  it('is there when it is said to be, and said not to be where the phone refuses', async () => {
    let held = '';
    vi.stubGlobal('navigator', {
      clipboard: {
        writeText: async (text: string) => {
          held = text;
        },
      },
    });
    expect(await copyText('k2, p2')).toBe(true);
    expect(held).toBe('k2, p2');
    vi.stubGlobal('navigator', { clipboard: { writeText: () => Promise.reject(new Error('not allowed')) } });
    expect(await copyText('k2, p2')).toBe(false);
    vi.stubGlobal('navigator', {});
    expect(await copyText('k2, p2')).toBe(false);
  });
});

describe('a link that is shared', () => {
  it('goes to the phone’s own sheet with its title', async () => {
    const shared: unknown[] = [];
    vi.stubGlobal('navigator', { share: async (what: unknown) => shared.push(what) });
    expect(await shareLink('Wren', 'https://example.org/#/open/x')).toBe(true);
    expect(shared).toEqual([{ title: 'Wren', url: 'https://example.org/#/open/x' }]);
  });

  it('that she thought better of is no failure; one that the phone refused is, and where there is no sheet', async () => {
    const refusing = (error: unknown) => vi.stubGlobal('navigator', { share: () => Promise.reject(error) });
    refusing(new DOMException('She closed it.', 'AbortError'));
    expect(await shareLink('Wren', 'x')).toBe(true);
    refusing(new DOMException('Not now.', 'NotAllowedError'));
    expect(await shareLink('Wren', 'x')).toBe(false);
    refusing(Object.assign(new Error('odd'), { name: 'AbortError' }));
    expect(await shareLink('Wren', 'x')).toBe(false);
    vi.stubGlobal('navigator', {});
    expect(await shareLink('Wren', 'x')).toBe(false);
  });
});

describe('a text that is saved as a file', () => {
  const links: { href: string; download: string; clicked: number }[] = [];
  const blobs: Blob[] = [];
  const released: string[] = [];

  beforeEach(() => {
    for (const list of [links, blobs, released]) list.length = 0;
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    vi.spyOn(URL, 'createObjectURL').mockImplementation((blob) => {
      blobs.push(blob as Blob);
      return `blob:${blobs.length}`;
    });
    vi.spyOn(URL, 'revokeObjectURL').mockImplementation((url) => void released.push(url));
    vi.stubGlobal('document', {
      createElement: (tag: string) => {
        const link = { tag, href: '', download: '', clicked: 0, click: () => (link.clicked += 1) };
        links.push(link);
        return link;
      },
    });
  });
  afterEach(() => {
    vi.restoreAllMocks();
    vi.useRealTimers();
  });

  const nameOf = (name: string) => {
    saveFile(name, 'x');
    return links.at(-1)?.download;
  };

  it('is offered under its name with all of its text, and let go once it is written', async () => {
    saveFile('wren.json', '{"a":1}', 'application/json');
    expect(links).toMatchObject([{ tag: 'a', href: 'blob:1', download: 'wren.json', clicked: 1 }]);
    expect(await blobs[0]?.text()).toBe('{"a":1}');
    expect(blobs[0]?.type).toBe('application/json');
    expect(released).toEqual([]);
    await vi.advanceTimersByTimeAsync(60_000);
    expect(released).toEqual(['blob:1']);
    saveFile('notes.txt', 'x');
    expect(blobs[1]?.type).toBe('text/plain');
  });

  it('has a name that every file system takes: no sign of a path, none that cannot be seen, no dot before', () => {
    expect(nameOf('a/b\\c:d*e?f"g<h>i|j\u0007\n.txt')).toBe('abcdefghij.txt');
    expect(nameOf('Mütze № 3 (Kopie) .txt')).toBe('Mütze № 3 (Kopie) .txt');
    expect(nameOf('...hidden')).toBe('hidden');
    expect(nameOf('a.b.c')).toBe('a.b.c');
    expect(nameOf('/?*')).toBe('ridgeline');
  });

  it('that is long keeps its end, which says what it is (file systems take 255 bytes: POSIX, NAME_MAX of ext4)', () => {
    const name = nameOf(`${'a'.repeat(300)}.json`) ?? '';
    expect(name.endsWith('a.json')).toBe(true);
    expect(name.length).toBeLessThanOrEqual(255);
    expect(name.length).toBeGreaterThanOrEqual(100);
  });
});
