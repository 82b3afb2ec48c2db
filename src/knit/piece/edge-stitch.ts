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

/** A made stitch leans toward its edge, also in garter stitch, where it is knitted from the wrong side too. */
export function makeFor(lean: EdgeWork['lean'], edge: Edge, side: Side, facing: 'k' | 'p'): StitchName {
  if (facing === 'p') return 'm1p';
  if (lean === 'plain') return 'm1';
  return (edge === 'right') === (side === 'RS') ? 'm1r' : 'm1l';
}

/** The edge that a decrease or a made stitch follows, by what it is called; undefined where both edges have it alike. */
export function edgeFollowed(work: StitchName, side: Side): Edge | undefined {
  for (const edge of ['right', 'left'] as const) {
    const facing = ['k', 'p'] as const;
    const decreases = facing.flatMap((one) =>
      [-1, -2].map((by) => decreaseFor(by, one, leansLeftAt(edge, side, one))),
    );
    if (decreases.includes(work) || makeFor('mirrored', edge, side, 'k') === work) return edge;
  }
  return undefined;
}

/**
 * Which of the stitches that a decrease closes, in the order worked, comes to lie on top and goes on: the outer one of
 * a decrease that follows its edge, else the left one of one that leans right (seen from the right side).
 */
export function topOf(
  over: readonly number[],
  lean: EdgeWork['lean'],
  edge: Edge,
  side: Side,
): number | undefined {
  const begins = (edge === 'right') === (side === 'RS');
  const firstOnTop = lean === 'mirrored' ? begins : side === 'WS';
  return firstOnTop ? over[0] : over[over.length - 1];
}

/** Stitches between the edge and the innermost one that is made. */
export const madeInside = ({ by, inset }: EdgeWork): number => inset + (by === 2 && inset > 0 ? 1 : 0);
