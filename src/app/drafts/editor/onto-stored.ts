import type { PieceId } from '../../../progress/log.ts';
import type { GarmentRecord } from '../../../store/records.ts';
import { uniteNotes } from '../../garments/unite-notes.ts';
import { type GarmentForm, garmentToForm, type PieceEntry } from './garment-form.ts';

/** What was changed elsewhere since a form was made of its garment. */
export interface Elsewhere {
  /** fields of the garment that were taken over */
  readonly fields: readonly FieldName[];
  /** names of pieces that came, were changed or taken away */
  readonly pieces: readonly string[];
  /** names of pieces, and fields, that were changed here too: what she typed holds */
  readonly both: readonly string[];
}

export type FieldName = Exclude<keyof GarmentForm, 'pieces' | 'mends' | 'shape' | 'like'>;

export const nothingElsewhere: Elsewhere = { fields: [], pieces: [], both: [] };

/** Both one after the other, each said once. */
export const andThen = (a: Elsewhere, b: Elsewhere): Elsewhere => ({
  fields: [...new Set([...a.fields, ...b.fields])],
  pieces: [...new Set([...a.pieces, ...b.pieces])],
  both: [...new Set([...a.both, ...b.both])],
});

export const isNothing = ({ fields, pieces, both }: Elsewhere): boolean =>
  fields.length + pieces.length + both.length === 0;

/**
 * The form with what was changed elsewhere since it was opened: of each field that she left as it was, what is stored now;
 * of each that she changed, what she typed; of notes both.
 * @param opened the garment as it was when the form was made of it
 */
export function ontoStored(form: GarmentForm, opened: GarmentRecord, stored: GarmentRecord): GarmentForm {
  const before = garmentToForm(opened);
  const now = garmentToForm(stored);
  return {
    ...fields(form, before, now),
    notes: same(form.notes, before.notes) ? now.notes : uniteNotes(before.notes, form.notes, now.notes),
    yarn: fields(form.yarn, before.yarn, now.yarn),
    pieces: pieces(form.pieces, before.pieces, now.pieces),
  };
}

/** What she is told of it. */
export function changedElsewhere(form: GarmentForm, opened: GarmentRecord, stored: GarmentRecord): Elsewhere {
  const before = garmentToForm(opened);
  const now = garmentToForm(stored);
  const names = (Object.keys(now) as (keyof GarmentForm)[]).filter(
    (name): name is FieldName =>
      name !== 'pieces' && !same(now[name], before[name]) && !same(now[name], form[name]),
  );
  const isUnited = (name: FieldName) => name === 'notes' || same(form[name], before[name]);
  const [was, here, there] = [piecesOf(before), piecesOf(form), piecesOf(now)];
  const changed = [...new Set([...was.keys(), ...there.keys()])].filter(
    (id) => !same(was.get(id), there.get(id)) && !same(here.get(id), there.get(id)),
  );
  const isKept = (id: PieceId) => here.has(id) && !same(here.get(id), was.get(id));
  const nameOf = (id: PieceId) => (here.get(id) ?? there.get(id) ?? was.get(id))?.form.name ?? '';
  return {
    fields: names.filter(isUnited),
    pieces: changed.filter((id) => !isKept(id)).map((id) => there.get(id)?.form.name ?? nameOf(id)),
    both: [...names.filter((name) => !isUnited(name)), ...changed.filter(isKept).map(nameOf)],
  };
}

const piecesOf = (form: GarmentForm): ReadonlyMap<PieceId, PieceEntry> =>
  new Map(form.pieces.map((entry) => [entry.id, entry]));

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

function fields<Form extends object>(form: Form, before: Form, now: Form): Form {
  const names = Object.keys(form) as (keyof Form)[];
  return Object.fromEntries(
    names.map((name) => [name, same(form[name], before[name]) ? now[name] : form[name]]),
  ) as Form;
}

function pieces(
  form: readonly PieceEntry[],
  before: readonly PieceEntry[],
  now: readonly PieceEntry[],
): readonly PieceEntry[] {
  const opened = new Map(before.map((entry) => [entry.id, entry]));
  const stored = new Map(now.map((entry) => [entry.id, entry]));
  const shown = new Set(form.map(({ id }) => id));
  const kept = form.flatMap((entry) => {
    const left = same(entry, opened.get(entry.id));
    const there = stored.get(entry.id);
    // left as it was, and taken away elsewhere
    if (left && there === undefined && opened.has(entry.id)) return [];
    return left && there ? [there] : [entry];
  });
  // made elsewhere; or changed there, though she took it out here
  const others = now.filter((entry) => !shown.has(entry.id) && !same(entry, opened.get(entry.id)));
  return [...kept, ...others];
}
