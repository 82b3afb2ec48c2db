import type { FabricName } from '../../knit/fabric.ts';
import { type Fault, fault, ok, type Result, refuse } from '../../knit/fault.ts';
import { countAt } from '../../knit/piece/count/count-at.ts';
import { mirrorRecipe } from '../../knit/piece/mirror.ts';
import { plan } from '../../knit/piece/plan.ts';
import type { PlannedPart } from '../../knit/piece/planned.ts';
import { provePart } from '../../knit/piece/prove.ts';
import type { Recipe } from '../../knit/piece/recipe.ts';
import { heightsMeasured } from '../../knit/piece/rework/length.ts';
import { asReallyKnitted, recipeOfMake } from '../../knit/piece/rework/make-recipe.ts';
import type { Rework } from '../../knit/piece/rework/replan.ts';
import { rowOutOfReach } from '../../knit/piece/rework/shoulder-anew.ts';
import { type ReworkWish, rework } from '../../knit/piece/rework.ts';
import { lengthTyped } from '../../words/measures.ts';
import { garmentInHand, type InHand } from '../state.ts';

export type WishKind =
  | 'shoulder'
  | 'accept'
  | 'measured'
  | 'rows'
  | 'section'
  | 'stripes'
  | 'neck'
  | 'first'
  | 'plain';

/** Undefined while it is not touched and stays as it is planned; null where what she left in its field is no number. */
type Changed = number | null | undefined;

/** What she has filled in so far. */
export interface Draft {
  /** undefined until she says what has changed */
  readonly kind: WishKind | undefined;
  readonly stitches: number | undefined;
  readonly missing: 'right' | 'left' | '';
  /** rows up to the landmark from which she measured */
  readonly above: number;
  /** measured, in her own unit, as typed */
  readonly height: number | undefined;
  readonly section: number;
  readonly rows: Changed;
  readonly neck: number | undefined;
  /** of the section that is left: what it is changed to, each undefined while it stays */
  readonly fabric: FabricName | undefined;
  /** mm */
  readonly needle: Changed;
  readonly every: Changed;
}

/** With what led to it: a count that differs, or a shoulder out of reach; else nothing is said to have changed. */
export function draftFrom(now: InHand, query: URLSearchParams): Draft {
  const planned = countAt(now.part, now.place.rows);
  const stitches = query.has('stitches') ? Number(query.get('stitches')) : planned;
  const edge = query.get('edge');
  return {
    kind: query.get('wish') === 'shoulder' ? 'shoulder' : stitches === planned ? undefined : 'accept',
    stitches,
    missing: edge === 'right' || edge === 'left' ? edge : '',
    above: 0,
    height: undefined,
    section: openSections(now)[0]?.index ?? 0,
    rows: undefined,
    neck: undefined,
    fabric: undefined,
    needle: undefined,
    every: undefined,
  };
}

/** Stretches that are not knitted to their end, with their index in plan and recipe. */
export const openSections = ({ part, place }: InHand) =>
  part.sections.flatMap((section, index) => {
    const isBindOff = part.end === 'bind off' && index === part.sections.length - 1 && index > 0;
    const rows = section.last - section.first + 1;
    return section.last > place.rows && !isBindOff && rows > 0 ? [{ index, name: section.name, rows }] : [];
  });

/** What can be wished at this place. */
export function wishKinds(now: InHand): readonly WishKind[] {
  const { rows } = now.place;
  const may: Readonly<Record<WishKind, boolean>> = {
    shoulder: rowOutOfReach(now.part, rows) !== undefined,
    accept: true,
    measured: rows > 0,
    rows: openSections(now).length > 0,
    section: openSections(now).length > 0,
    stripes: rows < now.part.rows.length,
    neck: now.part.end === 'split',
    first: rows === 0 && reworkedFellow(now) !== undefined,
    plain: rows === 0 && now.part.recipe !== undefined,
  };
  return (Object.keys(may) as WishKind[]).filter((kind) => may[kind]);
}

const pieceOf = ({ place }: InHand) => {
  const view = garmentInHand.value;
  const record = view?.garment.pieces.find(({ id }) => id === place.piece);
  const shown = view?.pieces.find(({ id }) => id === place.piece);
  return record && shown ? { recipe: record.recipe, makes: shown.makes } : undefined;
};

