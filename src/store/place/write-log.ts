import { fault } from '../../knit/fault.ts';
import { type GarmentId, knits, type LogEntry, type MakeKey } from '../../progress/log.ts';
import type { Place } from '../../progress/place.ts';
import { takeBack } from '../../progress/take-back.ts';
import type { StoreName, Tx } from '../box/schema.ts';
import { each, together } from '../box/together.ts';
import { Refusal, TryAgain } from '../faults.ts';
import type { NewEntry, PlaceRecord } from '../records.ts';
import { takeBackNear } from './take-back-near.ts';

/** The stores of one tap. */
export const tapStores: readonly StoreName[] = ['log', 'places', 'plans'];

/** What a tap asks for, with the id that makes it the same tap however often it is tried. */
export interface Wish extends NewEntry {
  readonly id: string;
  readonly make: MakeKey;
  /** the device's clock when it was tapped, ms */
  readonly at: number;
}

type Write = Tx<'readwrite'>;

/**
 * Logs the wish and moves the place, inside the caller's transaction; the same id is never logged twice. `seen` is the
 * place as it was last known here: where it still is as it was, a row is written without waiting for what is read.
 */
export async function writeWish(
  tx: Write,
  wish: Wish,
  again: boolean,
  seen?: PlaceRecord,
): Promise<PlaceRecord> {
  const moved = seen && !again ? await writeNextRow(tx, wish, seen) : undefined;
  if (moved !== undefined) return moved;
  // asked for together: each answer waited for is a turn of the page's own thread
  const [place, touched] = await together(
    () => tx.objectStore('places').get(wish.make),
    () => newestTouch(tx),
  );
  if (place === undefined) throw new Refusal(fault('no-such-make'));
  if (again && (await tx.objectStore('log').get(wish.id)) !== undefined) return place;
  checkWords(wish);
  checkPlace(wish, place);
  if (wish.kind === 'undo') return writeUndo(tx, wish, place, touched);
  if (wish.kind === 'strike') return writeStrike(tx, wish, place, touched);
  const row = rowAfter(wish, place);
  if (row < 0 || row > place.total || !Number.isSafeInteger(row)) {
    throw new Refusal(fault('row-outside', { row, rows: place.total }));
  }
  return write(tx, place, [entryOf(wish, place, row, wish.plan)], touched);
}

/**
 * Writes the row after a place as it was last seen, and reads meanwhile whether it still is so, and the last one touched.
 * Where that is not so it puts everything back as it was, and gives undefined.
 */
async function writeNextRow(tx: Write, wish: Wish, seen: PlaceRecord): Promise<PlaceRecord | undefined> {
  if (wish.kind !== 'row' || !fits(wish, seen) || seen.rows >= seen.total) return undefined;
  const entry = entryOf(wish, seen, seen.rows + 1, wish.plan);
  const moved = movedBy(seen, entry, seen.touched);
  const places = tx.objectStore('places');
  const [others] = await together(
    async () => {
      const newest = await places.index('touched').getAll(IDBKeyRange.lowerBound(seen.touched));
      if (JSON.stringify(newest) !== JSON.stringify([seen])) return newest;
      // all is asked for: the browser need not wait until the other answers have been heard
      tx.commit();
      return undefined;
    },
    () => put(tx, [entry], moved),
  );
  if (others === undefined) return moved;
  const was = others.find(({ id }) => id === wish.make);
  // gone, or brought back older by a backup: a transaction of its own will see
  if (was === undefined) throw new TryAgain();
  await together(
    () => tx.objectStore('log').delete(wish.id),
    () => places.put(was),
  );
  return undefined;
}

/** Logs a move to a row of another plan, whose length may differ from the place's. */
export const writeMove = async (
  tx: Write,
  wish: Wish & { row: number },
  place: PlaceRecord,
): Promise<PlaceRecord> =>
  write(tx, place, [entryOf(wish, place, wish.row, wish.plan)], await newestTouch(tx));

const LONGEST_TEXT = 20_000;
const HIGHEST_COUNT = 100_000;

/** What is logged must come back out of a backup. */
function checkWords({ text = '', count = 0, beforeRow = 1 }: Wish): void {
  if (text.length > LONGEST_TEXT) throw new Refusal(fault('not-storable', { detailText: `${text.length}` }));
  // rows are counted from 1
  for (const n of [count, beforeRow || -1]) {
    if (!Number.isSafeInteger(n) || n < 0 || n > HIGHEST_COUNT) {
      throw new Refusal(fault('not-storable', { detailText: `${n}` }));
    }
  }
}

/** A tap that an older app kept outside the box names neither. */
export const fits = ({ from, by }: Wish, { rows, plan }: PlaceRecord): boolean =>
  (by ?? plan) === plan && (from ?? rows) === rows;

/** What was tapped was meant for the row that the screen showed, and for the plan that it is of. */
export function checkPlace(wish: Wish, place: PlaceRecord): void {
  if (fits(wish, place)) return;
  const { from = 0, by = place.plan } = wish;
  throw new Refusal(
    by === place.plan
      ? fault('place-moved', { row: from + 1, nextRow: place.rows + 1 })
      : fault('plan-moved'),
  );
}

