import { type LogEntry, type PieceId, parseMakeKey } from '../../progress/log.ts';
import type { PieceRecord } from '../records.ts';

/** What the log asks of a piece: so many makes and parts that each of which anything was logged is there. */
export interface Begun {
  readonly makes: number;
  readonly parts: number;
}

/** By the id of a piece; undefined where nothing was logged of it. */
export type BegunIn = (piece: PieceId) => Begun | undefined;

/** More makes of a piece no recipe has, whatever a file says. */
const MOST_MAKES = 20;

/** What the entries ask of each piece, by garment and piece: 'g/back'. */
export function begunIn(entries: Iterable<Pick<LogEntry, 'make'>>): ReadonlyMap<string, Begun> {
  const begun = new Map<string, Begun>();
  for (const key of new Set([...entries].map(({ make }) => make))) {
    const id = parseMakeKey(key);
    if (id === undefined) continue;
    const piece = `${id.garment}/${id.piece}`;
    const { makes, parts } = begun.get(piece) ?? { makes: 1, parts: 1 };
    const make = id.make > MOST_MAKES ? 1 : id.make;
    begun.set(piece, { makes: Math.max(makes, make), parts: Math.max(parts, id.part + 1) });
  }
  return begun;
}

export const hasParts = ({ recipe }: PieceRecord, { parts }: Begun): boolean => recipe.parts.length >= parts;

/** The piece with as many makes as were begun. */
export function withMakes(piece: PieceRecord, { makes }: Begun): PieceRecord {
  const { recipe } = piece;
  return recipe.makes >= makes ? piece : { ...piece, recipe: { ...recipe, makes } };
}
