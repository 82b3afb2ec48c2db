import { signal } from '@preact/signals';
import { type Edit, editedBy, editedRecipe } from '../../../knit/making-up/edit.ts';
import type { Asked } from '../../../knit/making-up/mends.ts';
import { readPiece } from '../../../knit/piece/form/read-piece.ts';
import { recipeToForm } from '../../../knit/piece/form/write-piece.ts';
import { partsOfMake } from '../../../knit/piece/planned.ts';
import { type StandingGarment, type StandingPiece, standingMake } from '../../../knit/piece/standing.ts';
import type { GarmentId, PieceId } from '../../../progress/log.ts';
import { asItStands } from '../../garments/as-it-stands.ts';
import { knittedOf } from '../../garments/mending.ts';
import { readView } from '../../garments/open-garments.ts';
import type { GarmentView } from '../../state.ts';
import { store } from '../../store.ts';
import { checkOf } from './check-of.ts';
import { change, type Editor } from './editor.ts';
import type { GarmentForm, PieceEntry } from './garment-form.ts';

/** The garment that is edited, as it stands in the store; undefined until read. */
export const standingEdited = signal<GarmentView | undefined>(undefined);

export async function openStanding(garment: GarmentId): Promise<void> {
  if (standingEdited.value?.garment.id !== garment) standingEdited.value = undefined;
  const view = await readView(await store(), garment);
  if (view) standingEdited.value = view;
}

interface Known {
  readonly of: readonly unknown[];
  readonly asked: Asked<StandingGarment> | undefined;
}

const known = new WeakMap<GarmentForm, Known>();

/**
 * What was typed so far, asked of the making up: the garment as it stands and as it would be saved. Undefined where
 * nothing is stored yet, or nothing is another. Worked out once for each state of the form: band and foot both ask.
 * @param inHand the piece that is being typed at
 */
export function askedOf(
  editor: Editor,
  view: GarmentView,
  inHand: PieceId | undefined,
): Asked<StandingGarment> | undefined {
  const form = editor.history.now;
  const of = [view, editor.old, editor.begun, inHand];
  const before = known.get(form);
  if (before && of.every((one, i) => one === before.of[i])) return before.asked;
  const asked = askedAnew(editor, view, inHand);
  known.set(form, { of, asked });
  return asked;
}

function askedAnew(
  { old, begun, history: { now: form } }: Editor,
  view: GarmentView,
  inHand: PieceId | undefined,
): Asked<StandingGarment> | undefined {
  if (old === undefined || view.garment.id !== old.id) return undefined;
  const before = asItStands(view);
  const names = new Map(view.garment.pieces.map(({ id, recipe }) => [id, recipe.name]));
  const pieces = form.pieces.flatMap((entry): StandingPiece[] => {
    const was = view.pieces.find(({ id }) => id === entry.id);
    if (was && begun.has(entry.id)) return [was];
    const typed = typedPiece(entry, names.get(entry.id));
    if (typed && was && JSON.stringify(typed.recipe.parts) === JSON.stringify(was.recipe.parts)) {
      if (typed.makes.length === was.makes.length) return [was];
    }
    return typed ? [typed] : was ? [was] : [];
  });
  const isSame =
    form.mends === undefined &&
    pieces.length === view.pieces.length &&
    pieces.every((piece, i) => piece === view.pieces[i]);
  const knitted = knittedOf(view);
  const typed = { ...before, pieces };
  const after = editedBy(typed, form.mends ?? [], knitted) ?? typed;
  return isSame ? undefined : { before, after, knitted, inHand: inHand && names.get(inHand) };
}

/** The piece by the stored name, under which the making up knows it; undefined while it has faults. */
function typedPiece({ form }: PieceEntry, name: string | undefined): StandingPiece | undefined {
  const { plan } = checkOf(form);
  if (!plan) return undefined;
  const { recipe: typed } = readPiece(form);
  const recipe = { ...typed, name: name ?? typed.name };
  const makes = Array.from({ length: recipe.makes }, (_, i) =>
    standingMake(recipe, i + 1, partsOfMake(plan, i + 1)),
  );
  return { recipe, makes };
}

/** Makes the changes of a mend: in what is typed of a piece not begun, and for one on the needles when it is saved. */
export function takeMend(edits: readonly Edit[], view: GarmentView): void {
  change((form) => edits.reduce((now, edit) => withEdit(now, edit, view), form), 'mended');
}

function withEdit(form: GarmentForm, edit: Edit, { garment, pieces }: GarmentView): GarmentForm {
  const stored = garment.pieces.find(({ recipe }) => recipe.name === edit.piece);
  const isBegun = pieces
    .find(({ id }) => id === stored?.id)
    ?.makes.some(({ places }) => places.some(({ seq }) => seq > 0));
  if (isBegun) return { ...form, mends: [...(form.mends ?? []), edit] };
  const isMeant = ({ id, form: { name } }: PieceEntry) => (stored ? id === stored.id : name === edit.piece);
  return {
    ...form,
    pieces: form.pieces.map((entry) => {
      const made = isMeant(entry) ? editedRecipe(readPiece(entry.form).recipe, edit) : undefined;
      return made ? { ...entry, form: { ...recipeToForm(made), name: entry.form.name } } : entry;
    }),
  };
}

/** Pieces on the needles stay as they are after all. */
export const leaveMends = (): void =>
  change((form) => {
    const { mends, ...rest } = form;
    return mends === undefined ? form : rest;
  }, 'mended');
