import type { PlannedPart } from '../piece/planned.ts';
import type { StandingGarment } from '../piece/standing.ts';
import { sideBits } from './boundary.ts';
import type { LaidLine } from './boundary-of.ts';
import type { Joint, SeamKind } from './joint.ts';
import { roleOf } from './role.ts';
import { sewnMm } from './seam-stitch.ts';
import { rowsKnitted } from './top.ts';
import type { WorkedJoint } from './work-making-up.ts';

/** What a garment measures when it is made up, mm, seams deducted; undefined where its joints do not tell. */
export interface Finished {
  /** round the body at the underarm, front bands closed */
  readonly chest: number | undefined;
  /** from the top of the back to its lower edge */
  readonly length: number | undefined;
  /** from the middle of the back neck over the shoulder to the end of the sleeve */
  readonly napeToCuff: number | undefined;
  readonly upperArm: number | undefined;
  readonly wrist: number | undefined;
  /** round the neck, before its band and at the band's edge */
  readonly neck: number | undefined;
  readonly neckWithBand: number | undefined;
  /** round each armhole, along the edge of the body */
  readonly armhole: number | undefined;
}

export function finished(worked: readonly WorkedJoint[], garment: Pick<StandingGarment, 'pieces'>): Finished {
  return {
    chest: chestOf(worked),
    length: heightOfRole(garment, 'back'),
    napeToCuff: napeToCuff(worked, garment),
    upperArm: sleeveWidth(worked),
    wrist: wristOf(worked),
    neck: neckOf(worked, garment),
    neckWithBand: neckWithBand(worked, garment),
    armhole: armholeOf(worked),
  };
}

const seams = (worked: readonly WorkedJoint[], ...kinds: readonly SeamKind[]) =>
  worked.flatMap(({ joint, lines }) =>
    joint.kind === 'seam' && kinds.includes(joint.of) ? [{ joint, lines }] : [],
  );

/** Stitches of a part beside the end of a line along its side, and how wide one of them is. */
function rowAt({ laid }: LaidLine): { part: PlannedPart; stitches: number; width: number } | undefined {
  const last = laid.filter(({ bits }) => bits.length > 0).at(-1);
  if (!last) return undefined;
  const isDown = last.stretch.reversed === true;
  const bit = isDown ? last.bits[0] : last.bits.at(-1);
  const { rows } = last.part;
  const next = rows[bit?.row ?? 0];
  const first = rows[(bit?.row ?? 0) - 1];
  // from the top down an underarm is made in two rows: what is cast on at the left edge is so in the second
  const row = isDown && next && next.after > (first?.after ?? 0) ? next : first;
  const width = last.part.cells[row?.section ?? 0]?.width ?? 0;
  return { part: last.part, stitches: row?.after ?? 0, width };
}

/** Every panel once, at the top of its side seams. */
function chestOf(worked: readonly WorkedJoint[]): number | undefined {
  const sides = seams(worked, 'side').flatMap(({ lines }) => lines);
  const panels = new Map<string, number>();
  for (const line of sides) {
    const at = rowAt(line);
    const first = line.laid[0]?.stretch;
    if (!at || !first) return undefined;
    // a panel that is parted below the underarm has half of its width beside each side
    const half = halfBeside(line);
    const isHalf = half !== undefined || isOneSided(sides, line);
    const stitches = half ?? at.stitches + (isHalf ? takenByNeck(line) : 0);
    const key = `${first.piece} ${first.make}${half === undefined ? '' : first.edge}`;
    panels.set(key, sewnMm(stitches, isHalf ? 1 : 2, at.width));
  }
  if (panels.size < 2) return undefined;
  return [...panels.values()].reduce((sum, mm) => sum + mm, 0) + frontBand(worked);
}

/** Of a panel whose neck parts it below the underarm: half of what it was, with what its side has changed since. */
function halfBeside({ laid }: LaidLine): number | undefined {
  const [last, before] = [laid.at(-1), laid.at(-2)];
  if (!last || !before || before.part.name !== last.part.parent) return undefined;
  const parted = before.part.rows.at(-1)?.after ?? 0;
  return parted / 2 + last.bits.reduce((sum, { by }) => sum + by, 0);
}

