import { signal } from '@preact/signals';
import { change } from '../../app/drafts/editor/editor.ts';
import type { PartForm, PieceForm, SectionForm } from '../../knit/piece/form/form.ts';
import { changeWithTwins } from '../../knit/piece/form/twins.ts';
import type { PieceId } from '../../progress/log.ts';

/** What has just been done, with a way back: a toast. */
export const done = signal<string | undefined>(undefined);

/** A band of the piece: where a part begins, one of its sections, or where it ends. */
export interface BandPlace {
  readonly piece: PieceId;
  readonly part: number;
  readonly section: number | 'start' | 'end';
}

/** The band that stands open; one at a time, so that the phone shows it whole. */
export const openSection = signal<BandPlace | undefined>(undefined);

/** Of parts that begin where another one splits one is shown; this was chosen last, or led to. */
export const shownPart = signal<number | undefined>(undefined);

/** Whether name, role and number of the piece stand open. */
export const pieceOpen = signal(false);

export const isOpenAt = ({ piece, part, section }: BandPlace): boolean => {
  const open = openSection.value;
  return open?.piece === piece && open.part === part && open.section === section;
};

export function toggleBand(place: BandPlace): void {
  openSection.value = isOpenAt(place) ? undefined : place;
}

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

/** The part changed, and with it those that are its mirror image. */
export const withPart = changeWithTwins;
