import { forceCloseDatabase, IDBRequest } from 'fake-indexeddb';

/** The database in memory, with the inner parts that only a test of mishaps reaches for. */
// biome-ignore lint/suspicious/noExplicitAny: the package does not type its own inside
export type Inner = any;

/** A request that is never answered. */
export const FDBRequestLike = (): unknown => new IDBRequest();

/** Closes a connection as a browser does: the connection is told, nobody asked for it. */
export const forceClose = (db: Inner): void => forceCloseDatabase(db);
