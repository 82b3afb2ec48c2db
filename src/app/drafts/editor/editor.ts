import { computed, signal } from '@preact/signals';
import type { Fault } from '../../../knit/fault.ts';
import { recipeToForm } from '../../../knit/piece/form/write-piece.ts';
import type { GarmentId, PieceId } from '../../../progress/log.ts';
import type { GarmentRecord, PlaceRecord } from '../../../store/records.ts';
import { newGarmentId } from '../../garments/ids.ts';
import { readOr, store } from '../../store.ts';
import { keptDraft } from '../kept/kept-draft.ts';
import { textIn } from '../kept/read-kept.ts';
import { type Draft, draftKey } from './draft.ts';
import { blankGarment, type GarmentForm, garmentToForm, readGarment } from './garment-form.ts';
import { begin, changed, type History, undone } from './history.ts';
import { formOf } from './older-draft.ts';
import { andThen, changedElsewhere, type Elsewhere, nothingElsewhere, ontoStored } from './onto-stored.ts';

/** The garment that is being typed. Screens read it; the intents below change it. */
export interface Editor {
  /** id of the garment, or that it will have */
  readonly garment: GarmentId;
  /** the setting in which the draft is kept */
  readonly key: string;
  /** as it stands in the store; undefined for a new one */
  readonly old: GarmentRecord | undefined;
  /** ids of the pieces of which a make has been begun */
  readonly begun: ReadonlySet<PieceId>;
  /** of those, the ones of which every make is knitted to its end */
  readonly finished: ReadonlySet<PieceId>;
  readonly history: History<GarmentForm>;
  /** when the draft that was found was last typed at, ms; undefined when there was none */
  readonly foundAt: number | undefined;
  /** what another window changed of the garment since it was opened here; taken over where she did not change it too */
  readonly elsewhere: Elsewhere;
}

/** undefined until read; null when there is no such garment */
export const editor = signal<Editor | null | undefined>(undefined);

const draftOf = keptDraft('editorDraft');
export const { unread, keeping } = draftOf;

export const garmentForm = computed(() => editor.value?.history.now);

/** what cannot be read of the garment's own fields */
export const garmentFaults = computed<readonly Fault[]>(() =>
  garmentForm.value ? readGarment(garmentForm.value).faults : [],
);

type Knitted = Pick<Editor, 'begun' | 'finished'>;

const nothingBegun: Knitted = { begun: new Set(), finished: new Set() };

function knittedOf(places: readonly PlaceRecord[]): Knitted {
  const begun = new Set(places.filter(({ seq }) => seq > 0).map(({ piece }) => piece));
  const left = new Set(places.filter(({ rows, total }) => rows < total).map(({ piece }) => piece));
  return { begun, finished: new Set([...begun].filter((piece) => !left.has(piece))) };
}

/** Reads a garment into the editor, or begins a new one; a draft that was left goes on. */
export async function openEditor(garment: GarmentId | undefined): Promise<void> {
  const key = draftKey(garment);
  const before = editor.peek();
  const goesOn = before && before.key === key ? before : undefined;
  if (goesOn === undefined) editor.value = undefined;
  const open = await store();
  const settings = readOr(await open.settings());
  if (settings === undefined) return;
  // what is being typed here is newer than what is kept of it
  const left = await draftOf.left(goesOn ? undefined : settings[key]);
  if (left === undefined) return;
  const { draft } = left;
  if (garment === undefined) {
    if (goesOn) return;
    const id = draft?.garment ?? newGarmentId();
    editor.value = opened({ garment: id, key, old: undefined, ...nothingBegun }, draft);
    return;
  }
  const found = await open.garment(garment);
  const places = readOr(await open.placesOf(garment));
  if (!found.ok && found.faults[0]?.code === 'no-such-garment') editor.value = null;
  const old = readOr(found);
  if (old === undefined || places === undefined) return;
  const knitted = knittedOf(places);
  const at = { garment, key, old, ...knitted };
  if (goesOn === undefined) editor.value = opened(at, draft);
  else if (editor.peek()?.key === key) goOn(editor.peek() as Editor, old, knitted);
}

/** A draft that is begun just now is typed at, with no word of coming back to it. */
export function takeUp(draft: Draft): void {
  const at = { garment: draft.garment, key: draftKey(undefined), old: undefined, ...nothingBegun };
  editor.value = { ...opened(at, draft), foundAt: undefined };
}

