import { useMemo } from 'preact/hooks';
import { endOf } from '../../knit/making-up/boundary.ts';
import type { Laid } from '../../knit/making-up/boundary-of.ts';
import type { WorkedJoint } from '../../knit/making-up/work-making-up.ts';
import type { PlannedPart } from '../../knit/piece/planned.ts';
import type { StandingGarment } from '../../knit/piece/standing.ts';
import { type DrawnEdge, edgePath, edgeRuns, middleOf } from '../../ui/panel-map/edge-line.ts';
import { type PieceShape, shapeOfPiece } from '../../ui/panel-map/outline-of.ts';
import { clothPath } from '../../ui/panel-map/paths.ts';
import { saysList } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';

interface Props {
  readonly joints: readonly WorkedJoint[];
  /** what is done already */
  readonly sewn: readonly WorkedJoint[];
  readonly garment: Pick<StandingGarment, 'pieces'>;
}

interface DrawnPiece {
  readonly name: string;
  readonly parts: readonly PlannedPart[];
  readonly shape: PieceShape;
  readonly edges: readonly { readonly laid: Laid; readonly sign: string; readonly isSewn: boolean }[];
}

/** The pieces of a step to one scale, with the edges that are joined in it; edges of one seam have one letter. */
export function JoinedEdges({ joints, sewn, garment }: Props) {
  const pieces = useMemo(() => drawnPieces(joints, sewn, garment), [joints, sewn, garment]);
  if (pieces.length === 0) return null;
  const names = pieces.map(({ name }) => name);
  const wide = pieces.reduce((sum, { shape }) => sum + shape.box.width, 0);
  const high = Math.max(...pieces.map(({ shape }) => shape.box.height));
  const letter = Math.max(wide / LETTERS_WIDE, high / LETTERS_HIGH);
  return (
    <div
      class="joined"
      role="img"
      aria-label={say('makingUp.drawn', { pieces: saysList([...new Set(names)]) })}
    >
      {pieces.map((piece, i) => (
        <div class="joined-piece" key={i} style={{ flexGrow: piece.shape.box.width + 2 * letter }}>
          <PieceEdges piece={piece} letter={letter} high={high} />
          <span>{piece.name}</span>
        </div>
      ))}
    </div>
  );
}

/** The drawings together, in heights of a letter: as wide as a phone's column, and no higher than half of it. */
const LETTERS_WIDE = 24;
const LETTERS_HIGH = 13;

interface PieceEdgesProps {
  readonly piece: DrawnPiece;
  /** mm; the tallest piece's height too, so that all stand on one line */
  readonly letter: number;
  readonly high: number;
}

function PieceEdges({ piece: { parts, shape, edges }, letter, high }: PieceEdgesProps) {
  const { box } = shape;
  const view = [
    box.x - letter,
    box.y + box.height - high - letter,
    box.width + 2 * letter,
    high + 2 * letter,
  ];
  const drawn = edges.map(({ laid, sign, isSewn }) => {
    const own = shape.parts[parts.indexOf(laid.part)];
    return { sign, isSewn, runs: own ? edgeRuns(own, asDrawn(laid)) : [] };
  });
  return (
    <svg viewBox={view.map((n) => n.toFixed(1)).join(' ')} aria-hidden="true">
      {shape.parts.map((part, i) => (
        <path class="joined-cloth" key={parts[i]?.name} d={clothPath(part)} />
      ))}
      {drawn.map(({ runs, isSewn }, i) => (
        <path class={isSewn ? 'joined-sewn' : 'joined-edge'} key={i} d={edgePath(runs)} />
      ))}
      {signsOf(drawn, letter).map(({ sign, x, y }) => (
        <text
          class="joined-sign"
          key={`${sign} ${x} ${y}`}
          x={x}
          y={y + 0.35 * letter}
          font-size={letter}
          text-anchor="middle"
        >
          {sign}
        </text>
      ))}
    </svg>
  );
}

/** One letter for a run of stretches that belong to the same line. */
function signsOf(drawn: readonly { sign: string; runs: ReturnType<typeof edgeRuns> }[], letter: number) {
  const bySign = new Map<string, ReturnType<typeof edgeRuns>>();
  for (const { sign, runs } of drawn)
    if (sign !== '') bySign.set(sign, [...(bySign.get(sign) ?? []), ...runs]);
  const found: { readonly sign: string; readonly x: number; readonly y: number }[] = [];
  for (const [sign, runs] of bySign) {
    const at = middleOf(runs);
    if (!at) continue;
    const [x] = at;
    let [, y] = at;
    // edges that meet in a corner would have their letters on top of each other
    while (found.some((one) => Math.abs(one.x - x) < letter && Math.abs(one.y - y) < letter)) y += letter / 4;
    found.push({ sign, x, y });
  }
  return found;
}

export function asDrawn({ stretch: { edge }, part, bits, from, to }: Laid): DrawnEdge {
  if (edge === 'right' || edge === 'left') return { edge, bits };
  const all = endOf(part, edge).stitches;
  return { edge, from: all === 0 ? 0 : from / all, to: all === 0 ? 0 : to / all };
}

function drawnPieces(
  joints: readonly WorkedJoint[],
  sewn: readonly WorkedJoint[],
  { pieces }: Pick<StandingGarment, 'pieces'>,
): readonly DrawnPiece[] {
  const edges = [
    ...sewn.filter((one) => !joints.includes(one)).flatMap((one) => edgesOf(one, '', true)),
    ...joints.flatMap((one) => edgesOf(one, signOf(one, joints), false)),
  ];
  return pieces.flatMap(({ recipe, makes }) =>
    makes.flatMap(({ make, parts }): DrawnPiece[] => {
      const own = edges.filter(
        ({ laid: { stretch } }) => stretch.piece === recipe.name && stretch.make === make,
      );
      if (!own.some(({ isSewn }) => !isSewn)) return [];
      return [{ name: recipe.name, parts, shape: shapeOfPiece(parts), edges: own }];
    }),
  );
}

const edgesOf = ({ lines }: WorkedJoint, sign: string, isSewn: boolean) =>
  lines.flatMap(({ laid }) => laid.map((own) => ({ laid: own, sign, isSewn })));

/** Seams of one step are told apart by letters; a single one needs none. */
function signOf(one: WorkedJoint, joints: readonly WorkedJoint[]): string {
  const seams = joints.filter(({ joint }) => joint.kind === 'seam');
  const at = seams.indexOf(one);
  return seams.length < 2 || at < 0 ? '' : String.fromCharCode('A'.charCodeAt(0) + at);
}
