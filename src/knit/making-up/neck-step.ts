import { alongRows, pickUpRatio, toMultiple } from './pick-up.ts';
import { FRONTS, type PieceGroups } from './piece-groups.ts';
import type { BandEdge, MakingUpStep } from './step.ts';
import type { WorkedJoint } from './work-making-up.ts';

/** What a neck without a band has to give: its sides along rows, its middles and the back stitch by stitch. */
export function neckStep(
  id: string,
  own: readonly WorkedJoint[],
  groups: PieceGroups,
): MakingUpStep | undefined {
  const front = groups.of(...FRONTS);
  if (!front) return undefined;
  const ratio = pickUpRatio(front.top.fabric, front.top.gauge);
  const lines = own.flatMap((one) => one.lines);
  const isBack = (piece: string | undefined) => piece === groups.of('back')?.recipe.name;
  const [behind, before] = [true, false].map((wanted) =>
    lines.filter(({ laid }) => isBack(laid[0]?.stretch.piece) === wanted),
  );
  const sides = Math.max(0, ...(before ?? []).map(({ rows }) => rows));
  const middle = (before ?? []).reduce((sum, { rows, stitches }) => sum + (rows === 0 ? stitches : 0), 0);
  const back = (behind ?? []).reduce((sum, line) => sum + line.stitches + alongRows(line.rows, ratio), 0);
  const edges: BandEdge[] = [];
  const plain = { times: 1, rows: undefined, ratio: undefined };
  if (sides > 0)
    edges.push({ along: 'side of neck', times: 2, rows: sides, ratio, stitches: alongRows(sides, ratio) });
  if (middle > 0) edges.push({ along: 'front neck', ...plain, stitches: middle });
  edges.push({ along: 'back neck', ...plain, stitches: back });
  const sum = edges.reduce((total, { stitches, times }) => total + stitches * times, 0);
  return { id, kind: 'neck edge', edges, total: toMultiple(sum, 'rib 2x2') };
}
