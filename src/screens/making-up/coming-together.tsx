import { useMemo, useRef } from 'preact/hooks';
import type { MakingUp } from '../../knit/making-up/making-up.ts';
import type { MakingUpStep } from '../../knit/making-up/step.ts';
import type { StandingGarment } from '../../knit/piece/standing.ts';
import { edgePath, middleOf } from '../../ui/panel-map/edge-line.ts';
import { clothPath, type Point } from '../../ui/panel-map/paths.ts';
import { Shows } from '../../ui/screen/shows.tsx';
import { saysLength } from '../../words/measures.ts';
import { say } from '../../words/say.ts';
import { USUAL, useRoom } from '../use-room.ts';
import { drawn, type Edge } from './draw-together.ts';
import { boundsOf, type LaidPiece } from './lay-garment.ts';
import { saysStep } from './says-step.ts';

interface Props {
  readonly made: MakingUp;
  readonly garment: StandingGarment;
  /** ids of the steps that are done */
  readonly ticked: ReadonlySet<string>;
  readonly inHand: MakingUpStep | undefined;
  /** whether a make of a piece is knitted to its end */
  readonly isKnitted: (piece: string, make: number) => boolean;
  readonly onStep: (id: string) => void;
}

const names = { sewn: 'makingUp.sewn', hand: 'makingUp.hand', open: 'makingUp.open' } as const;

/** The garment as it comes together: what is sewn lies edge to edge, what is in hand has its counts. The steps in words stand below. */
export function ComingTogether({ made, garment, ticked, inHand, isKnitted, onStep }: Props) {
  const frame = useRef<HTMLDivElement>(null);
  const room = useRoom(frame) ?? USUAL;
  const { laid, edges, letter, view } = useMemo(
    () => drawn(made, garment, ticked, inHand?.id, room),
    [made, garment, ticked, inHand, room],
  );
  if (laid.length === 0) return null;
  const isThere = ({ name, make }: LaidPiece) => isKnitted(name, make);
  const lookOf = (piece: LaidPiece) =>
    `${isThere(piece) ? '' : ' together-unknit'}${isBlocked(piece, inHand) ? ' together-hand' : ''}`;
  const done = made.steps.filter(({ id }) => ticked.has(id)).length;
  const title = say('makingUp.drawn', { done, all: made.steps.length });
  const named = inHand ? `${title} ${say('makingUp.drawnInHand', { step: saysStep(inHand).title })}` : title;
  return (
    <figure class="together">
      <Shows what="together" />
      <div role="img" aria-label={named} ref={frame}>
        <svg
          viewBox={[view.x, view.y, view.width, view.height].map((n) => n.toFixed(1)).join(' ')}
          aria-hidden="true"
        >
          {laid.map((piece) => (
            <Cloth key={`${piece.name} ${piece.make}`} piece={piece} look={lookOf(piece)} />
          ))}
          {edges.map(({ step, piece, state, runs }, i) => (
            // biome-ignore lint/a11y/noStaticElementInteractions: for the finger; keys and readers have the thread below
            <g key={i} onClick={() => onStep(step)}>
              <path class="join-touch" d={edgePath(runs)} />
              <path
                class={`together-${state}${state === 'open' && !isThere(piece) ? ' together-faint' : ''}`}
                d={edgePath(runs)}
              />
              {state === 'sewn' && <path class="together-stitches" d={stitches(runs, letter)} />}
            </g>
          ))}
          <g class="together-count" font-size={letter} text-anchor="middle">
            {countsOf(edges, letter).map(({ text, at: [x, y] }) => (
              <text key={`${x} ${y}`} x={x} y={y + 0.35 * letter}>
                {text}
              </text>
            ))}
            {laid
              .filter((piece) => isBlocked(piece, inHand))
              .map((piece) => (
                <Size key={piece.make} piece={piece} step={inHand} letter={letter} />
              ))}
          </g>
        </svg>
      </div>
      <figcaption class="together-key">
        {(['sewn', 'hand', 'open'] as const).map((state) => (
          <span key={state}>
            <svg viewBox="0 0 28 10" aria-hidden="true">
              {state === 'open' && <path class="together-lies" d="M1 5H27V10H1z" />}
              <path class={`together-${state}`} d="M1 5H27" />
              {state === 'sewn' && (
                <path
                  class="together-stitches"
                  d={stitches(
                    [
                      [
                        [1, 5],
                        [27, 5],
                      ],
                    ],
                    KEY_LETTER,
                  )}
                />
              )}
            </svg>
            {say(names[state])}
          </span>
        ))}
        {laid.some((piece) => !isThere(piece)) && (
          <span>
            <svg viewBox="0 0 28 10" aria-hidden="true">
              <path class="together-cloth together-unknit" d="M1 1H27V9H1z" />
            </svg>
            {say('makingUp.pieceOpen')}
          </span>
        )}
      </figcaption>
    </figure>
  );
}

