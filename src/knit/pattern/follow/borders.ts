import { type Fault, fault } from '../../fault.ts';
import type { Edge } from '../../piece/recipe.ts';
import type { Item } from '../../row/read/notation.ts';
import type { EdgeName } from '../say/how-far.ts';
import type { Statement } from '../say/statement.ts';
import { hasBorders, keepBorder, keepOn } from './build/borders.ts';
import {
  type Build,
  nextSide,
  otherEdge,
  type PartBuild,
  type PieceBuild,
  startEdge,
} from './build/build.ts';
import { fabricOf, knownFabric } from './build/fabric.ts';
import { isHalf, neckOf } from './build/part.ts';
import { doEven } from './even.ts';

/** 'keeping 6 sts at each end in garter st': from here on, until another fabric is worked or the edge is bound off. */
export function doBorders(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  said: Extract<Statement, { is: 'borders' }>,
): Fault | undefined {
  if (said.borders.length === 0 && !hasBorders(part)) return fault('place not known');
  const wrong = said.main && doEven(build, piece, part, { is: 'even', fabric: said.main });
  keepOn(part);
  const sum = said.borders.reduce((n, { edge, stitches }) => n + stitches * (edge === 'both' ? 2 : 1), 0);
  if (sum > part.live) return fault('not enough stitches', { needStitches: sum, haveStitches: part.live });
  for (const { edge, stitches, fabric } of said.borders) {
    const kept = fabric.is === 'border rows' ? undefined : fabricOf(fabric, build, part);
    const rows = fabric.is === 'border rows' ? fabric.rows : kept?.is === 'face' ? kept.rows : undefined;
    const edges = edgesOf(edge, piece, part);
    if (rows === undefined || edges === undefined) return fault('place not known');
    if (kept?.is === 'face' && kept.name === 'garter' && hasGarterEdges(part))
      Object.assign(part, { fabric: knownFabric('stocking'), fabricRow: nextSide(part) === 'RS' ? 0 : 1 });
    for (const at of edges) keepBorder(part, at, stitches, rows, said.throughout);
  }
  return wrong;
}

/** 'K', 'k1, p to last st, k1': rows with edges of their own, in whose place others are said. */
const hasGarterEdges = ({ fabric }: PartBuild): boolean =>
  fabric.is === 'rows' &&
  fabric.rows.length === 2 &&
  fabric.rows.some((row) => worksOf(row) === 'k') &&
  fabric.rows.some((row) => worksOf(row) === 'kpk');

const worksOf = (items: readonly Item[]): string =>
  items.map((item) => ('work' in item ? item.work : '?')).join('');

function edgesOf(edge: EdgeName | 'unsaid', piece: PieceBuild, part: PartBuild): readonly Edge[] | undefined {
  const neck = neckOf(piece, part);
  switch (edge) {
    case 'both':
      return ['right', 'left'];
    case 'unsaid':
      return isHalf(piece) || part.neck !== undefined ? [neck] : undefined;
    case 'neck':
    case 'inside':
      return [neck];
    case 'armhole':
      return [otherEdge(neck)];
    case 'beginning':
      // of a front the first stitches are those of its band, whichever row comes next
      return [isHalf(piece) && nextSide(part) === 'WS' ? neck : startEdge(part)];
    case 'end':
      return [otherEdge(startEdge(part))];
    case 'same':
      return part.lastEdge === undefined
        ? undefined
        : part.lastEdge === 'both'
          ? ['right', 'left']
          : [part.lastEdge];
    default:
      return [edge];
  }
}
