import type { Stretch } from '../../knit/making-up/joint.ts';
import type { StandingGarment } from '../../knit/piece/standing.ts';
import { say } from '../../words/say.ts';

const edges = {
  right: 'makingUp.edgeRight',
  left: 'makingUp.edgeLeft',
  top: 'makingUp.edgeTop',
  start: 'makingUp.edgeStart',
} as const;

export const saysEdgeOf = ({ part, edge }: Pick<Stretch, 'part' | 'edge'>): string =>
  say(edges[edge], { part });

/** An edge by its piece, and by the make where there are several. */
export function saysEdge(stretch: Stretch, { pieces }: Pick<StandingGarment, 'pieces'>): string {
  const { piece, make } = stretch;
  const makes = pieces.find(({ recipe }) => recipe.name === piece)?.makes.length ?? 1;
  const edge = saysEdgeOf(stretch);
  return makes > 1
    ? say('makingUp.edgeNamedNo', { piece, make, edge })
    : say('makingUp.edgeNamed', { piece, edge });
}
