import type { FabricName } from '../knit/fabric.ts';
import type { PlannedRow, ShapingMark } from '../knit/piece/planned.ts';
import type { Edge } from '../knit/piece/recipe.ts';
import type { Side } from '../knit/row/step.ts';
import { saysList } from './numbers.ts';
import { say } from './say.ts';

/** Words of the trade for what the plan holds. All need the catalogue 'craft'. */

export const saysFabric = (name: FabricName): string => say(`craft.${name}`);

/** 'RS', or with `full` 'right side'. */
export const saysSide = (side: Side, full = false): string =>
  say(full ? (side === 'RS' ? 'craft.RSfull' : 'craft.WSfull') : `craft.${side}`);

export const saysStitches = (count: number): string => say('craft.stitches', { count });

/** 'at the right edge', right side facing. */
export const saysEdge = (edge: Edge | 'both'): string => say(`craft.${edge}Edge`);

/** What a row's shaping is: 'decrease at both edges', 'bind off 5 at the right edge'; empty for a plain row. */
export function saysShaping(row: Pick<PlannedRow, 'shaping'>): string {
  const marks = joinEdges(row.shaping);
  return marks.length === 0 ? '' : saysList(marks.map(saysMark));
}

type Mark = Pick<ShapingMark, 'kind' | 'by'> & { readonly edge: ShapingMark['edge'] | 'both' };

/** The same done at both edges of one row is one thing to the knitter. */
function joinEdges(marks: readonly ShapingMark[]): readonly Mark[] {
  const right = marks.find((mark) => mark.kind === 'edge' && mark.edge === 'right');
  const left = marks.find((mark) => mark.kind === 'edge' && mark.edge === 'left');
  if (!right || !left || right.by !== left.by) return marks;
  return marks
    .filter((mark) => mark !== left)
    .map((mark) => (mark === right ? { ...mark, edge: 'both' } : mark));
}

function saysMark({ kind, edge, by }: Mark): string {
  const size = Math.abs(by);
  if (kind === 'middle') return say('craft.markMiddle');
  if (edge === 'across' && kind === 'bind off') return say('craft.markBindOffAll');
  if (edge === 'across' || kind === 'across') {
    return say(by < 0 ? 'craft.markAcrossDecrease' : 'craft.markAcrossIncrease', { by: size });
  }
  if (edge === 'middle') {
    return say(kind === 'cast on' ? 'craft.markCastOnMiddle' : 'craft.markBindOffMiddle', { by: size });
  }
  const at = saysEdge(edge);
  if (kind === 'bind off') return say('craft.markBindOff', { by: size, edge: at });
  if (kind === 'cast on') return say('craft.markCastOn', { by: size, edge: at });
  if (kind === 'turn') return say('craft.markTurn', { edge: at });
  return say(by < 0 ? 'craft.markEdgeDecrease' : 'craft.markEdgeIncrease', { edge: at });
}
