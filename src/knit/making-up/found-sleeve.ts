import type { PlannedPart } from '../piece/planned.ts';
import type { Edge } from '../piece/recipe.ts';
import { endOf } from './boundary.ts';
import { FoundSide } from './found-side.ts';
import type { Line, Stretch } from './joint.ts';
import { type SleeveEdges, turnedRound, type Underarm } from './piece-edges.ts';
import { SEAM_STITCH, sewnMm } from './seam-stitch.ts';

/** The edges of a sleeve as the shape of its plan tells them, whatever its sections are called. */
export class FoundSleeve implements SleeveEdges {
  private readonly sides = new Map<Edge, FoundSide>();
  readonly isTopDown: boolean;
  /** it narrows towards its top */
  readonly isCapped: boolean;

  /**
   * @param indentMm what of the body's underarm its sides are sewn into, where its top is straight
   * @param seamRows of its own seam, where a text tells them
   * @param isTopDown where a text tells it
   */
  constructor(
    private readonly piece: string,
    private readonly make: number,
    private readonly parts: readonly PlannedPart[],
    private readonly indentMm = 0,
    private readonly seamRows?: number,
    isTopDown?: boolean,
  ) {
    const [part] = parts;
    const side = this.at('right');
    const bottomUp = side.firstLevel(side.end, -1) >= 0;
    const fromTop = side.firstLevel(side.end, 1) >= 0;
    const [start, top] = part ? [endOf(part, 'start').stitches, endOf(part, 'top').stitches] : [0, 0];
    const names = part?.sections.map(({ name }) => name) ?? [];
    const isNamed = names.some((name) => SLEEVE.includes(name));
    const capped = names.findIndex((name) => CAP.includes(name));
    this.isTopDown =
      (capped >= 0 ? capped === 0 : undefined) ??
      isTopDown ??
      (fromTop || (!bottomUp && start > top && side.narrows(side.end) >= 0 && !endsNarrow(part)));
    this.isCapped = isNamed
      ? capped >= 0 && names[capped] !== LET_IN
      : bottomUp || fromTop || (!this.isTopDown && endsNarrow(part));
  }

  /** Width of its top where that is straight, when its own seam has taken a stitch of either end. */
  topMm(): number {
    const { stitches, width } = this.ownTop();
    return sewnMm(stitches, TOP_EDGES, width);
  }

  /** By how much the top is longer than what it is sewn to, since its own seam takes that: in hundredths, to a tenth. */
  seamEase(): number {
    const sewn = this.topMm() + 2 * this.indentMm;
    const { width } = this.ownTop();
    return this.isCapped || sewn <= 0 ? 0 : Math.round((1000 * TOP_EDGES * SEAM_STITCH * width) / sewn) / 10;
  }

  private ownTop(): { readonly stitches: number; readonly width: number } {
    const [part] = this.parts;
    return part ? endOf(part, this.isTopDown ? 'start' : 'top') : { stitches: 0, width: 0 };
  }

  cuff = (): Line => [this.stretch(this.isTopDown ? 'top' : 'start')];

  top = (): Line => [this.stretch(this.isTopDown ? 'start' : 'top')];

  seam(edge: Edge): Line {
    const side = this.at(edge);
    const at = this.capAt(edge);
    if (!this.isTopDown) return side.between(0, at);
    const line = side.between(at, side.end);
    return turnedRound(side.levelAt(at) === undefined ? line : withoutLevel(line));
  }

  underarm(edge: Edge): Underarm | undefined {
    const side = this.at(edge);
    const at = this.capAt(edge);
    const level = side.levelAt(at);
    if (!level) return undefined;
    const [first] = side.between(at, side.end);
    if (!first) return undefined;
    const line: Line = [{ ...first, level: 'only' }];
    return { line: this.isTopDown ? turnedRound(line) : line, stitches: level.stitches };
  }

  cap(edge: Edge, whole: boolean): Line {
    const side = this.at(edge);
    const at = this.capAt(edge);
    const level = side.levelAt(at) !== undefined;
    if (this.isTopDown) {
      const own = turnedRound(side.between(0, at));
      return whole ? [...(this.underarm(edge)?.line ?? []), ...own] : own;
    }
    const line = side.between(at, side.end);
    return whole || !level ? line : withoutLevel(line);
  }

  /** Where the cap begins, or ends from the top down: at the underarm. */
  private capAt(edge: Edge): number {
    const side = this.at(edge);
    const { seamRows } = this;
    const named = this.isTopDown ? side.ends(CAP) : side.begins(CAP);
    if (named !== undefined) return named;
    if (seamRows !== undefined) return this.isTopDown ? side.beforeRows(seamRows) : side.behindRows(seamRows);
    if (this.isTopDown) {
      const cast = side.lastLevel(1);
      return cast >= 0 ? cast : side.above(this.indentMm);
    }
    const level = side.firstLevel(side.end, -1);
    if (level >= 0) return level;
    return this.isCapped ? side.narrows(side.end) : side.below(side.end, this.indentMm);
  }

  private at(edge: Edge): FoundSide {
    const side = this.sides.get(edge) ?? new FoundSide(this.piece, this.make, this.parts, edge);
    this.sides.set(edge, side);
    return side;
  }

  private stretch(edge: Stretch['edge']): Stretch {
    return { piece: this.piece, make: this.make, part: this.parts[0]?.name ?? '', edge };
  }
}

/** What rows are called, in a draft and in what is written of it. */
const SLEEVE: readonly string[] = ['sleeve'];
const LET_IN = 'top';
const CAP: readonly string[] = ['cap', 'raglan', LET_IN];

/** Both ends of a straight top lie in the sleeve's seam. */
const TOP_EDGES = 2;

const withoutLevel = (line: Line): Line =>
  line.map((stretch, i) => (i === 0 ? { ...stretch, level: 'without' as const } : stretch));

/** It was wider than its beginning and its end. */
function endsNarrow(part: PlannedPart | undefined): boolean {
  if (!part) return false;
  const widest = Math.max(part.start, ...part.rows.map(({ after }) => after));
  const top = endOf(part, 'top').stitches;
  return top < 0.7 * widest && part.start < widest;
}
