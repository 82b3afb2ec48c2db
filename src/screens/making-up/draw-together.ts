import { endOf } from '../../knit/making-up/boundary.ts';
import type { Laid } from '../../knit/making-up/boundary-of.ts';
import type { MakingUp } from '../../knit/making-up/making-up.ts';
import { unitOf, type WorkedJoint } from '../../knit/making-up/work-making-up.ts';
import type { StandingGarment } from '../../knit/piece/standing.ts';
import { type DrawnEdge, edgeRuns } from '../../ui/panel-map/edge-line.ts';
import type { Point } from '../../ui/panel-map/paths.ts';
import { type RoomOnPage, USUAL } from '../use-room.ts';
import { boundsOf, type LaidPiece, laidGarment, onTable } from './lay-garment.ts';

/** whether a seam is sewn, in hand, or open yet */
export type State = 'sewn' | 'hand' | 'open';

export interface Edge {
  readonly step: string;
  /** whose edge it is */
  readonly piece: LaidPiece;
  readonly state: State;
  readonly runs: readonly (readonly Point[])[];
  /** stitches or rows, where it is in hand */
  readonly count: number;
  /** the middle of its piece on the table */
  readonly middle: Point;
}

/** Its letters, of the root's; and as high as the drawing is at the most, of those and of the window (making-up.css). */
const LETTER = 0.875;
const HIGHEST = 34;
const SHARE = 0.66;

/** The pieces laid on the table with the edges of every step. */
export function drawn(
  { joined, worked }: Pick<MakingUp, 'joined' | 'worked'>,
  garment: StandingGarment,
  ticked: ReadonlySet<string>,
  inHand: string | undefined,
  { width: wideRoom, height: windowHigh, em }: Omit<RoomOnPage, 'apart'> = USUAL,
) {
  const sewn = [...joined].flatMap(([id, joints]) => (ticked.has(id) ? joints : []));
  const laid = laidGarment(garment, worked, sewn);
  const stateOf = (id: string): State => (id === inHand ? 'hand' : ticked.has(id) ? 'sewn' : 'open');
  const edges = [...joined].flatMap(([id, joints]) =>
    joints.flatMap((joint) =>
      edgesOf(joint, laid).map((edge) => ({ ...edge, step: id, state: stateOf(id) })),
    ),
  );
  // what is in hand lies over the rest
  const order: readonly State[] = ['open', 'sewn', 'hand'];
  edges.sort((a, b) => order.indexOf(a.state) - order.indexOf(b.state));
  const bounds = laid.map(boundsOf);
  const left = Math.min(...bounds.map((one) => one.left));
  const top = Math.min(...bounds.map((one) => one.top));
  const wide = Math.max(...bounds.map((one) => one.right)) - left;
  const high = Math.max(...bounds.map((one) => one.bottom)) - top;
  // mm that a letter is high where the drawing fills its room: as large as all that is read beside it
  const px = LETTER * em;
  const highRoom = Math.min(HIGHEST * em, SHARE * windowHigh);
  const letter = px / Math.max(0.01, Math.min((wideRoom - 2 * px) / wide, (highRoom - 2 * px) / high));
  // a band is narrower than the figures on it: they have room beyond its edge
  const air = Math.max(12, letter);
  const [x, y, width, height] = [left - air, top - air, wide + 2 * air, high + 2 * air];
  return { laid, edges, letter, view: { x, y, width, height } };
}

type Bare = Omit<Edge, 'step' | 'state'>;

/** A seam's edges, or those that a band is picked up along, on the table: one for each piece that a line goes along. */
function edgesOf({ joint, lines }: WorkedJoint, laid: readonly LaidPiece[]): Bare[] {
  return lines.flatMap((line, i) =>
    laid.flatMap((piece): Bare[] => {
      const own = line.laid.filter(
        ({ stretch }) => stretch.piece === piece.name && stretch.make === piece.make,
      );
      const runs = own.flatMap((one) => {
        const shape = piece.shape.parts[piece.parts.indexOf(one.part)];
        return shape ? edgeRuns(shape, asDrawn(one)) : [];
      });
      if (runs.length === 0) return [];
      const count =
        joint.kind === 'pick up'
          ? (joint.along[i]?.stitches ?? 0)
          : own.reduce((sum, one) => sum + countOf(joint, one), 0);
      const table = runs.map((run) => run.map((point) => onTable(piece, point)));
      return [{ piece, runs: table, count, middle: piece.at }];
    }),
  );
}

/** What is counted along an edge: stitches of what lies across, rows of a side; nothing of what is eased in by its length. */
function countOf(joint: WorkedJoint['joint'], { rows, stitches: across }: Laid): number {
  const unit = joint.kind === 'seam' ? unitOf[joint.of] : 'stitches';
  return unit === 'rows' ? rows : unit === 'stitches' ? across : 0;
}

export function asDrawn({ stretch: { edge }, part, bits, from, to }: Laid): DrawnEdge {
  if (edge === 'right' || edge === 'left') return { edge, bits };
  const all = endOf(part, edge).stitches;
  return { edge, from: all === 0 ? 0 : from / all, to: all === 0 ? 0 : to / all };
}
