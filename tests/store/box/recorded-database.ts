/** A database as it was found on a device: its version, its stores with their keys and indexes, and what they hold. */
export interface RecordedDatabase {
  readonly version: number;
  readonly stores: Readonly<Record<string, RecordedStore>>;
}
interface RecordedStore {
  readonly keyPath: string | null;
  readonly indexes: Readonly<Record<string, string | string[]>>;
  readonly records: readonly { readonly key: IDBValidKey; readonly value: unknown }[];
}

const settled = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });

/** Sets a recorded database up anew, by the browser's own calls alone. */
export async function restoreDatabase(
  factory: IDBFactory,
  name: string,
  recorded: RecordedDatabase,
): Promise<void> {
  const open = factory.open(name, recorded.version);
  open.onupgradeneeded = () => {
    for (const [store, { keyPath, indexes, records }] of Object.entries(recorded.stores)) {
      const made = open.result.createObjectStore(store, keyPath === null ? {} : { keyPath });
      for (const [index, path] of Object.entries(indexes)) made.createIndex(index, path);
      for (const { key, value } of records) made.put(value, keyPath === null ? key : undefined);
    }
  };
  (await settled(open)).close();
}

/** Reads a database out by the browser's own calls alone, and by nothing that stands elsewhere: pages are given it too. */
export async function recordDatabase(factory: IDBFactory, name: string): Promise<RecordedDatabase> {
  const settled = <T>(request: IDBRequest<T>): Promise<T> =>
    new Promise((resolve, reject) => {
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
  const db = await settled(factory.open(name));
  const names = [...db.objectStoreNames];
  const tx = db.transaction(names, 'readonly');
  const stores: Record<string, RecordedStore> = {};
  for (const store of names) {
    const from = tx.objectStore(store);
    const [keys, values] = [await settled(from.getAllKeys()), await settled(from.getAll())];
    const indexes = Object.fromEntries(
      [...from.indexNames].map((index) => [index, from.index(index).keyPath]),
    );
    const records = keys.map((key, i) => ({ key, value: values[i] }));
    stores[store] = { keyPath: from.keyPath as string | null, indexes, records };
  }
  const { version } = db;
  db.close();
  return { version, stores };
}
