/**
 * One change of a make's place, never rewritten. Entries of a make are ordered by `seq`, then by `id`;
 * `at` is the device's clock and only for reading (pace, 'last knitted'), never for order.
 */
export type LogEntry = EntryBase & Says;

interface EntryBase {
  /** unique across devices */
  readonly id: string;
  readonly make: MakeKey;
  /** one more than the highest known for this make when it was written */
  readonly seq: number;
  /** ms since 1970 by the device's clock */
  readonly at: number;
  /** rows worked after this entry */
  readonly row: number;
  /** id of the plan of which `row` is a row; older logs name it only on a make's first entry, a rework and its undo */
  readonly plan?: PlanId;
  /** id of the entry that this one goes on from, where it is not told by the numbers (see `goneOnFrom`) */
  readonly follows?: string;
  /** ids of the entries at the ends of other ways that she has left with this one, having been shown them */
  readonly settles?: readonly string[];
}

/** What an entry says beside the place, by its kind; no other kind says it. */
type Says =
  | (OfKind<'row' | 'place' | 'rip back' | 'rework'> & Unsaid<'count' | 'text' | 'undoes'>)
  /** stitches counted on the needle */
  | (OfKind<'check'> & { readonly count?: number } & Unsaid<'text' | 'undoes'>)
  /** her words */
  | (OfKind<'note'> & { readonly text?: string; readonly beforeRow?: number } & Unsaid<'count' | 'undoes'>)
  | (OfKind<'lifeline'> & { readonly text?: string } & Unsaid<'count' | 'undoes'>)
  /** id of the entry that this one takes back */
  | (OfKind<'undo' | 'strike'> & { readonly undoes?: string } & Unsaid<'count' | 'text'>);

/** The row (from 1) before which a note is read: the one that she wrote it for, else the one that was in hand. */
export const rowOfNote = (entry: LogEntry): number =>
  (entry.kind === 'note' ? entry.beforeRow : undefined) ?? entry.row + 1;

interface OfKind<K extends EntryKind> {
  readonly kind: K;
}
type Unsaid<Fields extends string> = { readonly [F in Fields]?: never };

export const entryKinds = [
  /** a row finished */
  'row',
  /** a change of place taken back */
  'undo',
  /** a note, check or lifeline struck out */
  'strike',
  /** the place set to another row by hand, or by 'find my place' */
  'place',
  /** ripped back to a row */
  'rip back',
  'check',
  'note',
  'lifeline',
  'rework',
] as const;

export type EntryKind = (typeof entryKinds)[number];

const moving: ReadonlySet<EntryKind> = new Set<EntryKind>(['row', 'place', 'rip back', 'rework']);

/** Whether the kind sets the place by itself; an undo does so by taking another back. */
export const moves = (kind: EntryKind): boolean => moving.has(kind);

/** Whether the entry belongs to the knitting itself, unlike a note, a check, a lifeline or the striking out of one. */
export const knits = (kind: EntryKind): boolean => moves(kind) || kind === 'undo';

/** A make: one knitted copy of a part. Numbers count from 1 for makes and from 0 for the part's index. */
export interface MakeId {
  readonly garment: GarmentId;
  readonly piece: PieceId;
  readonly part: number;
  readonly make: number;
}

declare const kind: unique symbol;

/** What an id is of: text from outside may become one, but none of them passes for one of another kind. */
export interface OfA<Kind extends string> {
  readonly [kind]?: Kind;
}

/** Of a garment; `newGarmentId` makes one (src/app/garments/ids.ts). */
export type GarmentId = string & OfA<'garment'>;

/** Of a piece within its garment, whatever the piece is called; `newPieceId` makes one. */
export type PieceId = string & OfA<'piece'>;

/** The key of a make: garment, piece, part and make. No other id has that form, so none can be taken for it. */
export type MakeKey = `${string}/${string}/${number}/${number}` & OfA<'make'>;

/**
 * The id of a plan: garment, piece, part, straight or mirrored, version, and with newer ones what it says. Only
 * `planId` and `planIdOf` make one (src/store/records.ts).
 */
export type PlanId = `${string}/${string}/${number}/${'s' | 'm'}/${number}${string}` & OfA<'plan'>;

export const makeKey = (id: MakeId): MakeKey => `${id.garment}/${id.piece}/${id.part}/${id.make}` as const;

export function parseMakeKey(key: string): MakeId | undefined {
  const [garment, piece, part, make, more] = key.split('/');
  if (!garment || !piece || more !== undefined) return undefined;
  const id = { garment, piece, part: Number(part), make: Number(make) };
  return Number.isSafeInteger(id.part) && Number.isSafeInteger(id.make) ? id : undefined;
}

/** The one order of a log, the same on every device: clocks have no say in it. */
export const inOrder = (a: LogEntry, b: LogEntry): number =>
  a.seq - b.seq || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);
