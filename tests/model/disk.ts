import { IDBFactory } from 'fake-indexeddb';
import type { SmallKeep } from '../../src/store/beside/small-keep.ts';
import type { Inner } from '../store/box/fake-inside.ts';

/** What one page may do with the disk of its device, until it is killed. */
export interface Access {
  /** writes and commits that are still let through; the next one kills the page */
  fuse: number;
  dead: boolean;
  /** called when the fuse has blown, before anything else happens */
  readonly blown: () => void;
}

/** The storage of one device: what all of its pages write to. It can be full, and it cuts off what a killed page began. */
export interface Disk {
  readonly sound: IDBFactory;
  readonly small: Map<string, string>;
  /** nothing more can be put on it */
  full: boolean;
  /** transactions that are not over */
  busy: number;
}

export const emptyDisk = (): Disk => ({ sound: new IDBFactory(), small: new Map(), full: false, busy: 0 });

/** The database factory as a page sees it. */
export function factoryFor(disk: Disk, access: Access): IDBFactory {
  class Watched extends IDBFactory {
    override open(name: string, version?: number): never {
      if (access.dead) throw new DOMException('the page is gone', 'SecurityError');
      disk.busy += 1;
      const request = version === undefined ? disk.sound.open(name) : disk.sound.open(name, version);
      request.addEventListener('success', () => {
        disk.busy -= 1;
        watch(request.result as Inner, disk, access);
      });
      request.addEventListener('error', () => {
        disk.busy -= 1;
      });
      return request as never;
    }
  }
  return new Watched();
}

/** The browser's small store as a page sees it. */
export const keepFor = (disk: Disk, access: Access): SmallKeep => ({
  get length() {
    return disk.small.size;
  },
  key: (i) => [...disk.small.keys()][i] ?? null,
  getItem: (key) => disk.small.get(key) ?? null,
  setItem(key, value) {
    if (disk.full) throw new DOMException('full', 'QuotaExceededError');
    if (!access.dead) disk.small.set(key, value);
  },
  removeItem: (key) => {
    if (!access.dead) disk.small.delete(key);
  },
});

function watch(db: Inner, disk: Disk, access: Access): void {
  const open = new Set<Inner>();
  const begin = db.transaction.bind(db);
  /** one write or commit more; where it is one too many, the page is gone with all that it has not committed */
  const step = () => {
    access.fuse -= 1;
    if (access.fuse >= 0 || access.dead) return;
    access.dead = true;
    access.blown();
    for (const tx of open) tx._abort(null);
    db.close();
  };
  db.transaction = (...args: unknown[]) => {
    if (access.dead) throw new DOMException('the page is gone', 'InvalidStateError');
    const tx = begin(...args);
    disk.busy += 1;
    open.add(tx);
    const over = () => {
      if (open.delete(tx)) disk.busy -= 1;
    };
    tx.addEventListener('complete', over);
    tx.addEventListener('abort', over);
    if (args[1] !== 'readwrite') return tx;
    // on disk already, but the page never hears of it
    tx.addEventListener('complete', step);
    watchWrites(tx, disk, step);
    return tx;
  };
}

function watchWrites(tx: Inner, disk: Disk, step: () => void): void {
  const objectStore = tx.objectStore.bind(tx);
  tx.objectStore = (name: string) => {
    const store = objectStore(name);
    if (store.watched) return store;
    store.watched = true;
    for (const write of ['put', 'add', 'delete']) {
      const real = store[write].bind(store);
      store[write] = (...args: unknown[]) => {
        const request = real(...args);
        if (disk.full && write !== 'delete') tx._abort('QuotaExceededError');
        step();
        return request;
      };
    }
    return store;
  };
}
