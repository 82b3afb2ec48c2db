import { fault, ok, type Result, refuse } from '../../knit/fault.ts';
import { finalFault, nameOf, Refusal, TryAgain } from '../faults.ts';
import { inTime, pause } from './in-time.ts';
import { abort, type Opened, openDatabase } from './open.ts';
import type { Migration, StoreName, Tx } from './schema.ts';

export interface DoorOptions {
  readonly factory: () => IDBFactory | undefined;
  readonly name: string;
  readonly migrations: readonly Migration[];
  /** how long a transaction or an opening may give no answer, ms */
  readonly patienceMs: () => number;
  /** the same for work on the whole box, ms */
  readonly longPatienceMs: () => number;
  /** the shortest wait before it is opened anew, ms */
  readonly pauseMs?: number | undefined;
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

/** 'whole box': work that may honestly take long, such as a backup read in. */
export type Pace = 'a tap' | 'whole box';

/** The one way to the database. A write resolves only after its transaction is complete on disk. */
export interface Door {
  read<T>(
    stores: readonly StoreName[],
    work: (tx: Tx<'readonly'>) => Promise<T>,
    pace?: Pace,
  ): Promise<Result<T>>;
  /** `again` is true when an earlier try may have been stored although no answer came */
  write<T>(
    stores: readonly StoreName[],
    work: (tx: Tx<'readwrite'>, again: boolean) => Promise<T>,
    pace?: Pace,
  ): Promise<Result<T>>;
  readonly state: () => DoorState;
  close(): void;
}

const REOPENS = 3;
const PAUSE_MS = 40;
/** waits before each try, in pauses */
const WAITS = [0, 1, 4, 10];
/** while the box is known to be away, each call asks it once and not for long */
const SHORT_PATIENCE_MS = 1000;

export function openDoor(options: DoorOptions): Door {
  let connection: Promise<Opened> | undefined;
  let state: DoorState = 'closed';
  let factory: IDBFactory | undefined;
  let away = false;
  let turns = 0;
  const patience = () => (away ? Math.min(SHORT_PATIENCE_MS, options.patienceMs()) : options.patienceMs());

  const enter = (next: DoorState) => {
    if (state === next) return;
    state = next;
    options.onState(next);
  };

  /** Lets go of a connection that failed; another that was opened since then stays. */
  const drop = (which: Promise<Opened> | undefined) => {
    which?.then(({ db }) => db.close()).catch(() => {});
    if (which !== connection) return;
    connection = undefined;
    if (state === 'open') enter('closed');
  };

  function connect(): Promise<Opened> {
    if (connection !== undefined) return connection;
    const mine: Promise<Opened> = connectAnew(() => drop(mine));
    connection = mine;
    return mine;
  }

  async function connectAnew(letGo: () => void): Promise<Opened> {
    factory ??= options.factory();
    if (factory === undefined) throw new Refusal(fault('storage-refused'));
    let blocked = false;
    const opening = openDatabase(factory, options.name, options.migrations, {
      blocked: () => {
        blocked = true;
        enter('blocked');
      },
      blocking: () => {
        enter('superseded');
        letGo();
      },
      terminated: letGo,
    });
    const opened = await inTime(opening, patience(), (late) => late.db.close()).catch((error: unknown) => {
      letGo();
      throw blocked && nameOf(error) === 'TimeoutError' ? new Refusal(fault('database-blocked')) : error;
    });
    enter(opened.newer ? 'read only' : 'open');
    return opened;
  }

  async function once<T>(
    opened: Opened,
    stores: readonly StoreName[],
    mode: 'readonly' | 'readwrite',
    work: (tx: Tx<never>) => Promise<T>,
    patienceMs: number,
  ): Promise<T> {
    if (opened.newer && mode === 'readwrite') throw new Refusal(fault('database-newer'));
    const tx = opened.db.transaction([...stores], mode, { durability: 'strict' });
    const { done } = tx;
    done.catch(() => {});
    const worked = work(tx as unknown as Tx<never>).catch(async (error: unknown) => {
      abort(tx);
      // requests cut off by an abort know only that; the transaction knows why
      throw nameOf(error) === 'AbortError' ? await done.catch((cause: unknown) => cause) : error;
    });
    // a read is whole when it is answered; only a write has to be on disk
    const whole = mode === 'readonly' ? worked : worked.then((value) => done.then(() => value));
    return inTime(whole, patienceMs, () => {});
  }

  /** The page's own factory, and in the last resort another. */
  async function chooseFactory(attempt: number): Promise<void> {
    if (attempt < REOPENS && !away) return;
    turns += 1;
    factory = (turns % 2 === 1 ? await options.spareFactory?.() : undefined) ?? options.factory();
  }

  async function through<T>(
    stores: readonly StoreName[],
    mode: 'readonly' | 'readwrite',
    work: (tx: Tx<never>, again: boolean) => Promise<T>,
    pace: Pace = 'a tap',
  ): Promise<Result<T>> {
    const tries = away ? 1 : 1 + REOPENS;
    for (let attempt = 0; attempt < tries; attempt += 1) {
      let used: Promise<Opened> | undefined;
      try {
        await pause((WAITS[attempt] ?? 0) * (options.pauseMs ?? PAUSE_MS));
        if (connection === undefined) await chooseFactory(attempt);
        used = connect();
        const opened = await used;
        const waits = pace === 'whole box' ? options.longPatienceMs() : patience();
        const tryOnce = (again: boolean) => once(opened, stores, mode, (tx) => work(tx, again), waits);
        const value = await tryOnce(attempt > 0).catch((error: unknown) => {
          if (error instanceof TryAgain) return tryOnce(true);
          throw error;
        });
        away = false;
        return ok(value);
      } catch (error) {
        const known = finalFault(error);
        if (known !== undefined) return refuse(known);
        drop(used);
      }
    }
    away = true;
    return refuse(fault('store-not-answering'));
  }

  return {
    read: (stores, work, pace) => through(stores, 'readonly', work as never, pace),
    write: (stores, work, pace) => through(stores, 'readwrite', work as never, pace),
    state: () => state,
    close: () => drop(connection),
  };
}
