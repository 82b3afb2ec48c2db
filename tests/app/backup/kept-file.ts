import { vi } from 'vitest';
import { forgetStore, giveStore } from '../../../src/app/store.ts';
import type { Store } from '../../../src/store/store.ts';
import { given } from '../../store/scenario.ts';

/** A file as a browser hands it out; what it has been given to write stands in `written`. */
class Handle {
  readonly name = 'kept.json';
  readonly written: string[] = [];
  lastModified = 1;
  getFile = async () => new File(this.written.slice(-1), this.name, { lastModified: this.lastModified });
  queryPermission = async (): Promise<string> => 'granted';
  createWritable = async () => ({
    write: async (text: string) => {
      this.written.push(text);
      this.lastModified += 1;
    },
    close: async () => undefined,
  });
}

/** Does something in the app while a file is kept up to date; gives what the file was given. */
export async function withKeptFile(
  store: Store,
  like: object,
  doing: () => Promise<unknown>,
): Promise<readonly string[]> {
  const handle = Object.assign(new Handle(), like);
  vi.stubGlobal('FileSystemFileHandle', Handle);
  forgetStore();
  const settings = async () => ({
    ok: true as const,
    value: { ...given(await store.settings()), 'backup file': handle },
  });
  giveStore({ ...store, settings });
  try {
    await doing();
  } finally {
    vi.unstubAllGlobals();
    forgetStore();
  }
  return handle.written;
}
