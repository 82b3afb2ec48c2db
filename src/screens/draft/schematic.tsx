import { useMemo, useRef } from 'preact/hooks';
import type { Draft } from '../../knit/garment/draft.ts';
import type { Point } from '../../knit/shape/curve.ts';
import { say } from '../../words/say.ts';
import { speech } from '../../words/settings.ts';
import { type RoomOnPage, useRoom } from '../use-room.ts';
import { type EdgeName, farFrom, garmentDrawn } from './garment-drawn.ts';
import { goToEdge, goToField } from './go-to-field.ts';
import { type Drawing, drawingOf, type Figure } from './place-figures.ts';
import { saysName } from './says-name.ts';

interface SchematicProps {
  /** undefined while it comes: the drawing's place stands before it */
  readonly draft: Draft | undefined;
  /** edges whose fields stand open */
  readonly open: ReadonlySet<string>;
}

/** in the root's size: from this width on the drawing may be as high, and a share of the window at most */
const WIDE = 30;
const SHARE = 0.62;

const tallOf = ({ width, height, em }: RoomOnPage): number =>
  width < WIDE * em ? 0 : Math.min(WIDE * em, SHARE * height);

/** On its side a phone has it beside the form, whole below the two lines that say what to touch. */
const lowOf = ({ height, em }: RoomOnPage): number | undefined =>
  matchMedia('(min-width: 44rem) and (max-height: 32rem)').matches ? height - 8 * em : undefined;

/**
 * The garment to scale, as knitted stitch by stitch and row by row, and dashed as asked for: touching an edge opens what
 * shapes it, touching a figure the field it is typed in. Keys and readers have the same in the form below, in its order.
 */
export function Schematic({ draft, open }: SchematicProps) {
  const frame = useRef<HTMLDivElement>(null);
  const room = useRoom(frame);
  // speech: the figures' words and units
  const drawing = useMemo(
    () => room && draft && drawingOf(draft, { ...room, tall: tallOf(room), low: lowOf(room) }),
    [draft, room, speech.value],
  );
  return (
    <>
      <div class="draft-frame" ref={frame}>
        {drawing && <Drawn drawing={drawing} open={open} />}
      </div>
      {drawing && drawing.garment.openings.length > 0 && <p class="quiet">{say('draft.opens')}</p>}
    </>
  );
}

interface DrawnProps {
  readonly drawing: Drawing;
  readonly open: ReadonlySet<string>;
}

function Drawn({ drawing, open }: DrawnProps) {
  const { garment, put, width, height } = drawing;
  const line = (points: readonly Point[]) => lineOf(points.map(put));
  return (
    <>
      <svg
        class="draft-drawing"
        width={width}
        height={height}
        viewBox={`0 0 ${width} ${height.toFixed(1)}`}
        aria-hidden="true"
        onClick={(event) => touched(event, drawing)}
      >
        {garment.cloth.map((points, i) => (
          <path class="draft-made" key={i} d={`${line(points)}Z`} />
        ))}
        {garment.asked.map((points, i) => (
          <path class="draft-asked" key={i} d={`${line(points)}Z`} />
        ))}
        {garment.edges.map(({ name, line: points }, i) => (
          <path
            class={open.has(name) ? 'draft-edge draft-edge-open' : 'draft-edge'}
            key={i}
            d={line(points)}
            data-edge-line={name}
          />
        ))}
        {garment.openings.map((points, i) => (
          <Slit key={i} d={line(points)} />
        ))}
      </svg>
      {drawing.figures.map((figure) => (
        <FigureKey key={figure.to} figure={figure} letters={drawing.letters} />
      ))}
    </>
  );
}

/** Where it opens: its two edges, a double line, since an edge whose fields stand open is a thick one. */
function Slit({ d }: { readonly d: string }) {
  return (
    <>
      <path class="draft-opening" d={d} />
      <path class="draft-opening draft-opening-gap" d={d} />
    </>
  );
}

/** As made; below it what was asked, where that is another figure. */
function FigureKey({
  figure: { to, measure, made, asked, x, y, wide, high },
  letters,
}: {
  readonly figure: Figure;
  readonly letters: number;
}) {
  const style = {
    '--letters': `${letters}px`,
    left: `${x - wide / 2}px`,
    top: `${y - high / 2}px`,
    width: `${wide}px`,
    height: `${high}px`,
  };
  return (
    <button type="button" class="draft-figure" style={style} data-to={to} onClick={() => goToField(to)}>
      <span>
        <span class="spoken">{saysName(measure)} </span>
        {made}
        {asked && <small>{asked}</small>}
      </span>
    </button>
  );
}

/** px around an edge within which a finger means it */
const REACH_PX = 44;

/** The edge that lies nearest to the finger. */
export function edgeAt(at: Point, { garment, put }: Pick<Drawing, 'garment' | 'put'>): EdgeName | undefined {
  let best: { readonly far: number; readonly name: EdgeName | undefined } = {
    far: REACH_PX,
    name: undefined,
  };
  for (const { name, line } of garment.edges) {
    const far = farFrom(at, line.map(put));
    if (far < best.far) best = { far, name };
  }
  return best.name;
}

function touched(event: MouseEvent, drawing: Drawing): void {
  const { left, top } = (event.currentTarget as Element).getBoundingClientRect();
  const name = edgeAt([event.clientX - left, event.clientY - top], drawing);
  if (name) goToEdge(name);
}

const lineOf = (points: readonly Point[]): string =>
  points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`).join('');

/** mm between body and sleeve where the drawing is small */
const GAP_MM = 40;

/** The same, small, for the foot of the screen: it changes with every figure. */
export function SmallSchematic({ draft }: { readonly draft: Draft }) {
  const { width, height, cloth } = garmentDrawn(draft, GAP_MM);
  return (
    <svg class="draft-small" viewBox={`0 0 ${width.toFixed(0)} ${height.toFixed(0)}`} aria-hidden="true">
      {cloth.map((points, i) => (
        <path class="draft-made" key={i} d={`${lineOf(points)}Z`} />
      ))}
    </svg>
  );
}
