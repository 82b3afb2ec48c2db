import type { Build } from './follow/build/build.ts';
import { titled } from './follow/build/to-recipe.ts';
import type { ReadLine, ReadRow } from './read-line.ts';

export interface MadeByLine {
  readonly rows: ReadRow[];
  readonly lengths: ReadLine['lengths'][number][];
}

/** Every row and every stretch that was made, by the source line that asked for it. */
export function madeByLine(build: Build): Map<number, MadeByLine> {
  const byLine = new Map<number, MadeByLine>();
  const at = (line: number): MadeByLine => {
    const known = byLine.get(line) ?? { rows: [], lengths: [] };
    byLine.set(line, known);
    return known;
  };
  for (const piece of build.pieces) {
    const name = titled(piece.name);
    for (const part of piece.parts) {
      part.rows.forEach(({ line, side, steps, before, after, own }, i) => {
        const said = own === undefined ? {} : { own };
        at(line).rows.push({ piece: name, part: part.name, n: i + 1, side, steps, before, after, ...said });
      });
      part.sections.forEach(({ first, stretch }, i) => {
        const row = part.rows[first];
        if (stretch === undefined || row === undefined) return;
        const end = part.sections[i + 1]?.first ?? part.rows.length;
        at(row.line).lengths.push({ open: stretch.open, rows: end - first });
      });
    }
  }
  return byLine;
}
