import './stripes-drawn.css';
import type { PlannedPart } from '../../knit/piece/planned.ts';
import { shapeOfPiece } from '../../ui/panel-map/outline-of.ts';
import { rowPath } from '../../ui/panel-map/paths.ts';

/** The colour of a row of a part; undefined where it has none. */
export type Colours = (part: PlannedPart) => (row: number) => string | undefined;

interface StripesDrawnProps {
  readonly parts: readonly PlannedPart[];
  readonly colours: Colours;
  /** the same in every piece of a garment; by their first rows unless said */
  readonly order?: readonly string[];
}

/** How dark each is: what a colour is called is hers, and no paint. More of them begin anew. */
const TONES = [0, 0.55, 0.25, 0.8, 0.4];

/** Stripes over a piece's drawing, a tone for each colour. */
export function StripesDrawn({ parts, colours, order }: StripesDrawnProps) {
  const tone = tonesOf(parts, colours, order);
  return (
    <g class="stripes" fill="currentColor" shape-rendering="crispEdges">
      {shapeOfPiece(parts).parts.map(({ rows }, i) => {
        const colour = colours(parts[i] as PlannedPart);
        return rows.map((row, at) => (
          <path key={`${i} ${at}`} fill-opacity={tone.get(colour(at + 1)) ?? 0} d={rowPath(row, 0)} />
        ));
      })}
    </g>
  );
}

/** Which tone is which colour. */
export const StripesKey = ({ parts, colours, order }: StripesDrawnProps) => (
  <ul class="stripes-key">
    {[...tonesOf(parts, colours, order)].map(([colour, tone]) => (
      <li key={colour}>
        <svg width="24" height="16" aria-hidden="true">
          <rect width="24" height="16" fill="currentColor" fill-opacity={tone} stroke="currentColor" />
        </svg>{' '}
        {colour}
      </li>
    ))}
  </ul>
);

/** By the colours' names, in the order in which they are knitted. */
function tonesOf(
  parts: readonly PlannedPart[],
  colours: Colours,
  order: readonly string[] = [],
): ReadonlyMap<string | undefined, number> {
  const knitted = parts.flatMap((part) => part.rows.map(({ n }) => n).map(colours(part)));
  const all = new Set<string | undefined>([...order, ...knitted]);
  all.delete(undefined);
  // beside rows that have no colour of their own the first one has to be seen too
  const from = order.length === 0 && knitted.includes(undefined) ? 1 : 0;
  return new Map([...all].map((colour, i) => [colour, TONES[(i + from) % TONES.length] ?? 0]));
}
