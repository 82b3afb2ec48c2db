import { type Fault, ok, type Result, refuse } from '../fault.ts';
import type { Garment } from '../piece/garment.ts';
import { gaugeOf } from '../piece/gauges.ts';
import { plan } from '../piece/plan.ts';
import type { Recipe } from '../piece/recipe.ts';
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
  | { readonly kind: 'block'; readonly piece: string; readonly makes: number; readonly widthMm: number; readonly heightMm: number }
  | { readonly kind: 'shoulders'; readonly back: string; readonly front: string; readonly stitches: Ease }
  | { readonly kind: 'pick up'; readonly band: string | undefined; readonly edges: readonly BandEdge[]; readonly total: number; readonly planned: number | undefined }
  | {
      readonly kind: 'set in sleeves';
      readonly sleeve: string;
      /** the sleeve's top edge against twice the armhole, mm */
      readonly topMm: number;
      readonly armholeMm: number;
      /** rows from the shoulder seam down to the underarm marker, on back and front */
      readonly markerRows: number;
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
  return { first, second, difference, oneMoreEvery: more === 0 ? 0 : Math.max(1, Math.floor(shorter / more)) };
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
  const of = (role: ReturnType<typeof roleOf>) => pieces.filter((p) => roleOf(p.recipe) === role);
  const [back] = of('back');
  const fronts = of('front');
  const [front] = fronts;
  const [sleeve] = of('sleeve');
  const [band] = of('neckband');
  return ok([
    ...pieces.filter((p) => p.recipe.parts[0] && !('pickUp' in p.recipe.parts[0].from)).map(blockStep),
    ...(back && front ? shoulderStep(back, front) : []),
    ...(back && front ? [bandStep(back, front, band)] : []),
    ...(sleeve && back ? [sleeveStep(sleeve, back)] : []),
    ...(back && front ? [sideStep(back, front)] : []),
    ...(sleeve ? [{ id: 'sleeve seams', kind: 'sleeve seams' as const, sleeve: sleeve.recipe.name, rows: sleeve.edges.rowsToArmhole }] : []),
    { id: 'ends', kind: 'ends' },
  ]);
}

const blockStep = ({ recipe, edges }: Piece): MakingUpStep => ({
  id: `block ${recipe.name}`,
  kind: 'block',
  piece: recipe.name,
  makes: recipe.makes,
  widthMm: edges.widthMm,
  heightMm: edges.heightMm,
});

function shoulderStep(back: Piece, front: Piece): MakingUpStep[] {
  const ours = front.edges.shoulders?.right;
  if (ours === undefined) return [];
  const theirs = back.edges.shoulders?.right ?? ours;
  return [
    { id: 'shoulders', kind: 'shoulders', back: back.recipe.name, front: front.recipe.name, stitches: easeOf(theirs, ours) },
  ];
}

/** Back neck: what the shoulders leave of the back's top edge. */
function backNeck(back: Piece, front: Piece): number {
  if (back.edges.shoulders) return back.edges.neckStitches;
  const shoulders = front.edges.shoulders;
  return Math.max(0, back.edges.top - (shoulders ? shoulders.right + shoulders.left : 0));
}

function bandStep(back: Piece, front: Piece, band: Piece | undefined): MakingUpStep {
  const fabric = front.recipe.parts[0]?.sections.at(-1)?.fabric ?? 'stocking';
  const ratio = pickUpRatio(fabric, gaugeOf(front.recipe, fabric));
  const edges: BandEdge[] = [];
  const { neckRows, neckStitches } = front.edges;
  if (neckRows > 0) {
    edges.push({ along: 'side of neck', times: 2, rows: neckRows, ratio, stitches: alongRows(neckRows, ratio) });
  }
  if (neckStitches > 0) edges.push({ along: 'front neck', times: 1, rows: undefined, ratio: undefined, stitches: neckStitches });
  const behind = backNeck(back, front);
  edges.push({ along: 'back neck', times: 1, rows: undefined, ratio: undefined, stitches: behind });
  const sum = edges.reduce((total, e) => total + e.stitches * e.times, 0);
  const start = band?.recipe.parts[0];
  const planned = start && 'pickUp' in start.from ? start.from.pickUp.reduce((total, p) => total + p.stitches, 0) : undefined;
  const total = toMultiple(sum, start?.sections[0]?.fabric ?? 'rib 2x2');
  return { id: 'pick up', kind: 'pick up', band: band?.recipe.name, edges, total, planned };
}

function sleeveStep(sleeve: Piece, back: Piece): MakingUpStep {
  const fabric = back.recipe.parts[0]?.sections.at(-1)?.fabric ?? 'stocking';
  const rowMm = 100 / gaugeOf(back.recipe, fabric).rows;
  const topMm = sleeve.edges.widthMm;
  const straight = back.edges.armholeAtMm === undefined;
  const markerRows = straight ? Math.round(topMm / 2 / rowMm) : back.edges.armholeRows;
  const armholeMm = 2 * markerRows * rowMm;
  return {
    id: 'set in sleeves',
    kind: 'set in sleeves',
    sleeve: sleeve.recipe.name,
    topMm,
    armholeMm,
    markerRows,
    quarters: [1, 2, 3].map((q) => Math.round((markerRows * q) / 4)),
    underarm: back.edges.underarm,
  };
}

const sideStep = (back: Piece, front: Piece): MakingUpStep => ({
  id: 'side seams',
  kind: 'side seams',
  back: back.recipe.name,
  front: front.recipe.name,
  rows: easeOf(back.edges.rowsToArmhole, front.edges.rowsToArmhole),
});
