import { fabrics } from '../fabric.ts';
import { asPlanned } from '../piece/as-planned.ts';
import { holeRows, holesIn, movedHoles } from '../piece/hole-rows.ts';
import type { Edge, PartRecipe, PickUp, Recipe, Section, Shaping } from '../piece/recipe.ts';
import { withRows } from '../piece/rework/lay-anew.ts';
import { recipeOfMake } from '../piece/rework/make-recipe.ts';
import { put } from '../piece/rework/put.ts';
import { rework } from '../piece/rework.ts';
import {
  type StandingGarment,
  type StandingMake,
  type StandingPiece,
  standingMake,
} from '../piece/standing.ts';

import { type ShoulderFrom, withShoulder } from './edit-shoulder.ts';
import { widened } from './edit-width.ts';

/** A change of one piece that mends an edge of another. Sections count from 0 within their part. */
export type Edit =
  /** a section of a piece is so many rows longer, below 0 shorter */
  | {
      readonly kind: 'rows';
      readonly piece: string;
      readonly makes: readonly number[];
      readonly part: string;
      readonly section: number;
      /** its name */
      readonly called: string;
      readonly by: number;
    }
  /** a sleeve is so many stitches wider at its top, half of them at either edge */
  | {
      readonly kind: 'width';
      readonly piece: string;
      readonly part: string;
      readonly by: number;
      /** it is knitted from its top down: its top is where it begins */
      readonly fromTop?: true;
    }
  /** shoulders of a panel at these edges of its recipe are so many stitches wider each */
  | {
      readonly kind: 'shoulder';
      readonly piece: string;
      readonly edges: readonly Edge[];
      readonly by: number;
      readonly from: ShoulderFrom;
    }
  | { readonly kind: 'pick up'; readonly piece: string; readonly edges: readonly PickUpEdit[] };

export interface PickUpEdit {
  /** its place in the band's pick-up, and its words there */
  readonly at: number;
  readonly along: string;
  readonly was: number;
  readonly now: number;
}

/** How much is knitted of a piece. */
export interface KnittedSoFar {
  /** its recipe stands: only rows not yet knitted change, make by make */
  readonly isBegun: boolean;
  /** rows worked of each part, in the recipe's order, make by make */
  readonly rows: readonly (readonly number[])[];
}

/** By the names of the pieces; of one that is not there nothing is knitted. */
export type Knitted = ReadonlyMap<string, KnittedSoFar>;

export const nothingKnitted: Knitted = new Map();

/** The garment after the change, every row of it worked; undefined where it cannot be knitted, or is knitted already. */
export function edited<Garment extends Pick<StandingGarment, 'pieces'>>(
  garment: Garment,
  edit: Edit,
  knitted: Knitted,
): Garment | undefined {
  const at = garment.pieces.findIndex(({ recipe }) => recipe.name === edit.piece);
  const piece = garment.pieces[at];
  const made = piece && editedPiece(piece, edit, knitted);
  return made && { ...garment, pieces: put(garment.pieces, at, made) };
}

/** The same for several changes, one after the other. */
export const editedBy = <Garment extends Pick<StandingGarment, 'pieces'>>(
  garment: Garment,
  edits: readonly Edit[],
  knitted: Knitted,
): Garment | undefined =>
  edits.reduce<Garment | undefined>((made, edit) => made && edited(made, edit, knitted), garment);

function editedPiece(piece: StandingPiece, edit: Edit, knitted: Knitted): StandingPiece | undefined {
  const isWhole = edit.kind !== 'rows' || piece.makes.every(({ make }) => edit.makes.includes(make));
  const hasOwn = piece.makes.some(({ parts }) => parts.some(({ recipe }) => recipe !== undefined));
  if (isWhole && !hasOwn && knitted.get(piece.recipe.name)?.isBegun !== true) {
    const made = knittable(piece.recipe, edit);
    return made?.piece;
  }
  if (edit.kind !== 'rows') return undefined;
  const makes: StandingMake[] = [];
  for (const make of piece.makes) {
    const own = edit.makes.includes(make.make) ? reworked(piece, make, edit, knitted) : make;
    if (!own) return undefined;
    makes.push(own);
  }
  return { ...piece, makes };
}

/** One make with a section of other length, from its needle on. */
function reworked(
  { recipe }: StandingPiece,
  make: StandingMake,
  edit: Extract<Edit, { kind: 'rows' }>,
  knitted: Knitted,
): StandingMake | undefined {
  const index = make.parts.findIndex(({ name }) => name === edit.part);
  const part = make.parts[index];
  const section = part?.sections[edit.section];
  if (!part || section?.name !== edit.called) return undefined;
  const rows = section.last - section.first + 1 + edit.by;
  const worked = knitted.get(recipe.name)?.rows[make.make - 1]?.[index] ?? 0;
  const wish = { kind: 'rows', section: edit.section, rows } as const;
  const made = rework(recipeOfMake(recipe, make.make, make.parts), index, part, worked, wish);
  if (!made.ok) return undefined;
  const plans = make.parts.map((old, i) => made.value.parts.find((own) => own.index === i)?.part ?? old);
  return { ...make, ...standingMake(recipe, make.make, plans) };
}

