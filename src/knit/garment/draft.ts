import type { FabricName } from '../fabric.ts';
import { ok, type Result, refuse } from '../fault.ts';
import type { Gauge } from '../gauge.ts';
import type { Joint } from '../making-up/joint.ts';
import type { Match } from '../piece/match.ts';
import type { Recipe } from '../piece/recipe.ts';
import { bandsOf } from './bands.ts';
import { buttonholePlaces } from './buttonholes.ts';
import { knittedMm } from './cap.ts';
import { RAGLAN_TIP } from './closed-panel.ts';
import type { Design } from './design.ts';
import { gapsOf } from './even-holes.ts';
import { badFigures } from './figures.ts';
import { holesOf } from './front-bands.ts';
import { designGauge, mainGauge } from './gauges.ts';
import { type HeadFit, headFit } from './head-through-neck.ts';
import { impossiblePanels, impossibleSlants, impossibleSleeve } from './impossible.ts';
import { jointsOf } from './joints/joints.ts';
import { armholes } from './kinds/armholes.ts';
import { garmentKinds } from './kinds/garments.ts';
import { shoulderFacts } from './kinds/shoulders.ts';
import { openingPairs } from './neck-opening.ts';
import { outlinesOf, type PieceOutline } from './outlines.ts';
import type { PanelEdge } from './panel.ts';
import { type PanelCounts, panelCounts } from './panel-counts.ts';
import { knitPanels, type Panels } from './panels.ts';
import type { BandEdges } from './pick-up.ts';
import { type Rounding, roundingsOf } from './roundings.ts';
import { seamsOf } from './seams.ts';
import { holdsShoulders, withHeldShoulders, withShortRows } from './short-rows.ts';
import { knitSleeve, type Sleeve } from './sleeve.ts';
import { type SleeveCounts, sleeveCounts } from './sleeve-counts.ts';
import { type Targets, targetsOf } from './targets.ts';
import { type Warning, warningsOf } from './warnings.ts';

/** An edge of a piece with its curve and how far, at most, the knitting is from it. */
export interface DraftEdge extends PanelEdge {
  readonly piece: string;
}

/** A garment drafted: everything that she sees before yarn is bought, and the recipes. */
export interface Draft {
  readonly recipes: readonly Recipe[];
  readonly outlines: readonly PieceOutline[];
  readonly roundings: readonly Rounding[];
  readonly warnings: readonly Warning[];
  /** its neck held against the head; undefined where the front opens */
  readonly head: HeadFit | undefined;
  readonly matches: readonly Match[];
  /** how its pieces are made up, in the order of work */
  readonly joints: readonly Joint[];
  readonly edges: readonly DraftEdge[];
  /** from one button hole of a front to the next, stitches; none where it has fewer than two */
  readonly holeGaps: readonly number[];
  /** fabrics without a swatch of their own, with the gauge assumed for them */
  readonly assumed: readonly { readonly fabric: FabricName; readonly gauge: Gauge }[];
  readonly targets: Targets;
}

interface SleeveDraft {
  readonly counts: SleeveCounts;
  readonly knitted: Sleeve;
}

/**
 * Drafts every piece of a garment from measurements, swatches and choices (all in mm).
 * @returns the draft with its warnings, or every reason why it cannot be knitted, each with the design's field in
 *   `at.field`
 */
export function draft(design: Design): Result<Draft> {
  const steps = draftInSteps(design);
  let step = steps.next();
  while (step.done !== true) step = steps.next();
  return step.value;
}

/** The same, coming back after each of its parts, so that whoever has other things to do can do them in between. */
export function* draftInSteps(design: Design): Generator<void, Result<Draft>> {
  const bad = badFigures(design);
  if (bad.length > 0) return refuse(...bad);
  const targets = targetsOf(design);
  const counts = panelCounts(design, targets);
  const impossible = impossiblePanels(design, targets, counts);
  if (impossible.length > 0) return refuse(...impossible);
  yield;
  const panels = yield* knitPanels(design, targets, counts);
  const slants = impossibleSlants(panels.sides.edges);
  yield;
  const sleeve = draftSleeve(design, targets, counts, panels);
  if (!sleeve.ok || slants.length > 0) return refuse(...slants, ...(sleeve.ok ? [] : sleeve.faults));
  yield;
  return ok(yield* gathered(design, targets, counts, panels, sleeve.value));
}

function draftSleeve(
  design: Design,
  targets: Targets,
  counts: PanelCounts,
  panels: Panels,
): Result<SleeveDraft | undefined> {
  if (!garmentKinds[design.kind].sleeves) return ok(undefined);
  const sleeve = sleeveCounts(design, targets, counts, panels.sides);
  const impossible = impossibleSleeve(design, sleeve);
  if (impossible.length > 0) return refuse(...impossible);
  const knitted = knitSleeve(design, sleeve);
  const slants = impossibleSlants(knitted.edges);
  return slants.length > 0 ? refuse(...slants) : ok({ counts: sleeve, knitted });
}

