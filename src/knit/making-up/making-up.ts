import { type Fault, ok, type Result, refuse } from '../fault.ts';
import type { Garment } from '../piece/garment.ts';
import { gaugeOf } from '../piece/gauges.ts';
import { plan } from '../piece/plan.ts';
import type { PickUp, PieceRole, Recipe } from '../piece/recipe.ts';
import { edgesOf, type PieceEdges } from './edges.ts';
import { alongRows, type PickUpRatio, pickUpRatio, toMultiple } from './pick-up.ts';
import { roleOf } from './role.ts';

/** How two edges of different length are sewn together: so many rows or stitches of the longer to the other's. */
export interface Ease {
  readonly first: number;
  readonly second: number;
  /** first − second; 0 when they match one to one */
  readonly difference: number;
  /** take one more of the longer edge after every so many; 0 when they match */
  readonly oneMoreEvery: number;
}

/** One step of the making up, in its order. `id` is what a tick is kept under. */
export type MakingUpStep = { readonly id: string } & (
  | {
      readonly kind: 'block';
      readonly piece: string;
      readonly makes: number;
      readonly widthMm: number;
      readonly heightMm: number;
    }
  | { readonly kind: 'shoulders'; readonly back: string; readonly front: string; readonly stitches: Ease }
  /** a band as it is planned: so many along each edge; `ratio` along rows */
  | {
      readonly kind: 'pick up';
      readonly band: string;
      readonly edges: readonly PickUp[];
      readonly ratio: PickUpRatio;
      readonly total: number;
    }
  /** a neck for which no band is planned yet: what its edges have to give */
  | { readonly kind: 'neck edge'; readonly edges: readonly BandEdge[]; readonly total: number }
  | {
      readonly kind: 'set in sleeves';
      readonly sleeve: string;
      /** the sleeve's top or cap edge, and the armhole of back and front that it is sewn to, mm */
      readonly topMm: number;
      readonly armholeMm: number;
      /** rows from the shoulder seam down to the underarm marker, on back and front */
      readonly markerRows: number;
      readonly markerMm: number;
      /** the piece that the markers are put on, and where: underarm and quarter points, mm above its cast-on */
      readonly on: string;
      readonly marksMm: readonly number[];
      /** quarter points of the armhole from the underarm, rows */
      readonly quarters: readonly number[];
      readonly underarm: number;
    }
  | { readonly kind: 'side seams'; readonly back: string; readonly front: string; readonly rows: Ease }
  | { readonly kind: 'sleeve seams'; readonly sleeve: string; readonly rows: number }
  | { readonly kind: 'ends' }
);

export interface BandEdge {
  readonly along: 'side of neck' | 'front neck' | 'back neck';
  readonly times: number;
  /** rows or stitches of the edge */
  readonly rows: number | undefined;
  readonly ratio: PickUpRatio | undefined;
  readonly stitches: number;
}

/** How many more of one edge go to the other, evenly. */
export function easeOf(first: number, second: number): Ease {
  const difference = first - second;
  const shorter = Math.min(first, second);
  const more = Math.abs(difference);
  return {
    first,
    second,
    difference,
    oneMoreEvery: more === 0 ? 0 : Math.max(1, Math.floor(shorter / more)),
  };
}

interface Piece {
  readonly recipe: Recipe;
  readonly edges: PieceEdges;
}

/**
 * The making up of a garment, from its plans: blocking, seams with how to ease them, the neckband's pick-up, where
 * the markers for the sleeves go. Steps whose pieces the garment does not have are left out.
 * @returns the planner's faults when a piece cannot be knitted
 */
export function makingUp(garment: Garment): Result<readonly MakingUpStep[]> {
  const pieces: Piece[] = [];
  const faults: Fault[] = [];
  for (const recipe of garment.pieces) {
    const made = plan(recipe);
    if (made.ok) pieces.push({ recipe, edges: edgesOf(made.value) });
    else faults.push(...made.faults);
  }
  if (faults.length > 0) return refuse(...faults);
  const first = (role: PieceRole) => pieces.find((p) => roleOf(p.recipe) === role);
  const back = first('back');
  const front = first('front');
  const sleeve = first('sleeve');
  const bands = pieces.filter((p) => pickUpOf(p.recipe) !== undefined);
  return ok([
    ...pieces.filter((p) => !bands.includes(p)).map(blockStep),
    ...(back && front ? shoulderStep(back, front) : []),
    ...bands.map((band) => bandStep(band, front ?? back ?? band)),
    ...(back && front && bands.length === 0 ? [neckStep(back, front)] : []),
    ...(sleeve && back ? [sleeveStep(sleeve, back, front ?? back)] : []),
    ...(back && front ? [sideStep(back, front)] : []),
    ...(sleeve ? [sleeveSeam(sleeve)] : []),
    { id: 'ends', kind: 'ends' },
  ]);
}

