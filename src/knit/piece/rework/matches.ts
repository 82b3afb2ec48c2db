import type { PlannedPart } from '../planned.ts';

/** One thing in which pieces agreed that are sewn to each other or worn as a pair. */
export interface Mismatch {
  /** the piece and part that the changed one no longer agrees with */
  readonly piece: string;
  readonly part: string;
  readonly what: 'rows of a section' | 'rows in all' | 'stitches at the end' | 'sleeve and armhole';
  /** the section's name, for 'rows of a section' */
  readonly section?: string;
  /** of the changed part: before and after; and of the other one. Rows, stitches, or mm ('sleeve and armhole') */
  readonly was: number;
  readonly now: number;
  readonly other: number;
}

/** A piece's parts as planned, by the piece's name. */
export interface PlannedPiece {
  readonly name: string;
  readonly parts: readonly PlannedPart[];
}

/**
 * What no longer agrees once `before` becomes `after`: every figure that agreed with another piece (side seams in rows,
 * shoulders in stitches, the sleeve's top with the armhole) and does so no more. What never agreed is not told.
 */
export function mismatches(
  before: PlannedPiece,
  after: PlannedPiece,
  others: readonly PlannedPiece[],
): Mismatch[] {
  const found: Mismatch[] = [];
  after.parts.forEach((now, i) => {
    const was = before.parts[i];
    if (!was) return;
    for (const other of others) {
      for (const part of other.parts) found.push(...inParts(was, now, part, other.name));
    }
  });
  return [...found, ...others.flatMap((other) => atArmhole(before, after, other))];
}

function inParts(was: PlannedPart, now: PlannedPart, other: PlannedPart, piece: string): Mismatch[] {
  const at = { piece, part: other.name };
  const out: Mismatch[] = [];
  const [rowsWas, rowsNow, rowsOther] = [was, now, other].map(sectionRows) as [Rows, Rows, Rows];
  for (const [section, rows] of rowsWas) {
    const agreed = rowsOther.get(section);
    const then = rowsNow.get(section) ?? 0;
    if (agreed === rows && then !== rows)
      out.push({ ...at, what: 'rows of a section', section, was: rows, now: then, other: agreed });
  }
  if (was.name !== other.name) return [...out, ...endOff(was, now, other, at)];
  const whole = [was, now, other].map((part) => part.rows.length) as [number, number, number];
  if (out.length === 0 && whole[0] === whole[2] && whole[1] !== whole[0]) {
    out.push({ ...at, what: 'rows in all', was: whole[0], now: whole[1], other: whole[2] });
  }
  return [...out, ...endOff(was, now, other, at)];
}

function endOff(
  was: PlannedPart,
  now: PlannedPart,
  other: PlannedPart,
  at: { piece: string; part: string },
): Mismatch[] {
  const [a, b, c] = [was, now, other].map(endCount) as [number, number, number];
  return a === c && b !== a ? [{ ...at, what: 'stitches at the end', was: a, now: b, other: c }] : [];
}

type Rows = ReadonlyMap<string, number>;

/** Rows by the section's name: a rework splits a section in two of the same name. */
function sectionRows(part: PlannedPart): Rows {
  const rows = new Map<string, number>();
  for (const { name, first, last } of part.sections) {
    if (last - first > 0) rows.set(name, (rows.get(name) ?? 0) + last - first + 1);
  }
  return rows;
}

/** Stitches that the part hands to its end, before they are bound off. */
function endCount(part: PlannedPart): number {
  const last = part.rows[part.rows.length - 1];
  return last === undefined ? part.start : last.after === 0 ? last.before : last.after;
}

/** The depth of an armhole and half the sleeve's top that goes into it may differ by so much and still be sewn in; common
 * practice, no published source. */
const SEWN_IN = 0.08;

/** The sleeve's top is as wide as the armhole is deep on both sides together. */
function atArmhole(before: PlannedPiece, after: PlannedPiece, other: PlannedPiece): Mismatch[] {
  const agree = (depth: number, width: number) => Math.abs(2 * depth - width) <= SEWN_IN * width;
  const at = { piece: other.name, part: other.parts[0]?.name ?? '', what: 'sleeve and armhole' as const };
  const compare = (
    was: number | undefined,
    now: number | undefined,
    fixed: number | undefined,
    fits: (n: number, f: number) => boolean,
  ): Mismatch[] =>
    was !== undefined && now !== undefined && fixed !== undefined && fits(was, fixed) && !fits(now, fixed)
      ? [{ ...at, was: Math.round(was), now: Math.round(now), other: Math.round(fixed) }]
      : [];
  return [
    ...compare(armholeDepth(before), armholeDepth(after), topWidth(other), agree),
    ...compare(topWidth(before), topWidth(after), armholeDepth(other), (width, depth) => agree(depth, width)),
  ];
}

/** mm from the first group bound off on the side to the piece's top; undefined for a piece without an armhole. */
function armholeDepth({ parts }: PlannedPiece): number | undefined {
  const body = parts[0];
  const group = body?.rows.find(
    (row) => row.after > 0 && row.shaping.some((mark) => mark.kind === 'bind off'),
  );
  if (!body || !group) return undefined;
  const top = Math.max(...parts.map((part) => part.rows[part.rows.length - 1]?.height ?? part.base));
  return top - (body.rows[group.n - 2]?.height ?? body.base);
}

/** mm across the top of a piece without armholes that was bound off as one. */
function topWidth(piece: PlannedPiece): number | undefined {
  const [only, more] = piece.parts;
  if (
    !only ||
    more ||
    only.end !== 'bind off' ||
    !('castOn' in only.from) ||
    armholeDepth(piece) !== undefined
  )
    return undefined;
  const cell = only.cells[only.cells.length - 1]?.width ?? 0;
  return endCount(only) * cell;
}