/** Of half a front whose neck begins below the underarm: what the neck has taken of it up to there. */
function takenByNeck({ laid }: LaidLine): number {
  const last = laid.at(-1);
  if (!last) return 0;
  const row = last.bits.at(-1)?.row ?? 0;
  const inner = sideBits(last.part, last.stretch.edge === 'right' ? 'left' : 'right');
  return -inner.reduce((sum, bit) => sum + (bit.row <= row ? Math.min(0, bit.by) : 0), 0);
}

/** Half a front is sewn at one side only. */
const isOneSided = (sides: readonly LaidLine[], line: LaidLine): boolean => {
  const own = line.laid[0]?.stretch;
  return (
    sides.filter(({ laid: [one] }) => one?.stretch.piece === own?.piece && one?.stretch.make === own?.make)
      .length < 2
  );
};

/** Where front bands lie over each other, the width of one is between the fronts. */
function frontBand(worked: readonly WorkedJoint[]): number {
  const band = worked.find(
    ({ joint }) => joint.kind === 'left free' && joint.as === 'front' && joint.line[0]?.edge === 'top',
  );
  const part = band?.lines[0]?.laid[0]?.part;
  return part ? heightOf(part) : 0;
}

const heightOf = (part: PlannedPart): number =>
  part.rows.slice(0, rowsKnitted(part)).reduce((sum, row) => sum + (part.cells[row.section]?.height ?? 0), 0);

function heightOfRole(
  { pieces }: Pick<StandingGarment, 'pieces'>,
  role: 'back' | 'sleeve',
): number | undefined {
  const piece = pieces.find(({ recipe }) => roleOf(recipe) === role);
  const parts = piece?.makes[0]?.parts;
  return parts && Math.max(...parts.map((part) => part.rows[rowsKnitted(part) - 1]?.height ?? part.base));
}

/** Half of what lies between the armholes less the stitch that a seam takes of it, and the sleeve. */
function napeToCuff(
  worked: readonly WorkedJoint[],
  garment: Pick<StandingGarment, 'pieces'>,
): number | undefined {
  const across = acrossBack(worked, garment);
  const sleeve = heightOfRole(garment, 'sleeve');
  const isSewn = seams(worked, 'armhole', 'raglan').length > 0;
  return across === undefined || sleeve === undefined || !isSewn
    ? undefined
    : sewnMm(across.stitches, 2, across.width) / 2 + sleeve;
}

/** What the back keeps of its width above the underarm. */
function acrossBack(
  worked: readonly WorkedJoint[],
  { pieces }: Pick<StandingGarment, 'pieces'>,
): { readonly stitches: number; readonly width: number } | undefined {
  const back = pieces.find(({ recipe }) => roleOf(recipe) === 'back')?.recipe.name;
  const own = ({ laid }: LaidLine) => laid.filter(({ stretch }) => stretch.piece === back);
  const side = seams(worked, 'side')
    .flatMap(({ lines }) => lines)
    .find((line) => own(line).length > 0);
  const at = side && rowAt(side);
  if (!at) return undefined;
  const taken = seams(worked, 'armhole', 'underarm', 'raglan')
    .flatMap(({ lines }) => lines.flatMap(own))
    .flatMap(({ bits }) => bits)
    .reduce((sum, { by }) => sum - by, 0);
  // a back that is parted below its underarms has half of its width beside each side
  const half = halfBeside(side);
  const stitches = (half === undefined ? at.stitches : 2 * half) - taken;
  return { stitches, width: at.width };
}

/** At the upper end of the sleeve's own seam. */
function sleeveWidth(worked: readonly WorkedJoint[]): number | undefined {
  const [line] = seams(worked, 'sleeve').flatMap(({ lines }) => lines);
  const at = line && rowAt(line);
  return at && sewnMm(at.stitches, 2, at.width);
}

function wristOf(worked: readonly WorkedJoint[]): number | undefined {
  const cuff = worked.find(({ joint }) => joint.kind === 'left free' && joint.as === 'cuff')?.lines[0]
    ?.laid[0];
  return cuff && sewnMm(cuff.stitches, 2, cuff.stitches > 0 ? cuff.mm / cuff.stitches : 0);
}

