import { signal } from '@preact/signals';
import { change } from '../../app/drafts/editor/editor.ts';
import type { PartForm, PieceForm, SectionForm } from '../../knit/piece/form/form.ts';
import { replaced } from '../../knit/piece/form/list.ts';
import type { PieceId } from '../../progress/log.ts';

/** What has just been done, with a way back: a toast. */
export const done = signal<string | undefined>(undefined);

/** The section that stands open; one at a time, so that the phone shows it whole. */
export const openSection = signal<
  { readonly piece: PieceId; readonly part: number; readonly section: number } | undefined
>(undefined);

/** @param field where it was typed; without it the change is a step of its own and is told */
export function changePiece(
  id: PieceId,
  make: (piece: PieceForm) => PieceForm,
  what: string,
  field?: string,
): void {
  change(
    (form) => ({
      ...form,
      pieces: form.pieces.map((entry) => (entry.id === id ? { ...entry, form: make(entry.form) } : entry)),
    }),
    what,
    field && `${id} ${field}`,
  );
  if (field === undefined) done.value = what;
}

/** Changes of one part of one piece, handed down to its fields. */
export interface PartHand {
  readonly piece: PieceId;
  readonly part: number;
  readonly type: (change: Partial<PartForm>, field: string) => void;
  /** the whole part anew, for a setting that goes */
  readonly replace: (part: PartForm, field: string) => void;
  readonly section: (index: number, change: Partial<SectionForm>, field: string) => void;
}

export function partHand(piece: PieceId, part: number): PartHand {
  const type: PartHand['type'] = (change, field) =>
    changePiece(
      piece,
      (form) => withPart(form, part, (old) => ({ ...old, ...change })),
      field,
      `${part} ${field}`,
    );
  return {
    piece,
    part,
    type,
    replace: (next, field) =>
      changePiece(piece, (form) => withPart(form, part, () => next), field, `${part} ${field}`),
    section: (index, change, field) =>
      changePiece(
        piece,
        (form) =>
          withPart(form, part, (old) => ({
            ...old,
            sections: old.sections.map((section, i) => (i === index ? { ...section, ...change } : section)),
          })),
        field,
        `${part} ${index} ${field}`,
      ),
  };
}

export function withPart(form: PieceForm, index: number, make: (part: PartForm) => PartForm): PieceForm {
  const part = form.parts[index];
  return part === undefined ? form : { ...form, parts: replaced(form.parts, index, make(part)) };
}
