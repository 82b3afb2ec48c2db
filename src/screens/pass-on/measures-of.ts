import type { PlannedPart } from '../../knit/piece/planned.ts';
import type { Edge } from '../../knit/piece/recipe.ts';
import { type PartShape, type PieceShape, shapeOfPiece } from '../../ui/panel-map/outline-of.ts';
import {
  across,
  atBeginning,
  atItsWidest,
  inAll,
  type PieceMeasure,
  tall,
  upright,
  widestOf,
  widthOf,
} from '../../ui/panel-map/piece-measure.ts';

/** Shorter is a line that nobody measures. */
const LEAST_MM = 5;
const LEAST_SECTION_MM = 15;

/**
 * Every measure of a piece from its rows: widths where it begins, is widest and ends, heights by section and in all.
 * @param outer of half a front the edge at the side of the body
 */
export function measuresOf(
  parts: readonly PlannedPart[],
  outer: Edge = 'right',
): {
  readonly shape: PieceShape;
  readonly measures: readonly PieceMeasure[];
} {
  const shape = shapeOfPiece(parts);
  const found = [
    ...widths(parts, shape),
    ...heights(parts, shape),
    ...necks(parts, shape),
    ...half(parts, shape, outer),
  ];
  return { shape, measures: found.filter(({ mm }) => mm >= LEAST_MM) };
}

function widths(parts: readonly PlannedPart[], shape: PieceShape): PieceMeasure[] {
  const [body] = shape.parts;
  const rows = tall(body);
  const last = rows.at(-1);
  const widest = widestOf(rows).at(-1);
  if (!widest || !last) return [];
  const isWhole = parts.length === 1 && !hasShoulder(parts[0]);
  return [
    ...atBeginning(shape),
    ...atItsWidest(shape),
    ...(isWhole && last.right1 - last.left1 < widthOf(widest) - LEAST_MM
      ? [across('top', last.top, last.left1, last.right1)]
      : []),
  ];
}

/** Section upon section at the left, the last that the neck or the shoulders part up to the top, and all of it beside them. */
function heights(parts: readonly PlannedPart[], shape: PieceShape): PieceMeasure[] {
  const {
    parts: [body],
    box,
  } = shape;
  const [part] = parts;
  if (!part || !body) return [];
  const isParted = parts.some(({ parent }) => parent === part.name);
  const told = runsOf(part.sections).filter(
    ({ name }) => name !== 'bind off' && !(isParted && name === 'shoulder'),
  );
  const sections = told.flatMap(({ name, first, last }, i): PieceMeasure[] => {
    const [low, high] = [body.rows[first - 1], body.rows[last - 1]];
    const toTop = isParted && i === told.length - 1;
    if (!low || !high) return [];
    const isTold = toTop || low.bottom - high.top > LEAST_SECTION_MM;
    return isTold ? [upright({ section: name, toTop }, box.x, low.bottom, toTop ? box.y : high.top)] : [];
  });
  const whole = inAll(shape);
  return sections.length === 1 ? [whole] : [...sections, whole];
}

interface Run {
  readonly name: string;
  readonly first: number;
  readonly last: number;
}

/** Sections of one name are one height with what lies between them: a band with its button holes. */
function runsOf(sections: PlannedPart['sections']): readonly Run[] {
  const runs: Run[] = [];
  for (const { name, first, last } of sections) {
    if (last < first) continue;
    const at = runs.findIndex((run) => run.name === name);
    if (at < 0) runs.push({ name, first, last });
    else runs.splice(at, runs.length, { name, first: runs[at]?.first ?? first, last });
  }
  return runs;
}

/** Between two shoulders that the neck has parted, right side up: the first at the right. */
function necks(parts: readonly PlannedPart[], { parts: shapes, box }: PieceShape): PieceMeasure[] {
  const [body] = parts;
  const sides = parts
    .flatMap((part, i) => {
      const own = shapes[i];
      const rows = tall(own);
      return own && rows.length > 0 && part.parent === body?.name ? [{ part, own, rows }] : [];
    })
    .sort((a, b) => (a.rows[0]?.left0 ?? 0) - (b.rows[0]?.left0 ?? 0));
  const [left, right] = sides;
  if (sides.length !== 2 || !left || !right || !body) return [];
  const inner = [left.rows.at(-1)?.right1 ?? 0, right.rows.at(-1)?.left1 ?? 0] as const;
  const outer = tipOf(body, shapes[0]) ?? tipOf(right.part, right.own);
  const base = Math.max(left.own.base, right.own.base);
  return [
    across('neck', box.y, ...inner),
    ...(outer === undefined ? [] : [across('shoulder', box.y, inner[1], outer)]),
    upright('neck depth', (inner[0] + inner[1]) / 2, base, box.y),
  ];
}

/** The shoulder of half a front: from where it begins to the neck's edge. */
function half(
  parts: readonly PlannedPart[],
  { parts: [shape], box }: PieceShape,
  outer: Edge,
): PieceMeasure[] {
  const [part] = parts;
  const first = part && parts.length === 1 ? shoulderOf(part)?.first : undefined;
  const [tip, last] = [shape?.rows[(first ?? 0) - 2], tall(shape).at(-1)];
  if (first === undefined || !tip || !last) return [];
  return [
    across(
      'shoulder',
      box.y,
      ...(outer === 'right' ? ([last.left1, tip.right1] as const) : ([tip.left1, last.right1] as const)),
    ),
  ];
}

const shoulderOf = ({ sections }: PlannedPart) =>
  sections.find(({ name, last, first }) => name === 'shoulder' && last >= first);

const hasShoulder = (part: PlannedPart | undefined): boolean =>
  part !== undefined && shoulderOf(part) !== undefined;

/** x of the right edge where a part's shoulder begins; undefined where it has none. */
function tipOf(part: PlannedPart, shape: PartShape | undefined): number | undefined {
  const first = shoulderOf(part)?.first;
  if (first === undefined) return undefined;
  // what is bound off in the part's very first row is of the shoulder's width
  return first === 1 ? -part.offset : shape?.rows[first - 2]?.right1;
}