const isNeck = (line: LaidLine): boolean =>
  line.laid.length > 0 &&
  !line.laid.some(({ stretch }) => 'shaped' in stretch && stretch.shaped === 'before');

/** What a neckband is picked up along, or what is left free as a neck. */
function neckOf(
  worked: readonly WorkedJoint[],
  garment: Pick<StandingGarment, 'pieces'>,
): number | undefined {
  const bands = neckbandsOf(garment);
  const flaps = seams(worked, 'lap').map(({ joint }) => joint.a[0]?.piece);
  const lines = worked.flatMap(({ joint, lines: all }) => {
    if (joint.kind === 'left free') return joint.as === 'neck' && !isOfBand(joint, worked) ? all : [];
    const takes = (one: PickedUp): boolean =>
      bands.includes(one.piece) || (takesNeck(one) && !isArmhole(one, worked) && !flaps.includes(one.piece));
    return joint.kind === 'pick up' && takes(joint) ? all.filter(isNeck) : [];
  });
  return lines.length === 0 ? undefined : lines.reduce((sum, { mm }) => sum + mm, 0);
}

const isOfBand = ({ line }: Extract<Joint, { kind: 'left free' }>, worked: readonly WorkedJoint[]): boolean =>
  worked.some(({ joint }) => joint.kind === 'pick up' && joint.piece === line[0]?.piece);

type PickedUp = Extract<Joint, { kind: 'pick up' }>;

/** Round the neck as it is worn, mm: at its band's edge where it has one. */
export const neckWorn = ({
  neck,
  neckWithBand,
}: Pick<Finished, 'neck' | 'neckWithBand'>): number | undefined => neckWithBand ?? neck;

/** It goes across more than one piece, as no front edge does. */
const takesNeck = ({ along }: PickedUp): boolean =>
  new Set(along.flatMap(({ line }) => line.map(({ piece }) => piece))).size > 1;

function neckWithBand(
  worked: readonly WorkedJoint[],
  garment: Pick<StandingGarment, 'pieces'>,
): number | undefined {
  const bands = neckbandsOf(garment);
  if (bands.length === 0) return neckOf(worked, garment);
  const tops = worked.filter(
    ({ joint }) =>
      joint.kind === 'left free' &&
      bands.includes(joint.line[0]?.piece ?? '') &&
      joint.line[0]?.edge === 'top',
  );
  return tops.length === 0 ? undefined : tops.reduce((sum, { lines }) => sum + (lines[0]?.mm ?? 0), 0);
}

const neckbandsOf = ({ pieces }: Pick<StandingGarment, 'pieces'>): readonly string[] =>
  pieces.filter(({ recipe }) => roleOf(recipe) === 'neckband').map(({ recipe }) => recipe.name);

/** Along the body: the side of the seam that is no sleeve. */
function armholeOf(worked: readonly WorkedJoint[]): number | undefined {
  const sewn = seams(worked, 'armhole', 'underarm', 'raglan');
  if (sewn.length > 0) return sewn.reduce((sum, { lines }) => sum + (lines[1]?.mm ?? 0), 0) / 2;
  // each piece leaves its own stretch of both armholes free
  const free = worked.filter(
    ({ joint }) => joint.kind === 'left free' && joint.as === 'armhole' && !isOfBand(joint, worked),
  );
  if (free.length > 0) return free.reduce((sum, { lines }) => sum + (lines[0]?.mm ?? 0), 0) / 2;
  const banded = worked.find(({ joint }) => joint.kind === 'pick up' && isArmhole(joint, worked));
  return banded?.lines.reduce((sum, { mm }) => sum + mm, 0);
}

/** A band whose free edge is an armhole's. */
const isArmhole = ({ piece, make }: PickedUp, worked: readonly WorkedJoint[]): boolean =>
  worked.some(
    ({ joint }) =>
      joint.kind === 'left free' &&
      joint.as === 'armhole' &&
      joint.line[0]?.piece === piece &&
      joint.line[0]?.make === make,
  );
