import { mirrorOf } from './edit-parts.ts';
import type { PartForm, PieceForm, SectionForm } from './form.ts';
import { replaced } from './list.ts';

/** Two shoulders are said once: of parts that take their stitches from one part, a later one may mirror an earlier one. */

/** Index of the part whose mirror image this one is but for its name; undefined where it is none. */
export function twinOf(form: PieceForm, index: number): number | undefined {
  const found = form.parts.findIndex((_, i) => i < index && turnsOf(form, i, index) !== undefined);
  return found < 0 ? undefined : found;
}

/** Changes a part; those that were its mirror image follow, each under its own name. */
export function changeWithTwins(
  form: PieceForm,
  index: number,
  make: (part: PartForm) => PartForm,
): PieceForm {
  const old = form.parts[index];
  if (old === undefined) return form;
  const changed: PieceForm = { ...form, parts: replaced(form.parts, index, make(old)) };
  const parts = changed.parts.map((part, i) => {
    const turns = i > index ? turnsOf(form, index, i) : undefined;
    const image = isSibling(changed.parts[index], part) ? mirrored(changed, index) : undefined;
    if (turns === undefined || image === undefined) return part;
    const sections = image.sections.map((section, k) => withTurn(section, turns[k] ?? 0));
    return { ...image, name: part.name, sections };
  });
  return { ...changed, parts };
}

/** Of two sides that take their stitches from one part, the later one where its rows are not those of the earlier. */
export function unevenWith(
  form: PieceForm,
  index: number,
): { readonly part: number; readonly rows: number; readonly other: number } | undefined {
  const found = form.parts.findIndex((part, i) => i < index && isOtherSide(part, form.parts[index]));
  const [rows, other] = [rowsOf(form.parts[index]), rowsOf(form.parts[found])];
  if (rows === undefined || other === undefined) return undefined;
  // a group at the other edge comes a row later
  return Math.abs(rows - other) > 1 ? { part: found, rows, other } : undefined;
}

const isOtherSide = (lead: PartForm, part: PartForm | undefined): boolean =>
  lead.start.kind === 'split' &&
  part?.start.kind === 'split' &&
  lead.start.part === part.start.part &&
  lead.start.edge !== 'middle' &&
  part.start.edge !== 'middle' &&
  lead.start.edge !== part.start.edge;

/** Undefined while a number of rows is not said. */
function rowsOf(part: PartForm | undefined): number | undefined {
  const rows = part?.sections.map((section) =>
    section.rows.trim() === '' ? Number.NaN : Number(section.rows),
  );
  const sum = rows?.reduce((all, one) => all + one, 0);
  return sum !== undefined && sum > 0 ? sum : undefined;
}

/**
 * Rows that each section of the image has more than its lead mirrored, 0 or 1: groups come a row later at the other
 * edge, and some work a row more after the last of them. Undefined where the part is no image.
 */
function turnsOf(form: PieceForm, lead: number, index: number): readonly number[] | undefined {
  const part = form.parts[index];
  if (part === undefined || !isSibling(form.parts[lead], part)) return undefined;
  const image = mirrored(form, lead);
  if (image === undefined || image.sections.length !== part.sections.length) return undefined;
  const turns = part.sections.map(
    (section, k) => Number(section.rows) - Number(image.sections[k]?.rows) === 1 && hasGroups(section),
  );
  const like = image.sections.map((section, k) => withTurn(section, turns[k] ? 1 : 0));
  return sameness({ ...image, sections: like }) === sameness(part) ? turns.map(Number) : undefined;
}

const hasGroups = ({ shaping }: SectionForm): boolean =>
  shaping.some((entry) => 'groups' in entry && entry.edge !== 'both');

const withTurn = (section: SectionForm, rows: number): SectionForm =>
  rows > 0 && hasGroups(section) ? { ...section, rows: String(Number(section.rows) + rows) } : section;

const mirrored = (form: PieceForm, index: number): PartForm | undefined => {
  const part = form.parts[index];
  return part && mirrorOf(part);
};

/** Rows that are spelled out in words have no mirror image that could be told. */
const canMirror = ({ sections }: PartForm): boolean => sections.every(({ words }) => words === undefined);

const isSibling = (lead: PartForm | undefined, part: PartForm): boolean =>
  lead?.start.kind === 'split' &&
  part.start.kind === 'split' &&
  lead.start.part === part.start.part &&
  lead.start.edge !== 'middle' &&
  canMirror(lead) &&
  canMirror(part);

/** All of a part but its name, in one order of its fields. */
const sameness = ({ name: _name, ...rest }: PartForm): string =>
  JSON.stringify(rest, (_, value: unknown) =>
    value !== null && typeof value === 'object' && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
      : value,
  );