function* gathered(
  design: Design,
  targets: Targets,
  counts: PanelCounts,
  panels: Panels,
  sleeve: SleeveDraft | undefined,
): Generator<void, Draft> {
  const bandEdges = bandEdgesOf(design, counts, panels, sleeve);
  const head = headFit(design, bandEdges);
  const holes = holesOf(design, bandEdges);
  const dressed = dresser(design);
  const panelRecipes = panels.recipes.map((recipe) => dressed(shouldered(design, recipe)));
  const sleeveRecipe = sleeve
    ? [dressed({ name: 'Sleeve', role: 'sleeve', makes: 2, parts: [sleeve.knitted.part] })]
    : [];
  const edges: DraftEdge[] = [
    ...panels.back.edges.map((edge) => ({ ...edge, piece: 'Back' })),
    ...panels.front.edges.map((edge) => ({ ...edge, piece: 'Front' })),
    ...(sleeve?.knitted.edges ?? []).map((edge) => ({ ...edge, piece: 'Sleeve' })),
  ];
  const recipes = [...panelRecipes, ...sleeveRecipe, ...bandsOf(design, bandEdges).map(dressed)];
  yield;
  const joints = jointsOf(design, recipes, {
    ...flatNecks(counts, panels),
    openingRows: 2 * openingPairs(design, counts),
    topEase: sleeve ? topEase(bandEdges.armhole, sleeve.counts) : 0,
  });
  yield;
  const outlines = outlinesOf(design, targets, counts, panels, sleeve);
  yield;
  return {
    recipes,
    joints,
    outlines,
    roundings: roundingsOf(design, targets, counts, panels.open, sleeve?.counts),
    warnings: warningsOf({
      design,
      targets,
      counts,
      head,
      edges: [...panels.sides.edges, ...(sleeve?.knitted.edges ?? [])],
      sleeve: sleeve?.counts,
      holes,
    }),
    holeGaps: gapsOf((holes && buttonholePlaces(holes)) ?? []),
    matches: seamsOf(design, { counts, panels, sleeve }),
    head,
    edges,
    assumed: assumedGauges(design),
    targets,
  };
}

/**
 * A straight top is longer than its armhole by what its own seam takes of either end, and by what of its sides is more than
 * the single stitch that they are let in at: as an ease, in hundredths. 0 of any other.
 */
function topEase(armhole: PanelEdge, { gauge, seam, wide, top, pairs }: SleeveCounts): number {
  if (wide !== top) return 0;
  const [first] = armhole.steps;
  const step = first?.pair === 0 && first.as === 'group' ? -first.by : 0;
  const [width, height] = [100 / gauge.stitches, 100 / gauge.rows];
  // a single stitch that is bound off is a slant beside its row, and no level edge; its sleeve is let in by a whole pair all the same
  const slant = Math.hypot(width, height) - height;
  const letIn = step === 1 ? Math.max(0, 2 * pairs.cap * height - slant) : 0;
  const halfMm = knittedMm(armhole, armhole.at.length) + (step > 1 ? step * width : 0);
  return Math.round((10 * 100 * (seam * width + letIn)) / halfMm) / 10;
}

function shouldered(design: Design, recipe: Recipe): Recipe {
  const sloped = shoulderFacts(design.shoulder).turns ? withShortRows(recipe, design.turns) : recipe;
  return holdsShoulders(design) ? withHeldShoulders(sloped) : sloped;
}

/** Stitches of necks that are not shaped but bound off with the shoulders. */
const flatNecks = ({ neck }: PanelCounts, { back, front, open }: Panels) => ({
  back: back.neck ? 0 : neck,
  front: front.neck ? 0 : (open?.neckStitches ?? neck),
});

function bandEdgesOf(
  design: Design,
  counts: PanelCounts,
  panels: Panels,
  sleeve: SleeveDraft | undefined,
): BandEdges {
  return {
    counts,
    front: panels.front.neck,
    back: panels.back.neck,
    frontHalf: panels.open?.neckStitches ?? 0,
    sleeveTop: armholes[design.armhole].toNeck && sleeve ? sleeve.counts.top : 0,
    tip: armholes[design.armhole].toNeck && panels.front.neck ? RAGLAN_TIP : 0,
    // above the side seam
    armhole: panels.sides.edges.at(-1) as PanelEdge,
  };
}

/** Gives a recipe the gauges that were swatched of the fabrics it uses; what is guessed is guessed from them anew. */
function dresser(design: Design): (recipe: Recipe) => Recipe {
  const gauge = mainGauge(design);
  return (recipe) => {
    const used = new Set(recipe.parts.flatMap((part) => part.sections.map((section) => section.fabric)));
    const others = [...used].flatMap((fabric) => {
      const own = design.gauges[fabric];
      return own && fabric !== gauge.fabric ? [[fabric, own] as const] : [];
    });
    return { ...recipe, gauge, ...(others.length === 0 ? {} : { gauges: Object.fromEntries(others) }) };
  };
}

function assumedGauges(design: Design): Draft['assumed'] {
  const { open, sleeves } = garmentKinds[design.kind];
  const borders = [
    design.hem,
    design.neckband,
    ...(sleeves ? [design.cuff] : [design.armholeBand]),
    ...(open ? [design.frontBand] : []),
  ];
  const used = new Set([design.fabric, ...borders.filter((b) => b.heightMm > 0).map((b) => b.fabric)]);
  return [...used].flatMap((fabric) => {
    const { gauge, swatched } = designGauge(design, fabric);
    return swatched ? [] : [{ fabric, gauge }];
  });
}
