import { afterEach, describe, expect, it, vi } from 'vitest';
import {
  canKeepUp,
  chooseKeptFile,
  forgetKeptFile,
  handOver,
  keepUp,
  keepUpAgain,
  keepUpWhenHidden,
  keptFile,
} from '../../../src/app/backup/backup-file.ts';
import { keptFileLate } from '../../../src/app/backup/kept-file-late.ts';
import { fault } from '../../../src/knit/fault.ts';
import { readBackup } from '../../../src/store/backup/read.ts';
import { knittedBox } from '../../store/knitted-box.ts';
import { given } from '../../store/scenario.ts';
import { withKeptFile } from './kept-file.ts';

describe('a file that is kept up to date', () => {
  afterEach(() => {
    keptFileLate.value = undefined;
  });
  const late = () => keptFileLate.value?.code;

  it('has everything, and nothing is said', async () => {
    const [text = ''] = await withKeptFile(await knittedBox(), {}, keepUp);
    expect(given(readBackup(text)).garments).toHaveLength(1);
    expect(late()).toBeUndefined();
  });

  it('that the browser does not let be written any more stays as it was, and she is told; asked again, it is written', async () => {
    const store = await knittedBox();
    let allowed = 'prompt';
    const handle = {
      queryPermission: async () => allowed,
      requestPermission: async () => {
        allowed = 'granted';
      },
    };
    expect(await withKeptFile(store, handle, keepUp)).toEqual([]);
    expect(late()).toBe('backup-file-refused');
    expect(await withKeptFile(store, handle, keepUpAgain)).toHaveLength(1);
    expect(late()).toBeUndefined();
  });

  it('that cannot be written is told', async () => {
    const createWritable = () => Promise.reject(new DOMException('moved', 'NotFoundError'));
    await withKeptFile(await knittedBox(), { createWritable }, keepUp);
    expect(late()).toBe('backup-file-gone');
  });

  it('is not written over by one that would have less than all, and that is told', async () => {
    const store = await knittedBox();
    given(
      await store.box.door.write(['settings'], (tx) =>
        tx.objectStore('settings').put({ constructor: 1 }, 'of another time'),
      ),
    );
    expect(await withKeptFile(store, {}, keepUp)).toEqual([]);
    expect(late()).toBe('backup-without');
  });
});

const closed = new DOMException('She closed it.', 'AbortError');
const refused = new DOMException('Not now.', 'NotAllowedError');

/** What the platform is asked, and what it answers. */
function platform({ save, share }: { save?: Error | 'takes'; share?: Error | 'takes' }) {
  const asked: string[] = [];
  const written: string[] = [];
  const handle = {
    createWritable: async () => ({
      write: async (text: string) => void written.push(text),
      close: async () => void written.push('closed'),
    }),
  };
  vi.stubGlobal('window', {
    ...(save && {
      showSaveFilePicker: async (options: object) => {
        asked.push(`save ${JSON.stringify(options)}`);
        if (save !== 'takes') throw save;
        return handle;
      },
    }),
  });
  vi.stubGlobal('navigator', {
    ...(share && {
      canShare: ({ files }: { files: File[] }) => files.every(({ type }) => type === 'application/json'),
      share: async ({ files, title }: { files: File[]; title: string }) => {
        asked.push(`share ${title}: ${files.map(({ name }) => name).join()} ${await files[0]?.text()}`);
        if (share !== 'takes') throw share;
      },
    }),
  });
  vi.stubGlobal('document', {
    createElement: () => {
      const link = { href: '', download: '', click: () => asked.push(`download ${link.download}`) };
      return link;
    },
  });
  return { asked, written, handle };
}

describe('a backup that leaves the app', () => {
  afterEach(() => vi.unstubAllGlobals());
  const leave = async (what: Parameters<typeof platform>[0]) => {
    const { asked, written } = platform(what);
    const how = await handOver('wren.json', '{}');
    return { how, asked: asked.map((one) => one.split(' ')[0]), written };
  };

  it('is saved where she says, by the name proposed, as JSON', async () => {
    const { asked, written } = platform({ save: 'takes', share: 'takes' });
    expect(await handOver('wren.json', '{}')).toBe('saved');
    expect(written).toEqual(['{}', 'closed']);
    expect(asked).toHaveLength(1);
    const options: unknown = JSON.parse(asked[0]?.slice(5) ?? '');
    expect(options).toMatchObject({
      suggestedName: 'wren.json',
      types: [{ accept: { 'application/json': ['.json'] } }],
    });
  });

  it('is shared where there is no dialog, under its name with all of its text', async () => {
    const { asked } = platform({ share: 'takes' });
    expect(await handOver('wren.json', '{"a":1}')).toBe('shared');
    expect(asked).toEqual(['share wren.json: wren.json {"a":1}']);
  });

  it('does not leave where she thinks better of it, and nothing else is tried', async () => {
    expect(await leave({ save: closed, share: 'takes' })).toMatchObject({ how: undefined, asked: ['save'] });
    expect(await leave({ share: closed })).toMatchObject({ how: undefined, asked: ['share'] });
  });

  it('goes by the next way where one is refused, to a download in the end', async () => {
    expect(await leave({ save: refused, share: 'takes' })).toMatchObject({
      how: 'shared',
      asked: ['save', 'share'],
    });
    expect(await leave({ save: refused, share: refused })).toMatchObject({
      how: 'downloaded',
      asked: ['save', 'share', 'download'],
    });
    expect(await leave({})).toMatchObject({ how: 'downloaded', asked: ['download'] });
  });
});

