import './lap-window.css';
import { useId, useMemo } from 'preact/hooks';
import type { PlannedPart, PlannedRow } from '../../knit/piece/planned.ts';
import { saysNumber } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { Needle } from '../needle/needle.tsx';
import { type PartShape, shapeOfPart } from '../panel-map/outline-of.ts';
import { clothPath } from '../panel-map/paths.ts';
import { tileOf, turnedOver } from '../panel-map/texture.ts';
import { type LapMark, type LapRow, type LapView, lap, lapView } from './geometry.ts';
import { useWhole } from './use-whole.ts';

export interface LapWindowProps {
  readonly part: PlannedPart;
  /** the row on the needle */
  readonly row: PlannedRow;
  /** what it shows, in words */
  readonly label: string;
  /** it was touched */
  readonly onPress: () => void;
}

/**
 * The work as it lies in her lap: the side that faces her, the needle in the left hand with the yarn at the end where the
 * row begins, the cloth below it, and the next shaping rows above. A hand's-breadth of it: the whole lies on the map.
 */
export function LapWindow({ part, row, label, onPress }: LapWindowProps) {
  const shape = useMemo(() => shapeOfPart(part), [part]);
  const view = lapView(part, shape, row);
  return (
    <button ref={useWhole()} class="lap" type="button" onClick={onPress}>
      <span class="spoken">{label}</span>
      <svg class="lap-svg" viewBox={`0 0 ${lap.width} ${lap.height}`} aria-hidden="true">
        <Cloth part={part} shape={shape} view={view} />
        <Ahead view={view} isLast={row.n === part.rows.length} />
        <Needle {...view.now} from="right" pixel={1} out={Math.min(14, view.now.left - 8)} />
        <Marks of={view.now} />
      </svg>
    </button>
  );
}

interface ClothProps {
  readonly part: PlannedPart;
  readonly shape: PartShape;
  readonly view: LapView;
}

/** Drawn once for either side; a row moves it. What lies above the needle, or below the window, is cut off: there stand words. */
function Cloth({ part, shape, view: { turned, scale, middle, needle } }: ClothProps) {
  const id = useId();
  const drawn = useMemo(
    () => clothOf({ part, shape, turned, pixelMm: 1 / scale, id }),
    [part, shape, turned, scale],
  );
  const flip = turned ? -scale : scale;
  return (
    <>
      <clipPath id={`${id}-below`}>
        <rect y={lap.needleY} width={lap.width} height={lap.height - lap.needleY} />
      </clipPath>
      <g clip-path={`url(#${id}-below)`}>
        <g
          transform={`translate(${lap.width / 2} ${lap.needleY})scale(${flip} ${scale})translate(${-middle} ${-needle})`}
        >
          {drawn}
        </g>
      </g>
    </>
  );
}

interface ClothWish extends Omit<ClothProps, 'view'> {
  readonly turned: boolean;
  /** mm that a px stands for */
  readonly pixelMm: number;
  readonly id: string;
}

function clothOf({ part, shape, turned, pixelMm, id }: ClothWish) {
  const pieces = part.sections.flatMap(({ fabric, first, last }, i) => {
    const d = clothPath(shape, first, last);
    const cell = part.cells[i];
    const face = turned ? turnedOver(fabric) : fabric;
    return d && cell ? [{ d, tile: tileOf(face, cell, 5.5 * pixelMm), key: `${id}-${i}` }] : [];
  });
  return (
    <>
      {pieces.map(({ d, tile, key }) => (
        <g key={key}>
          <pattern id={key} patternUnits="userSpaceOnUse" width={tile.width} height={tile.height}>
            <path class="map-loop-worked" d={tile.d} stroke-width={pixelMm} />
          </pattern>
          <path class="map-worked" d={d} />
          <path d={d} fill={`url(#${key})`} />
        </g>
      ))}
      <path class="map-outline" d={clothPath(shape)} />
    </>
  );
}

/** Not yet there: the edges as they will go, and where the next shaping rows lie, with their numbers. */
function Ahead({ view: { now, ahead }, isLast }: { readonly view: LapView; readonly isLast: boolean }) {
  if (isLast) return null;
  const last = ahead.at(-1) ?? now;
  const edge = (x: (row: LapRow) => number) =>
    `M${[now, ...ahead].map((row) => `${x(row)} ${row.y}`).join('L')}L${x(last)} ${Math.max(3, last.y - 14)}`;
  return (
    <>
      <path class="lap-coming" d={edge(({ left }) => left) + edge(({ right }) => right)} />
      {ahead.map((row, i) => (
        <g key={row.n}>
          <path class="lap-mark-coming" d={row.marks.map(({ d }) => d).join('')} />
          <text class={numberClass(row)} x={row.number} y={row.y} text-anchor="middle">
            {i === 0 ? say('lap.rowNo', { row: row.n }) : saysNumber(row.n)}
          </text>
        </g>
      ))}
    </>
  );
}

const numberClass = ({ isRoomy }: LapRow): string =>
  isRoomy ? 'lap-number lap-number-between' : 'lap-number';

const Marks = ({ of }: { readonly of: LapRow }) => (
  <path class="lap-mark" d={of.marks.map(({ d }: LapMark) => d).join('')} />
);
