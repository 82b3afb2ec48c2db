import type { FabricName } from '../fabric.ts';
import type { Gauge } from '../gauge.ts';
import type { PartEnd, PartRecipe, PartStart, Section } from '../piece/recipe.ts';
import type { Curve } from '../shape/curve.ts';
import { changeBefore, type EdgeStep, shapingOf, shifted } from '../shape/edge-steps.ts';
import type { KnittedEdge } from '../shape/outline.ts';

/** A stretch of a panel worked on one fabric, in pairs of rows. */
export interface Stretch {
  readonly name: string;
  readonly fabric: FabricName;
  readonly needle: number;
  readonly pairs: number;
  /** stitches added (or removed) evenly in its first row */
  readonly across?: number;
}

/** An edge of a panel with the curve that it follows: what a drawing and a check need. */
export interface PanelEdge extends KnittedEdge {
  readonly name: 'side' | 'armhole' | 'neck' | 'sleeve' | 'cap';
  /** pair of rows of the panel at which it begins */
  readonly from: number;
  /** in mm from the centre line; y from the edge's own beginning */
  readonly curve: Curve;
  readonly gauge: Gauge;
}

/** The steps of several edges one above the other, by the panel's own pairs. */
export const stepsAlong = (edges: readonly PanelEdge[]): readonly EdgeStep[] =>
  edges.flatMap((edge) => shifted(edge.steps, edge.from));

export interface PartCut {
  readonly name: string;
  readonly from: PartStart;
  readonly end: PartEnd;
  /** pairs of rows of the panel, from and up to */
  readonly pairs: readonly [from: number, to: number];
  readonly right: readonly EdgeStep[];
  readonly left: readonly EdgeStep[];
  /** stitches on the needle at its beginning */
  readonly stitches: number;
  /** one row more, so that the last group at the left edge is bound off where a row begins */
  readonly extraRow?: boolean;
}

/** Cuts one part out of a panel: its sections with their shaping, rows counted within each. */
export function cutPart(stretches: readonly Stretch[], cut: PartCut): PartRecipe {
  const sections: Section[] = [];
  const [begin, end] = cut.pairs;
  let base = 0;
  let added = 0;
  for (const stretch of stretches) {
    const from = Math.max(begin, base);
    const to = Math.min(end, base + stretch.pairs);
    const across = from === base ? (stretch.across ?? 0) : 0;
    if (to > from) {
      const count = cut.stitches + added + gained(cut, begin, from);
      sections.push(sectionOf(stretch, cut, from, to, across, count));
      added += across;
    }
    base += stretch.pairs;
  }
  const last = sections[sections.length - 1];
  if (cut.extraRow && last) sections[sections.length - 1] = { ...last, rows: last.rows + 1 };
  return { name: cut.name, from: cut.from, sections, end: cut.end };
}

/** What both edges add between two pairs. */
const gained = (cut: PartCut, from: number, to: number): number =>
  changeBefore(cut.right, to) -
  changeBefore(cut.right, from) +
  changeBefore(cut.left, to) -
  changeBefore(cut.left, from);

function sectionOf(
  stretch: Stretch,
  cut: PartCut,
  from: number,
  to: number,
  across: number,
  count: number,
): Section {
  const { name, fabric, needle } = stretch;
  const edges = shapingOf({ right: cut.right, left: cut.left }, from, to, count + across);
  const shaping = across === 0 ? edges : [{ kind: 'across', row: 1, by: across } as const, ...edges];
  return { name, rows: 2 * (to - from), fabric, needle, shaping };
}
