import { END, type Item } from '../../../row/read/notation.ts';
import { type Build, type Holes, nextSide, type PartBuild } from './build.ts';
import { sameFabric } from './fabric.ts';
import { gapOf } from './gap.ts';

/** The row of the part before which its neck begins, counted from 0: no buttonhole lies from there on. */
export function holesEnd({ piece, part }: Holes): number {
  const neck = piece.marks.get('neck');
  return neck?.part === part ? neck.rows - part.baseRows : Number.POSITIVE_INFINITY;
}

/** The words of a buttonhole that is due in the part's next row; one that she measures for, in each row that it is said of and in what she measures behind them. */
export function holeDue({ holes, rows }: PartBuild, line: number, stretch = false): string | undefined {
  if (holes === undefined || rows.length >= holesEnd(holes)) return undefined;
  const { measured, first, at, words } = holes;
  const due = measured ? stretch || (rows[first]?.line ?? line) === line : at.includes(rows.length);
  return due ? words : undefined;
}

/** The part's next row as the text spelled it, where it makes a buttonhole, or closes one. */
export function holeRow(build: Build, part: PartBuild): readonly Item[] | undefined {
  const { hole } = build;
  const last = part.rows.at(-1);
  if (hole === undefined) return undefined;
  if (holeDue(part, build.line) !== undefined) {
    const fits = nextSide(part) === hole.side && (isKnit(part) || sameFabric(part.fabric, hole.fabric));
    return fits ? hole.rows[0] : undefined;
  }
  if (!last?.hole || last.after >= last.before || !part.holes?.at.includes(part.rows.length - 1))
    return undefined;
  const gap = gapOf(part);
  return gap?.length === 2
    ? [
        { is: 'stitches', work: 'patt', times: gap[1] as number },
        { is: 'stitches', work: 'co', times: last.before - last.after },
        { is: 'stitches to', work: 'patt', goal: END },
      ]
    : undefined;
}

/** Whether the part's next row is knit from end to end; faces are seen from the right side. */
function isKnit(part: PartBuild): boolean {
  const { fabric, fabricRow } = part;
  const face = fabric.is === 'face' ? fabric.rows[fabricRow % fabric.rows.length] : undefined;
  return face !== undefined && [...face].every((look) => look === (nextSide(part) === 'RS' ? 'k' : 'p'));
}

/** A row that the text calls a buttonhole is remembered, and the one behind it that closes it. */
export function rememberHole(build: Build, part: PartBuild, items: readonly Item[] | undefined): boolean {
  const before = part.rows.at(-2);
  const now = part.rows.at(-1);
  if (now === undefined || items === undefined) return false;
  if (build.inHole) {
    build.hole = { rows: [items], side: now.side, fabric: part.fabric };
    return true;
  }
  return before?.hole === true && before.after < before.before && now.after > now.before;
}
