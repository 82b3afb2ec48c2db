import { Boundaries, layLine } from '../making-up/boundary-of.ts';
import type { Line } from '../making-up/joint.ts';
import { joined } from '../making-up/making-up.ts';
import { roleOf } from '../making-up/role.ts';
import type { PlannedPart } from '../piece/planned.ts';
import { makeOf, type StandingGarment, type StandingPiece } from '../piece/standing.ts';
import { rowsBelow, type Striped } from './stripes.ts';

/** Row `r` of a piece is knitted with row `from + by * r` of the stripes. */
interface Course {
  readonly from: number;
  readonly by: 1 | -1;
}

/** Two pieces, a row of either (counted from its cast-on) that lie beside each other in the garment, and whether from there both go on the same way. */
interface Meeting {
  readonly a: string;
  readonly b: string;
  readonly rows: readonly [number, number];
  readonly run: 1 | -1;
}

const BANDS: readonly string[] = ['neckband', 'front band', 'armhole band'];

/**
 * Stripes laid through a garment: from the first row above the rib (B. Brown, 'Duo', Knitty, spring 2003: after the
 * ribbing) up through the parts, so that rows which are sewn together have one colour (knitwords, '23 and me', 2019: the
 * side seams match where both pieces begin alike); sleeves so that they meet the body at the underarm (common practice, no
 * published source). Bands are not striped.
 * @returns where each piece is striped, by its name
 */
export function stripedThrough(garment: StandingGarment): ReadonlyMap<string, Striped> {
  const pieces = garment.pieces.filter(({ recipe }) => !BANDS.includes(roleOf(recipe)));
  const main = mainFabric(pieces.flatMap(({ makes }) => makes[0]?.parts ?? []));
  const borders = new Map(pieces.map((piece) => [piece.recipe.name, bordersOf(piece, main)]));
  const courses = coursesOf(
    [...borders.keys()],
    meetingsOf(garment),
    (name) => borders.get(name)?.first ?? 1,
  );
  return new Map(
    [...borders].map(([name, { first, last }]): [string, Striped] => {
      const { from, by } = courses.get(name) as Course;
      const at = from + by * first;
      return [name, { first, ...(last !== undefined && { last }), at, ...(by < 0 && { back: true }) }];
    }),
  );
}

/** From piece to piece along what is sewn; a piece that is sewn to none begins with the first stripe. */
function coursesOf(
  names: readonly string[],
  meetings: readonly Meeting[],
  firstOf: (name: string) => number,
): ReadonlyMap<string, Course> {
  const found = new Map<string, Course>();
  for (const name of names) {
    if (found.has(name)) continue;
    found.set(name, { from: 1 - firstOf(name), by: 1 });
    for (let grown = true; grown; ) grown = meetings.some((meeting) => carriedOn(found, meeting));
  }
  return found;
}

function carriedOn(found: Map<string, Course>, { a, b, rows: [rowA, rowB], run }: Meeting): boolean {
  const [known, other, here, there] = found.has(a) ? [a, b, rowA, rowB] : [b, a, rowB, rowA];
  const course = found.get(known);
  if (!course || found.has(other)) return false;
  const by = course.by === run ? 1 : -1;
  found.set(other, { from: course.from + course.by * here - by * there, by });
  return true;
}

/**
 * By how many rows (from their cast-ons) the pieces that go on with a piece lie higher than it, by their names: along the
 * seams, at the underarm for sleeves. Pieces that are knitted the other way round are not among them.
 */
export function rowsBeside(garment: StandingGarment, piece: string): ReadonlyMap<string, number> {
  const found = new Map<string, Course>([[piece, { from: 0, by: 1 }]]);
  const meetings = meetingsOf(garment);
  for (let grown = true; grown; ) grown = meetings.some((meeting) => carriedOn(found, meeting));
  found.delete(piece);
  return new Map([...found].flatMap(([name, { from, by }]) => (by === 1 ? [[name, -from] as const] : [])));
}

function meetingsOf(garment: StandingGarment): readonly Meeting[] {
  const { joints } = joined(garment);
  const boundaries = new Boundaries(garment);
  const lay = (line: Line) => rowsAlong(garment, boundaries, line);
  const seams = joints.flatMap((joint) =>
    joint.kind === 'seam' ? [{ of: joint.of, a: lay(joint.a), b: lay(joint.b) }] : [],
  );
  const body = seams.find(({ of }) => of === 'side');
  return [
    ...seams
      .filter(({ of, a, b }) => (of === 'side' || of === 'raglan') && a.rows.length === b.rows.length)
      .flatMap(({ a, b }) => (a.piece === b.piece ? [] : meeting(a, b, a.rows[0], b.rows[0]))),
    ...seams
      .filter(({ of }) => of === 'sleeve')
      .flatMap(({ a }) => (body ? meeting(body.a, a, body.a.rows.at(-1), a.rows.at(-1)) : [])),
  ];
}

type Along = ReturnType<typeof rowsAlong>;

const meeting = (a: Along, b: Along, rowA: number | undefined, rowB: number | undefined): Meeting[] =>
  rowA && rowB ? [{ a: a.piece, b: b.piece, rows: [rowA, rowB], run: isUp(a) === isUp(b) ? 1 : -1 }] : [];

/** Whether the rows along a line are in the order in which they are knitted. */
const isUp = ({ rows: [first = 0, second = 0] }: Along): boolean => second > first;

/** The piece of a line, and the rows along it, counted from the piece's cast-on. */
export function rowsAlong(
  { pieces }: Pick<StandingGarment, 'pieces'>,
  boundaries: Boundaries,
  line: Line,
): { readonly piece: string; readonly rows: readonly number[] } {
  const { laid } = layLine(boundaries, line);
  const rows = laid.flatMap(({ stretch, part, bits }) => {
    const below = rowsBelow(makeOf(pieces, stretch)?.parts ?? [], part);
    const own = bits.flatMap(({ level, row }) => (level ? [] : [below + row]));
    return stretch.reversed ? own.reverse() : own;
  });
  return { piece: line[0]?.piece ?? '', rows };
}

/** First and last row of a piece between its borders: sections at its ends in another fabric than the garment's main one. */
function bordersOf(
  piece: StandingPiece | undefined,
  main: string | undefined,
): { first: number; last?: number } {
  const parts = piece?.makes[0]?.parts ?? [];
  const [body] = parts;
  if (!body) return { first: 1 };
  const knitted = body.sections.filter(({ first, last }) => last >= first);
  const isMain = ({ fabric }: PlannedPart['sections'][number]): boolean => fabric === main;
  const begins = knitted.find(isMain)?.first ?? 1;
  const ends =
    parts.length === 1 ? (knitted.filter(isMain).at(-1)?.last ?? body.rows.length) : body.rows.length;
  return { first: begins, ...(ends < body.rows.length && { last: ends }) };
}

/** The fabric of most stitches: of all pieces together, since a small sleeve may be more cuff than sleeve. */
function mainFabric(parts: readonly PlannedPart[]): string | undefined {
  const stitches = new Map<string, number>();
  for (const { rows, sections } of parts)
    for (const { section, before } of rows) {
      const fabric = sections[section]?.fabric ?? '';
      stitches.set(fabric, (stitches.get(fabric) ?? 0) + before);
    }
  return [...stitches].sort(([, a], [, b]) => b - a)[0]?.[0];
}