function rowAfter(wish: Wish, place: PlaceRecord): number {
  if (wish.kind !== 'row') return wish.row ?? place.rows;
  if (place.rows >= place.total) throw new Refusal(fault('at-the-end', { rows: place.total }));
  return place.rows + 1;
}

/** Each entry names the plan of which its row is one, so that the log alone tells the place. */
function entryOf(wish: Wish, place: PlaceRecord, row: number, plan = place.plan): LogEntry {
  const entry = {
    id: wish.id,
    make: wish.make,
    seq: place.seq + 1,
    at: wish.at,
    kind: wish.kind,
    row,
    ...(wish.count === undefined ? {} : { count: wish.count }),
    ...(wish.text === undefined ? {} : { text: wish.text }),
    ...(wish.beforeRow === undefined ? {} : { beforeRow: wish.beforeRow }),
    plan,
    ...(place.after === undefined ? {} : { follows: place.after }),
  };
  return entry as LogEntry;
}

/** The entry of an undo or a strike, with what it takes back. */
const takingBack = (entry: LogEntry, undoes: string): LogEntry => ({ ...entry, undoes }) as LogEntry;

async function writeUndo(tx: Write, wish: Wish, place: PlaceRecord, touched: number): Promise<PlaceRecord> {
  const now: Place = { rows: place.rows, plan: place.plan, seq: place.seq, at: place.at };
  const found = (await takeBackNear(tx, place.id, now)) ?? takeBack(await logOf(tx, place.id), now);
  if (found === undefined) throw new Refusal(fault('nothing-to-undo'));
  const entries = found.undoes.map((undoes, i): LogEntry => {
    const last = i === found.undoes.length - 1;
    const entry = entryOf(wish, place, last ? found.rows : place.rows, last ? found.plan : place.plan);
    // the last one bears the wish's own id: it tells that the wish was written
    return {
      ...takingBack({ ...entry, id: last ? wish.id : `${wish.id}.${i}`, seq: place.seq + 1 + i }, undoes),
      ...(last && found.follows !== undefined && { follows: found.follows }),
    };
  });
  // a choice taken back is to be made again: how many ways there are is counted with the next entry
  const asked = found.follows === undefined ? place : { ...place, ways: Math.max(1, place.ways ?? 0) };
  return write(tx, asked, entries, touched);
}

/** Takes back one entry that moved nothing: a note, a check, a lifeline. */
async function writeStrike(tx: Write, wish: Wish, place: PlaceRecord, touched: number): Promise<PlaceRecord> {
  const undoes = wish.undoes ?? '';
  const entry = await tx.objectStore('log').get(undoes);
  if (entry === undefined || entry.make !== wish.make || knits(entry.kind))
    throw new Refusal(fault('no-such-entry'));
  return write(tx, place, [takingBack(entryOf(wish, place, place.rows, undefined), undoes)], touched);
}

/** The log of a make, in order, from a seq on. */
export const logOf = (tx: Tx<'readonly'> | Write, make: MakeKey, from = 0): Promise<LogEntry[]> =>
  (tx as Write)
    .objectStore('log')
    .index('make')
    .getAll(IDBKeyRange.bound([make, from], [make, Number.POSITIVE_INFINITY]));

async function write(
  tx: Write,
  place: PlaceRecord,
  entries: readonly LogEntry[],
  touched: number,
): Promise<PlaceRecord> {
  const last = entries.at(-1) as LogEntry;
  const moved = movedBy({ ...place, ...(await planOf(tx, place, last)) }, last, touched);
  await put(tx, entries, moved);
  return moved;
}

const movedBy = (
  { after: _named, ...place }: PlaceRecord,
  entry: LogEntry,
  touched: number,
): PlaceRecord => ({
  ...place,
  rows: entry.row,
  seq: entry.seq,
  at: knits(entry.kind) ? Math.max(entry.at, place.at) : place.at,
  // always more than any before it, also after the clock was set back
  touched: Math.max(entry.at, touched + 1),
});

const put = (tx: Write, entries: readonly LogEntry[], place: PlaceRecord) =>
  together(
    () => each(entries, (entry) => tx.objectStore('log').add(entry)),
    () => tx.objectStore('places').put(place),
  );

async function planOf(tx: Write, place: PlaceRecord, entry: LogEntry) {
  if (entry.plan === undefined || entry.plan === place.plan) return {};
  const record = await tx.objectStore('plans').get(entry.plan);
  if (record === undefined) throw new Refusal(fault('no-such-plan'));
  const total = record.plan.rows.length;
  if (entry.row > total) throw new Refusal(fault('row-outside', { row: entry.row, rows: total }));
  return { plan: entry.plan, total };
}

/** The `touched` of the make that was moved last; 0 where none ever was. */
async function newestTouch(tx: Write): Promise<number> {
  const newest = await tx.objectStore('places').index('touched').openKeyCursor(null, 'prev');
  return newest?.key ?? 0;
}

/** All makes of a garment in the log's index: '0' is the sign after '/'. */
export const makesRange = (garment: GarmentId): IDBKeyRange =>
  IDBKeyRange.bound([`${garment}/`], [`${garment}0`], false, true);
