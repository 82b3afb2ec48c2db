import { type Fault, ok, type Result, refuse } from '../knit/fault.ts';
import { finalFault, nameOf, Refusal, storeFault } from './faults.ts';
import { abort, type Opened, openDatabase } from './open.ts';
import { type Migration, migrations, type StoreName, type Tx } from './schema.ts';

export interface DoorOptions {
  readonly factory: () => IDBFactory | undefined;
  readonly name: string;
  readonly migrations?: readonly Migration[];
  /** how long a transaction or an opening may give no answer, ms */
  readonly patienceMs: number;
  /** told when the state of the connection changes */
  readonly onState: (state: DoorState) => void;
  /** another factory to try when the first one answers no more (a fresh frame's, say) */
  readonly spareFactory?: () => Promise<IDBFactory | undefined>;
}

export type DoorState =
  | 'open'
  /** made by a newer app: can be read and saved to a file */
  | 'read only'
  /** an older window keeps it from opening */
  | 'blocked'
  /** a newer app has asked for it: this window must be loaded anew */
  | 'superseded'
  /** the browser has closed it; the next transaction opens it again */
  | 'closed';

/** The one way to the database. Resolves only after the transaction is complete on disk. */
export interface Door {
  read<T>(stores: readonly StoreName[], work: (tx: Tx<'readonly'>) => Promise<T>): Promise<Result<T>>;
  /** `again` is true when an earlier try may have been stored although no answer came */
  write<T>(
    stores: readonly StoreName[],
    work: (tx: Tx<'readwrite'>, again: boolean) => Promise<T>,
    tries?: number,
  ): Promise<Result<T>>;
  readonly state: () => DoorState;
  close(): void;
}

const REOPENS = 3;
const PAUSES_MS = [0, 40, 160, 400];

export function openDoor(options: DoorOptions): Door {
  let connection: Promise<Opened> | undefined;
  let state: DoorState = 'closed';
  let factory: IDBFactory | undefined;

  const enter = (next: DoorState) => {
    if (state === next) return;
    state = next;
    options.onState(next);
  };

  const drop = () => {
    connection?.then(({ db }) => db.close()).catch(() => {});
    connection = undefined;
    if (state === 'open') enter('closed');
  };

  function connect(): Promise<Opened> {
    connection ??= connectAnew();
    return connection;
  }

  async function connectAnew(): Promise<Opened> {
    factory ??= options.factory();
    if (factory === undefined) throw new Refusal('storage-refused');
    let blocked = false;
    const opening = openDatabase(factory, options.name, options.migrations ?? migrations, {
      blocked: () => {
        blocked = true;
        enter('blocked');
      },
      blocking: () => {
        enter('superseded');
        drop();
      },
      terminated: drop,
    });
    const opened = await inTime(opening, options.patienceMs, (late) => late.db.close()).catch((error) => {
      connection = undefined;
      throw blocked && nameOf(error) === 'TimeoutError' ? new Refusal('database-blocked') : error;
    });
    enter(opened.newer ? 'read only' : 'open');
    return opened;
  }

  async function once<T>(
    stores: readonly StoreName[],
    mode: 'readonly' | 'readwrite',
    work: (tx: Tx<never>) => Promise<T>,
  ): Promise<T> {
    const { db, newer } = await connect();
    if (newer && mode === 'readwrite') throw new Refusal('database-newer');
    const tx = db.transaction([...stores], mode, { durability: 'strict' });
    const done = tx.done;
    done.catch(() => {});
    const worked = work(tx as unknown as Tx<never>).catch((error: unknown) => {
      abort(tx);
      throw error;
    });
    return inTime(worked.then(async (value) => (await done, value)), options.patienceMs, () => {});
  }

  async function through<T>(
    stores: readonly StoreName[],
    mode: 'readonly' | 'readwrite',
    work: (tx: Tx<never>, again: boolean) => Promise<T>,
    tries: number,
  ): Promise<Result<T>> {
    for (let attempt = 0; attempt < tries; attempt += 1) {
      try {
        await pause(PAUSES_MS[attempt] ?? 0);
        return ok(await once(stores, mode, (tx) => work(tx, attempt > 0)));
      } catch (error) {
        const known = finalFault(error);
        if (known !== undefined) return refuse(known);
        drop();
        if (attempt === tries - 2 && tries > 2) factory = (await options.spareFactory?.()) ?? factory;
      }
    }
    return refuse(notAnswering());
  }

  return {
    read: (stores, work) => through(stores, 'readonly', work as never, 1 + REOPENS),
    write: (stores, work, tries = 1 + REOPENS) => through(stores, 'readwrite', work as never, tries),
    state: () => state,
    close: drop,
  };
}

const notAnswering = (): Fault => storeFault('store-not-answering');

const pause = (ms: number): Promise<void> =>
  ms === 0 ? Promise.resolve() : new Promise((resolve) => setTimeout(resolve, ms));

/** The value, or a TimeoutError; what comes too late goes to `late`. */
function inTime<T>(value: Promise<T>, ms: number, late: (value: T) => void): Promise<T> {
  return new Promise((resolve, reject) => {
    let over = false;
    const timer = setTimeout(() => {
      over = true;
      reject(new DOMException('no answer', 'TimeoutError'));
    }, ms);
    value.then(
      (got) => {
        clearTimeout(timer);
        if (over) late(got);
        else resolve(got);
      },
      (error: unknown) => {
        clearTimeout(timer);
        reject(error);
      },
    );
  });
}
