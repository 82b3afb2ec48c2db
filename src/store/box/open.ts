import type { IDBPDatabase, IDBPTransaction } from 'idb';
import { wrap } from 'idb';
import { fault } from '../../knit/fault.ts';
import { nameOf, Refusal } from '../faults.ts';
import {
  type Db,
  type Migration,
  newestVersion,
  type RidgelineDb,
  type StoreName,
  storeNames,
} from './schema.ts';

export interface Opened {
  readonly db: Db;
  /** the database was made by a newer app: it may be read, not written */
  readonly newer: boolean;
}

export interface OpenWatch {
  /** an older connection elsewhere keeps the database from being brought up to date */
  readonly blocked: () => void;
  /** a newer app elsewhere waits for this connection to go */
  readonly blocking: () => void;
  /** the browser has closed the connection */
  readonly terminated: () => void;
}

/** Opens the database, bringing it up to date; one made by a newer app is opened as it stands. */
export async function openDatabase(
  factory: IDBFactory,
  name: string,
  migrations: readonly Migration[],
  watch: OpenWatch,
): Promise<Opened> {
  const version = newestVersion(migrations);
  const opened = await openAt(factory, name, version, migrations, watch).then(
    (db) => ({ db, newer: false }),
    async (error: unknown) => {
      if (nameOf(error) !== 'VersionError') throw error;
      return { db: await openAt(factory, name, undefined, migrations, watch), newer: true };
    },
  );
  const present = new Set<StoreName>(opened.db.objectStoreNames);
  if (storeNames.some((store) => !present.has(store))) {
    opened.db.close();
    throw new Refusal(fault('database-strange'));
  }
  return opened;
}

function openAt(
  factory: IDBFactory,
  name: string,
  version: number | undefined,
  migrations: readonly Migration[],
  watch: OpenWatch,
): Promise<Db> {
  return new Promise((resolve, reject) => {
    let failed = false;
    const request = version === undefined ? factory.open(name) : factory.open(name, version);
    request.onblocked = watch.blocked;
    request.onupgradeneeded = (event) => {
      const db = wrap(request.result) as unknown as IDBPDatabase<RidgelineDb>;
      const tx = wrap(request.transaction as IDBTransaction) as unknown as IDBPTransaction<
        RidgelineDb,
        StoreName[],
        'versionchange'
      >;
      tx.done.catch(() => {});
      migrate(db, tx, migrations, event.oldVersion).catch(() => {
        failed = true;
        abort(tx);
      });
    };
    request.onerror = () => reject(failed ? new Refusal(fault('migration-failed')) : request.error);
    request.onsuccess = () => {
      request.result.onversionchange = watch.blocking;
      request.result.onclose = watch.terminated;
      resolve(wrap(request.result) as unknown as Db);
    };
  });
}

async function migrate(
  db: Db,
  tx: Parameters<Migration['run']>[1],
  migrations: readonly Migration[],
  from: number,
): Promise<void> {
  for (const migration of migrations) {
    if (migration.to <= from) continue;
    // awaited only where there is something to wait for: the upgrade ends when nothing is asked of it
    const going = migration.run(db, tx);
    if (going !== undefined) await going;
  }
}

/** An abort of what is already over throws; there is nothing left to take back then. */
export function abort(tx: { abort(): void }): void {
  try {
    tx.abort();
  } catch {
    // already over
  }
}
