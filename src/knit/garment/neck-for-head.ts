import { factsOf } from '../fabric-facts.ts';
import { lengthOf } from '../shape/curve.ts';
import { neckCurve } from './curves.ts';
import { type Design, USUAL_OPENING_MM } from './design.ts';
import { armholes } from './kinds/armholes.ts';
import { garmentKinds } from './kinds/garments.ts';
import { BACK_NECK, type NeckEdge, type NeckShape, necks } from './kinds/necks.ts';

/** Whole stitches and rows take so much of a neck at the most; common practice, no published source. */
const SPARE = 1.04;
/** The widest neck that leaves a shoulder: the share of a boat neck. */
const MOST_OF_CROSS_BACK = 0.62;
/** Body chests, mm: under two years of age, and children at all (Craft Yarn Council's tables, from memory). */
const BABY_CHEST_MM = 510;
const CHILD_CHEST_MM = 700;
/** A child's neck is this share of the armhole deep; common practice, no published source. */
const CHILD_NECK_OF_ARMHOLE = 0.5;

/**
 * The design with a neck that its head passes: of a baby's a button behind (halves knitted apart above a point of the
 * back, closed with a button at the neck: forum.knittinghelp.com, 'Back opening in sweater'; another way is to leave a
 * shoulder open, S. Jalowiec, 'Neckbands for kids' sweaters', 2013: a head of 15 in, a neck of 4½), else as wide as the
 * head asks, and a button where the shoulders leave no room for that.
 */
export function withHeadThrough(design: Design): Design {
  const { kind, body, neck, armhole } = design;
  if (garmentKinds[kind].open) return design;
  const isSmall = body.chest < CHILD_CHEST_MM && isPlain(neck.shape);
  const depthMm = isSmall
    ? Math.max(neck.depthMm, Math.round(CHILD_NECK_OF_ARMHOLE * body.armholeDepth))
    : neck.depthMm;
  const deep: Design = { ...design, neck: { ...neck, depthMm } };
  const short = body.head * SPARE - opensMm(deep, neck.widthMm);
  if (short <= 0) return deep;
  const canOpen = !armholes[armhole].toNeck && neck.backDepthMm > 0;
  if (canOpen && !isWide(neck.shape) && body.chest < BABY_CHEST_MM) return opened(deep, short);
  const most = Math.max(neck.widthMm, Math.floor(MOST_OF_CROSS_BACK * body.crossBack));
  const width = widthFor(deep, most);
  const wide: Design = { ...deep, neck: { ...deep.neck, widthMm: width ?? most } };
  return width === undefined && canOpen ? opened(wide, body.head * SPARE - opensMm(wide, most)) : wide;
}

const opened = (design: Design, shortMm: number): Design => ({
  ...design,
  neck: {
    ...design.neck,
    opening: 'back',
    openingMm: Math.max(USUAL_OPENING_MM, Math.ceil(shortMm / 2)),
  },
});

/** Round: neither a point nor corners, and deeper in front than behind. */
const isPlain = (shape: NeckShape): boolean => necks[shape].mitre === 'none' && !isWide(shape);
/** As deep behind as in front: it is as wide as the shoulders leave it. */
const isWide = (shape: NeckShape): boolean => necks[shape].ofArmhole <= necks[shape].backOfArmhole;

/** The narrowest neck, in whole millimetres, that opens as wide as the head; undefined where none up to `most` does. */
function widthFor(design: Design, most: number): number | undefined {
  for (let mm = design.neck.widthMm; mm <= most; mm += 1)
    if (opensMm(design, mm) >= design.body.head * SPARE) return mm;
  return undefined;
}

function opensMm({ neck, armhole, neckband, fabric }: Design, widthMm: number): number {
  const half = (edge: NeckEdge, depth: number): number =>
    depth > 0 ? lengthOf(neckCurve(edge, 0, widthMm / 2, depth)) : widthMm / 2;
  const behind = half(BACK_NECK, armholes[armhole].toNeck ? 0 : neck.backDepthMm);
  const { stretch } = factsOf(neckband.heightMm > 0 ? neckband.fabric : fabric);
  return 2 * (half(necks[neck.shape], neck.depthMm) + behind) * stretch;
}
