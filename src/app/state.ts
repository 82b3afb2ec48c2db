import { computed, signal } from '@preact/signals';
import type { Fault } from '../knit/fault.ts';
import type { PlannedPart } from '../knit/piece/planned.ts';
import type { StandingMake, StandingPiece } from '../knit/piece/standing.ts';
import type { MakeKey, PieceId } from '../progress/log.ts';
import type { Sentinel } from '../store/beside/sentinel.ts';
import type { GarmentRecord, GarmentSummary, PlaceRecord } from '../store/records.ts';
import { rowAt } from './in-hand/row-now.ts';

/** What the app can show. Screens read it; only the intents write it. */

/** A make with its plan and its place: all that the knitting screen needs to paint. */
export interface InHand {
  readonly make: MakeKey;
  readonly part: PlannedPart;
  /** as stored: never ahead of the database */
  readonly place: PlaceRecord;
  readonly garment: GarmentSummary;
}

/**
 * How the last tap stands: stored; in its transaction; in it for so long that she feels it; for more than a second; kept
 * outside the database until that takes it; or nowhere but in this page.
 */
export type Saving = 'saved' | 'saving' | 'felt' | 'slow' | 'held' | 'failed';

/** Rows of one make. */
export interface RowsTapped {
  /** `makeKey` of it */
  readonly make: string;
  readonly rows: number;
}

export const noRows: RowsTapped = { make: '', rows: 0 };

/** A garment of the workbasket and how far it is. */
export interface BasketEntry {
  readonly garment: GarmentSummary;
  /** rows worked, of all makes */
  readonly worked: number;
  /** when it was last knitted, ms; 0 when never */
  readonly at: number;
}

/** One knitted copy of a piece. */
export interface MakeView extends StandingMake {
  /** in the order of the parts */
  readonly places: readonly PlaceRecord[];
}

export interface PieceView extends StandingPiece {
  readonly id: PieceId;
  readonly name: string;
  readonly makes: readonly MakeView[];
}

/** A garment as it stands, with all its places: what drawings and figures are read from. */
export interface GarmentView {
  readonly garment: GarmentRecord;
  readonly pieces: readonly PieceView[];
}

/** every garment, the last knitted first; undefined until read, and after a read that failed */
export const basket = signal<readonly BasketEntry[] | undefined>(undefined);

/** the make last knitted of all, for the workbasket's top; null when nothing was ever begun */
export const lastKnitted = signal<InHand | null | undefined>(undefined);

/** the garment screen's; undefined until read, null when there is none of that id */
export const garmentShown = signal<GarmentView | null | undefined>(undefined);

/** the knitting screen's; undefined until read, null when there is no such make */
export const inHand = signal<InHand | null | undefined>(undefined);

/** the garment of the make in hand with all its pieces; read after the first paint */
export const garmentInHand = signal<GarmentView | undefined>(undefined);

/** taps that are not stored yet */
export const waiting = signal(0);

/** rows tapped that are not stored yet: the row after them may be read already */
export const tapped = signal<RowsTapped>(noRows);

export const saving = signal<Saving>('saved');

/** a tap takes so long that she feels it */
export const isFelt = computed(() => saving.value === 'felt' || saving.value === 'slow');

/** why the first tap of the line could not be stored, lies outside the database, or was refused for good */
export const tapFault = signal<Fault | undefined>(undefined);

/** what this device remembers of a database that is now empty: her garments are missing, she is not new */
export const missing = signal<Sentinel | undefined>(undefined);

/** why the store did not open, or why the last read failed */
export const readFault = signal<Fault | undefined>(undefined);

/** the row looked at without moving the place, from 1; undefined: the row in hand */
export const looking = signal<number | undefined>(undefined);

/** the pad and the keys do nothing until she unlocks */
export const locked = signal(false);

/** the caution to rest hands is due */
export const restDue = signal(false);

/** grows with every row stored in this window; what is announced again must differ */
export const storedRows = signal(0);

/** the row that comes now; undefined at the end of the part and while nothing is read */
export const rowNow = computed(() => {
  const now = inHand.value;
  return now ? rowAt(now.part, now.place.rows) : undefined;
});