describe('choosing the file that is kept up to date', () => {
  afterEach(() => vi.unstubAllGlobals());

  it('can be had where the browser lets a page write to a file of hers', () => {
    platform({});
    expect(canKeepUp()).toBe(false);
    platform({ save: 'takes' });
    expect(canKeepUp()).toBe(true);
  });

  it('keeps and writes it at once', async () => {
    const { asked, handle } = platform({ save: 'takes' });
    const store = await knittedBox();
    const kept: unknown[] = [];
    const setSetting: typeof store.setSetting = async (name, value) => {
      kept.push([name, value]);
      return { ok: true, value: undefined };
    };
    let chosen: boolean | undefined;
    const written = await withKeptFile({ ...store, setSetting }, {}, async () => {
      chosen = await chooseKeptFile();
    });
    expect(chosen).toBe(true);
    expect(kept).toEqual([['backup file', handle]]);
    expect(asked[0]).toContain('backup.ridgeline.json');
    expect(written).toHaveLength(1);
  });

  it('is nothing where she thinks better of it, or there is no such dialog; what the browser refuses is thrown', async () => {
    platform({ save: closed });
    expect(await chooseKeptFile()).toBe(false);
    platform({});
    expect(await chooseKeptFile()).toBe(false);
    platform({ save: refused });
    await expect(chooseKeptFile()).rejects.toBe(refused);
  });

  it('is not done where the box does not keep it: nothing is written', async () => {
    platform({ save: 'takes' });
    const store = await knittedBox();
    const setSetting: typeof store.setSetting = async () => ({
      ok: false,
      faults: [fault('backup-file-gone')],
    });
    let chosen: boolean | undefined;
    const written = await withKeptFile({ ...store, setSetting }, {}, async () => {
      chosen = await chooseKeptFile();
    });
    expect(chosen).toBe(false);
    expect(written).toEqual([]);
  });

  it('can be left off: nothing is kept and nothing said any more', async () => {
    const store = await knittedBox();
    const kept: unknown[] = [];
    const setSetting: typeof store.setSetting = async (name, value) => {
      kept.push([name, value]);
      return { ok: true, value: undefined };
    };
    keptFileLate.value = fault('backup-file-gone');
    await withKeptFile({ ...store, setSetting }, {}, forgetKeptFile);
    expect(kept).toEqual([['backup file', undefined]]);
    expect(keptFileLate.value).toBeUndefined();
  });

  it('is none where what is kept is no file, or the browser knows none', async () => {
    const store = await knittedBox();
    await withKeptFile(store, {}, async () => {
      expect(await keptFile()).toMatchObject({ name: 'kept.json' });
      vi.stubGlobal('FileSystemFileHandle', class {});
      expect(await keptFile()).toBeUndefined();
      expect(await keepUp()).toBe(false);
      vi.stubGlobal('FileSystemFileHandle', undefined);
      expect(await keptFile()).toBeUndefined();
    });
  });
});

describe('putting the phone away', () => {
  afterEach(() => vi.unstubAllGlobals());

  it('writes the kept file where something was knitted since, and not where nothing was', async () => {
    const store = await knittedBox();
    let hear: () => void = () => undefined;
    const document = {
      visibilityState: 'visible',
      addEventListener: (name: string, listener: () => void) => {
        expect(name).toBe('visibilitychange');
        hear = listener;
      },
    };
    const away = async (entries: number, backupEntries: number, visibilityState: string, times: number) => {
      vi.stubGlobal('document', Object.assign(document, { visibilityState }));
      const sinceBackup = () => ({ ...store.sinceBackup(), entries, backupEntries });
      const written: string[] = [];
      const createWritable = async () => ({
        write: async (text: string) => void written.push(text),
        close: async () => undefined,
      });
      await withKeptFile({ ...store, sinceBackup }, { createWritable }, async () => {
        keepUpWhenHidden();
        hear();
        if (times > 0) await vi.waitFor(() => expect(written).toHaveLength(times), 30_000);
        else await new Promise((resolve) => setTimeout(resolve, 50));
      });
      expect(written).toHaveLength(times);
    };
    await away(4, 3, 'hidden', 1);
    await away(3, 3, 'hidden', 0);
    await away(4, 3, 'visible', 0);
  });
});
