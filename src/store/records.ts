import type { Garment } from '../knit/piece/garment.ts';
import type { PlannedPart } from '../knit/piece/planned.ts';
import type { Recipe } from '../knit/piece/recipe.ts';
import type { Taken } from '../knit/yarn/need.ts';
import type { Restriped, Stripe, Striped } from '../knit/yarn/stripes.ts';
import type { EntryKind, GarmentId, MakeId, MakeKey, PieceId, PlanId } from '../progress/log.ts';
import { stableJson } from './backup/stable.ts';
import { contentHash } from './content-hash.ts';

/** What the database holds, beside the log (src/progress/log.ts). Everything here is plain data. */

export interface GarmentRecord extends GarmentFields {
  readonly id: GarmentId;
  readonly createdAt: number;
  readonly changedAt: number;
  /** the store's to give; none while nothing was changed since the garment came into the box */
  readonly marks?: GarmentMarks;
}

/** Everything of a garment that she can change. */
export interface GarmentFields extends Omit<Garment, 'pieces'> {
  readonly pieces: readonly PieceRecord[];
  /** everything a draft was made from (measurements, ease, shape), where the garment was drafted */
  readonly design?: unknown;
  /** the sizes in which it is passed on, with what was set for them by hand */
  readonly sizes?: unknown;
  /** at single rows, for whoever knits it; kept apart from the log, which stays on the device */
  readonly rowNotes?: readonly RowNote[];
  /** the texts a copied pattern was read from, by piece id */
  readonly texts?: Readonly<Record<string, string>>;
  /** ticked steps of the making up */
  readonly ticked?: readonly string[];
  /** what finished makes weighed, g */
  readonly taken?: readonly Taken[];
  /** stripes by rows, repeated in turn */
  readonly stripes?: readonly Stripe[];
  /** where they lie, by piece id; without it they begin anew with each part, as older garments have them */
  readonly striped?: Readonly<Record<string, Striped>>;
  /** other stripes from a row of a make on */
  readonly restriped?: readonly Restriped[];
}

/** Her note at a row, which travels with the garment where she wants it. */
export interface RowNote {
  /** by name, as pieces and parts are called */
  readonly piece: string;
  readonly part: string;
  /** of the part, from 1 */
  readonly row: number;
  readonly text?: string;
  /** an address of her own choosing that shows how; https only */
  readonly address?: string;
}

/** `id` stays when the piece is renamed or reworked; makes are keyed by it. */
export interface PieceRecord {
  readonly id: PieceId;
  readonly recipe: Recipe;
  /** ids of the plans of the recipe's parts, straight and mirrored, for makes not yet begun: the store's to give; none are the newest */
  readonly plans?: readonly PlanId[];
}

/** One part of a garment by itself: a single piece, tick, yarn, or one field. */
export type GarmentPart = Partial<GarmentFields>;

/** When each part of a garment was changed, and by whom, so that devices unite it part by part (src/store/uniting). */
export interface GarmentMarks {
  /** the stamp of all parts that `at` does not name */
  readonly base: string;
  readonly at?: Readonly<Record<string, string>>;
  /** the highest stamp heard of, from each device */
  readonly seen: readonly string[];
  /** versions made by devices without each other, beside those shown; without `of` the same as the one shown */
  readonly also?: readonly { readonly name: string; readonly stamp: string; readonly of?: GarmentPart }[];
  /** pieces taken out */
  readonly gone?: readonly GonePiece[];
  /** photos taken away, by id: no file of another device brings them back */
  readonly photosGone?: readonly GonePhoto[];
  /** those pieces that are shown all the same, since rows of them were knitted elsewhere */
  readonly shown?: readonly string[];
  /** lists that were laid in another order than the parts came in */
  readonly order?: { readonly [list in 'pieces' | 'yarns' | 'ticked' | 'byHand' | 'taken']?: ListOrder };
}

export interface GonePiece {
  readonly stamp: string;
  readonly piece: PieceRecord;
}

export interface GonePhoto {
  readonly stamp: string;
  readonly id: string;
}

export interface ListOrder {
  readonly stamp: string;
  readonly names: readonly string[];
}

/** The rows of one part, spelled out. Never edited: a rework adds a later version. */
export interface PlanRecord {
  readonly id: PlanId;
  readonly garment: GarmentId;
  readonly piece: PieceId;
  readonly part: number;
  readonly mirror: boolean;
  readonly version: number;
  readonly plan: PlannedPart;
}

/** A plan that the store has not named yet: its id and its version are the store's to give. */
export type NewPlan = Omit<PlanRecord, 'id'>;

export const planId = (
  garment: GarmentId,
  piece: PieceId,
  part: number,
  mirror: boolean,
  version: number,
): PlanId => `${planSlot(garment, piece, part, mirror)}${version}` as const;

/** What the ids of all plans of a part begin with. */
export const planSlot = (garment: GarmentId, piece: PieceId, part: number, mirror: boolean) =>
  `${garment}/${piece}/${part}/${mirror ? 'm' : 's'}/` as const;

/**
 * The id under which a plan is stored: with what it says in it, so that two devices never call different plans the
 * same. Older ones bear a version only.
 */
export const planIdOf = ({ garment, piece, part, mirror, version, plan }: NewPlan): PlanId =>
  `${planId(garment, piece, part, mirror, version)}-${contentHash(stableJson(plan))}` as PlanId;

/** Derived from the log and written in the same transaction. */
export interface PlaceRecord extends MakeId {
  readonly id: MakeKey;
  readonly plan: PlanId;
  /** rows worked */
  readonly rows: number;
  /** rows in all */
  readonly total: number;
  /** highest seq in the log of this make; 0 when nothing is logged */
  readonly seq: number;
  /** id of the entry that the place is told by, where files that were united hold another as high: the next one names it */
  readonly after?: string;
  /** so many other ways devices went it without each other, about which she has not been asked (src/progress/ways.ts); just after such a choice was taken back at least one */
  readonly ways?: number;
  /** when it was last knitted, ms; 0 when never */
  readonly at: number;
  /** grows with every entry on this device, whatever the clock does: orders 'last knitted'; 0 when never */
  readonly touched: number;
}

/** What a list of garments shows; written beside each garment so that the list needs no recipe. */
export interface GarmentSummary {
  readonly id: GarmentId;
  readonly name: string;
  readonly createdAt: number;
  readonly changedAt: number;
  readonly pieces: number;
  /** makes of all parts, and the rows of all of them */
  readonly makes: number;
  readonly rows: number;
}

/** Her pictures of a garment or of a row. */
export interface PhotoRecord {
  readonly id: string;
  readonly garment: GarmentId;
  readonly at: number;
  readonly caption?: string;
  readonly image: Blob;
}

/** What a screen asks the store to log. */
export interface NewEntry {
  readonly kind: EntryKind;
  /** rows worked as the screen showed them when it was tapped: where they are others by now, nothing is written */
  readonly from?: number;
  /** id of the plan whose rows the screen showed: where the make has another by now, nothing is written */
  readonly by?: PlanId | undefined;
  /** rows worked after it; for 'row' and 'undo' the store works it out inside the transaction */
  readonly row?: number;
  readonly count?: number;
  readonly text?: string;
  /** of a note for a row ahead: that row, from 1 */
  readonly beforeRow?: number;
  readonly plan?: PlanId;
  /** for 'strike': the note, check or lifeline to strike out */
  readonly undoes?: string;
}
