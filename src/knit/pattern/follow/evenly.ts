import type { Fault } from '../../fault.ts';
import type { Edge } from '../../piece/recipe.ts';
import { expandRow } from '../../row/expand.ts';
import type { Statement } from '../say/statement.ts';
import type { Build, MadeRow, PartBuild, PieceBuild } from './build/build.ts';
import { countDiffers } from './build/compare.ts';
import { edgeFinder } from './build/edge.ts';
import { makeFabricRow } from './build/fabric-row.ts';
import { makeSpreadRow, makeWrittenRow } from './build/make-row.ts';
import { takeBack } from './build/push-row.ts';

/** 'inc 6 sts evenly across next row', '… in last row of rib'. */
export function doEvenly(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  said: Extract<Statement, { is: 'evenly' }>,
  madeHere: boolean,
): Fault | undefined {
  const last = said.on === 'last' || (said.on === 'unsaid' && madeHere);
  const back = last && part.rows.length > 0 ? takeBack(build, part) : undefined;
  const change =
    said.toCount === undefined || said.over !== undefined
      ? said.change
      : Math.sign(said.change) * Math.abs(said.toCount - part.live);
  if (back) part.fabric = back.fabric;
  if (back && said.edge) {
    const edge = edgeFinder(said.edge, piece, part)(part);
    const edges: readonly Edge[] = edge === 'both' ? ['right', 'left'] : [edge];
    return atEdges(build, part, back, edges, said.change / edges.length);
  }
  const wrong = makeSpreadRow(
    build,
    part,
    said.toCount !== undefined && !said.all && Math.abs(change) !== Math.abs(said.change)
      ? said.change
      : change,
    said.over,
    back && expandRow(back.steps, back.before),
  );
  // 'inc 6 sts evenly across next row to 24 sts', of 20
  const differs = said.toCount !== undefined && said.toCount !== part.live;
  return wrong ?? (differs ? countDiffers(said.toCount, part.live) : undefined);
}

/** '… inc 1 st at each end of last row': that row as it was, with its edges shaped. */
function atEdges(
  build: Build,
  part: PartBuild,
  { items }: MadeRow,
  edges: readonly Edge[],
  change: number,
): Fault | undefined {
  const shaped = edges.map((at) => ({ at, change }));
  return items
    ? makeWrittenRow(build, part, items, 'shape', shaped)
    : makeFabricRow(build, part, shaped, 'shape');
}
