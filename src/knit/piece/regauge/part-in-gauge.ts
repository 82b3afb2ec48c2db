import { type FabricName, fits } from '../../fabric.ts';
import { fault, ok, placed, type Result, refuse } from '../../fault.ts';
import { holeRows, holesIn, scaledHoles } from '../hole-rows.ts';
import type { PlannedPart } from '../planned.ts';
import type { Edge, PartRecipe, PartStart, Recipe, Section, Shaping } from '../recipe.ts';
import { pickedUp, type Resting } from './picked-up.ts';
import { roundLike } from './round-to.ts';
import type { Scale } from './scale.ts';
import { type AlongEdges, scaledShaping } from './scaled-shaping.ts';
import { type Stood, sectionRows } from './section-rows.ts';
import { amountOf, perTime, scaledCount, shapedTo } from './shaped-to.ts';
import {
  amountsOfEdges,
  boundOffBelow,
  edgeByEdge,
  type TwoEdges,
  twoEdgesOf,
  wornEdge,
} from './two-edges.ts';

/** A section of a piece made higher by so many rows, or shaped more often at its edges, so that it meets what it is sewn to. */
export interface Nudge {
  readonly part: string;
  readonly section: number;
  readonly rows: number;
  readonly times: number;
  /** one of its edges alone; both unless said */
  readonly edge?: Edge;
}

export interface Means {
  readonly resting: Resting;
  readonly nudges: readonly Nudge[];
  readonly sooner: number;
}

/** A part that was worked, for those that go on from it. */
export interface Worked {
  readonly part: PartRecipe;
  readonly left: number;
  readonly last: Stood;
}

/** A part of a piece, worked out section by section. */
export class PartInNewGauge {
  private rows: readonly number[] = [];
  private edges: TwoEdges | undefined;

  constructor(
    private readonly part: PartRecipe,
    private readonly old: PlannedPart,
    private readonly scale: Scale,
    private readonly recipe: Recipe,
    private readonly left: ReadonlyMap<string, Worked>,
    private readonly means: Means,
  ) {}

  make(): Result<Worked> {
    const parent = 'part' in this.part.from ? this.left.get(this.part.from.part) : undefined;
    const { rows, last } = sectionRows(this.part, this.scale, parent?.last);
    this.rows = rows.map((n, i) => n + this.added(i));
    this.edges = twoEdgesOf(
      this.part,
      this.oldLeft(),
      this.scale,
      this.below(parent?.part),
      wornEdge(this.recipe),
    );
    const from = this.start();
    let count = stitchesOf(from);
    const sections: Section[] = [];
    for (const [index, section] of this.part.sections.entries()) {
      const made = this.section(section, index, count, from);
      if (!made.ok) return refuse(...made.faults.map((f) => placed(f, { sectionIndex: index })));
      sections.push(made.value.section);
      count = made.value.after;
    }
    return ok({ part: { ...this.part, from, sections }, left: count, last });
  }

  private nudged(index: number): Nudge | undefined {
    return this.means.nudges.find(({ part, section }) => part === this.part.name && section === index);
  }

  private added(index: number): number {
    return this.nudged(index)?.rows ?? 0;
  }

  private oldLeft(): number {
    const working = this.old.rows.filter(({ section }) => section < this.part.sections.length);
    return working.at(-1)?.after ?? this.old.start;
  }

  /** What the part that this one goes on from has bound off of its shoulder. */
  private below(now: PartRecipe | undefined): { readonly old: number; readonly now: number } {
    const { from } = this.part;
    if (!('part' in from) || from.edge === 'middle' || !now) return { old: 0, now: 0 };
    const old = this.recipe.parts.find(({ name }) => name === from.part);
    return boundOffBelow(old?.sections ?? [], now.sections, from.edge);
  }

