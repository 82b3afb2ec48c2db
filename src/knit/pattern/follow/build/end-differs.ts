import { type Fault, fault } from '../../../fault.ts';
import type { Side } from '../../../row/step.ts';
import type { EndEdge } from '../../say/how-far.ts';
import type { PartBuild, PieceBuild } from './build.ts';
import { endSideOf, lastSide } from './target.ts';

/** The side on which the text says that the last row lies, against the side on which it does. */
export function endDiffers(
  piece: PieceBuild,
  part: PartBuild,
  said: { readonly end?: Side; readonly endEdge?: EndEdge },
): Fault | undefined {
  const end = endSideOf(piece, part, said);
  return end === undefined || part.rows.length === 0 || lastSide(part) === end
    ? undefined
    : fault('side differs', { saidSide: end, foundSide: lastSide(part) });
}