/** The recipe of a piece not begun after the change; undefined where it has no such place, or no room. */
export const editedRecipe = (recipe: Recipe, edit: Edit): Recipe | undefined =>
  knittable(recipe, edit)?.piece.recipe ?? recipeWith(recipe, edit, 'the manner');

/** Rows more or fewer are laid out in the manner of the old ones; where that cannot be knitted, shaping stays where it is as far as there is room. */
function knittable(recipe: Recipe, edit: Edit): { readonly piece: StandingPiece } | undefined {
  for (const keep of edit.kind === 'rows' ? (['the manner', 'what fits'] as const) : [undefined]) {
    const made = recipeWith(recipe, edit, keep);
    const planned = made && asPlanned({ name: '', pieces: [made] });
    const piece = planned?.ok ? planned.value.pieces[0] : undefined;
    if (piece) return { piece };
  }
  return undefined;
}

type Keep = 'the manner' | 'what fits' | undefined;

function recipeWith(recipe: Recipe, edit: Edit, keep: Keep): Recipe | undefined {
  if (edit.kind === 'shoulder') return withShoulder(recipe, edit.edges, edit.by, edit.from);
  const at = edit.kind === 'pick up' ? 0 : recipe.parts.findIndex(({ name }) => name === edit.part);
  const part = recipe.parts[at];
  if (!part) return undefined;
  const made = editedPart(part, edit, keep);
  return made && { ...recipe, parts: put(recipe.parts, at, made) };
}

function editedPart(
  part: PartRecipe,
  edit: Exclude<Edit, { kind: 'shoulder' }>,
  keep: Keep,
): PartRecipe | undefined {
  switch (edit.kind) {
    case 'rows': {
      const section = part.sections[edit.section];
      if (section?.name !== edit.called || section.rows + edit.by < 0) return undefined;
      const made = withRows(section, section.rows + edit.by, keep);
      return made.ok ? { ...part, sections: put(part.sections, edit.section, made.value) } : undefined;
    }
    case 'width':
      return widened(part, edit.by, edit.fromTop);
    case 'pick up':
      return pickedUp(part, edit.edges);
  }
}

/** Another number picked up, the corners of its mitres where they were and its button holes spread anew; other rows in words count for the old number only. */
function pickedUp(part: PartRecipe, edges: readonly PickUpEdit[]): PartRecipe | undefined {
  const { from } = part;
  if (!('pickUp' in from)) return undefined;
  const pickUp = from.pickUp.map((one, i): PickUp => {
    const edit = edges.find(({ at }) => at === i);
    return edit ? { ...one, stitches: edit.now } : one;
  });
  if (pickUp.some(({ stitches }) => stitches < 1)) return undefined;
  const moved = (column: number): number => movedCorner(column, from.pickUp, pickUp);
  const sections: Section[] = [];
  let rowsBefore = 0;
  for (const section of part.sections) {
    const words = section.words && holesMoved(part, section.words, pickUp, rowsBefore);
    if (section.words !== undefined && words === undefined) return undefined;
    rowsBefore += section.rows;
    const shaping = section.shaping.map(
      (one): Shaping => (one.kind === 'middle' ? { ...one, from: moved(one.from) } : one),
    );
    sections.push({ ...section, shaping, ...(words ? { words } : {}) });
  }
  return { ...part, from: { ...from, pickUp }, sections };
}

/** The same button holes over another pick-up; undefined where the words are other rows, or the holes lie along more than one edge. */
function holesMoved(
  { from, sections }: PartRecipe,
  words: NonNullable<Section['words']>,
  now: readonly PickUp[],
  rowsBefore: number,
): Section['words'] | undefined {
  const fabric = sections[0]?.fabric;
  if (!('pickUp' in from) || fabric === undefined) return undefined;
  const total = sumOf(from.pickUp);
  const holes = holesIn(words, total);
  const last = holes && (holes.places.at(-1) ?? 0) + holes.stitches;
  const at = from.pickUp.findIndex((_, i) => (last ?? total) <= sumOf(from.pickUp.slice(0, i + 1)));
  const [was, is] = [from.pickUp, now].map((list) => ({
    from: sumOf(list.slice(0, at)),
    to: sumOf(list.slice(0, at + 1)),
  }));
  if (!holes || !was || !is || (holes.places[0] ?? 0) < was.from) return undefined;
  const moved = movedHoles(holes, fabric, was, is);
  return moved && holeRows(moved, fabric, sumOf(now), rowsBefore);
}

const sumOf = (list: readonly PickUp[]): number => list.reduce((sum, { stitches }) => sum + stitches, 0);

/** A corner is the last stitch of its edge or the first of the next; in a band that ends at a front it keeps its place from there. */
function movedCorner(column: number, was: readonly PickUp[], now: readonly PickUp[]): number {
  let begin = 0;
  return was.reduce((sum, { stitches }, i) => {
    const end = begin + stitches;
    const isBefore = end <= column + 1 || (i === was.length - 1 && begin <= column);
    begin = end;
    return isBefore ? sum + (now[i]?.stitches ?? 0) - stitches : sum;
  }, column);
}

/** Stitches by which a band may grow without another beginning or end of its repeat. */
export const repeatOf = (part: PartRecipe): number => {
  const [first] = part.sections;
  return first === undefined ? 1 : fabrics[first.fabric].multiple.of;
};
