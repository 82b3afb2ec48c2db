import type { PartRecipe } from '../piece/recipe.ts';
import { RAGLAN_TIP } from './closed-panel.ts';
import type { Design } from './design.ts';
import { armholes } from './kinds/armholes.ts';
import { necks } from './kinds/necks.ts';
import { besideNeck, knitNeck, type Neck } from './neck.ts';
import { cutPart, type PanelEdge, stepsAlong } from './panel.ts';
import type { PanelCounts } from './panel-counts.ts';
import type { Sides } from './sides.ts';
import type { Targets } from './targets.ts';
import { fitted, stitchesIn } from './whole-numbers.ts';

/** Half of an opened front: the left one as worn, whose side lies at the right edge; the right one is its mirror image. */
export interface OpenFront {
  readonly parts: readonly PartRecipe[];
  readonly edges: readonly PanelEdge[];
  readonly neck: Neck | undefined;
  readonly castOn: number;
  /** stitches at the underarm, and of the neck at its top */
  readonly underarm: number;
  readonly neckStitches: number;
}

export function openFront(design: Design, targets: Targets, counts: PanelCounts, sides: Sides): OpenFront {
  const { gauge, pairs } = counts;
  const neckStitches = frontNeckStitches(targets, counts);
  const gap = counts.neck / 2 - neckStitches;
  const low = counts.low / 2 - gap;
  const hem = pairs.hem === 0 || design.hem.count === 'as body' ? low : fitted(design.hem.fabric, low);
  const from = sides.pairs - pairs.neck;
  const end = counts.neck / 2 - (armholes[design.armhole].toNeck ? RAGLAN_TIP : 0);
  const beside = besideNeck(design, sides.edges);
  const wish = { shape: necks[design.neck.shape], gauge, from, pairs: pairs.neck, start: gap, end, beside };
  const neck = pairs.neck > 0 ? openNeck(wish) : undefined;
  const neckSteps = neck ? stepsAlong([neck.edge]) : [];
  const stretches = sides.stretches.map((s) => (s.name === 'body' ? { ...s, across: low - hem } : s));
  const castOn = pairs.hem > 0 ? hem : low;
  const part = cutPart(stretches, {
    name: 'Front',
    from: { castOn },
    end: 'bind off',
    pairs: [0, sides.pairs],
    right: sides.steps,
    left: neckSteps,
    stitches: castOn,
  });
  return {
    parts: [part],
    edges: neck ? [...sides.edges, neck.edge] : sides.edges,
    neck,
    castOn,
    underarm: counts.underarm / 2 - gap,
    neckStitches,
  };
}

/** At a front's own edge what lies level is bound off in its first row, like every other group. */
function openNeck(wish: Parameters<typeof knitNeck>[0]): Neck {
  const closed = knitNeck(wish);
  const level = (closed.edge.at[0] ?? 0) - wish.start;
  if (wish.shape.isPointed || level <= 0) return closed;
  const first = { pair: 0, by: -level, as: level > 1 ? 'group' : 'single' } as const;
  return { ...closed, edge: { ...closed.edge, steps: [first, ...closed.edge.steps] } };
}

/** Stitches of half a front neck: the count that leaves neck and front width nearest to what was asked, at the worse of the two. */
export function frontNeckStitches(targets: Targets, counts: PanelCounts): number {
  const asked = stitchesIn((targets.neck - targets.frontBand) / 2, counts.gauge);
  const front = stitchesIn((targets.underarm - targets.frontBand) / 2, counts.gauge) + counts.seam;
  const rest = (counts.underarm - counts.neck) / 2;
  const worst = (n: number): number => Math.max(Math.abs(n - asked), Math.abs(rest + n - front));
  const low = Math.floor(asked);
  return worst(low) <= worst(low + 1) ? low : low + 1;
}
