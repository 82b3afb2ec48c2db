import type { FabricName } from '../knit/fabric.ts';
import type { PlannedRow, ShapingMark } from '../knit/piece/planned.ts';
import type { Edge } from '../knit/piece/recipe.ts';
import type { Side, Step } from '../knit/row/step.ts';
import { caseOf } from '../knit/row/walk-step.ts';
import type { StitchName } from '../knit/stitch.ts';
import { saysList } from './numbers.ts';
import { say } from './say.ts';

/** Words of the trade for what the plan holds. All need the catalogue 'craft'. */

export const saysFabric = (name: FabricName): string => say(`craft.fabric ${name}`);

/** 'RS', or with `full` 'right side'. */
export const saysSide = (side: Side, full = false): string =>
  say(side === 'RS' ? (full ? 'craft.RSfull' : 'craft.RS') : full ? 'craft.WSfull' : 'craft.WS');

export const saysStitches = (count: number): string => say('craft.stitches', { count });

/** 'at the right edge', right side facing. */
export const saysEdge = (edge: Edge | 'both'): string => say(`craft.${edge}Edge`);

/**
 * What a row's shaping is: 'decrease at both edges', 'bind off 5 at the start of the row'; without its side, of the piece as
 * it is drawn, 'bind off 5 at the right edge'. Empty for a plain row.
 */
export function saysShaping({
  shaping,
  steps = [],
  side,
}: Pick<PlannedRow, 'shaping'> & Partial<Pick<PlannedRow, 'steps' | 'side'>>): string {
  return saysList(joinEdges(shaping).map((mark) => saysMark(mark, gapsIn(steps), side)));
}

type Mark = Pick<ShapingMark, 'kind' | 'by'> & { readonly edge: ShapingMark['edge'] | 'both' };

/** The same done at both edges of one row is one thing to the knitter. */
function joinEdges(marks: readonly ShapingMark[]): readonly Mark[] {
  const right = marks.find((mark) => mark.kind === 'edge' && mark.edge === 'right');
  const left = marks.find((mark) => mark.kind === 'edge' && mark.edge === 'left');
  return right && right.by === left?.by
    ? marks.flatMap((mark) => (mark === left ? [] : mark === right ? { ...mark, edge: 'both' } : mark))
    : marks;
}

/** Stretches that are bound off, or cast on over. */
const gapsIn = (steps: readonly Step[]): number =>
  steps.reduce(
    (sum, step) =>
      sum +
      caseOf(step, {
        works: isGap,
        worksUntil: isGap,
        repeats: (inner, times) => gapsIn(inner) * times,
        repeatsUntil: gapsIn,
      }),
    0,
  );

const isGap = (work: StitchName): number => (work === 'bo' || work === 'co' ? 1 : 0);

/** A wider gap is no button hole; common practice, no published source. */
const WIDEST_HOLE = 8;

function saysMark({ kind, edge, by }: Mark, gaps: number, side: Side | undefined): string {
  const size = Math.abs(by);
  if (kind === 'middle') return say('craft.markMiddle');
  if (edge === 'across' && kind === 'bind off') return say('craft.markBindOffAll');
  const overGaps = gaps > 0 && kind === 'across';
  // what is worked there the row itself says
  if (overGaps && size <= WIDEST_HOLE * gaps) return say('craft.markHoles', { count: gaps });
  if (overGaps || edge === 'middle')
    return say(by > 0 ? 'craft.markCastOnMiddle' : 'craft.markBindOffMiddle', { by: size });
  if (edge === 'across' || kind === 'across')
    return say(by < 0 ? 'craft.markAcrossDecrease' : 'craft.markAcrossIncrease', { by: size });
  // she holds the work by the side that she works: turned over, what is the left edge lies right
  const at =
    side && edge !== 'both'
      ? say((edge === 'right') === (side === 'RS') ? 'craft.rowStart' : 'craft.rowEnd')
      : saysEdge(edge);
  if (kind === 'bind off') return say('craft.markBindOff', { by: size, edge: at });
  if (kind === 'cast on') return say('craft.markCastOn', { by: size, edge: at });
  if (kind === 'turn') return say('craft.markTurn', { edge: at });
  return say(by < 0 ? 'craft.markEdgeDecrease' : 'craft.markEdgeIncrease', { edge: at });
}