const pickUpOf = (recipe: Recipe): readonly PickUp[] | undefined => {
  const from = recipe.parts[0]?.from;
  return from && 'pickUp' in from ? from.pickUp : undefined;
};

const blockStep = ({ recipe, edges }: Piece): MakingUpStep => ({
  id: `block ${recipe.name}`,
  kind: 'block',
  piece: recipe.name,
  makes: recipe.makes,
  widthMm: edges.widthMm,
  heightMm: edges.heightMm,
});

function shoulderStep(back: Piece, front: Piece): MakingUpStep[] {
  const ours = front.edges.shoulder;
  if (ours === undefined) return [];
  const stitches = easeOf(back.edges.shoulder ?? ours, ours);
  return [{ id: 'shoulders', kind: 'shoulders', back: back.recipe.name, front: front.recipe.name, stitches }];
}

/** The fabric that an edge is picked up along: that of the piece's top. */
const topFabric = ({ recipe }: Piece) => recipe.parts[0]?.sections.at(-1)?.fabric ?? 'stocking';

const ratioAlong = (piece: Piece): PickUpRatio =>
  pickUpRatio(topFabric(piece), gaugeOf(piece.recipe, topFabric(piece)));

function bandStep({ recipe }: Piece, along: Piece): MakingUpStep {
  const edges = pickUpOf(recipe) ?? [];
  const total = edges.reduce((sum, p) => sum + p.stitches, 0);
  return {
    id: `pick up ${recipe.name}`,
    kind: 'pick up',
    band: recipe.name,
    edges,
    ratio: ratioAlong(along),
    total,
  };
}

/** Back neck: what the shoulders leave of the back's top edge. */
function backNeck(back: Piece, front: Piece): number {
  if (back.edges.shoulder !== undefined) return back.edges.neckStitches;
  return Math.max(0, back.edges.topStitches - 2 * (front.edges.shoulder ?? 0));
}

function neckStep(back: Piece, front: Piece): MakingUpStep {
  const ratio = ratioAlong(front);
  const edges: BandEdge[] = [];
  const { neckRows, neckStitches } = front.edges;
  if (neckRows > 0) {
    edges.push({
      along: 'side of neck',
      times: 2,
      rows: neckRows,
      ratio,
      stitches: alongRows(neckRows, ratio),
    });
  }
  if (neckStitches > 0)
    edges.push({ along: 'front neck', times: 1, rows: undefined, ratio: undefined, stitches: neckStitches });
  edges.push({
    along: 'back neck',
    times: 1,
    rows: undefined,
    ratio: undefined,
    stitches: backNeck(back, front),
  });
  const sum = edges.reduce((total, e) => total + e.stitches * e.times, 0);
  return { id: 'neck edge', kind: 'neck edge', edges, total: toMultiple(sum, 'rib 2x2') };
}

function sleeveStep(sleeve: Piece, back: Piece, front: Piece): MakingUpStep {
  const rowMm = 100 / gaugeOf(back.recipe, topFabric(back)).rows;
  const capped = sleeve.edges.hasArmhole && back.edges.hasArmhole;
  const topMm = capped ? sleeve.edges.capEdgeMm : sleeve.edges.widthMm;
  const markerRows = back.edges.hasArmhole ? back.edges.armholeRows : Math.round(topMm / 2 / rowMm);
  const armholeMm = capped ? back.edges.armholeEdgeMm + front.edges.armholeEdgeMm : 2 * markerRows * rowMm;
  const underarmMm = back.edges.hasArmhole
    ? back.edges.armholeAtMm
    : back.edges.heightMm - markerRows * rowMm;
  return {
    id: 'set in sleeves',
    kind: 'set in sleeves',
    sleeve: sleeve.recipe.name,
    topMm,
    armholeMm,
    markerRows,
    markerMm: markerRows * rowMm,
    on: back.recipe.name,
    marksMm: [0, 0.25, 0.5, 0.75].map((share) => underarmMm + share * markerRows * rowMm),
    quarters: [1, 2, 3].map((q) => Math.round((markerRows * q) / 4)),
    underarm: back.edges.underarm,
  };
}

const sleeveSeam = ({ recipe, edges }: Piece): MakingUpStep => ({
  id: 'sleeve seams',
  kind: 'sleeve seams',
  sleeve: recipe.name,
  rows: edges.rowsToArmhole,
});

const sideStep = (back: Piece, front: Piece): MakingUpStep => ({
  id: 'side seams',
  kind: 'side seams',
  back: back.recipe.name,
  front: front.recipe.name,
  rows: easeOf(back.edges.rowsToArmhole, front.edges.rowsToArmhole),
});
