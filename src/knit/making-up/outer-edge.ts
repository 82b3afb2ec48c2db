import type { Edge } from '../piece/recipe.ts';
import type { StandingMake } from '../piece/standing.ts';
import { FoundSide } from './found-side.ts';

/**
 * The edge of half a front that lies at the side of the body: where its shoulder slopes; else the straight one, where the
 * other is shaped; else where something is bound off first, since an armhole begins below a neck.
 */
export function outerEdge(piece: string, { make, parts }: StandingMake): Edge {
  const right = new FoundSide(piece, make, parts, 'right');
  const left = new FoundSide(piece, make, parts, 'left');
  const slopes = [right, left].map((side) => side.takenFrom(side.slope()));
  const [atRight = 0, atLeft = 0] = slopes;
  if (atRight !== atLeft) return atRight > atLeft ? 'right' : 'left';
  if (right.isShaped() !== left.isShaped()) return left.isShaped() ? 'right' : 'left';
  const first = (side: FoundSide) => {
    const at = side.firstLevel(side.end, -1);
    return at < 0 ? side.end : at;
  };
  return first(right) <= first(left) ? 'right' : 'left';
}
