import { IDBFactory } from 'fake-indexeddb';
import { describe, expect, it } from 'vitest';
import { beginFreshLog } from '../../../src/store/box/fresh-log.ts';

const namesIn = async (factory: IDBFactory) => (await factory.databases()).map(({ name }) => name);

describe('a fresh log', () => {
  it('is begun by a database that is made and deleted, and leaves every other one', async () => {
    const factory = new IDBFactory();
    await new Promise((done) => {
      factory.open('ridgeline', 3).onsuccess = done;
    });
    const asked: string[] = [];
    const watched = new Proxy(factory, {
      get: (whole, key: 'open' | 'deleteDatabase') => (name: string, version?: number) => {
        asked.push(`${key} ${name}`);
        return key === 'open' ? whole.open(name, version) : whole.deleteDatabase(name);
      },
    });
    await beginFreshLog(watched, 'ridgeline');
    expect(asked).toEqual(['open ridgeline.fresh-log', 'deleteDatabase ridgeline.fresh-log']);
    expect(await namesIn(factory)).toEqual(['ridgeline']);
  });

  it('is not begun where the browser has no storage or refuses it, and nobody is troubled', async () => {
    const refuses = new Proxy(new IDBFactory(), {
      get: () => () => {
        throw new DOMException('refused', 'SecurityError');
      },
    });
    await beginFreshLog(undefined, 'ridgeline');
    await beginFreshLog(refuses, 'ridgeline');
  });
});
