import type { PlannedPart } from '../piece/planned.ts';
import type { StandingGarment, StandingPiece } from '../piece/standing.ts';
import { stripedThrough } from './striped-through.ts';
import { type Restriped, rowsBelow, type Striped, type StripesOf } from './stripes.ts';

/** A garment as it stands, with the ids of its pieces in their order. */
export interface Identified {
  readonly garment: StandingGarment;
  readonly ids: readonly string[];
}

/** Stripes that begin in a row which the piece does not have any more. */
export interface LostStripes {
  readonly piece: string;
  /** of the piece as it was: counted from its cast-on, or of the part where she changed her mind in it */
  readonly row: number;
}

export interface StripesAgain extends StripesOf {
  readonly lost: readonly LostStripes[];
}

/**
 * The stripes of a garment for another one like it, of other stitches and rows. Stripes keep their rows: a colour of two
 * rows is one of two rows in any size. Where they lay through the garment they are laid through this one; where she chose
 * their rows herself they begin and end in the same sections, as many rows into them.
 * @param standsFor the id of the piece that one of the new pieces is made after
 */
export function stripesAgain(
  of: StripesOf,
  was: Identified,
  now: Identified,
  standsFor: (id: string) => string | undefined,
): StripesAgain {
  const lies = { was: stripedThrough(was.garment), now: stripedThrough(now.garment) };
  const striped: [string, Striped][] = [];
  const restriped: Restriped[] = [];
  const lost: LostStripes[] = [];
  for (const [i, id] of now.ids.entries()) {
    const before = standsFor(id) ?? '';
    const pieces = { was: was.garment.pieces[was.ids.indexOf(before)], now: now.garment.pieces[i] };
    if (!pieces.was || !pieces.now) continue;
    const [old, name] = [pieces.was, pieces.now.recipe.name];
    const own = of.striped && Object.hasOwn(of.striped, before) ? of.striped[before] : undefined;
    if (own) {
      const isThrough = sameRows(own, lies.was.get(old.recipe.name));
      const laid = isThrough ? lies.now.get(name) : stripedAgain(own, partsOf(old), partsOf(pieces.now));
      if (laid) striped.push([id, laid]);
      else lost.push({ piece: name, row: own.first });
    }
    for (const change of of.restriped?.filter(({ piece }) => piece === before) ?? []) {
      const [from, to] = [partsOf(old, change.make), partsOf(pieces.now, change.make)];
      const row = rowAgain({ part: change.part, row: change.row }, from, to);
      if (row === undefined) lost.push({ piece: name, row: change.row });
      else restriped.push({ ...change, piece: id, row });
    }
  }
  return {
    ...(of.stripes && { stripes: of.stripes }),
    ...(of.striped && { striped: Object.fromEntries(striped) }),
    ...(restriped.length > 0 && { restriped }),
    lost,
  };
}

const partsOf = ({ makes }: StandingPiece, make = 1): readonly PlannedPart[] =>
  makes.find((one) => one.make === make)?.parts ?? [];

const sameRows = (a: Striped, b: Striped | undefined): boolean =>
  b !== undefined && a.first === b.first && a.last === b.last && a.at === b.at && a.back === b.back;

function stripedAgain(
  own: Striped,
  was: readonly PlannedPart[],
  now: readonly PlannedPart[],
): Striped | undefined {
  const heightOf = (height: number, isEnd: boolean): number | undefined => {
    const place = placeAt(was, height);
    const row = place && rowAgain(place, was, now, isEnd);
    const part = place && now[place.part];
    return row === undefined || !part ? undefined : rowsBelow(now, part) + row;
  };
  const first = heightOf(own.first, false);
  if (first === undefined) return undefined;
  const { last: _, ...rest } = own;
  const last = own.last === undefined ? undefined : heightOf(own.last, true);
  return { ...rest, first, ...(last !== undefined && { last }) };
}

interface RowOfPart {
  readonly part: number;
  /** of the part, from 1 */
  readonly row: number;
}

/** The row that lies so many rows above the cast-on, in the first of the parts that has it. */
function placeAt(parts: readonly PlannedPart[], height: number): RowOfPart | undefined {
  const part = parts.findIndex((one) => {
    const row = height - rowsBelow(parts, one);
    return row >= 1 && row <= one.rows.length;
  });
  const found = parts[part];
  return found && { part, row: height - rowsBelow(parts, found) };
}

/**
 * The row as far into the same section; undefined where there is none.
 * @param isEnd with which something ends: the last row of a section stays its last, and one beyond it becomes that
 */
function rowAgain(
  { part, row }: RowOfPart,
  was: readonly PlannedPart[],
  now: readonly PlannedPart[],
  isEnd = false,
): number | undefined {
  const sections = was[part]?.sections ?? [];
  const at = sections.findIndex(({ first, last }) => row >= first && row <= last);
  const old = sections[at];
  const there = now[part]?.sections ?? [];
  const alike = there.filter(({ name, fabric }) => name === old?.name && fabric === old.fabric);
  const [same] = alike.length > 0 ? alike : there.slice(at, at + 1);
  if (!old || same?.fabric !== old.fabric) return undefined;
  const found = same.first + row - old.first;
  if (isEnd) return row === old.last ? same.last : Math.min(found, same.last);
  return found <= same.last ? found : undefined;
}