/** What was changed elsewhere comes into what is typed, and into what an undo would bring back. */
function goOn(now: Editor, old: GarmentRecord, knitted: Knitted): void {
  const base = now.old;
  if (base === undefined) return;
  const onto = (form: GarmentForm) => withBegun(ontoStored(form, base, old), old, knitted.begun);
  const { past, now: form } = now.history;
  const history = {
    ...now.history,
    now: onto(form),
    past: past.map((step) => ({ ...step, before: onto(step.before) })),
  };
  const elsewhere = andThen(now.elsewhere, changedElsewhere(form, base, old));
  const next = { ...now, old, ...knitted, history, elsewhere };
  editor.value = next;
  if (past.length > 0 || now.foundAt !== undefined) void keepDraft(next);
}

/** Begins anew where the draft that was left cannot be read: with its name and its notes, else as it was saved last. */
export async function beginAnew(garment: GarmentId | undefined): Promise<void> {
  const { stored } = unread.value ?? {};
  const name = textIn(stored, 'form', 'name');
  const notes = textIn(stored, 'form', 'notes');
  if (!(await writeDraft(draftKey(garment), null))) return;
  await openEditor(garment);
  change((form) => ({ ...form, name: name || form.name, notes: notes || form.notes }), 'begun anew');
}

function opened(
  at: Pick<Editor, 'garment' | 'key' | 'old' | keyof Knitted>,
  draft: Draft | undefined,
): Editor {
  const { old } = at;
  const form = draft ? formOf(draft, old) : old ? garmentToForm(old) : blankGarment;
  const base = draft && old && (draft.base ?? asInDraft(old, form));
  const onto = base && old ? ontoStored(form, base, old) : form;
  return {
    ...at,
    history: begin(withBegun(onto, old, at.begun)),
    foundAt: draft?.at,
    elsewhere: draft?.base && old ? changedElsewhere(form, draft.base, old) : nothingElsewhere,
  };
}

/** An older draft does not tell which pieces there were: one that it has not may have been made since. */
const asInDraft = (old: GarmentRecord, form: GarmentForm): GarmentRecord => {
  const known = new Set(form.pieces.map(({ id }) => id));
  return { ...old, pieces: old.pieces.filter(({ id }) => known.has(id)) };
};

/** Pieces on the needles stand as they are knitted, whatever an older draft says. */
export function withBegun(
  form: GarmentForm,
  old: GarmentRecord | undefined,
  begun: ReadonlySet<PieceId>,
): GarmentForm {
  const recipes = new Map(
    (old?.pieces ?? []).filter(({ id }) => begun.has(id)).map(({ id, recipe }) => [id, recipe]),
  );
  const pieces = form.pieces.map((entry) => {
    const recipe = recipes.get(entry.id);
    recipes.delete(entry.id);
    return recipe === undefined
      ? entry
      : { ...entry, form: { ...recipeToForm(recipe), name: entry.form.name } };
  });
  const missing = [...recipes].map(([id, recipe]) => ({ id, form: recipeToForm(recipe) }));
  return { ...form, pieces: [...missing, ...pieces] };
}

/**
 * Changes the form and keeps the draft.
 * @param field the field that was typed into; further typing there is the same step when it is taken back
 */
export function change(make: (form: GarmentForm) => GarmentForm, what: string, field?: string): void {
  const now = editor.value;
  if (!now) return;
  const history = changed(now.history, make(now.history.now), what, field);
  if (history !== now.history) enter({ ...now, history });
}

export function undo(): void {
  const now = editor.value;
  if (now) enter({ ...now, history: undone(now.history) });
}

function enter(next: Editor): void {
  editor.value = next;
  void keepDraft(next);
}

export const writeDraft = draftOf.write;

async function keepDraft({ key, garment, history, old }: Editor): Promise<void> {
  const base = old && { base: old };
  const draft: Draft = { version: 2, garment, at: Date.now(), form: history.now, ...base };
  await draftOf.keep(key, draft);
}

/** Forgets the draft; the garment, where there is one, is as it was saved last. */
export async function throwAway(): Promise<void> {
  const now = editor.value;
  if (!now) return;
  await writeDraft(now.key, null);
  editor.value = undefined;
}