/** The same part of another make, where it was reworked. */
function reworkedFellow(now: InHand): { part: PlannedPart; make: number } | undefined {
  const found = pieceOf(now)?.makes.find(
    ({ make, parts }) => make !== now.place.make && parts[now.place.part]?.recipe,
  );
  const part = found?.parts[now.place.part];
  return found && part ? { part, make: found.make } : undefined;
}

/** Between which two a height lies that can be measured above the landmark, mm. */
export const heightsAt = ({ part, place }: InHand, { above }: Draft) =>
  heightsMeasured(part, place.rows, above);

/** The new plan for what is filled in, or why there is none; undefined while too little is filled in. */
export function proposed(now: InHand, draft: Draft): Result<Rework> | undefined {
  const piece = pieceOf(now);
  if (!piece) return undefined;
  const { part: index, make, rows } = now.place;
  const plans = piece.makes.find((one) => one.make === make)?.parts ?? [];
  if (draft.kind === 'plain') return again(recipeOfMake(piece.recipe, make), now, 'plain', false);
  if (draft.kind === 'first') return asFirst(piece.recipe, now);
  const wish = wishOf(draft);
  if (wish === undefined || (wish.kind === 'accept' && wish.stitches === countAt(now.part, rows)))
    return undefined;
  return rework(recipeOfMake(piece.recipe, make, plans), index, now.part, rows, wish);
}

function wishOf(draft: Draft): ReworkWish | undefined {
  const { kind, stitches, missing, above, height, section, rows, neck } = draft;
  if (kind === 'accept' && stitches !== undefined)
    return { kind, stitches, ...(missing === '' ? {} : { missingAt: missing }) };
  if (kind === 'measured' && height !== undefined) return { kind, heightMm: lengthTyped(height), above };
  if (kind === 'rows' && typeof rows === 'number' && rows > 0) return { kind, section, rows };
  if (kind === 'section') return otherwiseOf(draft);
  if (kind === 'shoulder') return { kind };
  if (kind === 'neck' && neck !== undefined && neck !== 0) return { kind, rows: neck };
  return undefined;
}

function otherwiseOf({ section, fabric, needle, every }: Draft): ReworkWish | undefined {
  if (needle === null || every === null) return undefined;
  if (fabric === undefined && needle === undefined && every === undefined) return undefined;
  return {
    kind: 'section',
    section,
    ...(fabric === undefined ? {} : { fabric }),
    ...(needle === undefined ? {} : { needle }),
    ...(every === undefined ? {} : { every }),
  };
}

/** Rows from one shaping at an edge to the next, of those to come in a section; undefined where fewer than two come. */
export function rhythmAhead({ part, place }: InHand, section: number): number | undefined {
  const ahead = part.rows.filter(
    (row) => row.n > place.rows && row.section === section && row.shaping.some(({ kind }) => kind === 'edge'),
  );
  const [first, second] = ahead;
  return first && second ? second.n - first.n : undefined;
}

/** The other make as it was really knitted, its mirror image where the piece is mirrored. */
function asFirst(recipe: Recipe, now: InHand): Result<Rework> {
  const fellow = reworkedFellow(now);
  const really = fellow && asReallyKnitted(fellow.part);
  if (!fellow || !really) return refuse(nothingLeft());
  const own = recipeOfMake(recipe, fellow.make);
  const parts = own.parts.map((part, i) => (i === now.place.part ? really : part));
  const isMirror = recipe.mirrored === true && fellow.make % 2 !== now.place.make % 2;
  return again(isMirror ? mirrorRecipe({ ...own, parts }) : { ...own, parts }, now, 'first', true);
}

const nothingLeft = (): Fault => fault('nothing left');

/** A make not yet begun takes the plan of a recipe from its first row on. */
function again(recipe: Recipe, now: InHand, code: string, isOwn: boolean): Result<Rework> {
  const made = plan({ ...recipe, makes: 1, mirrored: false });
  if (!made.ok) return made;
  const index = now.place.part;
  const part = made.value.parts[index];
  const own = recipe.parts[index];
  if (!part || !own) return refuse(nothingLeft());
  const rows = { was: now.part.rows.length, now: part.rows.length };
  const proven = isOwn ? provePart({ ...part, recipe: own }) : ok(part);
  return proven.ok
    ? ok({ parts: [{ index, part: proven.value, rows }], how: { code, figures: {} } })
    : proven;
}
