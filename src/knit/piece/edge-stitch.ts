import type { Side } from '../row/step.ts';
import type { StitchName } from '../stitch.ts';
import type { Edge } from './recipe.ts';
import type { EdgeWork } from './row-shaping.ts';

/** Stitches that an edge needs for its inset and its decrease, or the stitch that an increase is made beside. */
export function widthOf(work: EdgeWork | undefined): number {
  if (!work) return 0;
  return work.inset + (work.by < 0 ? 1 - work.by : work.inset === 0 || work.by === 2 ? 1 : 0);
}

/** Mirrored decreases follow the edge: at the right edge they lean left as seen from the right side. */
export function leansLeftAt(edge: Edge, side: Side, facing: 'k' | 'p'): boolean {
  const left = edge === 'right';
  return side === 'WS' && facing === 'k' ? !left : left;
}

export function decreaseFor(by: number, facing: 'k' | 'p', leansLeft: boolean): StitchName {
  if (by === -1) return facing === 'k' ? (leansLeft ? 'ssk' : 'k2tog') : leansLeft ? 'ssp' : 'p2tog';
  return facing === 'k' ? (leansLeft ? 'sk2p' : 'k3tog') : leansLeft ? 'sssp' : 'p3tog';
}

export function makeFor(lean: EdgeWork['lean'], edge: Edge, facing: 'k' | 'p'): StitchName {
  if (facing === 'p') return 'm1p';
  if (lean === 'plain') return 'm1';
  return edge === 'right' ? 'm1r' : 'm1l';
}
