import type { Side } from '../../../row/step.ts';
import { type Build, nextSide, type PartBuild } from './build.ts';
import { makeFabricRow } from './fabric-row.ts';
import { makeOwnRow } from './make-row.ts';
import type { Stretch } from './section.ts';

/**
 * Brings the next row to the side that the text names: the first row of a part may lie on either side, and a
 * stretch whose end the text leaves open takes one row more.
 */
export function wantSide(build: Build, part: PartBuild, side: Side): boolean {
  if (nextSide(part) === side) return true;
  if (part.rows.length === 0) {
    part.firstSide = side;
    part.fabricRow += 1;
    return true;
  }
  const section = part.sections.at(-1);
  const last = part.rows.at(-1);
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
  return false;
}

const isOpen = ({ stretches }: Build, { id, endSide }: Stretch): boolean =>
  endSide === undefined && stretches[id] === undefined;
