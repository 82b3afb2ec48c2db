import { ok, type Result } from '../fault.ts';
import { asPlanned } from '../piece/as-planned.ts';
import type { Garment } from '../piece/garment.ts';
import type { PickUp, PieceRole, Recipe } from '../piece/recipe.ts';
import type { StandingGarment } from '../piece/standing.ts';
import { knittedPieces, type KnittedPiece as Piece } from './knitted-piece.ts';
import { alongRows, type PickUpRatio, pickUpRatio, toMultiple } from './pick-up.ts';

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
export type MakingUpStep = {
  readonly id: string;
  /** the makes it is for, where others of the piece came out differently */
  readonly nos?: readonly number[];
} & (
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

/**
 * The making up of a garment as its recipes have it; see `makingUpOf`.
 * @returns the planner's faults when a piece cannot be knitted
 * @instrument of tests: screens have the plans in force
 */
export function makingUp(garment: Garment): Result<readonly MakingUpStep[]> {
  const planned = asPlanned(garment);
  return planned.ok ? ok(makingUpOf(planned.value)) : planned;
}

/**
 * The making up of a garment as it stands: blocking, seams with how to ease them, the neckband's pick-up, where the
 * markers for the sleeves go. Makes that came out in different ways have steps of their own. Steps whose pieces the
 * garment does not have are left out.
 */
export function makingUpOf(garment: StandingGarment): readonly MakingUpStep[] {
  const groups = garment.pieces.map(knittedPieces);
  const pieces = groups.flat();
  const every = (...roles: PieceRole[]) =>
    groups.find(([first]) => first !== undefined && roles.includes(first.role)) ?? [];
  const [back] = every('back');
  const fronts = every('front', 'left front', 'right front');
  const sleeves = every('sleeve');
  const [front] = fronts;
  const bands = pieces.filter((p) => pickUpOf(p.recipe) !== undefined);
  return [
    ...pieces.filter((p) => !bands.includes(p)).map(blockStep),
    ...(back ? fronts.flatMap((one) => shoulderStep(back, one)) : []),
    ...bands.map((band) => bandStep(band, front ?? back ?? band)),
    ...(back && front && bands.length === 0 ? [neckStep(back, front)] : []),
    ...(back ? sleeves.map((sleeve) => sleeveStep(sleeve, back, front ?? back)) : []),
    ...(back ? fronts.map((one) => sideStep(back, one)) : []),
    ...sleeves.map(sleeveSeam),
    { id: 'ends', kind: 'ends' },
  ];
}

/** Which makes a step is for, where others of the piece came out differently. */
const nosOf = ({ nos }: Piece) => (nos === undefined ? {} : { nos });

const pickUpOf = (recipe: Recipe): readonly PickUp[] | undefined => {
  const from = recipe.parts[0]?.from;
  return from && 'pickUp' in from ? from.pickUp : undefined;
};

const blockStep = (piece: Piece): MakingUpStep => ({
  id: `block ${piece.recipe.name}${piece.mark}`,
  kind: 'block',
  piece: piece.recipe.name,
  makes: piece.makes,
  ...nosOf(piece),
  widthMm: piece.edges.widthMm,
  heightMm: piece.edges.heightMm,
});

function shoulderStep(back: Piece, front: Piece): MakingUpStep[] {
  const ours = front.edges.shoulder;
  if (ours === undefined) return [];
  const stitches = easeOf(back.edges.shoulder ?? ours, ours);
  return [
    {
      id: `shoulders${front.mark}`,
      kind: 'shoulders',
      back: back.recipe.name,
      front: front.recipe.name,
      ...nosOf(front),
      stitches,
    },
  ];
}

const ratioAlong = ({ top }: Piece): PickUpRatio => pickUpRatio(top.fabric, top.gauge);

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
  const rowMm = 100 / back.top.gauge.rows;
  const capped = sleeve.edges.hasArmhole && back.edges.hasArmhole;
  const topMm = capped ? sleeve.edges.capEdgeMm : sleeve.edges.widthMm;
  const markerRows = back.edges.hasArmhole ? back.edges.armholeRows : Math.round(topMm / 2 / rowMm);
  const armholeMm = capped ? back.edges.armholeEdgeMm + front.edges.armholeEdgeMm : 2 * markerRows * rowMm;
  const underarmMm = back.edges.hasArmhole
    ? back.edges.armholeAtMm
    : back.edges.heightMm - markerRows * rowMm;
  return {
    id: `set in sleeves${sleeve.mark}`,
    kind: 'set in sleeves',
    sleeve: sleeve.recipe.name,
    ...nosOf(sleeve),
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

const sleeveSeam = (sleeve: Piece): MakingUpStep => ({
  id: `sleeve seams${sleeve.mark}`,
  kind: 'sleeve seams',
  sleeve: sleeve.recipe.name,
  ...nosOf(sleeve),
  rows: sleeve.edges.rowsToArmhole,
});

const sideStep = (back: Piece, front: Piece): MakingUpStep => ({
  id: `side seams${front.mark}`,
  kind: 'side seams',
  back: back.recipe.name,
  front: front.recipe.name,
  ...nosOf(front),
  rows: easeOf(back.edges.rowsToArmhole, front.edges.rowsToArmhole),
});
