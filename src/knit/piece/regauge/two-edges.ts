import type { Edge, PartRecipe, Recipe, Section, Shaping } from '../recipe.ts';
import type { Scale } from './scale.ts';
import { type Amounts, amountOf, changeAt, perTime, scaledAmount, scaledCount } from './shaped-to.ts';

/** A part of which one edge is the piece's own and the other a neck's or an opening's. */
export interface TwoEdges {
  readonly outer: Edge;
  /** stitches that its shoulder has now, without what was bound off of it below a split */
  readonly shoulder: number;
  /** the last sections, whose groups at the outer edge are its shoulder: from this one on */
  readonly slopeFrom: number;
  /** stitches that are left at its end */
  readonly left: number;
}

const groupsAt = (section: Section, edge: Edge): number =>
  section.shaping.reduce(
    (sum, one) => sum + (one.kind === 'bind off' && one.edge === edge ? stitchesOf(one.groups) : 0),
    0,
  );
const stitchesOf = (groups: readonly { readonly stitches: number }[]): number =>
  groups.reduce((sum, { stitches }) => sum + stitches, 0);

/** Rows behind the last group of a slope, at most: the neck's edge may end later. */
const SLOPE_ENDS = 4;

/** Stitches that are left where two edges come together: their decreases need as many in any gauge. */
const TIP = 4;

/** Groups at an edge that go on to the section's end, with no other shaping there: the slope of a shoulder; without any the last is never near. */
function isSlope(section: Section, edge: Edge): boolean {
  const own = section.shaping.filter((one) => 'edge' in one && (one.edge === edge || one.edge === 'both'));
  const rows = own.flatMap((one) => (one.kind === 'bind off' ? one.groups.map(({ row }) => row) : []));
  return own.every(({ kind }) => kind === 'bind off') && section.rows - Math.max(...rows) <= SLOPE_ENDS;
}

/** Stitches of a shoulder that a part binds off in its last section before it is split, in the old stitches and in the new. */
export function boundOffBelow(
  old: readonly Section[],
  now: readonly Section[],
  edge: Edge,
): { readonly old: number; readonly now: number } {
  const [was, is] = [old.at(-1), now.at(-1)];
  if (!was || !is || !isSlope(was, edge)) return { old: 0, now: 0 };
  return { old: groupsAt(was, edge), now: groupsAt(is, edge) };
}

/**
 * How the two edges of a part share what it changes by; undefined of one that is alike at both.
 * @param left stitches that the old plan left at its end
 * @param worn the side seam's edge, where its role tells it
 * @param below what its parent bound off of the same shoulder, in the old stitches and in the new
 */
export function twoEdgesOf(
  part: PartRecipe,
  left: number,
  scale: Scale,
  below: { readonly old: number; readonly now: number },
  worn?: Edge,
): TwoEdges | undefined {
  const outer = outerOf(part, worn);
  if (outer === undefined) return undefined;
  let slopeFrom = part.sections.length;
  while (slopeFrom > 0 && isSlope(part.sections[slopeFrom - 1] as Section, outer)) slopeFrom -= 1;
  const own = part.sections.slice(slopeFrom).reduce((sum, one) => sum + groupsAt(one, outer), left);
  const isTip = own === left && left <= TIP;
  const ends = isTip ? left : Math.max(1, scaledCount(own + below.old, scale) - below.now);
  return {
    outer,
    shoulder: ends,
    slopeFrom,
    left: own === left ? ends : scaledCount(left, scale),
  };
}

/** The edge at the side seam of half a front, right side up: a left one, which is the first of a pair, has it at its right. */
export function wornEdge({ role, mirrored }: Recipe): Edge | undefined {
  if (role === 'right front') return 'left';
  return role === 'left front' || (role === 'front' && mirrored) ? 'right' : undefined;
}

/** Of half a garment's width the side that is shaped first; of a shoulder the side that it lies on. */
function outerOf({ from, sections }: PartRecipe, worn: Edge | undefined): Edge | undefined {
  if ('pickUp' in from || sections.some(({ words }) => words)) return undefined;
  if ('part' in from) return from.edge === 'middle' ? undefined : from.edge;
  const section = sections.find(({ shaping }) => changeAt(shaping, 'right') !== changeAt(shaping, 'left'));
  if (!section) return undefined;
  if (worn) return worn;
  const first = (edge: Edge): number => {
    const at = sections.findIndex(({ shaping }) => changeAt(shaping, edge) !== 0);
    const rows = (sections[at]?.shaping ?? []).flatMap((one) =>
      'edge' in one && (one.edge === edge || one.edge === 'both')
        ? 'groups' in one
          ? one.groups.map(({ row }) => row)
          : one.rows
        : [],
    );
    return at < 0 ? Number.POSITIVE_INFINITY : at * 10_000 + Math.min(...rows);
  };
  const [right, left] = [first('right'), first('left')];
  // an edge that is never shaped is a straight armhole: the other is the neck's
  if (!Number.isFinite(right) || !Number.isFinite(left)) return Number.isFinite(right) ? 'left' : 'right';
  return right <= left ? 'right' : 'left';
}

