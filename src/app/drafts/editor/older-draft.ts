import type { PartForm, PieceForm, SectionForm, StartForm } from '../../../knit/piece/form/form.ts';
import type { GarmentRecord } from '../../../store/records.ts';
import type { Draft } from './draft.ts';
import { type GarmentForm, garmentToForm } from './garment-form.ts';

/**
 * The form that a kept draft holds. One of version 1 was made when the form held nothing but its fields: what a
 * pattern said in its own words, a length, a count on the needle come from the garment as it is stored, for each
 * section that still stands where it stood under its name.
 */
export function formOf({ version, form }: Draft, old: GarmentRecord | undefined): GarmentForm {
  if (version !== 1 || old === undefined) return form;
  const stored = new Map(garmentToForm(old).pieces.map((entry) => [entry.id, entry.form]));
  const pieces = form.pieces.map((entry) => {
    const before = stored.get(entry.id);
    return before === undefined ? entry : { ...entry, form: pieceBeside(entry.form, before) };
  });
  return { ...form, pieces };
}

function pieceBeside(piece: PieceForm, before: PieceForm): PieceForm {
  const { role } = before;
  const parts = piece.parts.map((part) => {
    const was = before.parts.find(({ name }) => name === part.name);
    return was === undefined ? part : partBeside(part, was);
  });
  return { ...(role === undefined ? {} : { role }), ...piece, parts };
}

const partBeside = (part: PartForm, before: PartForm): PartForm => ({
  ...part,
  start: startBeside(part.start, before.start),
  sections: part.sections.map((section, i) => {
    const was = before.sections[i];
    return was?.name === section.name ? sectionBeside(section, was) : section;
  }),
});

function startBeside(start: StartForm, before: StartForm): StartForm {
  if (start.kind !== 'pick up' || before.kind !== 'pick up') return start;
  const edges = start.edges.map((edge, i) => {
    const was = before.edges[i];
    return was?.along === edge.along && was.held !== undefined ? { ...edge, held: was.held } : edge;
  });
  return { ...start, edges };
}

function sectionBeside(section: SectionForm, { own, length, onNeedle, measured }: SectionForm): SectionForm {
  return {
    ...(own === undefined ? {} : { own }),
    ...(length === undefined ? {} : { length }),
    ...(onNeedle === undefined ? {} : { onNeedle }),
    ...(measured === undefined ? {} : { measured }),
    ...section,
  };
}
