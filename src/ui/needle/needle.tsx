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

/** The stitches that rest when a part is done: on a pin as knitters use it, its coil at one end and its clasp at the other. */
export function Holder({ left, right, y, pixel }: Omit<NeedleProps, 'from' | 'out'>) {
  const half = (right - left) / 2 / pixel + 8;
  return (
    <g class="needle" transform={`translate(${(left + right) / 2} ${y})scale(${pixel})`}>
      <path class="needle-way" d={`M${half} 0H${-half}a7 7 0 1 1 6 -11l-3 -1H${half}`} />
      <path d={`M${half - 5} 3v-18h4a9 9 0 0 1 0 18z`} />
    </g>
  );
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
