import type { DBSchema, IDBPDatabase, IDBPTransaction, StoreNames } from 'idb';
import type { GarmentId, LogEntry, MakeKey, PlanId } from '../../progress/log.ts';
import type { GarmentRecord, GarmentSummary, PhotoRecord, PlaceRecord, PlanRecord } from '../records.ts';

export interface RidgelineDb extends DBSchema {
  garments: { key: GarmentId; value: GarmentRecord };
  summaries: { key: GarmentId; value: GarmentSummary };
  plans: { key: PlanId; value: PlanRecord; indexes: { garment: GarmentId } };
  /** index 'make' sorts as the log is ordered: by seq, then (the primary key) by id */
  log: { key: string; value: LogEntry; indexes: { make: [MakeKey, number] } };
  places: { key: MakeKey; value: PlaceRecord; indexes: { garment: GarmentId; touched: number } };
  settings: { key: string; value: unknown };
  photos: { key: string; value: PhotoRecord; indexes: { garment: GarmentId } };
}

export type StoreName = StoreNames<RidgelineDb>;
export type Db = IDBPDatabase<RidgelineDb>;
export type Tx<Mode extends IDBTransactionMode> = IDBPTransaction<RidgelineDb, StoreName[], Mode>;
type Upgrade = Tx<'versionchange'>;

export interface Migration {
  /** the version it makes, from the one before */
  readonly to: number;
  readonly run: (db: Db, tx: Upgrade) => void | Promise<void>;
}

/** Only ever added to: a shipped migration is never edited, and each adds so that the version before can still read. */
export const migrations: readonly Migration[] = [
  {
    to: 1,
    run: (db) => {
      db.createObjectStore('garments', { keyPath: 'id' });
      db.createObjectStore('summaries', { keyPath: 'id' });
      db.createObjectStore('plans', { keyPath: 'id' }).createIndex('garment', 'garment');
      db.createObjectStore('log', { keyPath: 'id' }).createIndex('make', ['make', 'seq']);
      const places = db.createObjectStore('places', { keyPath: 'id' });
      places.createIndex('garment', 'garment');
      places.createIndex('touched', 'touched');
      db.createObjectStore('settings');
    },
  },
  {
    to: 2,
    run: (db) => {
      db.createObjectStore('photos', { keyPath: 'id' }).createIndex('garment', 'garment');
    },
  },
  {
    to: 3,
    // records say when each of their parts was changed, and entries their plan: an app that does not write these may only read
    run: () => undefined,
  },
];

/** The version of the last migration; throws where the numbers are not 1, 2, 3 …, which is a defect of the build. */
export function newestVersion(list: readonly Migration[]): number {
  for (const [i, migration] of list.entries()) {
    if (migration.to !== i + 1) throw new Error(`migration ${i + 1} says it makes version ${migration.to}`);
  }
  return list.length;
}

export const storeNames: readonly StoreName[] = [
  'garments',
  'summaries',
  'plans',
  'log',
  'places',
  'settings',
  'photos',
];
