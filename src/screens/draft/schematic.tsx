import type { Draft } from '../../knit/garment/draft.ts';
import type { PieceOutline } from '../../knit/garment/outlines.ts';
import type { Point } from '../../knit/shape/curve.ts';
import { saysLength } from '../../words/measures.ts';
import { say } from '../../words/say.ts';
import { saysName } from './says-name.ts';

/** Drawing units of a piece's own picture; its text has the size of the page's small text at a phone's width. */
const WIDTH = 340;
const MOST_HEIGHT = 380;
const MARGIN = { side: 40, above: 26, below: 26 } as const;

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

/** mm to drawing units, the same for every piece. */
function scaleOf(outlines: readonly PieceOutline[]): number {
  const boxes = outlines.map(boxOf);
  const widest = Math.max(...boxes.map((box) => box.right - box.left));
  const tallest = Math.max(...boxes.map((box) => box.top));
  return Math.min((WIDTH - 2 * MARGIN.side) / widest, MOST_HEIGHT / tallest);
}

/** Every panel to one scale: as knitted, stitch by stitch and row by row, and dashed as asked for. */
export function Schematic({ draft }: { readonly draft: Draft }) {
  const scale = scaleOf(draft.outlines);
  return (
    <div class="draft-pieces">
      {draft.outlines.map((outline) => (
        <PieceDrawing key={outline.piece} outline={outline} scale={scale} draft={draft} />
      ))}
      <p class="quiet">
        {say('draft.drawingsOf')}; {say('draft.asked')}
      </p>
    </div>
  );
}

interface PieceDrawingProps {
  readonly outline: PieceOutline;
  readonly scale: number;
  readonly draft: Draft;
}

function PieceDrawing({ outline, scale, draft }: PieceDrawingProps) {
  const { piece, asked, made } = outline;
  const box = boxOf(outline);
  const width = WIDTH;
  const height = box.top * scale + MARGIN.above + MARGIN.below;
  const middle = (box.left + box.right) / 2;
  const put = ([x, y]: Point): Point => [
    width / 2 + (x - middle) * scale,
    MARGIN.above + (box.top - y) * scale,
  ];
  const size = sizeOf(made);
  const title = say('draft.drawing', {
    piece: saysName(piece),
    width: saysLength(size.width),
    length: saysLength(size.height),
  });
  return (
    <figure class="draft-piece">
      <figcaption>{saysName(piece)}</figcaption>
      <svg class="draft-drawing" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={title}>
        <path class="draft-made" d={pathOf(made.map(put))} />
        <path class="draft-asked" d={pathOf(asked.map(put))} />
        <Labels draft={draft} piece={piece} put={put} box={box} size={size} />
      </svg>
    </figure>
  );
}

const sizeOf = (points: readonly Point[]): { readonly width: number; readonly height: number } => {
  const xs = points.map(([x]) => x);
  return { width: Math.max(...xs) - Math.min(...xs), height: Math.max(...points.map(([, y]) => y)) };
};

const pathOf = (points: readonly Point[]): string =>
  `${points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`).join('')}Z`;

interface LabelsProps {
  readonly draft: Draft;
  readonly piece: string;
  readonly put: (point: Point) => Point;
  readonly box: Box;
  readonly size: { readonly width: number; readonly height: number };
}

/** The measures that a knitter looks for first: across the bottom and the top, and up the side. */
function Labels({ draft, piece, put, box, size }: LabelsProps) {
  const of = (measure: string): number | undefined =>
    draft.roundings.find((r) => r.measure === measure)?.madeMm;
  const isSleeve = piece === 'Sleeve';
  const bottom = isSleeve ? of('cuff width') : undefined;
  const body =
    piece === 'Back'
      ? of('width at the underarm')
      : piece === 'Front'
        ? of('front width at the underarm')
        : undefined;
  const across = isSleeve ? of('sleeve width') : piece === 'Back' ? of('neck width') : undefined;
  const middle = (box.left + box.right) / 2;
  const [x0, y0] = put([middle, 0]);
  const [, y1] = put([middle, box.top]);
  const [left] = put([box.left, 0]);
  return (
    <g class="draft-labels">
      {bottom !== undefined && (
        <text x={x0} y={y0 + 18} text-anchor="middle">
          {saysLength(bottom)}
        </text>
      )}
      {body !== undefined && (
        <text x={x0} y={(y0 + y1) / 2 + 24} text-anchor="middle">
          {`↔ ${saysLength(body)}`}
        </text>
      )}
      {across !== undefined && (
        <text x={x0} y={y1 - 10} text-anchor="middle">
          {saysLength(across)}
        </text>
      )}
      <text
        x={left - 8}
        y={(y0 + y1) / 2}
        text-anchor="middle"
        transform={`rotate(-90 ${left - 8} ${(y0 + y1) / 2})`}
      >
        {saysLength(size.height)}
      </text>
    </g>
  );
}

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
