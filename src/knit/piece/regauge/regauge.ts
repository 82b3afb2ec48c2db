import { assumedGauge, type FabricName, fits } from '../../fabric.ts';
import { fault, ok, placed, type Result, refuse } from '../../fault.ts';
import type { Gauge } from '../../gauge.ts';
import { fabricOfGauge, type MeasuredGauge } from '../../measured-gauge.ts';
import { holeRows, holesIn, scaledHoles } from '../hole-rows.ts';
import { plan } from '../plan.ts';
import type { PlannedPart } from '../planned.ts';
import type { PartRecipe, PartStart, PickUp, Recipe, Section, Shaping } from '../recipe.ts';
import type { WorkBudget } from '../work-budget.ts';
import { roundLike, roundParts } from './round-to.ts';
import type { Scale } from './scale.ts';
import { rowsOfGroups } from './scaled-groups.ts';
import { type AlongEdges, scaledShaping } from './scaled-shaping.ts';
import { scaledCount, shapedTo } from './shaped-to.ts';

/**
 * The same piece in another gauge: as wide and as high as before (or by `size` wider and higher), with her stitches
 * and rows. Ribs keep to their multiples, rows to their sides, splits and shoulders to their symmetry.
 * @param to stitches and rows per 100 mm; counted in another fabric than the recipe's, they are compared by the usual ratio
 * @param budget how much may be worked for it, where several pieces share it
 * @param resting what rests on holders of the garment's pieces so far; what rests here is written into it
 * @returns faults where the recipe has no gauge, cannot be knitted, or its shaping has no room in the new rows
 */
export function regauge(
  recipe: Recipe,
  to: MeasuredGauge,
  size: { readonly width: number; readonly height: number } = { width: 1, height: 1 },
  budget?: WorkBudget,
  resting: Resting = new Map(),
): Result<Recipe> {
  const { gauge } = recipe;
  if (!gauge) return refuse(fault('no gauge', { pieceName: recipe.name }));
  const fabric = to.fabric ?? gauge.fabric;
  const like = assumedGauge(fabricOfGauge(gauge), to, fabric);
  const scale: Scale = {
    stitches: (like.stitches / gauge.stitches) * size.width,
    rows: (like.rows / gauge.rows) * size.height,
  };
  if (!(scale.stitches > 0.05 && scale.stitches < 20 && scale.rows > 0.05 && scale.rows < 20)) {
    return refuse(fault('bad gauge'));
  }
  const before = plan(recipe, budget);
  if (!before.ok) return before;
  if (scale.stitches === 1 && scale.rows === 1) return ok(recipe);
  const parts: PartRecipe[] = [];
  const left = new Map<string, number>();
  for (const part of recipe.parts) {
    const old = before.value.parts.find((p) => p.name === part.name);
    if (!old) continue;
    const made = new PartInNewGauge(part, old, scale, recipe, left, resting).make();
    if (!made.ok)
      return refuse(...made.faults.map((f) => placed(f, { piece: recipe.name, part: part.name })));
    parts.push(made.value.part);
    left.set(part.name, made.value.left);
    if (part.end === 'hold') resting.set(old.left, made.value.left);
  }
  const hers: MeasuredGauge = fabric === undefined ? to : { ...to, fabric };
  const made: Recipe = { ...recipe, gauge: hers, ...otherGauges(recipe, gauge, like), parts };
  const proven = plan(made, budget);
  return proven.ok ? ok(made) : proven;
}

/** Other fabrics' gauges are taken to change as the main one does. */
function otherGauges({ gauges }: Recipe, from: Gauge, to: Gauge): Pick<Recipe, 'gauges'> {
  if (!gauges) return {};
  const scaled = Object.entries(gauges).map(([fabric, g]) => [
    fabric,
    { stitches: (g.stitches * to.stitches) / from.stitches, rows: (g.rows * to.rows) / from.rows },
  ]);
  return { gauges: Object.fromEntries(scaled) as Partial<Record<FabricName, Gauge>> };
}

/** Stitches that rested on a holder, and how many they are now: a band takes them up one by one. */
export type Resting = Map<number, number>;

class PartInNewGauge {
  constructor(
    private readonly part: PartRecipe,
    private readonly old: PlannedPart,
    private readonly scale: Scale,
    private readonly recipe: Recipe,
    private readonly left: ReadonlyMap<string, number>,
    private readonly resting: Resting,
  ) {}

  make(): Result<{ part: PartRecipe; left: number }> {
    const from = this.start();
    let count = stitchesOf(from);
    const sections: Section[] = [];
    for (const [index, section] of this.part.sections.entries()) {
      const made = this.section(section, index, count, from);
      if (!made.ok) return refuse(...made.faults.map((f) => placed(f, { sectionIndex: index })));
      sections.push(made.value.section);
      count = made.value.after;
    }
    return ok({ part: { ...this.part, from, sections }, left: count });
  }

