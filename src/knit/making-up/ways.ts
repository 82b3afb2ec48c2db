import type { PickUp } from '../piece/recipe.ts';
import type { StandingGarment } from '../piece/standing.ts';
import type { Laid, LaidLine } from './boundary-of.ts';
import type { Break, Consequence } from './break.ts';
import { type Edit, repeatOf } from './edit.ts';

/** Which changes may mend an edge, the likeliest first; whether one does is for the judge to say. */

/** Pieces that stay as they are. */
export type Locked = ReadonlySet<string | undefined>;

interface Sides {
  readonly kept: LaidLine;
  readonly other: LaidLine;
}

/** Which of two edges stays as it is, and which is to follow. */
export function sidesOf({ worked }: Break, locked: Locked): Sides | undefined {
  const [a, b] = worked?.lines ?? [];
  if (!a || !b) return undefined;
  const isLocked = ({ laid }: LaidLine) => laid.some(({ stretch }) => locked.has(stretch.piece));
  if (isLocked(a) === isLocked(b)) return undefined;
  return isLocked(a) ? { kept: a, other: b } : { kept: b, other: a };
}

export const otherLines = (one: Break, locked: Locked): readonly LaidLine[] => {
  const sides = sidesOf(one, locked);
  return sides ? [sides.other] : [];
};

/** A section of one make that lies along an edge. */
interface Place {
  readonly laid: Laid;
  readonly section: number;
  readonly name: string;
  /** the same on both sides of a body, and of back and front: its name, and the part that its part goes on from */
  readonly called: string;
  readonly rows: number;
  readonly isShaped: boolean;
  readonly height: number;
}

function placesAlong({ laid }: LaidLine): readonly Place[] {
  return laid.flatMap((one) => {
    const sections = new Set(one.bits.map(({ row }) => one.part.rows[row - 1]?.section ?? 0));
    return [...sections].map((section): Place => {
      const own = one.bits.filter(({ row }) => one.part.rows[row - 1]?.section === section);
      const name = one.part.sections[section]?.name ?? '';
      const rows = own.filter(({ level }) => !level).length;
      const height = one.part.cells[section]?.height ?? 0;
      const called = JSON.stringify([name, one.part.parent ?? '']);
      return { laid: one, section, name, called, rows, isShaped: own.some(({ by }) => by !== 0), height };
    });
  });
}

/** What both pieces of the edge have before what one has alone; plain stretches before shaped ones, long ones before short ones. */
export function namesAlong(line: LaidLine): readonly string[] {
  const places = placesAlong(line).filter(({ rows }) => rows > 0);
  const pieces = (called: string) =>
    new Set(places.flatMap((place) => (place.called === called ? [place.laid.stretch.piece] : []))).size;
  const sorted = [...places].sort(
    (a, b) =>
      pieces(b.called) - pieces(a.called) ||
      Number(a.isShaped) - Number(b.isShaped) ||
      b.rows - a.rows ||
      a.section - b.section,
  );
  return [...new Set(sorted.map(({ called }) => called))];
}

/** The longest place called so in each part of each line's makes. */
export function placesIn(lines: readonly LaidLine[], called: string): readonly Place[] {
  return lines.flatMap((line) => {
    const byPart = new Map<string, Place>();
    for (const place of placesAlong(line)) {
      const { piece, make, part } = place.laid.stretch;
      const key = JSON.stringify([piece, make, part]);
      if (place.called === called && place.rows > (byPart.get(key)?.rows ?? 0)) byPart.set(key, place);
    }
    return [...byPart.values()];
  });
}

const isOfFirstPart = (called: string): boolean => (JSON.parse(called) as [string, string])[1] === '';

export const rowsEdit = ({ laid: { stretch }, section, name }: Place, by: number): Edit => ({
  kind: 'rows',
  piece: stretch.piece,
  makes: [stretch.make],
  part: stretch.part,
  section,
  called: name,
  by,
});

