import type { Edge } from '../../../piece/recipe.ts';
import type { EdgeName } from '../../say/how-far.ts';
import { otherEdge, type PartBuild, type PieceBuild, startEdge } from './build.ts';
import { neckOf } from './part.ts';

/** Which edge of the part an edge's name means, row by row. */
export function edgeFinder(
  name: EdgeName,
  piece: PieceBuild,
  part: PartBuild,
): (part: PartBuild) => 'both' | Edge {
  switch (name) {
    case 'both':
      return () => 'both';
    case 'neck':
    case 'inside':
      return () => neckOf(piece, part);
    case 'armhole':
      return () => otherEdge(neckOf(piece, part));
    case 'beginning':
      return (now) => startEdge(now);
    case 'end':
      return (now) => otherEdge(startEdge(now));
    case 'unsaid':
    case 'same': {
      const last = part.lastEdge;
      return (now) => last ?? startEdge(now);
    }
    default:
      return () => name;
  }
}
