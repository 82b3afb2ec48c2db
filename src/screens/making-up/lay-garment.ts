import { roleOf } from '../../knit/making-up/role.ts';
import type { WorkedJoint } from '../../knit/making-up/work-making-up.ts';
import type { PlannedPart } from '../../knit/piece/planned.ts';
import type { StandingGarment } from '../../knit/piece/standing.ts';
import { wornSide } from '../../knit/piece/worn-side.ts';
import { type PieceShape, shapeOfPiece } from '../../ui/panel-map/outline-of.ts';
import type { Point } from '../../ui/panel-map/paths.ts';

/** A make as it lies on the table among the others, right side up; mm, y down. */
export interface LaidPiece {
  readonly name: string;
  readonly make: number;
  readonly parts: readonly PlannedPart[];
  readonly shape: PieceShape;
  /** degrees that it is turned by, about its own middle */
  readonly turn: 0 | 90 | 180 | 270;
  /** its middle on the table */
  readonly at: Point;
}

/** mm between edges that are not joined yet */
const APART = 70;

type Loose = Omit<LaidPiece, 'turn' | 'at'> & { readonly role: string; readonly worn: string | undefined };

/**
 * The pieces as they come together: the back above the front, shoulder to shoulder, a sleeve at each side with its top to
 * the body, all else below. What is joined lies edge to edge, what is not lies apart.
 */
export function laidGarment(
  { pieces }: Pick<StandingGarment, 'pieces'>,
  worked: readonly WorkedJoint[],
  sewn: readonly WorkedJoint[],
): readonly LaidPiece[] {
  const loose = pieces.flatMap(({ recipe, makes }) =>
    makes.map(
      ({ make, parts }): Loose => ({
        name: recipe.name,
        make,
        parts,
        shape: shapeOfPiece(parts),
        role: roleOf(recipe),
        worn: wornSide(recipe, make),
      }),
    ),
  );
  const of = (...roles: readonly string[]) => loose.filter(({ role }) => roles.includes(role));
  const [back] = of('back');
  const fronts = of('front', 'left front', 'right front');
  if (!back || fronts.length === 0) return inRows(loose, [0, 0], usualWidth(loose));
  const isRaglan = worked.some(({ joint }) => isSeam(joint, 'raglan'));
  const sleeves = of('sleeve');
  const joined = (one: Loose) => (isJoined(one, sewn) ? 0 : APART);
  const top = isRaglan ? widthAt(sleeves[0] ?? back, 0.98) : 0;
  const between =
    (top + (sewn.some(({ joint }) => isSeam(joint, isRaglan ? 'raglan' : 'shoulder')) ? 0 : APART)) / 2;
  const half = widthAt(back, isRaglan ? 0.98 : 0.8) / 2;
  const placed: LaidPiece[] = [
    { ...back, turn: 180, at: [0, -between - back.shape.box.height / 2] },
    ...fronts.map((one) => frontAt(one, fronts, between)),
    ...sleeves.map((one, i): LaidPiece => {
      const side = i % 2 === 0 ? 1 : -1;
      const far = half + joined(one) + one.shape.box.height / 2;
      const isUp = !beginsAtTop(one, worked);
      return { ...one, turn: (side === 1) === isUp ? 270 : 90, at: [side * far, 0] };
    }),
  ];
  const foot = Math.max(...placed.map((one) => boundsOf(one).bottom));
  const wide = Math.max(...placed.map((one) => boundsOf(one).right));
  const rest = loose.filter(
    (one) => !placed.some(({ name, make }) => name === one.name && make === one.make),
  );
  return [...placed, ...inRows(rest, [-wide, foot + APART / 2], 2 * wide)];
}

/** Half a front lies on its own side: the wearer's left is at the right, since the front faces up. */
function frontAt(one: Loose, fronts: readonly Loose[], between: number): LaidPiece {
  const { width, height } = one.shape.box;
  const isLeft = one.worn === 'left' || one.role === 'left front';
  const x = fronts.length === 1 ? 0 : ((isLeft ? 1 : -1) * (width + APART / 4)) / 2;
  return { ...one, turn: 0, at: [x, between + height / 2] };
}

/** Line by line, each as high as its highest piece. */
function inRows(pieces: readonly Loose[], [left, top]: Point, width: number): LaidPiece[] {
  let [x, y, high] = [left, top, 0];
  return pieces.map((one): LaidPiece => {
    const { box } = one.shape;
    if (x > left && x + box.width > left + width) [x, y, high] = [left, y + high + APART / 2, 0];
    const at: Point = [x + box.width / 2, y + box.height / 2];
    x += box.width + APART / 2;
    high = Math.max(high, box.height);
    return { ...one, turn: 0, at };
  });
}

const usualWidth = (pieces: readonly Loose[]): number =>
  2.2 * Math.max(1, ...pieces.map(({ shape }) => shape.box.width));

const isSeam = (joint: WorkedJoint['joint'], of: string): boolean => joint.kind === 'seam' && joint.of === of;

const isJoined = ({ name, make }: Pick<Loose, 'name' | 'make'>, sewn: readonly WorkedJoint[]): boolean =>
  sewn.some(
    ({ joint, lines }) =>
      joint.kind === 'seam' &&
      joint.of !== 'sleeve' &&
      lines.some(({ laid }) => laid.some(({ stretch }) => stretch.piece === name && stretch.make === make)),
  );

/** A sleeve that is knitted from its top down ends at the cuff. */
const beginsAtTop = ({ name }: Loose, worked: readonly WorkedJoint[]): boolean =>
  worked.some(
    ({ joint }) =>
      joint.kind === 'left free' &&
      joint.as === 'cuff' &&
      joint.line.some(({ piece, edge }) => piece === name && edge === 'top'),
  );

/** mm across it at a share of its height */
function widthAt({ shape }: Loose, share: number): number {
  const y = shape.box.y + (1 - share) * shape.box.height;
  const rows = shape.parts.flatMap((part) => part.rows.filter(({ bottom, top }) => top <= y && y <= bottom));
  if (rows.length === 0) return shape.box.width;
  return Math.max(...rows.map((row) => row.right0)) - Math.min(...rows.map((row) => row.left0));
}

/** A point of the make's own drawing, on the table. */
export function onTable({ shape: { box }, turn, at }: LaidPiece, [x, y]: Point): Point {
  const [dx, dy] = [x - box.x - box.width / 2, y - box.y - box.height / 2];
  const [c, s] = ({ 0: [1, 0], 90: [0, 1], 180: [-1, 0], 270: [0, -1] } as const)[turn];
  return [at[0] + dx * c - dy * s, at[1] + dx * s + dy * c];
}

/** mm on the table */
export function boundsOf({ shape: { box }, turn, at: [x, y] }: LaidPiece) {
  const [w, h] = turn % 180 === 0 ? [box.width, box.height] : [box.height, box.width];
  return { left: x - w / 2, right: x + w / 2, top: y - h / 2, bottom: y + h / 2 };
}
