import { type EntryKind, entryKinds, type MakeKey, moves } from '../../progress/log.ts';
import { dropKey, heldIn, keysFrom, readJson, type SmallKeep, writeJson } from '../beside/small-keep.ts';
import type { PlaceRecord } from '../records.ts';
import { fits, type Wish } from './write-log.ts';

/** A tap that waits for the box to answer again, with the rows before and after it as they were shown. */
export interface HeldTap {
  readonly n: number;
  readonly wish: Wish;
  readonly before: number;
  readonly after: number;
}

export interface Journal {
  /** in the order of the taps; only those of a make where a key is given */
  taps(key?: MakeKey): readonly HeldTap[];
  /** keeps the tap and gives the place as it is with it; undefined where the tap makes no sense or cannot be kept */
  hold(wish: Wish, known: PlaceRecord): PlaceRecord | undefined;
  drop(id: string): void;
  /** the place with the held taps worked in */
  placeWith(known: PlaceRecord): PlaceRecord;
}

/** Each tap has a key of its own: two windows that write and drop at once never overwrite one another. */
export function journalIn(keep: SmallKeep | undefined, box: string): Journal {
  const start = heldIn(box);
  const keyOf = (id: string) => start + id;

  const taps = (key?: MakeKey): HeldTap[] =>
    keysFrom(keep, start)
      .map((name) => readTap(readJson(keep, name)))
      .filter((tap): tap is HeldTap => tap !== undefined && (key === undefined || tap.wish.make === key))
      .sort((a, b) => a.n - b.n || (a.wish.id < b.wish.id ? -1 : 1));

  const placeWith = (known: PlaceRecord): PlaceRecord => {
    const held = taps(known.id);
    const last = held.at(-1);
    if (last === undefined) return known;
    return { ...known, rows: last.after, at: Math.max(known.at, last.wish.at) };
  };

  return {
    taps,
    placeWith,
    hold(wish, known) {
      const now = placeWith(known);
      if (!fits(wish, now)) return undefined;
      const after = rowsAfter(wish, now, taps(known.id));
      if (after === undefined || after < 0 || after > now.total) return undefined;
      const n = Math.max(0, ...taps().map((tap) => tap.n)) + 1;
      const tap: HeldTap = { n, wish, before: now.rows, after };
      return writeJson(keep, keyOf(wish.id), tap) ? { ...now, rows: after, at: wish.at } : undefined;
    },
    drop: (id) => dropKey(keep, keyOf(id)),
  };
}

function rowsAfter(wish: Wish, now: PlaceRecord, held: readonly HeldTap[]): number | undefined {
  if (wish.kind === 'row') return now.rows + 1;
  if (wish.kind === 'undo') return undone(held);
  return wish.row ?? now.rows;
}

/** Only what is held can be taken back while the box is away: what lies before it cannot be read. */
function undone(held: readonly HeldTap[]): number | undefined {
  const standing: HeldTap[] = [];
  for (const tap of held) {
    if (tap.wish.kind === 'undo') standing.pop();
    else if (moves(tap.wish.kind)) standing.push(tap);
  }
  return standing.at(-1)?.before;
}

/** What lies there may come from another version, or from a hand. */
function readTap(value: unknown): HeldTap | undefined {
  const { n, wish, before, after } = (value ?? {}) as Record<string, unknown>;
  const { id, make, at, kind } = (wish ?? {}) as Record<string, unknown>;
  const whole = [n, before, after, at].every(
    (number) => typeof number === 'number' && Number.isFinite(number),
  );
  const named = typeof id === 'string' && typeof make === 'string' && entryKinds.includes(kind as EntryKind);
  return whole && named ? (value as HeldTap) : undefined;
}
