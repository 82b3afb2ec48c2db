import type { PieceRole } from '../piece/recipe.ts';
import type { StandingGarment, StandingMake, StandingPiece } from '../piece/standing.ts';
import type { EdgeName, SewnBand } from './band-joints.ts';
import { type FoundOpenings, openingsOf } from './found-openings.ts';
import { type AboutPanel, FoundPanel } from './found-panel.ts';
import { FoundSleeve } from './found-sleeve.ts';
import type { Joint } from './joint.ts';
import { outerEdge } from './outer-edge.ts';
import type { Worn } from './piece-edges.ts';
import { roleOf } from './role.ts';
import type { Parted, Sewn } from './sewn.ts';
import { stated } from './statement.ts';
import { nothingTold, type Told } from './told.ts';
import { rowsKnitted } from './top.ts';
import { workJoints } from './work-making-up.ts';

/**
 * The making up of a garment that states none: what a text tells of it, what its pieces are in it, and the shapes of
 * their plans, tell which edge is joined to which. What they do not tell is left to be noticed.
 */
export function proposed(
  { pieces }: Pick<StandingGarment, 'pieces'>,
  told: Told = nothingTold,
): readonly Joint[] {
  const of = (...roles: readonly PieceRole[]) =>
    pieces.find(({ recipe, makes }) => roles.includes(roleOf(recipe)) && makes.length > 0);
  const [back, sleeve] = [of('back'), of('sleeve')];
  const fronts = frontsOf(of('left front'), of('right front'), of('front'), told.leftFirst);
  const bands = pieces.flatMap((piece) => bandOf(piece, told));
  const first = sleeve?.makes[0];
  const seen =
    first && new FoundSleeve(sleeve.recipe.name, first.make, first.parts, 0, undefined, told.topDown);
  const common = {
    isCapped: seen?.isCapped ?? false,
    hasSleeve: sleeve !== undefined,
    depthMm: seen ? (seen.isCapped ? undefined : seen.topMm() / 2) : alongArmhole(bands, fronts?.left.make),
    isRaglan: false,
  };
  const panel = (one: Half, more: Partial<AboutPanel> = {}) =>
    new FoundPanel({
      ...common,
      ...more,
      piece: one.piece,
      make: one.make.make,
      parts: one.make.parts,
      isHalf: one.isHalf,
    });
  const own = back?.makes[0] && { piece: back.recipe.name, make: back.makes[0], isHalf: false };
  const isRaglan =
    told.seams.has('raglan') ||
    (!told.seams.has('armhole') && own !== undefined && common.isCapped && panel(own).looksRaglan('right'));
  const shoulder =
    (fronts && panel(fronts.left).shoulderStitches('right')) ?? (own && panel(own).shoulderStitches('right'));
  const known = (of: 'back' | 'front'): Partial<AboutPanel> => ({
    isRaglan,
    shoulder: told.shoulder?.[of] ?? shoulder,
    isShoulderTold: told.shoulder !== undefined,
    sideRows: told.side?.[of],
  });
  const seenMm = own && seen && !seen.isCapped ? panel(own).indentMm('right') : 0;
  const indentMm = told.indentRows === 0 ? 0 : seenMm;
  const sleeveOf = (make: StandingMake | undefined) =>
    sleeve &&
    make &&
    new FoundSleeve(sleeve.recipe.name, make.make, make.parts, indentMm, told.sleeveRows, told.topDown);
  const [left, right] = [sleeveOf(first), sleeveOf(sleeve?.makes[1] ?? first)];
  const isOpen = fronts?.left.isHalf ?? false;
  const recipes = pieces.map(({ recipe }) => recipe);
  const { partsBack, ...found } = openingsOf(bands, recipes, isOpen);
  const opens = { ...found, ...onTopOf(bands, told, found) };
  const hasPlacket = opens.placket !== undefined;
  const opensBehind = partsBack || told.opening?.of === 'back';
  const behind = own && panel(own, known('back'));
  const sewn: Sewn = {
    back: behind,
    fronts: fronts && {
      left: panel(fronts.left, { ...known('front'), hasPlacket }),
      right: panel(fronts.right, { ...known('front'), hasPlacket }),
    },
    sleeves: left && right && { left, right },
    bands,
    ...opens,
    ...(opensBehind && behind ? { opening: behind.opened() } : {}),
    isRaglan,
    ...raglanOpening(told, own, sleeve, left?.isTopDown ?? false),
    isIndented: (told.indentRows ?? indentMm) > 0,
    isOpen,
    isFlatFront: fronts !== undefined && !isOpen && panel(fronts.left, known('front')).isFlat(),
    shoulders: told.shoulderWay ?? 'mattress',
    capEase: left?.seamEase() ?? 0,
  };
  return withEase(stated(sewn), told, { pieces });
}

/** A text that says which band of a placket lies on top knows better than its holes, of which a small one has none. */
function onTopOf(
  bands: readonly SewnBand[],
  { onTop }: Told,
  { placket }: Pick<FoundOpenings, 'placket'>,
): Pick<FoundOpenings, 'placket'> {
  const band = bands.find(({ piece }) => piece.toLowerCase() === onTop);
  if (placket === undefined || !band) return {};
  return { placket: band.along.some(({ edge }) => edge === 'left front edge') ? 'left' : 'right' };
}

