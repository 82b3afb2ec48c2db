import { expandRow } from '../../../row/expand.ts';
import { otherSide, type Side } from '../../../row/step.ts';
import { type Build, type MadeRow, nextSide, type PartBuild } from './build.ts';
import { makeFabricRow } from './fabric-row.ts';
import { makeOwnRow, makeWrittenRow } from './make-row.ts';
import { takeBack } from './push-row.ts';
import type { Stretch } from './section.ts';

/** Parts of which the text said a side. */
const sided = new WeakSet<PartBuild>();

/**
 * Brings the next row to the side that the text names: the first row of a part may lie on either side, and a
 * stretch whose end the text leaves open takes one row more.
 */
export function wantSide(build: Build, part: PartBuild, side: Side, second = false): boolean {
  const unsaid = !sided.has(part);
  const first = second && unsaid;
  sided.add(part);
  if (nextSide(part) === side) return true;
  if (part.rows.length === 0) {
    part.firstSide = side;
    part.fabricRow += 1;
    return true;
  }
  const section = part.sections.at(-1);
  const last = part.rows.at(-1);
  // 'Row 1: … Row 2 (RS): …': the first one, of which nobody said it, lay on the other side
  const items = last?.own === undefined ? last?.items : undefined;
  if (first && items && part.rows.length === 1 && part.parent === undefined) {
    const { line } = build;
    takeBack(build, part);
    part.firstSide = side === 'RS' ? 'WS' : 'RS';
    build.line = last?.line ?? line;
    const wrong = makeWrittenRow(build, part, items);
    build.line = line;
    return wrong === undefined;
  }
  // nobody knows how many rows it is, and the text says on which side the next one lies
  if (last?.own !== undefined && section?.stretch && isOpen(build, section.stretch))
    return makeOwnRow(build, part, last.own, part.live) === undefined;
  if (last?.kind === 'stretch' && section?.stretch && isOpen(build, section.stretch)) {
    const { closed, fabric, fabricRow } = part;
    part.fabric = last.fabric;
    part.fabricRow = last.fabricRow + 1;
    part.closed = false;
    const line = build.line;
    build.line = last.line;
    const wrong = makeFabricRow(build, part, [], 'stretch');
    build.line = line;
    part.closed = closed;
    if (fabric !== last.fabric) {
      part.fabric = fabric;
      part.fabricRow = fabricRow;
    }
    return wrong === undefined;
  }
  return unsaid && turnGarter(part);
}

/** 'Knit 5 rows. Row 1 (RS): …': a border that looks alike on both sides, of which nobody said it, began on the other one. */
function turnGarter(part: PartBuild): boolean {
  const { rows, sections, parent, from } = part;
  const plain = (row: MadeRow): boolean =>
    row.own === undefined &&
    (row.kind === 'row' || (row.fabric.is === 'face' && row.fabric.rows.length > 1)) &&
    row.before === row.after &&
    expandRow(row.steps, row.before).every((work) => work === 'k');
  if (parent !== undefined || !('castOn' in from) || sections.some(({ stretch }) => stretch)) return false;
  if (!rows.every(plain)) return false;
  turnAll(part);
  return true;
}

/**
 * 'Rib 7 rows. Beg with a k row, work in st st': a knit row of stocking stitch is its right side, so a rib of which nobody
 * said the side began on the wrong one. Its rows are worked as they were, and seen from there.
 */
export function turnRib(part: PartBuild): boolean {
  const { rows, sections, parent, from } = part;
  if (sided.has(part) || parent !== undefined || !('castOn' in from)) return false;
  if (sections.some(({ stretch }) => stretch)) return false;
  const isRib = (row: MadeRow): boolean => new Set(plainOf(row)).size === 2;
  if (!rows.some(isRib) || !rows.every((row) => row.own === undefined && (isRib(row) || isWrong(row))))
    return false;
  turnAll(part);
  return true;
}

const plainOf = ({ steps, before }: MadeRow): string[] =>
  expandRow(steps, before).filter((work) => work === 'k' || work === 'p');

/** Purl on the right side, or knit on the wrong one: it would be neither if it were turned. */
const isWrong = (row: MadeRow): boolean =>
  plainOf(row).every((work) => (work === 'p') === (row.side === 'RS'));

function turnAll(part: PartBuild): void {
  part.firstSide = otherSide(part.firstSide);
  part.fabricRow += 1;
  part.rows.forEach((row, i) => {
    part.rows[i] = { ...row, side: otherSide(row.side), fabricRow: row.fabricRow + 1 };
  });
}

const isOpen = ({ stretches }: Build, { id, endSide }: Stretch): boolean =>
  endSide === undefined && stretches[id] === undefined;
