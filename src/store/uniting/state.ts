import type { PieceId } from '../../progress/log.ts';
import { oneOf, stableJson } from '../backup/stable.ts';
import { contentHash } from '../content-hash.ts';
import type {
  GarmentMarks,
  GarmentPart,
  GarmentRecord,
  GonePhoto,
  GonePiece,
  ListOrder,
} from '../records.ts';
import { type BegunIn, hasParts } from './begun.ts';
import { type ListName, listNames, partsOf, pieceIn, pieceName } from './parts.ts';
import { type Stamp, stampBefore, writerOf } from './stamp.ts';

/**
 * A garment as devices unite it: an observed-remove set of versions of its parts (Shapiro, Preguiça, Baquero and
 * Zawirski 2011, 'Conflict-free Replicated Data Types'; without tombstones as in Bieniusa et al. 2012, 'An optimized
 * conflict-free replicated set'). A version is named by its stamp; `seen` tells up to which stamp of each device this
 * one has heard. What one side has and the other has heard of, but has not, was taken away or changed by the other.
 */
export interface GarmentState {
  /** versions of each part by stamp: more than one where devices changed it without each other */
  readonly parts: Map<string, Map<Stamp, GarmentPart>>;
  readonly seen: Map<string, Stamp>;
  /** pieces taken out, by id: they come back where rows of them turn up */
  readonly gone: Map<PieceId, GonePiece>;
  /** photos taken away, by id */
  readonly photosGone: Map<string, GonePhoto>;
  readonly order: Map<ListName, ListOrder>;
}

/** The field of which all versions are kept and shown. */
export const NOTES = 'notes';

/** The stamp of a record that has no marks: it was not changed since it came into the box, or before there were stamps. */
function stampOfUnmarked({ marks: _none, ...record }: GarmentRecord): Stamp {
  const pieces = record.pieces.map(({ id, recipe }) => ({ id, recipe }));
  return stampBefore(record.changedAt, contentHash(stableJson({ ...record, pieces })));
}

const marksOf = (record: GarmentRecord): GarmentMarks => {
  if (record.marks !== undefined) return record.marks;
  const base = stampOfUnmarked(record);
  return { base, seen: [base] };
};

export function stateOf(record: GarmentRecord): GarmentState {
  const {
    base,
    at = {},
    seen,
    also = [],
    gone = [],
    photosGone = [],
    shown = [],
    order = {},
  } = marksOf(record);
  const presented = partsOf(record);
  const parts = new Map<string, Map<Stamp, GarmentPart>>();
  const put = (name: string, stamp: Stamp, part: GarmentPart) =>
    parts.set(name, (parts.get(name) ?? new Map<Stamp, GarmentPart>()).set(stamp, part));
  const joined = also.some(({ name }) => name === NOTES);
  const outside = new Set(shown.map(pieceName));
  for (const [name, part] of presented)
    if (!outside.has(name) && !(joined && name === NOTES))
      put(name, Object.hasOwn(at, name) ? (at[name] as Stamp) : base, part);
  for (const { name, stamp, of = presented.get(name) } of also) if (of !== undefined) put(name, stamp, of);
  return {
    parts,
    seen: new Map(seen.map((stamp) => [writerOf(stamp), stamp])),
    gone: new Map(gone.map((one) => [one.piece.id, one])),
    photosGone: new Map(photosGone.map((one) => [one.id, one])),
    order: new Map(
      listNames.flatMap((list): [ListName, ListOrder][] => {
        const names = order[list]?.names ?? namesIn(presented, list);
        return names.length === 0 ? [] : [[list, order[list] ?? { stamp: base, names }]];
      }),
    ),
  };
}

export const namesIn = (parts: ReadonlyMap<string, unknown>, list: ListName): string[] =>
  [...parts.keys()].filter((name) => name.startsWith(`${list}/`));

/** Two states as one; `begun`: what the logs of both have of a piece. */
export function unitedStates(a: GarmentState, b: GarmentState, begun: BegunIn): GarmentState {
  const parts = new Map<string, Map<Stamp, GarmentPart>>();
  for (const name of new Set([...a.parts.keys(), ...b.parts.keys()])) {
    const [one, two] = [a.parts.get(name), b.parts.get(name)];
    const kept = new Map<Stamp, GarmentPart>();
    const left = new Map<Stamp, GarmentPart>();
    for (const [stamp, part] of one ?? []) {
      const other = two?.get(stamp);
      if (other !== undefined) kept.set(stamp, oneOf(part, other));
      else (hasHeardOf(b, stamp) ? left : kept).set(stamp, part);
    }
    for (const [stamp, part] of two ?? [])
      if (!one?.has(stamp)) (hasHeardOf(a, stamp) ? left : kept).set(stamp, part);
    keepBegunParts(kept, left, begun);
    if (kept.size > 0) parts.set(name, kept);
  }
  return {
    parts,
    seen: joined(a.seen, b.seen, laterStamp),
    gone: withoutTrace(parts, joined(a.gone, b.gone, laterOf), a, b),
    photosGone: joined(a.photosGone, b.photosGone, laterOf),
    order: joined(a.order, b.order, laterOf),
  };
}

/** A version of a piece that the other side has changed since stays where a part was begun that no later one has. */
function keepBegunParts(
  kept: Map<Stamp, GarmentPart>,
  left: ReadonlyMap<Stamp, GarmentPart>,
  begun: BegunIn,
): void {
  const covers = ([, part]: readonly [Stamp, GarmentPart]): boolean => {
    const piece = pieceIn(part);
    const needed = piece && begun(piece.id);
    return piece === undefined || needed === undefined || hasParts(piece, needed);
  };
  if (kept.size === 0 || [...kept].some(covers)) return;
  const [last] = [...left].filter(covers).sort(([one], [two]) => (one < two ? 1 : -1));
  if (last !== undefined) kept.set(...last);
}

/** Pieces that one side has heard of and says nothing about, which no device of ours does, are taken out as others are. */
function withoutTrace(
  parts: ReadonlyMap<string, unknown>,
  gone: Map<PieceId, GonePiece>,
  ...sides: readonly GarmentState[]
): Map<PieceId, GonePiece> {
  for (const [name, versions] of sides.flatMap((side) => [...side.parts])) {
    if (parts.has(name)) continue;
    for (const [stamp, part] of versions) {
      const piece = pieceIn(part);
      if (piece === undefined) continue;
      const known = gone.get(piece.id);
      gone.set(piece.id, known === undefined ? { stamp, piece } : laterOf(known, { stamp, piece }));
    }
  }
  return gone;
}

const hasHeardOf = ({ seen }: GarmentState, stamp: Stamp): boolean =>
  (seen.get(writerOf(stamp)) ?? '') >= stamp;

function laterOf<T extends { readonly stamp: Stamp }>(a: T, b: T): T {
  if (a.stamp !== b.stamp) return a.stamp > b.stamp ? a : b;
  return oneOf(a, b);
}

function joined<K, T>(a: ReadonlyMap<K, T>, b: ReadonlyMap<K, T>, choose: (a: T, b: T) => T): Map<K, T> {
  const all = new Map(a);
  for (const [key, value] of b) {
    const known = all.get(key);
    all.set(key, known === undefined ? value : choose(known, value));
  }
  return all;
}

/** Stamps are text, in the order of their clocks. */
function laterStamp(one: Stamp, two: Stamp): Stamp {
  if (one < two) return two;
  return one;
}
