import type { Stretch } from '../../knit/making-up/joint.ts';
import type { StandingGarment } from '../../knit/piece/standing.ts';
import { say } from '../../words/say.ts';
import { saysMake } from '../says-make.ts';

const edges = {
  right: 'makingUp.edgeRight',
  left: 'makingUp.edgeLeft',
  top: 'makingUp.edgeTop',
  start: 'makingUp.edgeStart',
} as const;

/** The edge, with the name of its part where that is not the piece's. */
export function saysEdgeOf({ piece, part, edge }: Pick<Stretch, 'piece' | 'part' | 'edge'>): string {
  const name = say(edges[edge]);
  const isSame = part.toLocaleLowerCase() === piece.toLocaleLowerCase();
  return isSame ? name : say('makingUp.edgeOfPart', { part, edge: name });
}

/** An edge by its piece, and by the make where there are several. */
export function saysEdge(stretch: Stretch, { pieces }: Pick<StandingGarment, 'pieces'>): string {
  const recipe = pieces.find((one) => one.recipe.name === stretch.piece)?.recipe ?? 1;
  const piece = saysMake(stretch.piece, '', stretch.make, recipe);
  return say('makingUp.edgeNamed', { piece, edge: saysEdgeOf(stretch) });
}
