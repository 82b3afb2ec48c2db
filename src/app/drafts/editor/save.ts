import type { PieceForm } from '../../../knit/piece/form/form.ts';
import { readGauge } from '../../../knit/piece/form/gauge-form.ts';
import type { Recipe } from '../../../knit/piece/recipe.ts';
import type { LostStripes } from '../../../knit/yarn/stripes-again.ts';
import type { GarmentId, PieceId } from '../../../progress/log.ts';
import type { GarmentFields, GarmentRecord, PieceRecord, PlanRecord } from '../../../store/records.ts';
import { recordsOf } from '../../garments/plan-records.ts';
import { checkOf } from './check-of.ts';
import {
  besideForm,
  type GarmentForm,
  type GarmentRead,
  garmentToForm,
  type PieceEntry,
  readGarment,
  sameGauge,
  type YarnForm,
  yarnToForm,
} from './garment-form.ts';
import { begunWith, type StripedLike, stripedLike } from './like.ts';
import { keptByName, withRole } from './renaming.ts';

export interface SaveWish {
  readonly form: GarmentForm;
  readonly id: GarmentId;
  /** ms since 1970 */
  readonly now: number;
  /** the garment as it stands in the store; undefined for a new one */
  readonly old: GarmentRecord | undefined;
  /** ids of the pieces of which a make has been begun */
  readonly begun: ReadonlySet<PieceId>;
}

export interface Saved {
  readonly garment: GarmentRecord;
  /** the same saved onto the garment as it is by then */
  readonly onto: (was: GarmentRecord) => GarmentRecord;
  readonly plans: readonly PlanRecord[];
  /** pieces left as they were (or out, when new), because they have faults */
  readonly waiting: readonly string[];
  /** stripes of the garment that it was begun like which have no row here */
  readonly lost: readonly LostStripes[];
}

/**
 * What is written for a form: every piece that can be knitted, with its rows. A piece with faults stays as it was
 * saved last; a begun piece keeps its recipe and takes only a new name. Undefined when there is nothing to write.
 */
export function toSave(wish: SaveWish): Saved | undefined {
  const { form, id, old, begun } = wish;
  const read = readGarment(form);
  if (read.faults.length > 0) return undefined;
  const oldPieces = new Map((old?.pieces ?? []).map((piece) => [piece.id, piece]));
  const pieces: PieceRecord[] = [];
  const plans: PlanRecord[] = [];
  const waiting: string[] = [];
  for (const entry of form.pieces) {
    const before = oldPieces.get(entry.id);
    if (before !== undefined && begun.has(entry.id)) {
      pieces.push(renamed(before, entry));
      continue;
    }
    const { plan, recipe } = checkOf(entry.form);
    if (plan === undefined) {
      waiting.push(entry.id);
      if (before !== undefined) pieces.push(before);
    } else {
      const piece = { id: entry.id, recipe: withRole(recipe, before?.recipe) };
      pieces.push(piece);
      plans.push(...recordsOf(id, piece, plan));
    }
  }
  // a begun piece cannot be removed here, whatever the form says: its places would go from view
  const kept = (old?.pieces ?? []).filter(
    (piece) => begun.has(piece.id) && !pieces.some((p) => p.id === piece.id),
  );
  const all = [...kept, ...pieces];
  if (all.length === 0) return undefined;
  const entries = new Map(form.pieces.map((entry) => [entry.id, entry]));
  // a piece on the needles has the recipe that it was planned anew by
  const asKnitted = (piece: PieceRecord, was: GarmentRecord | undefined) => {
    const stored = begun.has(piece.id) ? was?.pieces.find((one) => one.id === piece.id) : undefined;
    const entry = entries.get(piece.id);
    return stored && entry ? renamed(stored, entry) : (stored ?? piece);
  };
  const made = (was: GarmentRecord | undefined): StripedLike => {
    const pieces = all.map((piece) => asKnitted(piece, was));
    const garment = record(read, pieces, { ...wish, old: was });
    return form.like ? stripedLike(garment, form.like, was?.pieces ?? []) : { garment, lost: [] };
  };
  const onto = (was: GarmentRecord) => made(was).garment;
  return { ...made(old), onto, plans, waiting };
}

/** What she did not touch stays as it was stored, to the last blank; what the form does not show stays in any case. */
function record(
  read: GarmentRead,
  pieces: readonly PieceRecord[],
  { form, id, now, old }: SaveWish,
): GarmentRecord {
  const { notes, yarns, ...rest } = old ?? begun(form, now);
  const said = form.notes === (notes ?? '') ? notes : read.notes;
  const list = yarnsOf(yarns, form, read);
  return {
    ...rest,
    id,
    name: form.name === old?.name ? old.name : read.name,
    changedAt: now,
    pieces,
    ...(old && keptByName(old, pieces)),
    ...(said === undefined ? {} : { notes: said }),
    ...(list === undefined ? {} : { yarns: list }),
  };
}

/** Nothing yet but its time, and what comes over from the garment that it is like. */
function begun(
  { like, yarn, gauge }: GarmentForm,
  now: number,
): Omit<GarmentFields, 'name' | 'pieces'> & { readonly createdAt: number } {
  if (!like) return { createdAt: now };
  const was = garmentToForm(like.garment);
  const isSame = (field: keyof YarnForm) =>
    ['balls', 'dyeLot'].includes(field) || yarn[field] === was.yarn[field];
  const isSameCloth = sameGauge(gauge, was.gauge) && (Object.keys(yarn) as (keyof YarnForm)[]).every(isSame);
  return { createdAt: now, ...begunWith(like, isSameCloth) };
}

/** The form has fields for the first yarn; the others are beside it. */
function yarnsOf(
  yarns: GarmentRecord['yarns'],
  form: GarmentForm,
  { yarn }: GarmentRead,
): GarmentRecord['yarns'] {
  const [first, ...others] = yarns ?? [];
  if (JSON.stringify(form.yarn) === JSON.stringify(yarnToForm(first))) return yarns;
  const list = yarn === undefined ? others : [{ ...(first && besideForm(first)), ...yarn }, ...others];
  return list.length === 0 ? undefined : list;
}

/** Beside its name a begun piece takes what it is and what its tension was measured in: that changes no row. */
function renamed(piece: PieceRecord, entry: PieceEntry): PieceRecord {
  const { recipe } = piece;
  const name = entry.form.name.trim() === '' ? recipe.name : entry.form.name;
  const { role = recipe.role } = entry.form;
  const told = {
    ...recipe,
    name,
    ...(role === undefined ? {} : { role }),
    ...namedGauge(recipe, entry.form),
  };
  return { id: piece.id, recipe: withRole(told, recipe) };
}

function namedGauge({ gauge }: Recipe, form: PieceForm): Pick<Recipe, 'gauge'> {
  const typed = form.gauge && readGauge(form.gauge, {}, () => undefined);
  const same = gauge && typed && gauge.stitches === typed.stitches && gauge.rows === typed.rows;
  return same && gauge.fabric === undefined && typed.fabric !== undefined ? { gauge: typed } : {};
}