  private start(): PartStart {
    const { from } = this.part;
    if ('castOn' in from) return { castOn: this.fitted(from.castOn * this.scale.stitches, from.castOn) };
    if ('pickUp' in from) return { pickUp: this.pickedUp(from.pickUp) };
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

  /** A point of one or two stitches stays as it is; the last edge takes up what the rib's multiple asks for. */
  private pickedUp(old: readonly PickUp[]): PickUp[] {
    const scaled = roundParts(
      old.map((p) => (p.stitches <= 2 ? p.stitches : p.stitches * this.scale.stitches)),
    );
    const counts = old.map((p, i) => (p.stitches <= 2 ? p.stitches : Math.max(1, scaled[i] ?? 1)));
    old.forEach((p, i) => {
      const twin = old.findIndex((q, j) => j < i && q.stitches === p.stitches);
      if (twin >= 0) counts[i] = counts[twin] ?? counts[i] ?? 1;
    });
    old.forEach((p, i) => {
      if (p.held) counts[i] = this.resting.get(p.stitches) ?? counts[i] ?? 1;
    });
    const sum = counts.reduce((a, b) => a + b, 0);
    // what rests on a holder is counted there
    const last = old.reduce((found, { held }, i) => (held ? found : i), 0);
    counts[last] = Math.max(1, (counts[last] ?? 1) + this.fitted(sum, this.old.start) - sum);
    return old.map((p, i) => ({ ...p, stitches: counts[i] ?? 1 }));
  }

  /** The share of a split: right and left alike, what is left over in the middle. */
  private shareOf(from: Extract<PartStart, { part: string }>): number {
    const whole = this.left.get(from.part) ?? 0;
    const siblings = this.recipe.parts.flatMap((p) =>
      'part' in p.from && p.from.part === from.part ? [p.from] : [],
    );
    const sum = (edge: string) => siblings.reduce((n, s) => n + (s.edge === edge ? s.stitches : 0), 0);
    const even = sum('right') === sum('left');
    const old = sum('right') + sum('middle') + sum('left');
    if (siblings.length === 1 || old === 0) return whole;
    const middle =
      sum('middle') > 0 ? roundLike((sum('middle') * whole) / old, even ? whole : sum('middle')) : 0;
    const side = scaledCount(sum('right'), this.scale);
    if (siblings.length === 3 && even && sum('middle') > 0 && whole > 2 * side)
      return from.edge === 'middle' ? whole - 2 * side : side;
    // one of two sides has the middle of the neck with it, to be bound off: the other is its share of a shoulder
    if (siblings.length === 2 && !even && sum('right') > 0 && sum('left') > 0) {
      const small = scaledCount(Math.min(sum('right'), sum('left')), this.scale);
      if (whole > small) return sum(from.edge) < old - sum(from.edge) ? small : whole - small;
    }
    const right = Math.round(((whole - middle) * sum('right')) / Math.max(1, sum('right') + sum('left')));
    if (from.edge === 'middle') return middle;
    return from.edge === 'right' ? right : whole - middle - right;
  }

  private section(
    section: Section,
    index: number,
    before: number,
    from: PartStart,
  ): Result<{ section: Section; after: number }> {
    if (section.words) return this.inWords(section, section.words, index, before);
    const rows = rowsFor(section, this.scale);
    const oldAfter = this.countBefore(index, section.rows + 1);
    const amounts = shapedTo(section.shaping, this.scale, { before, oldAfter, rows });
    const scaled = scaledShaping(section.shaping, this.scale, rows, amounts);
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
    const rowsBefore = this.part.sections
      .slice(0, index)
      .reduce((sum, one) => sum + rowsFor(one, this.scale), 0);
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

/** Rows in the new gauge, on the same side at the end; a slope keeps the rows that its groups are worked on. */
function rowsFor(section: Section, scale: Scale): number {
  if (section.rows === 0) return 0;
  const slopes = section.shaping.flatMap((s) =>
    s.kind === 'bind off' || s.kind === 'cast on' || s.kind === 'turn' ? [rowsOfGroups(s.groups, scale)] : [],
  );
  const least = Math.max(1, ...slopes);
  const wanted = roundLike(section.rows * scale.rows, section.rows);
  return wanted >= least ? wanted : least + ((least + section.rows) % 2);
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
function changeOf(shaping: AlongEdges): number {
  switch (shaping.kind) {
    case 'edge':
      return shaping.by * shaping.rows.length * (shaping.edge === 'both' ? 2 : 1);
    case 'middle':
      return -2 * shaping.rows.length;
    case 'bind off':
      return -shaping.groups.reduce((n, g) => n + g.stitches, 0);
    case 'cast on':
      return shaping.groups.reduce((n, g) => n + g.stitches, 0);
    case 'turn':
      return 0;
  }
}