  private start(): PartStart {
    const { from } = this.part;
    if ('castOn' in from) return { castOn: this.fitted(from.castOn * this.scale.stitches, from.castOn) };
    if ('pickUp' in from) {
      const fitted = (sum: number): number => this.fitted(sum, this.old.start);
      return { pickUp: pickedUp(from.pickUp, this.scale, this.means.resting, fitted) };
    }
    return { ...from, stitches: this.shareOf(from) };
  }

  /** Nearest count that the first section's fabric can be worked over, of the same parity where it may be any. */
  private fitted(wanted: number, old: number): number {
    const fabric = this.part.sections[0]?.fabric ?? 'stocking';
    const near = Math.max(1, roundLike(wanted, old));
    const { fits: suits, below, above } = fits(fabric, near);
    if (suits) return near;
    return below > 0 && wanted - below <= above - wanted ? below : above;
  }

  /** The share of a split: right and left alike, what is left over in the middle. */
  private shareOf(from: Extract<PartStart, { part: string }>): number {
    const whole = this.left.get(from.part)?.left ?? 0;
    const siblings = this.recipe.parts.flatMap((p) =>
      'part' in p.from && p.from.part === from.part ? [p.from] : [],
    );
    const sum = (edge: string) => siblings.reduce((n, s) => n + (s.edge === edge ? s.stitches : 0), 0);
    const even = sum('right') === sum('left');
    const old = sum('right') + sum('middle') + sum('left');
    if (siblings.length === 1 || old === 0) return whole;
    const middle =
      sum('middle') > 0 ? roundLike((sum('middle') * whole) / old, even ? whole : sum('middle')) : 0;
    const side = scaledCount((old - sum('middle')) / 2, this.scale);
    if (siblings.length === 3 && even && sum('middle') > 0 && whole > 2 * side)
      return from.edge === 'middle' ? whole - 2 * side : side;
    // one of two sides has the middle of the neck with it, to be bound off: the other is its share of a shoulder
    if (siblings.length === 2 && !even && sum('right') > 0 && sum('left') > 0) {
      const small = scaledCount(Math.min(sum('right'), sum('left')), this.scale);
      if (whole > small) return sum(from.edge) < old - sum(from.edge) ? small : whole - small;
    }
    if (from.edge === 'middle') return middle;
    const right = Math.round(((whole - middle) * sum('right')) / (sum('right') + sum('left')));
    return from.edge === 'right' ? right : whole - middle - right;
  }

  private section(
    section: Section,
    index: number,
    before: number,
    from: PartStart,
  ): Result<{ section: Section; after: number }> {
    if (section.words) return this.inWords(section, section.words, index, before);
    const rows = this.rows[index] ?? section.rows;
    const oldAfter = this.countBefore(index, section.rows + 1);
    const told = this.edges ? edgeByEdge(section.shaping) : section.shaping;
    const amounts = this.edges
      ? amountsOfEdges(this.part, index, this.scale, this.edges, before)
      : shapedTo(told, this.scale, { before, oldAfter, rows });
    const { times: more = 0, edge } = this.nudged(index) ?? {};
    const times = told.map((one, i) => (amounts[i] ?? 0) + (isNudged(one, edge) ? more : 0));
    // rows that were added are shaped as the others are
    const scale = {
      ...this.scale,
      rows: (this.scale.rows * rows) / (rows - (more === 0 ? this.added(index) : 0)),
    };
    const scaled = scaledShaping(told, scale, rows, times, (one) =>
      this.edges && 'edge' in one && one.edge !== this.edges.outer ? this.means.sooner : 0,
    );
    if (!scaled.ok) return scaled;
    const shaping = scaled.value.map((s) =>
      s.kind === 'middle' ? { ...s, from: this.centre(s.from, from) } : s,
    );
    const across = section.shaping.find((s) => s.kind === 'across');
    const changed = before + shaping.reduce((sum, s) => sum + changeOf(s), 0);
    if (across?.kind !== 'across') {
      const by = this.madeToFit(section, index, before, rows);
      const all: Shaping[] = by === 0 ? shaping : [{ kind: 'across', row: 1, by }, ...shaping];
      return ok({ section: { ...section, rows, shaping: all }, after: changed + by });
    }
    const row = Math.min(rows, Math.max(1, roundLike(across.row * this.scale.rows, across.row)));
    const share = across.by / (this.countBefore(index, across.row) || 1);
    const by = this.fittedChange(before, Math.round(before * share), section.fabric, row === 1);
    return ok({
      section: { ...section, rows, shaping: [{ kind: 'across', row, by }, ...shaping] },
      after: changed + by,
    });
  }

