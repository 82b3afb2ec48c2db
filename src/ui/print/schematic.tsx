import './schematic.css';
import type { PieceShape } from '../panel-map/outline-of.ts';
import { clothPath, notchPath, type Point, polyline } from '../panel-map/paths.ts';
import type { PieceMeasure } from '../panel-map/piece-measure.ts';

export interface SchematicProps {
  /** the piece with what is drawn of it */
  readonly label: string;
  readonly shape: PieceShape;
  readonly measures: readonly PieceMeasure[];
  /** what stands beside a measure's line: a length, or a letter that is explained below */
  readonly says: (measure: PieceMeasure) => string;
  /** heights above the cast-on to be marked from edge to edge, mm */
  readonly marksMm?: readonly number[] | undefined;
  /** a sign where it is shaped, as the rows beside it have them */
  readonly notched?: boolean;
}

/** height of the drawing in heights of a letter */
const LETTERS_HIGH = 17;

/** A piece as an outline with its measures, for paper. */
export function Schematic({ label, shape, measures, says, marksMm = [], notched = false }: SchematicProps) {
  const { parts, box } = shape;
  // as large on a band, which is as wide as the drawing can be, as on a panel, which is as high
  const letter = Math.max(box.height, box.width * 1.2) / LETTERS_HIGH;
  // room for the letters: two beside one another at the left, one above, one below
  const view = [
    box.x - 6.4 * letter,
    box.y - 2.2 * letter,
    box.width + 8 * letter,
    box.height + 4.6 * letter,
  ];
  const isParted = measures.some(({ name }) => typeof name !== 'string');
  return (
    <svg
      class="schematic"
      viewBox={view.map((n) => n.toFixed(1)).join(' ')}
      role="img"
      aria-label={label}
      font-size={letter}
    >
      {parts.map((part, i) => (
        <g key={i}>
          <path class="schematic-line" d={clothPath(part)} />
          {notched && <path class="schematic-notch" d={notchPath(part.notches, letter * 0.8)} />}
        </g>
      ))}
      {marksMm.map((mm) => (
        <path key={mm} class="schematic-measure" d={`M${box.x} ${box.y + box.height - mm}h${box.width}`} />
      ))}
      {measures.map((one) => (
        <Measure
          key={one.key}
          one={one}
          label={says(one)}
          letter={letter}
          shift={shiftOf(one, letter, isParted)}
        />
      ))}
    </svg>
  );
}

function Measure({
  one,
  label,
  letter,
  shift,
}: {
  readonly one: PieceMeasure;
  readonly label: string;
  readonly letter: number;
  readonly shift: Point;
}) {
  const move = ([x, y]: Point): Point => [x + shift[0], y + shift[1]];
  const [from, to] = [move(one.from), move(one.to)];
  const isUpright = from[0] === to[0];
  const [x, y] = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const tick = 0.35 * letter;
  const [dx, dy] = isUpright ? [tick, 0] : [0, tick];
  const ends = [from, to].map(([ex, ey]): readonly Point[] => [
    [ex - dx, ey - dy],
    [ex + dx, ey + dy],
  ]);
  return (
    <g>
      <path class="schematic-measure" d={[[from, to], ...ends].map((line) => polyline(line)).join('')} />
      <text
        x={isUpright ? x - 0.45 * letter : x}
        y={isUpright ? y + 0.35 * letter : y - 0.3 * letter}
        text-anchor={isUpright ? 'end' : 'middle'}
      >
        {label}
      </text>
    </g>
  );
}

/** Out of the piece's way: below its beginning, above its top, left of its side; its whole height beside those of its sections. */
function shiftOf({ name, from, to }: PieceMeasure, letter: number, isParted: boolean): Point {
  if (name === 'at its beginning') return [0, 1.5 * letter];
  if (name === 'neck' || name === 'shoulder' || name === 'top') return [0, -0.5 * letter];
  if (name === 'in all' && isParted) return [-3.2 * letter, 0];
  return from[0] === to[0] && name !== 'neck depth' ? [-1.2 * letter, 0] : [0, 0];
}
