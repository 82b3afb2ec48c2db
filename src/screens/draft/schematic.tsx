import type { Draft } from '../../knit/garment/draft.ts';
import type { PieceOutline } from '../../knit/garment/outlines.ts';
import type { Point } from '../../knit/shape/curve.ts';
import { saysLength } from '../../words/measures.ts';
import { say } from '../../words/say.ts';
import { type Label as Drawn, labelsOf } from './drawn-measures.ts';
import { goToFigure } from './go-to-field.ts';
import { saysName } from './says-name.ts';

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
}

const boxOf = (outline: PieceOutline): Box => {
  const points = [...outline.asked, ...outline.made];
  const xs = points.map(([x]) => x);
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.max(...points.map(([, y]) => y)) };
};

/** Every panel to one scale, two beside each other: as knitted, stitch by stitch and row by row, and dashed as asked for. */
export function Schematic({ draft }: { readonly draft: Draft }) {
  const widest = Math.max(1, ...draft.outlines.map((outline) => widthOf(boxOf(outline))));
  return (
    <div class="draft-drawings">
      <div class="draft-pieces">
        {draft.outlines.map((outline) => (
          <PieceDrawing key={outline.piece} outline={outline} widest={widest} draft={draft} />
        ))}
      </div>
      <p class="quiet">
        {say('draft.touchFigure')} {say('draft.asked')}{' '}
        {draft.outlines.some(({ openings }) => openings) && say('draft.opens')}
      </p>
    </div>
  );
}

const widthOf = ({ left, right }: Box): number => right - left;

interface PieceDrawingProps {
  readonly outline: PieceOutline;
  /** mm; of the widest piece */
  readonly widest: number;
  readonly draft: Draft;
}

/** A letter's height as a share of the widest piece, at which it can be read on a phone with two pieces side by side. */
const LETTER = 0.1;
/** Hundredths of the line that the widest piece takes, with its letters. */
const WIDEST = 47;

function PieceDrawing({ outline, widest, draft }: PieceDrawingProps) {
  const { piece, asked, made, openings = [] } = outline;
  const box = boxOf(outline);
  const letter = LETTER * widest;
  const margin = 1.7 * letter;
  const width = widthOf(box) + 2 * margin;
  const size = sizeOf(made);
  const title = say('draft.drawing', {
    piece: saysName(piece),
    width: saysLength(size.width),
    length: saysLength(size.height),
  });
  const put = ([x, y]: Point): Point => [x, box.top - y];
  const view = [box.left - margin, -margin, width, box.top + 2 * margin];
  const share = (WIDEST * width) / (widest + 2 * margin);
  return (
    <figure class="draft-piece" style={{ '--share': share.toFixed(2) }}>
      <figcaption>{saysName(piece)}</figcaption>
      <div role="img" aria-label={title}>
        <svg
          class="draft-drawing"
          viewBox={view.map((n) => n.toFixed(1)).join(' ')}
          aria-hidden="true"
          onClick={goToFigure}
        >
          <path class="draft-made" d={pathOf(made.map(put))} />
          <path class="draft-asked" d={pathOf(asked.map(put))} />
          {openings.map((line) => (
            <path class="draft-opening" key={String(line[0])} d={lineOf(line.map(put))} />
          ))}
          <g class="draft-labels" font-size={letter} text-anchor="middle">
            {labelsOf(piece, draft, { ...box, length: size.height, letter }).map((label) => (
              <Label key={label.text + label.at} {...label} at={put(label.at)} />
            ))}
          </g>
        </svg>
      </div>
    </figure>
  );
}

/** As made; beside it (along a height) or below it what was asked, where that is another figure. */
function Label({ at: [x, y], text, asked, upright, to }: Drawn) {
  return (
    <text x={x} y={y} data-to={to} transform={upright ? `rotate(-90 ${x} ${y})` : undefined}>
      {text}
      {asked && (
        <tspan class="draft-wish" {...(upright ? { dx: '0.3em' } : { x, dy: '1em' })}>
          ({asked})
        </tspan>
      )}
    </text>
  );
}

const sizeOf = (points: readonly Point[]): { readonly width: number; readonly height: number } => {
  const xs = points.map(([x]) => x);
  return { width: Math.max(...xs) - Math.min(...xs), height: Math.max(...points.map(([, y]) => y)) };
};

const lineOf = (points: readonly Point[]): string =>
  points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`).join('');

const pathOf = (points: readonly Point[]): string => `${lineOf(points)}Z`;

/** All panels side by side, small, for the foot of the screen: it changes with every figure. */
export function SmallSchematic({ draft }: { readonly draft: Draft }) {
  const boxes = draft.outlines.map(boxOf);
  const gap = 40;
  const width = boxes.reduce((sum, box) => sum + box.right - box.left + gap, -gap);
  const height = Math.max(...boxes.map((box) => box.top));
  let at = 0;
  const paths = draft.outlines.map((outline, i) => {
    const box = boxes[i] ?? { left: 0, right: 0, top: 0 };
    const from = at - box.left;
    at += box.right - box.left + gap;
    return pathOf(outline.made.map(([x, y]): Point => [x + from, height - y]));
  });
  return (
    <svg class="draft-small" viewBox={`0 0 ${Math.round(width)} ${Math.round(height)}`} aria-hidden="true">
      {paths.map((d, i) => (
        <path class="draft-made" key={draft.outlines[i]?.piece} d={d} />
      ))}
    </svg>
  );
}
