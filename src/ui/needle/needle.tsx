import './needle.css';

export interface NeedleProps {
  /** x of the edges as they are drawn, and the height at which it lies */
  readonly left: number;
  readonly right: number;
  readonly y: number;
  /** the edge at which the next row begins, as it is drawn; undefined where no row is left */
  readonly from: 'left' | 'right' | undefined;
  /** what a CSS pixel is in the drawing */
  readonly pixel: number;
  /** px that it may reach beyond an edge; 14 where there is room */
  readonly out?: number;
}

/**
 * The needle as she holds it: its knob in the hand where the row ends, its point where the row begins; there hangs the
 * yarn, and the arrow says which way the row runs. Drawn the same on every drawing of the work.
 */
export function Needle({ left, right, y, from, pixel, out = 14 }: NeedleProps) {
  const half = (right - left) / 2 / pixel;
  const run = Math.min(34, half / 2);
  const way = from === 'left' ? -pixel : pixel;
  return (
    <g class="needle" transform={`translate(${(left + right) / 2} ${y})scale(${way} ${pixel})`}>
      {from && <path class="needle-yarn" d={`M${half} 0c34 4 8 22 20 44`} />}
      <path d={`M${-half - out} 0H${half + 14}`} />
      <circle cx={-half - out} r={4} />
      {from && <path class="needle-way" d={`M${run} 25h${-2 * run}l9 -7m-9 7l9 7`} />}
    </g>
  );
}