function Cloth({ piece, look }: { readonly piece: LaidPiece; readonly look: string }) {
  const { shape, turn, at } = piece;
  const { x, y, width, height } = shape.box;
  const move = `translate(${at.map((n) => n.toFixed(1)).join(' ')}) rotate(${turn}) translate(${(-x - width / 2).toFixed(1)} ${(-y - height / 2).toFixed(1)})`;
  return (
    <g transform={move}>
      {shape.parts.map((part, i) => (
        <path class={`together-cloth${look}`} key={i} d={clothPath(part)} />
      ))}
    </g>
  );
}

/** What a piece is pinned out to. Where letters are large it would lie over the outline: the card below says it too. */
function Size({
  piece,
  step,
  letter,
}: {
  readonly piece: LaidPiece;
  readonly step: MakingUpStep | undefined;
  readonly letter: number;
}) {
  if (step?.kind !== 'block') return null;
  const [x, y] = piece.at;
  const lines = [`↔ ${saysLength(step.widthMm)}`, `↕ ${saysLength(step.heightMm)}`];
  const { left, right } = boundsOf(piece);
  if (Math.max(...lines.map(({ length }) => length)) * SIGN * letter > right - left) return null;
  return (
    <>
      {lines.map((line, i) => (
        <text key={line} x={x} y={y + 1.2 * i * letter}>
          {line}
        </text>
      ))}
    </>
  );
}

/** In the key as in the drawing: apart enough to be stitches across, not the dashes of what is not yet sewn. */
const KEY_LETTER = 12;

/** How wide a bold sign is, of its letter's height. */
const SIGN = 0.62;

const isBlocked = ({ name, make }: LaidPiece, step: MakingUpStep | undefined): boolean =>
  step?.kind === 'block' && step.piece === name && (step.nos?.includes(make) ?? true);

/** The numbers of what is in hand, each inside its own piece, none on another. */
function countsOf(edges: readonly Edge[], letter: number) {
  const found: { readonly text: string; readonly at: Point }[] = [];
  for (const { state, count, runs, middle } of edges) {
    const on = middleOf(runs);
    if (state !== 'hand' || count === 0 || !on) continue;
    const [from, to] = [runs[0]?.[0] ?? on, runs.at(-1)?.at(-1) ?? on];
    const long = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
    // across the edge, to the side on which its cloth lies
    const [nx, ny] = [(to[1] - from[1]) / long, (from[0] - to[0]) / long];
    const side = nx * (middle[0] - on[0]) + ny * (middle[1] - on[1]) < 0 ? -1 : 1;
    const at: Point = [on[0] + 1.3 * letter * side * nx, on[1] + 0.9 * letter * side * ny];
    const isFree = found.every(
      (one) => Math.abs(one.at[0] - at[0]) > 2 * letter || Math.abs(one.at[1] - at[1]) > letter,
    );
    if (isFree) found.push({ text: String(count), at });
  }
  return found;
}

/** Short stitches across what is sewn. */
function stitches(runs: readonly (readonly Point[])[], letter: number): string {
  const [step, half] = [0.8 * letter, 0.28 * letter];
  let path = '';
  for (const run of runs) {
    let left = step / 2;
    run.slice(1).forEach(([x1, y1], i) => {
      const [x0, y0] = run[i] ?? [x1, y1];
      const long = Math.hypot(x1 - x0, y1 - y0);
      const [ux, uy] = [(x1 - x0) / (long || 1), (y1 - y0) / (long || 1)];
      for (; left <= long; left += step) {
        const [x, y] = [x0 + left * ux, y0 + left * uy];
        path += `M${(x - half * uy).toFixed(1)} ${(y + half * ux).toFixed(1)}L${(x + half * uy).toFixed(1)} ${(y - half * ux).toFixed(1)}`;
      }
      left -= long;
    });
  }
  return path;
}
