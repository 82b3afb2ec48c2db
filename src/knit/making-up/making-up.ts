import { ok, type Result } from '../fault.ts';
import { asPlanned } from '../piece/as-planned.ts';
import type { Garment } from '../piece/garment.ts';
import type { StandingGarment } from '../piece/standing.ts';
import { buttonsStep, shoulderButtons } from './buttons.ts';
import { type Joint, jointOf } from './joint.ts';
import { stepOfJoints } from './joint-steps.ts';
import { knittedPieces, type KnittedPiece as Piece } from './knitted-piece.ts';
import { PieceGroups } from './piece-groups.ts';
import { proposed } from './propose.ts';
import type { MakingUpStep } from './step.ts';
import { type Trouble, type WorkedJoint, workJoints } from './work-making-up.ts';

/** The making up of a garment as it stands, worked. */
export interface MakingUp {
  readonly steps: readonly MakingUpStep[];
  /** the joints that a step is made of, by its id; a step without one (blocking, ends) is not there */
  readonly joined: ReadonlyMap<string, readonly WorkedJoint[]>;
  readonly joints: readonly Joint[];
  readonly worked: readonly WorkedJoint[];
  readonly troubles: readonly Trouble[];
}

/**
 * The making up of a garment as its recipes have it; see `makingUpOf`.
 * @returns the planner's faults when a piece cannot be knitted
 * @instrument of tests: screens have the plans in force
 */
export function makingUp(garment: Garment): Result<readonly MakingUpStep[]> {
  const planned = asPlanned(garment);
  return planned.ok ? ok(makingUpOf(planned.value).steps) : planned;
}

/**
 * The making up of a garment as it stands: its joints in their order, with the figures of the plans in force. Joints that
 * a draft stated hold as long as their edges are there; else they are proposed from what the pieces are. Makes that came
 * out in different ways have steps of their own.
 */
export function makingUpOf(garment: StandingGarment): MakingUp {
  const { joints, ...made } = joined(garment);
  return { joints, ...made, ...stepsOf(garment, made.worked, joints) };
}

/** Joined as stated, unless the pieces were changed so that an edge of the statement is no more. */
export function joined(
  garment: Pick<StandingGarment, 'pieces' | 'joints' | 'byHand'>,
): Omit<MakingUp, 'steps' | 'joined'> {
  const { joints = [], byHand = [] } = garment;
  const stated = joints.length > 0 ? workJoints(joints, garment) : undefined;
  const areThere = stated?.troubles.every(({ kind }) => kind !== 'no such edge');
  if (stated && areThere && byHand.length === 0) return { joints, ...stated };
  const all = [...(areThere ? joints : proposed(garment)), ...byHand.map(jointOf)];
  return { joints: all, ...workJoints(all, garment) };
}

function stepsOf(
  garment: StandingGarment,
  worked: readonly WorkedJoint[],
  joints: readonly Joint[],
): Pick<MakingUp, 'steps' | 'joined'> {
  const groups = new PieceGroups(garment.pieces.map(knittedPieces));
  const byId = new Map<string, WorkedJoint[]>();
  for (const one of inOrder(worked)) {
    const id = groups.stepOf(one, worked);
    if (id !== undefined) byId.set(id, [...(byId.get(id) ?? []), one]);
  }
  const opening = worked.filter((one) => isOpening(one, groups));
  const sewn = [...byId].flatMap(([id, own]): MakingUpStep[] => {
    const step = stepOfJoints(id, own, groups, opening);
    return step ? [buttoned(step, shoulderButtons(garment, joints))] : [];
  });
  if (opening.length > 0) byId.set(OPENING, opening);
  const buttons = buttonsStep(garment, joints);
  const steps = [
    ...groups.blocked().map(blockStep),
    ...sewn,
    ...opening.slice(0, 1).map(openingStep),
    ...(buttons ? [buttons] : []),
    { id: 'ends', kind: 'ends' } as const,
  ];
  return { steps, joined: byId };
}

/** A shoulder that is buttoned is told with its buttons, and where the other one is sewn. */
function buttoned(step: MakingUpStep, buttons: number): MakingUpStep {
  if (buttons === 0) return step;
  if (step.kind === 'shoulders') return { ...step, isOtherButtoned: true };
  return step.kind === 'lap' ? { ...step, buttons } : step;
}

const OPENING = 'opening';

/** Of the back itself: a band's ends go on with it. */
const isOpening = ({ joint }: WorkedJoint, groups: PieceGroups): boolean =>
  joint.kind === 'left free' &&
  joint.as === 'opening' &&
  groups.of('back')?.recipe.name === joint.line[0]?.piece;

const openingStep = ({ lines: [line] }: WorkedJoint): MakingUpStep => ({
  id: OPENING,
  kind: 'opening',
  of: line?.laid[0]?.stretch.sections === undefined ? 'back' : 'raglan',
  rows: line?.laid[0]?.rows ?? 0,
});

/** A neck that is left for a band follows the seams that close it. */
function inOrder(worked: readonly WorkedJoint[]): readonly WorkedJoint[] {
  const isNeck = ({ joint }: WorkedJoint) => joint.kind === 'left free' && joint.as === 'neck';
  const closes = ({ joint }: WorkedJoint) =>
    joint.kind === 'seam' && (joint.of === 'shoulder' || joint.of === 'raglan');
  const last = worked.reduce((found, one, i) => (closes(one) ? i : found), -1);
  const rest = worked.filter((one) => !isNeck(one));
  return [...rest.slice(0, last + 1), ...worked.filter(isNeck), ...rest.slice(last + 1)];
}

const blockStep = (piece: Piece): MakingUpStep => ({
  id: `block ${piece.recipe.name}${piece.mark}`,
  kind: 'block',
  piece: piece.recipe.name,
  makes: piece.makes,
  ...(piece.nos === undefined ? {} : { nos: piece.nos }),
  ...(piece.nos !== undefined && piece.worn !== undefined && { worn: piece.worn }),
  ...piece.size,
});
