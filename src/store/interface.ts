import type { Fault, Result } from '../knit/fault.ts';
import type { GarmentId, LogEntry, MakeKey, PlanId } from '../progress/log.ts';
import type { Sentinel } from './beside/sentinel.ts';
import type { Box } from './box/box.ts';
import type { Listener } from './box/changes.ts';
import type { DoorState } from './box/door.ts';
import type { ChangeBeside } from './garment/garment-calls.ts';
import type { Rework } from './garment/rework.ts';
import type { GarmentChange } from './garment/write-garment.ts';
import type { InHand, Settings } from './place/reads.ts';
import type { RowMeant } from './place/rows-together.ts';
import type { Tapped } from './place/taps.ts';
import type { GarmentRecord, GarmentSummary, NewEntry, PlaceRecord, PlanRecord } from './records.ts';

/** What writes into the box. tests/store/box/write-paths.ts has each of them, and what writes beside them. */
export interface Writes {
  /**
   * The only way to change a garment: what the change makes of it as it now is, with the plans of pieces that get other
   * rows, in one transaction. The change is pure; it cannot alter id or beginning. Gives the garment as stored.
   */
  changeGarment(
    id: GarmentId,
    change: GarmentChange,
    plans?: readonly PlanRecord[],
  ): Promise<Result<GarmentRecord>>;
  /** For a new garment. One transaction: the garment, the plans (the store gives the versions), a place for every part and make. */
  saveGarment(garment: GarmentRecord, plans: readonly PlanRecord[]): Promise<Result<readonly PlaceRecord[]>>;
  deleteGarment(id: GarmentId): Promise<Result<void>>;
  /**
   * this row (from 1) and no other: 'place-moved' where another one comes, 'plan-moved' where it is of another plan
   * @param by id of the plan that was shown, here and below
   */
  finishRow(key: MakeKey, row: number, by?: PlanId): Promise<Result<Tapped>>;
  /** a row of each of several makes, all of them or none */
  finishRows(rows: readonly RowMeant[]): Promise<Result<readonly PlaceRecord[]>>;
  /** takes back the last change of place that still stands; again and again walks further back. `from`: rows as shown */
  undo(key: MakeKey, from: number, by?: PlanId): Promise<Result<Tapped>>;
  goTo(key: MakeKey, rows: number, kind: 'place' | 'rip back', by?: PlanId): Promise<Result<Tapped>>;
  /** a check, note, lifeline, or the striking out of one; the place stays */
  append(key: MakeKey, entry: NewEntry): Promise<Result<Tapped>>;
  /**
   * New plans for makes, all of them or none: what one gives up another takes; and in the same transaction what changes
   * of pieces that are not begun. Gives their places.
   */
  rework(reworks: readonly Rework[], beside?: ChangeBeside): Promise<Result<readonly PlaceRecord[]>>;
  setSetting(name: string, value: unknown): Promise<Result<void>>;
  /** asks the box whether it answers and writes what is held into it: for when the app comes into view */
  probe(): Promise<Result<void>>;
}

/**
 * Everything that is kept. Every call answers with a Result and never throws; a write that answers ok is on disk.
 * Faults: see `StoreFaults`. Rows and makes count as in the log; times are ms since 1970.
 */
export interface Store extends Writes {
  /** cheap with hundreds of garments; in no order */
  list(): Promise<Result<readonly GarmentSummary[]>>;
  garment(id: GarmentId): Promise<Result<GarmentRecord>>;
  plan(planId: PlanId): Promise<Result<PlanRecord>>;
  place(key: MakeKey): Promise<Result<PlaceRecord>>;
  placesOf(garment: GarmentId): Promise<Result<readonly PlaceRecord[]>>;
  /** begun makes, the last one knitted first */
  latestPlaces(n: number): Promise<Result<readonly PlaceRecord[]>>;
  /** a make with its plan and the settings; without a key the make last knitted */
  inHand(key?: MakeKey): Promise<Result<InHand>>;
  /** in order; only the newest ones where `lastN` is given */
  entriesOf(key: MakeKey, options?: { readonly lastN?: number }): Promise<Result<readonly LogEntry[]>>;
  /** of all makes of a garment; the order within each make is the log's */
  entriesOfGarment(id: GarmentId): Promise<Result<readonly LogEntry[]>>;
  settings(): Promise<Result<Settings>>;
  /** as they were when it was opened: known without another transaction */
  readonly atOpening: Settings;
  /** this window's writes and those of other windows; returns the way to stop listening */
  onChange(listener: Listener): () => void;
  state(): DoorState;
  /** taps kept outside the box until it takes them */
  held(): number;
  /** why something that was kept outside was not written in the end; asked for once */
  dropped(): Fault | undefined;
  /** what this device knew of a box that is now empty: her garments are missing, she is not new */
  missing(): Sentinel | undefined;
  /** she goes on without what is missing */
  forgetMissing(): void;
  /** how much was logged since the last backup */
  sinceBackup(): Sentinel;
  /** the door itself, for what is loaded only when it is asked for (backup, photos) */
  readonly box: Box;
  close(): void;
}
