import { IDBFactory } from 'fake-indexeddb';
import { FDBRequestLike, forceClose, type Inner } from './fake-inside.ts';

/** What a browser's storage was seen to do, at any of its calls. */
export const mishaps = [
  'throws',
  'has no room',
  'aborts without an error',
  'is closed by the browser',
  'never answers',
] as const;
export type Mishap = (typeof mishaps)[number];

export interface Fuse {
  /** counts openings, transactions, requests and completions */
  step: number;
  /** the first step that fails; none while undefined */
  at: number | undefined;
  mishap: Mishap;
  /** whether every later step fails too */
  lasting: boolean;
  blown: number;
}

export const fuse = (): Fuse => ({ step: 0, at: undefined, mishap: 'throws', lasting: false, blown: 0 });

const requests = [
  'get',
  'getAll',
  'getAllKeys',
  'count',
  'put',
  'add',
  'delete',
  'openCursor',
  'openKeyCursor',
];

/** A database factory in memory that fails at the step the fuse says; its data can be opened by a sound one too. */
export class FaultyFactory extends IDBFactory {
  constructor(
    readonly sound: IDBFactory,
    readonly fuse: Fuse,
  ) {
    super();
  }

  override open(name: string, version?: number): never {
    if (blows(this.fuse)) {
      if (this.fuse.mishap === 'never answers') return FDBRequestLike() as never;
      throw new DOMException(
        'opening failed',
        this.fuse.mishap === 'has no room' ? 'QuotaExceededError' : 'UnknownError',
      );
    }
    const request = version === undefined ? this.sound.open(name) : this.sound.open(name, version);
    request.addEventListener('success', () => tamperDb(request.result as never, this.fuse));
    return request as never;
  }
}

function blows(fuse: Fuse): boolean {
  fuse.step += 1;
  const now = fuse.at !== undefined && (fuse.lasting ? fuse.step >= fuse.at : fuse.step === fuse.at);
  if (now) fuse.blown += 1;
  return now;
}

function tamperDb(db: Inner, fuse: Fuse): void {
  const real = db.transaction.bind(db);
  db.transaction = (...args: unknown[]) => {
    const bad = blows(fuse);
    if (bad && fuse.mishap === 'throws')
      throw new DOMException('The database connection is closing.', 'InvalidStateError');
    const tx = real(...args);
    tamperTx(db, tx, fuse);
    if (bad) happen(db, tx, fuse.mishap);
    return tx;
  };
}

function tamperTx(db: Inner, tx: Inner, fuse: Fuse): void {
  const objectStore = tx.objectStore.bind(tx);
  tx.objectStore = (name: string) => {
    const store = objectStore(name);
    tamperRequests(db, tx, store, fuse);
    return store;
  };
  const dispatch = tx.dispatchEvent.bind(tx);
  tx.dispatchEvent = (event: { type: string }) => {
    if (event.type !== 'complete' || !blows(fuse) || fuse.mishap === 'throws') return dispatch(event);
    // committed, but nobody is told: the one case in which the caller cannot know
    if (fuse.mishap === 'never answers') return true;
    happen(db, tx, fuse.mishap);
    return true;
  };
}

function tamperRequests(db: Inner, tx: Inner, source: Inner, fuse: Fuse): void {
  if (source.tampered) return;
  source.tampered = true;
  for (const name of requests) {
    if (typeof source[name] !== 'function') continue;
    const real = source[name].bind(source);
    source[name] = (...args: unknown[]) => {
      if (!blows(fuse)) return real(...args);
      if (fuse.mishap === 'throws') throw new DOMException('connection lost', 'UnknownError');
      const request = real(...args);
      happen(db, tx, fuse.mishap);
      return request;
    };
  }
  if (typeof source.index === 'function') {
    const index = source.index.bind(source);
    source.index = (name: string) => {
      const found = index(name);
      tamperRequests(db, tx, found, fuse);
      return found;
    };
  }
}

function happen(db: Inner, tx: Inner, mishap: Mishap): void {
  if (mishap === 'never answers') tx.dispatchEvent = () => true;
  tx._abort(mishap === 'has no room' ? 'QuotaExceededError' : null);
  if (mishap === 'never answers') for (const { request } of tx._requests) request.dispatchEvent = () => true;
  if (mishap === 'is closed by the browser') forceClose(db);
}
