import { type LogEntry, type MakeKey, moves } from '../../progress/log.ts';
import type { Place } from '../../progress/place.ts';
import type { TakeBack } from '../../progress/take-back.ts';
import type { Tx } from '../box/schema.ts';

type Write = Tx<'readwrite'>;

/** Entries read in one go. */
const NEAR = 32;

/**
 * What an undo has to say (`takeBack` in src/progress/take-back.ts), told by the newest entries of a make's log. An undo
 * names what it took back, and nothing between the two stands any more: so a long run of undos is passed in one step
 * each, and the thousandth reads no more than the tenth.
 * @returns undefined where these entries do not tell it: another plan or none named, a choice, a merge, the beginning of the log
 */
export async function takeBackNear(tx: Write, make: MakeKey, now: Place): Promise<TakeBack | undefined> {
  const undoes: string[] = [];
  let step: LogEntry | undefined;
  let to = now.seq;
  while (to > 0) {
    const entries = await between(tx, make, to - NEAR + 1, to);
    to -= NEAR;
    for (const entry of entries.reverse()) {
      if (entry.kind === 'undo') {
        const start = await startOf(tx, entry);
        if (start === undefined) return undefined;
        to = start - 1;
        break;
      }
      if (!moves(entry.kind)) continue;
      // what stood before a choice between ways is not the entry before it
      if (entry.plan !== now.plan || entry.settles !== undefined) return undefined;
      if (step !== undefined) {
        undoes.push(step.id);
        if (entry.row !== now.rows) return { undoes, rows: entry.row, plan: now.plan };
      }
      step = entry;
    }
  }
  return undefined;
}

/** The number of the entry that an undo took back; undefined where a merge has put others between the two. */
async function startOf(tx: Write, undo: LogEntry): Promise<number | undefined> {
  const taken = await tx.objectStore('log').get(undo.undoes ?? '');
  if (taken?.make !== undo.make || taken.seq >= undo.seq) return undefined;
  const count = await tx
    .objectStore('log')
    .index('make')
    .count(numbers(undo.make, taken.seq, undo.seq));
  return count === undo.seq - taken.seq + 1 ? taken.seq : undefined;
}

const numbers = (make: MakeKey, from: number, to: number): IDBKeyRange =>
  IDBKeyRange.bound([make, from], [make, to]);

const between = (tx: Write, make: MakeKey, from: number, to: number): Promise<LogEntry[]> =>
  tx
    .objectStore('log')
    .index('make')
    .getAll(numbers(make, from, to));
