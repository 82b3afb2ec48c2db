import type { Edge, PartEnd } from '../recipe.ts';
import type { PartForm, PieceForm, SectionForm, ShapingForm } from './form.ts';
import { freeName, inserted, moved, removed, replaced } from './list.ts';

/** Changes to the parts of a piece that keep the parts' links to each other. */

export const changePart = (piece: PieceForm, index: number, part: PartForm): PieceForm => ({
  ...piece,
  parts: replaced(piece.parts, index, part),
});

/** Parts that take stitches from it go on taking them under the new name. */
export function renamePart(piece: PieceForm, index: number, name: string): PieceForm {
  const old = piece.parts[index]?.name;
  return {
    ...piece,
    parts: piece.parts.map((part, i) => {
      if (i === index) return { ...part, name };
      const { start } = part;
      return start.kind === 'split' && start.part === old
        ? { ...part, start: { ...start, part: name } }
        : part;
    }),
  };
}

export const removePart = (piece: PieceForm, index: number): PieceForm => ({
  ...piece,
  parts: removed(piece.parts, index),
});

export const movePart = (piece: PieceForm, index: number, by: -1 | 1): PieceForm => ({
  ...piece,
  parts: moved(piece.parts, index, by),
});

export function duplicatePart(piece: PieceForm, index: number): PieceForm {
  const part = piece.parts[index];
  if (part === undefined) return piece;
  const name = freeName(part.name, names(piece));
  return { ...piece, parts: inserted(piece.parts, index + 1, { ...part, name }) };
}

/** The part with right and left exchanged, under its own name. */
export const mirrorOf = (part: PartForm): PartForm => ({
  ...part,
  start:
    part.start.kind === 'split' && part.start.edge !== 'middle'
      ? { ...part.start, edge: otherEdge(part.start.edge) }
      : part.start,
  sections: part.sections.map(mirrorSection),
});

/** The other shoulder: it fills the other side where that is still empty, else it is a part more, after this one. */
export function mirrorPart(piece: PieceForm, index: number, wanted: string): PieceForm {
  const part = piece.parts[index];
  if (part === undefined) return piece;
  const twin = mirrorOf(part);
  const empty = piece.parts.findIndex((other, i) => i !== index && isEmptySide(other, twin.start));
  const filled = piece.parts[empty];
  return filled
    ? changePart(piece, empty, { ...twin, name: filled.name })
    : {
        ...piece,
        parts: inserted(piece.parts, index + 1, { ...twin, name: freeName(wanted, names(piece)) }),
      };
}

/** Begun at that side of the same part, and nothing said of its rows yet. */
const isEmptySide = ({ start, sections }: PartForm, wanted: PartForm['start']): boolean =>
  start.kind === 'split' &&
  wanted.kind === 'split' &&
  start.part === wanted.part &&
  start.edge === wanted.edge &&
  sections.every(
    ({ rows, shaping, words }) => rows.trim() === '' && shaping.length === 0 && words === undefined,
  );

/**
 * Groups lie where a row starts, so those of the other edge come a row later (right to left) or earlier (left to
 * right; later where there is no earlier row). A section whose last group moves past its end gets a row more.
 */
function mirrorSection(section: SectionForm): SectionForm {
  let rows = section.rows;
  const shaping = section.shaping.map((entry): ShapingForm => {
    if (entry.kind === 'across' || entry.kind === 'middle' || entry.edge === 'both') return entry;
    const edge = otherEdge(entry.edge);
    if (entry.kind === 'edge') return { ...entry, edge };
    const first = Number(entry.first);
    const shifted = entry.edge === 'left' && first > 1 ? first - 1 : first + 1;
    const turned = { ...entry, edge, first: Number.isInteger(first) ? String(shifted) : entry.first };
    const last = lastRow(turned);
    if (last > Number(rows)) rows = String(last);
    return turned;
  });
  return { ...section, rows, shaping };
}

function lastRow(entry: { first: string; every: string; groups: string }): number {
  const turns = entry.groups.split(/[\s,;+]+/).filter(Boolean).length;
  return Number(entry.first) + (turns - 1) * Number(entry.every);
}

export interface SplitWish {
  readonly right: { readonly name: string; readonly stitches: string };
  readonly left: { readonly name: string; readonly stitches: string };
  /** what lies between; its stitches '' or '0' for a split with nothing between */
  readonly middle: { readonly name: string; readonly stitches: string; readonly end: PartEnd };
}

/** Ends a part in a split and adds the parts that take its stitches: right, middle where there is one, left. */
export function splitPart(piece: PieceForm, index: number, wish: SplitWish): PieceForm {
  const part = piece.parts[index];
  if (part === undefined) return piece;
  const taken = [...names(piece)];
  const from = (side: { name: string; stitches: string }, edge: Edge | 'middle', end: PartEnd): PartForm => {
    const name = freeName(side.name, taken);
    taken.push(name);
    return {
      name,
      start: { kind: 'split', part: part.name, stitches: side.stitches, edge },
      sections: [],
      end,
    };
  };
  const hasMiddle = wish.middle.stitches.trim() !== '' && Number(wish.middle.stitches) !== 0;
  const next = [
    from(wish.right, 'right', 'bind off'),
    ...(hasMiddle ? [from(wish.middle, 'middle', wish.middle.end)] : []),
    from(wish.left, 'left', 'bind off'),
  ];
  const ended = changePart(piece, index, { ...part, end: 'split' });
  return { ...ended, parts: inserted(ended.parts, index + 1, ...next) };
}

const names = (piece: PieceForm): readonly string[] => piece.parts.map((part) => part.name);
const otherEdge = (edge: Edge): Edge => (edge === 'right' ? 'left' : 'right');
