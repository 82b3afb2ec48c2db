import { useMemo } from 'preact/hooks';
import type { PlannedPart } from '../../knit/piece/planned.ts';
import { saysLength } from '../../words/measures.ts';
import { say } from '../../words/say.ts';
import { shapeOfPiece } from '../panel-map/outline-of.ts';
import { clothPath, notchPath } from '../panel-map/paths.ts';

export interface SchematicProps {
  /** the piece's name */
  readonly label: string;
  readonly parts: readonly PlannedPart[];
  /** heights above the cast-on to be marked at both edges, mm */
  readonly marksMm?: readonly number[] | undefined;
}

/** height of the drawing on paper, in letter heights */
const LETTERS_HIGH = 19;

/** The piece as an outline with its measures, for paper. Needs the catalogue 'print'. */
export function Schematic({ label, parts, marksMm = [] }: SchematicProps) {
  const { parts: shapes, box } = useMemo(() => shapeOfPiece(parts), [parts]);
  const letter = Math.max(box.height, box.width * 0.7) / LETTERS_HIGH;
  const first = shapes[0]?.rows[0];
  const [left, bottom] = [box.x, box.y + box.height];
  const castOn = first ? first.right0 - first.left0 : 0;
  const measures = say('print.measures', {
    width: saysLength(box.width),
    height: saysLength(box.height),
    castOn: saysLength(castOn),
  });
  const view = [left - 6 * letter, box.y - letter, box.width + 7 * letter, box.height + 4 * letter];
  return (
    <svg
      class="schematic"
      viewBox={view.map((n) => n.toFixed(1)).join(' ')}
      role="img"
      aria-label={`${label}: ${measures}`}
    >
      {shapes.map((shape, i) => (
        <g key={parts[i]?.name}>
          <path class="schematic-line" d={clothPath(shape)} />
          <path class="schematic-notch" d={notchPath(shape.notches, letter * 0.8)} />
        </g>
      ))}
      {marksMm.map((mm) => (
        <path key={mm} class="schematic-measure" d={`M${left} ${bottom - mm}h${box.width}`} />
      ))}
      <path class="schematic-measure" d={`M${left - letter} ${box.y}V${bottom}`} />
      <text x={left - 1.4 * letter} y={box.y + box.height / 2} font-size={letter} text-anchor="end">
        {saysLength(box.height)}
      </text>
      {first && (
        <>
          <path class="schematic-measure" d={`M${first.left0} ${bottom + letter}H${first.right0}`} />
          <text
            x={(first.left0 + first.right0) / 2}
            y={bottom + 2.4 * letter}
            font-size={letter}
            text-anchor="middle"
          >
            {saysLength(castOn)}
          </text>
        </>
      )}
    </svg>
  );
}
