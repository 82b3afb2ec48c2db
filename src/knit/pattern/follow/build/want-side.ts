import type { Side } from '../../../row/step.ts';
import { type Build, nextSide, type PartBuild } from './build.ts';
import { makeFabricRow } from './fabric-row.ts';

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
  if (
    last?.kind === 'stretch' &&
    section?.stretch &&
    section.stretch.endSide === undefined &&
    build.stretches[section.stretch.id] === undefined
  ) {
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
