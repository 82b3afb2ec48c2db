import type { MeasureName } from '../../knit/written/picture-words.ts';
import type { PartShape, PieceShape, RowShape } from './outline-of.ts';
import type { Point } from './paths.ts';

/** A measure of a piece as it is planned, with where it lies in the drawing; mm, y down. */
export interface PieceMeasure {
  /** the same in every size */
  readonly key: string;
  readonly name: MeasureName | { readonly section: string; readonly toTop: boolean };
  readonly mm: number;
  readonly from: Point;
  readonly to: Point;
}

type Named = PieceMeasure['name'];

export const across = (name: Named, y: number, x0: number, x1: number): PieceMeasure => ({
  key: keyOf(name),
  name,
  mm: Math.abs(x1 - x0),
  from: [Math.min(x0, x1), y],
  to: [Math.max(x0, x1), y],
});

export const upright = (name: Named, x: number, y0: number, y1: number): PieceMeasure => ({
  key: keyOf(name),
  name,
  mm: Math.abs(y1 - y0),
  from: [x, y0],
  to: [x, y1],
});

const keyOf = (name: Named): string =>
  typeof name === 'string' ? name : `section ${name.section}${name.toTop ? ' to the top' : ''}`;

/** The part that is cast on or picked up first, and its rows with a height. */
export const tall = (part: PartShape | undefined): readonly RowShape[] =>
  part?.rows.filter(({ top, bottom }) => top !== bottom) ?? [];

/** The width that the piece begins with; none of a piece without rows. */
export function atBeginning({ parts: [body] }: PieceShape): readonly PieceMeasure[] {
  const [first] = tall(body);
  return body && first ? [across('at its beginning', body.base, first.left0, first.right0)] : [];
}

/** Wider by less is no other width. */
const LEAST_MM = 5;

export const widthOf = ({ left0, right0 }: RowShape): number => right0 - left0;

/** The rows that are as wide as any. */
export function widestOf(rows: readonly RowShape[]): readonly RowShape[] {
  const most = Math.max(...rows.map(widthOf));
  return rows.filter((row) => widthOf(row) > most - 0.1);
}

/** The width where it is widest, amid the rows that are so wide; none of a piece that begins as wide. */
export function atItsWidest({ parts: [body] }: PieceShape): readonly PieceMeasure[] {
  const [first] = tall(body);
  const wide = widestOf(tall(body));
  const [from, to] = [wide[0], wide.at(-1)];
  return first && from && to && widthOf(to) > widthOf(first) + LEAST_MM
    ? [across('at its widest', (from.bottom + to.bottom) / 2, to.left0, to.right0)]
    : [];
}

/** From its beginning to its top. */
export const inAll = ({ box }: PieceShape): PieceMeasure =>
  upright('in all', box.x, box.y + box.height, box.y);