/** A text that measures a sleeve's edge beside its armhole means them to be sewn together, eased as much as they differ. */
function withEase(
  joints: readonly Joint[],
  { top }: Told,
  garment: Pick<StandingGarment, 'pieces'>,
): readonly Joint[] {
  if (!top) return joints;
  return workJoints(joints, garment).worked.map(({ joint, lines: [a, b] }) => {
    if (joint.kind !== 'seam' || joint.of !== 'armhole' || !a || !b || b.mm === 0) return joint;
    const ease = Math.round(1000 * (a.mm / b.mm - 1)) / 10;
    return ease === 0 ? joint : { ...joint, ease };
  });
}

/** Of a raglan whose left back line is closed with a button above: as many rows of its sleeve as of the back. */
function raglanOpening(
  { opening }: Told,
  back: { readonly make: StandingMake } | undefined,
  sleeve: StandingPiece | undefined,
  isTopDown: boolean,
): Pick<Sewn, 'raglanOpening'> {
  const first = sleeve?.makes[0];
  if (opening?.of !== 'raglan' || !back || !first) return {};
  return {
    raglanOpening: {
      back: rowsAtTop(back.make, opening.rows, false),
      sleeve: rowsAtTop(first, opening.rows, isTopDown),
    },
  };
}

/** Rows of a make's one part that are sewn, and the topmost ones that are not. */
function rowsAtTop({ parts: [part] }: StandingMake, open: number, isTopDown: boolean): Parted {
  const all = part ? rowsKnitted(part) : 0;
  return isTopDown
    ? { sewn: { first: open + 1, last: all }, open: { first: 1, last: open } }
    : { sewn: { first: 1, last: all - open }, open: { first: all - open + 1, last: all } };
}

/** How long a front's side of an armhole is that a band is picked up along, a stitch for each that it has room for, mm. */
function alongArmhole(bands: readonly SewnBand[], front: StandingMake | undefined): number | undefined {
  const edges = bands.flatMap(({ along }) => along);
  const found = edges.find(({ edge }) => edge === 'left front armhole');
  const width = front?.parts[0]?.cells.at(-1)?.width;
  return found && width !== undefined ? found.stitches * width : undefined;
}

/** A front, or half of one. */
interface Half {
  readonly piece: string;
  readonly make: StandingMake;
  readonly isHalf: boolean;
}

/** Fronts as worn: two pieces, two makes of one, or one whole front. */
function frontsOf(
  left: StandingPiece | undefined,
  right: StandingPiece | undefined,
  front: StandingPiece | undefined,
  isLeftFirst: boolean | undefined,
): Readonly<Record<Worn, Half>> | undefined {
  const [ofLeft, ofRight] = [ownHalf(left), ownHalf(right)];
  if (ofLeft && ofRight) return { left: ofLeft, right: ofRight };
  const [one, two] = front?.makes ?? [];
  if (!front || !one) return undefined;
  const piece = front.recipe.name;
  if (!two) return { left: { piece, make: one, isHalf: false }, right: { piece, make: one, isHalf: false } };
  const [a, b] = [
    { piece, make: one, isHalf: true },
    { piece, make: two, isHalf: true },
  ];
  // the left front as worn has its side at the right edge
  return (isLeftFirst ?? outerEdge(piece, one) === 'right') ? { left: a, right: b } : { left: b, right: a };
}

const ownHalf = (found: StandingPiece | undefined): Half | undefined =>
  found?.makes[0] && { piece: found.recipe.name, make: found.makes[0], isHalf: true };

/** Words for edges, English and German, as patterns and the editor have them. */
const words: readonly (readonly [RegExp, string])[] = [
  [/left|link/i, 'left'],
  [/right|recht/i, 'right'],
  [/back|rück|hinter/i, 'back'],
  [/front|vorder|vorn/i, 'front'],
  [/sleeve|ärmel/i, 'sleeve'],
  [/shoulder|schulter/i, 'shoulder'],
  [/armhole|armloch|armausschnitt/i, 'armhole'],
  [/neck|hals|ausschnitt/i, 'neck'],
  [/middle|centre|center|point|mitte|spitze/i, 'middle'],
  [/edge|kante/i, 'edge'],
];

/** What a band is picked up along, from the words of whoever wrote it down. */
function edgeCalled(along: string): EdgeName | undefined {
  const said = new Set(words.filter(([word]) => word.test(along)).map(([, name]) => name));
  const side = said.has('left') ? 'left' : said.has('right') ? 'right' : undefined;
  if (said.has('middle')) return said.has('back') ? 'middle of the back neck' : 'middle of the front neck';
  if (said.has('armhole')) return said.has('back') ? 'left back armhole' : 'left front armhole';
  if (said.has('sleeve')) return side && `${side} sleeve top`;
  if (said.has('shoulder')) return side && `${side} ${said.has('back') ? 'back' : 'front'} shoulder`;
  if (said.has('back') && said.has('neck')) return side ? `${side} back neck` : 'back neck';
  if (side && said.has('neck')) return `${side} front neck`;
  if (side && said.has('edge')) return `${side} front edge`;
  return said.has('front') && said.has('neck') ? 'front neck' : undefined;
}

function bandOf({ recipe, makes }: StandingPiece, { shares }: Told): SewnBand[] {
  const [part] = recipe.parts;
  if (!part || !('pickUp' in part.from)) return [];
  const percent = shares?.get(recipe.name.toLowerCase());
  const share = percent === undefined ? {} : { percent };
  const along = part.from.pickUp.map(({ along: said, stitches }) => ({
    edge: edgeCalled(said),
    stitches,
    ...share,
  }));
  return [{ piece: recipe.name, part: part.name, role: roleOf(recipe), makes: makes.length, along }];
}
