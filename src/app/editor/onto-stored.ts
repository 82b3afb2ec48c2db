import type { GarmentRecord } from '../../store/records.ts';
import { type GarmentForm, garmentToForm, type PieceEntry } from './garment-form.ts';

/**
 * The form with what was changed elsewhere since it was opened: of each field that she left as it was, what is stored now;
 * of each that she changed, what she typed.
 * @param opened the garment as it was when the form was made of it
 */
export function ontoStored(form: GarmentForm, opened: GarmentRecord, stored: GarmentRecord): GarmentForm {
  const before = garmentToForm(opened);
  const now = garmentToForm(stored);
  return {
    ...fields(form, before, now),
    yarn: fields(form.yarn, before.yarn, now.yarn),
    pieces: pieces(form.pieces, before.pieces, now.pieces),
  };
}

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
    if (left && there === undefined) return [];
    return left && there ? [there] : [entry];
  });
  const added = now.filter(({ id }) => !opened.has(id) && !shown.has(id));
  return [...kept, ...added];
}