  /** Of rows in words only those of button holes are known well enough to be laid anew. */
  private inWords(
    section: Section,
    words: NonNullable<Section['words']>,
    index: number,
    before: number,
  ): Result<{ section: Section; after: number }> {
    const old = this.countBefore(index, 1);
    const holes = holesIn(words, old);
    const rowsBefore = this.rows.slice(0, index).reduce((sum, n) => sum + n, 0);
    if (!holes || !('pickUp' in this.part.from) || rowsBefore % 2 === 0)
      return refuse(fault('rows in words'));
    const moved = scaledHoles(holes, section.fabric, old, before);
    if (!moved) return refuse(fault('rows in words'));
    return ok({
      section: { ...section, words: holeRows(moved, section.fabric, before, rowsBefore) },
      after: before,
    });
  }

  /** Stitches that the old plan had on the needle before a row of a section. */
  private countBefore(index: number, row: number): number {
    const first = this.old.sections[index]?.first ?? 1;
    return this.old.rows[first + row - 2]?.before ?? this.old.rows.at(-1)?.after ?? this.old.start;
  }

  /** Spread in its first row, a rib must come out on its multiple. */
  private fittedChange(before: number, by: number, fabric: FabricName, first: boolean): number {
    if (!first) return by;
    const near = fits(fabric, before + by);
    return near.fits ? by : near.above - before;
  }

  /** Stitches more or fewer in the first row of a rib that what lies before it does not come out on any more. */
  private madeToFit({ fabric, shaping }: Section, index: number, before: number, rows: number): number {
    const goesOn = index > 0 && this.part.sections[index - 1]?.fabric === fabric;
    if (index === 0 || goesOn || rows === 0 || shaping.some(startsAtOnce)) return 0;
    const near = fits(fabric, before);
    if (near.fits) return 0;
    return near.below > 0 && before - near.below <= near.above - before
      ? near.below - before
      : near.above - before;
  }

  /** Where the point of a V lies: after the same picked-up edges as before. */
  private centre(old: number, from: PartStart): number {
    const was = this.part.from;
    if (!('pickUp' in was) || !('pickUp' in from)) return Math.round(old * this.scale.stitches);
    let sumWas = 0;
    let sum = 0;
    for (const [i, edge] of was.pickUp.entries()) {
      if (sumWas === old) return sum;
      sumWas += edge.stitches;
      sum += from.pickUp[i]?.stitches ?? 0;
    }
    return Math.round(old * this.scale.stitches);
  }
}

/** What shapes the first row itself leaves no room for more in it. */
const startsAtOnce = (shaping: Shaping): boolean =>
  'groups' in shaping
    ? shaping.groups.some(({ row }) => row === 1)
    : 'rows' in shaping && shaping.rows.includes(1);

const stitchesOf = (from: PartStart): number =>
  'castOn' in from
    ? from.castOn
    : 'pickUp' in from
      ? from.pickUp.reduce((n, p) => n + p.stitches, 0)
      : from.stitches;

/** Stitches that a shaping adds in all. */
const changeOf = (shaping: AlongEdges): number =>
  shaping.kind === 'middle' ? -2 * shaping.rows.length : perTime(shaping) * amountOf(shaping);

/** What is done more or less often: an edge that is shaped, and of one edge alone what is bound off there. */
const isNudged = (one: Shaping, edge: Edge | undefined): boolean =>
  one.kind === 'edge' ? !edge || one.edge === edge : one.kind === 'bind off' && one.edge === edge;