/** Shapings of both edges told one edge after the other, each edge's as one. */
export function edgeByEdge(shaping: readonly Shaping[]): readonly Shaping[] {
  const out: Shaping[] = [];
  const told = shaping.flatMap((one) =>
    one.kind === 'edge' && one.edge === 'both'
      ? (['right', 'left'] as const).map((edge) => ({ ...one, edge }))
      : [one],
  );
  for (const one of told) {
    const same = out.findIndex(
      (other) =>
        one.kind === 'edge' &&
        other.kind === 'edge' &&
        other.edge === one.edge &&
        other.by === one.by &&
        other.inset === one.inset &&
        other.lean === one.lean,
    );
    const found = out[same];
    if (one.kind === 'edge' && found?.kind === 'edge')
      out[same] = { ...found, rows: [...found.rows, ...one.rows].sort((a, b) => a - b) };
    else out.push(one);
  }
  return out;
}

/**
 * The amounts of a section's shapings (told edge by edge): those of the outer edge by the scale, a shoulder's as many
 * stitches as every other shoulder of so many; the inner edge takes the rest, along its own line.
 * @param before stitches on the needle when the section begins
 */
export function amountsOfEdges(
  part: PartRecipe,
  index: number,
  scale: Scale,
  edges: TwoEdges,
  before: number,
): Amounts {
  const rest = part.sections.slice(index).map(({ shaping }) => edgeByEdge(shaping));
  const outer = rest.map((shaping, i) => outerAmounts(shaping, scale, edges, index + i >= edges.slopeFrom));
  const outerLeft = rest.reduce((sum, shaping, i) => sum + netOf(shaping, outer[i] ?? []), 0);
  // below zero: taken away
  const inner = edges.left - before - outerLeft;
  const innerOld = rest.map((shaping) => changeAt(shaping, edges.outer === 'right' ? 'left' : 'right'));
  const all = innerOld.reduce((sum, n) => sum + n, 0);
  const [own = [], ...later] = rest;
  // without a neck's edge its own takes up what rounding leaves over, where it is shaped stitch by stitch
  if (all === 0 && !later.some((one) => changeAt(one, edges.outer) !== 0))
    return taken(own, outer[0] ?? [], inner);
  const share = all === 0 ? inner : Math.round((inner * (innerOld[0] ?? 0)) / all);
  return shared(own, outer[0] ?? [], share);
}

function taken(shaping: readonly Shaping[], amounts: readonly (number | undefined)[], rest: number): Amounts {
  const at = shaping.findIndex(({ kind }) => kind === 'edge');
  const by = perTime(shaping[at] ?? { kind: 'across', row: 1, by: 0 });
  return amounts.map((n, i) => (i === at && rest % by === 0 ? Math.max(0, (n ?? 0) + rest / by) : (n ?? 0)));
}

/** undefined where a shaping is the inner edge's. */
function outerAmounts(
  shaping: readonly Shaping[],
  scale: Scale,
  edges: TwoEdges,
  isSlopeHere: boolean,
): readonly (number | undefined)[] {
  const amounts = shaping.map((one) =>
    'edge' in one && one.edge === edges.outer ? scaledAmount(one, scale) : undefined,
  );
  if (!isSlopeHere) return amounts;
  // what rounding leaves over goes to the largest of its groups
  const own = amounts.flatMap((n, i) => (n === undefined ? [] : [i]));
  const [most] = [...own].sort((a, b) => (amounts[b] ?? 0) - (amounts[a] ?? 0));
  const sum = own.reduce((n, i) => n + (amounts[i] ?? 0), 0);
  if (most !== undefined)
    amounts[most] = Math.max(0, (amounts[most] ?? 0) + edges.shoulder - edges.left - sum);
  return amounts;
}

const netOf = (shaping: readonly Shaping[], amounts: readonly (number | undefined)[]): number =>
  shaping.reduce((sum, one, i) => sum + perTime(one) * (amounts[i] ?? 0), 0);

/** The inner edge's shapings in their proportions; the one that takes the most has what is left over. */
function shared(shaping: readonly Shaping[], outer: readonly (number | undefined)[], net: number): Amounts {
  const inner = shaping.flatMap((one, i) => (outer[i] === undefined && perTime(one) !== 0 ? [i] : []));
  const old = (i: number) => perTime(shaping[i] as Shaping) * amountOf(shaping[i] as Shaping);
  const all = inner.reduce((sum, i) => sum + old(i), 0);
  const amounts = shaping.map((one, i) => outer[i] ?? (perTime(one) === 0 ? amountOf(one) : 0));
  const at = (i: number) => perTime(shaping[i] as Shaping);
  for (const i of inner) amounts[i] = all === 0 ? 0 : Math.max(0, Math.round((net * old(i)) / all / at(i)));
  const rest = net - inner.reduce((sum, i) => sum + at(i) * (amounts[i] ?? 0), 0);
  const [taker] = [...inner].sort((a, b) => (amounts[b] ?? 0) - (amounts[a] ?? 0));
  if (taker !== undefined && rest % at(taker) === 0)
    amounts[taker] = Math.max(0, (amounts[taker] ?? 0) + rest / at(taker));
  return amounts;
}
