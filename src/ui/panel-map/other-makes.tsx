import { type Box, shapeOfPiece } from './outline-of.ts';
import { clothPath } from './paths.ts';
import { heightAt } from './row-at.ts';
import type { MapView, OtherMake } from './view.ts';

/** Above a make that others stand beside. */
export const MakeName = ({
  name,
  box,
  view,
}: {
  readonly name: string;
  readonly box: Box;
  readonly view: MapView;
}) => (
  <text
    class="map-name"
    style={{ '--mm': view.pixelMm }}
    x={box.x + box.width / 2}
    y={box.y - 14 * view.pixelMm}
    text-anchor="middle"
  >
    {name}
  </text>
);

/** The other makes of a piece: outlines with a line at their place, to see at once whether both are as long. */
export function OtherMakes({
  others,
  view,
}: {
  readonly others: readonly OtherMake[];
  readonly view: MapView;
}) {
  return (
    <>
      {others.map(({ name, parts, worked }, make) => (
        <g key={make} class="map-other" transform={`translate(${view.besideX[make] ?? 0} 0)`}>
          <MakeName name={name} box={shapeOfPiece(parts).box} view={view} />
          {shapeOfPiece(parts).parts.map((shape, i) => {
            const rows = Math.min(worked[i] ?? 0, shape.rows.length);
            const edge = shape.rows[rows - 1];
            const y = heightAt(shape, rows);
            return (
              <g key={parts[i]?.name}>
                <path class="map-worked" d={clothPath(shape, 1, rows)} />
                <path class="map-outline" d={clothPath(shape)} />
                {edge && <path class="map-other-place" d={`M${edge.left1} ${y}H${edge.right1}`} />}
              </g>
            );
          })}
        </g>
      ))}
    </>
  );
}