/** The same change of several makes, or from both of their edges, is one. */
export function merged(edits: readonly Edit[]): readonly Edit[] {
  const found = new Map<string, Edit>();
  for (const edit of edits) {
    if (edit.kind !== 'rows') continue;
    const key = JSON.stringify({ ...edit, makes: [] });
    const known = found.get(key);
    const makes = known?.kind === 'rows' ? known.makes : [];
    found.set(key, { ...edit, makes: [...new Set([...makes, ...edit.makes])].sort((a, b) => a - b) });
  }
  return [...found.values()];
}

export function* rowWays(group: readonly Break[], locked: Locked): Iterable<readonly Edit[]> {
  const [first] = group;
  const sides = first && sidesOf(first, locked);
  if (!sides) return;
  const { worked, meant = 0 } = first;
  const by = sides.kept.rows - sides.other.rows - (sides.kept === worked?.lines[0] ? meant : -meant);
  const names = namesAlong(sides.other);
  // below a neck the panel grows without another neck
  const below = names.filter((name) => first.what.kind === 'level' && isOfFirstPart(name));
  for (const name of [...below, ...names.filter((one) => !below.includes(one))])
    yield merged(
      group.flatMap((one) => placesIn(otherLines(one, locked), name).map((place) => rowsEdit(place, by))),
    );
}

export function* pairWays(
  { now, other }: Extract<Consequence, { kind: 'pair' }>,
  line: LaidLine | undefined,
): Iterable<readonly Edit[]> {
  if (!line) return;
  for (const name of namesAlong(line))
    yield merged(placesIn([line], name).map((place) => rowsEdit(place, now - other)));
}

/** The edges' own numbers first, then a few more or fewer, on them or on those between, as the band's repeat asks. */
export function* pickUpWays(
  { pieces }: Pick<StandingGarment, 'pieces'>,
  group: readonly Break[],
  locked: Locked,
): Iterable<readonly Edit[]> {
  const [first] = group;
  const band = first?.what.kind === 'pick up' ? first.what.band : undefined;
  const part = pieces.find(({ recipe }) => recipe.name === band)?.recipe.parts[0];
  if (band === undefined || !part || !('pickUp' in part.from) || locked.has(band)) return;
  const { pickUp } = part.from;
  const wanted = new Map<number, number>();
  for (const { what, worked } of group) {
    if (what.kind !== 'pick up' || worked?.joint?.kind !== 'pick up') continue;
    const at = worked.joint.make === 2 ? pickUp.length - 1 - what.along : what.along;
    wanted.set(at, what.fit);
  }
  const every = repeatOf(part);
  for (const shift of nearZero(every)) {
    for (const other of nearZero(every)) {
      const behind = restOf(pickUp, wanted);
      if (other !== 0 && behind < 0) continue;
      // what rests on a holder is as many as it is
      const now = pickUp.map(({ stitches, held }, i) =>
        wanted.has(i) ? (wanted.get(i) ?? 0) + (held ? 0 : shift) : stitches,
      );
      if (other !== 0) now[behind] = (now[behind] ?? 0) + other;
      const grown = now.reduce((sum, n, i) => sum + n - (pickUp[i]?.stitches ?? 0), 0);
      if (grown % every !== 0) continue;
      const edges = pickUp.flatMap(({ along, stitches: was }, at) =>
        now[at] === was ? [] : [{ at, along, was, now: now[at] ?? was }],
      );
      yield [{ kind: 'pick up', piece: band, edges }];
    }
  }
}

/** Where a stitch more is seen least: behind, else at the last edge that is not asked about. */
function restOf(pickUp: readonly PickUp[], wanted: ReadonlyMap<number, number>): number {
  const free = pickUp.flatMap(({ held }, i) => (wanted.has(i) || held ? [] : [i]));
  return free.find((i) => pickUp[i]?.along === 'back neck') ?? free.at(-1) ?? -1;
}

const nearZero = (within: number): readonly number[] =>
  Array.from({ length: 2 * within + 1 }, (_, i) => (i % 2 === 1 ? (i + 1) / 2 : -i / 2));
