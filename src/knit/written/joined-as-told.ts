import type { Joint } from '../making-up/joint.ts';
import { proposed } from '../making-up/propose.ts';
import type { ToldSeam } from '../making-up/told.ts';
import { workJoints } from '../making-up/work-making-up.ts';
import type { ReadPattern } from '../pattern/read-pattern.ts';
import { partsOfMake } from '../piece/planned.ts';
import { type StandingPiece, standingMake } from '../piece/standing.ts';
import { readMakingUp } from './read-making-up.ts';

/** A read pattern made up as its text tells. */
export interface JoinedAsTold {
  /** undefined where it tells of no seam, or of none that fits: it is then proposed from the pieces, as for any garment that states none */
  readonly joints?: readonly Joint[];
  /** what it says that came to nothing: sentences that were not understood, and seams whose edges no piece has */
  readonly unread: readonly string[];
}

/** The joints that a text tells of; what it leaves out is filled in from the shapes of the pieces. */
export function joinedAsTold(read: Pick<ReadPattern, 'lines' | 'size' | 'sizes' | 'pieces'>): JoinedAsTold {
  const { told, named, unread } = readMakingUp(read);
  if (told.seams.size === 0) return { unread };
  const pieces = read.pieces.flatMap(({ recipe, plan }): StandingPiece[] => {
    if (!plan.ok) return [];
    const makes = Array.from({ length: recipe.makes }, (_, i) =>
      standingMake(recipe, i + 1, partsOfMake(plan.value, i + 1)),
    );
    return [{ recipe, makes }];
  });
  const joints = proposed({ pieces }, told);
  const troublesOf = (made: readonly Joint[]) => workJoints(made, { pieces }).troubles.length;
  // what is read must not make it worse than what the pieces tell by themselves
  if (troublesOf(joints) > troublesOf(proposed({ pieces })))
    return { unread: [...new Set([...unread, ...named.values()])] };
  const isThere = (seam: ToldSeam) => joints.some((joint) => joint.kind === 'seam' && joint.of === seam);
  const missing = [...named].filter(([seam]) => !isThere(seam)).map(([, said]) => said);
  return { joints, unread: [...unread, ...missing] };
}
