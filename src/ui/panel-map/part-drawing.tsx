import { useMemo } from 'preact/hooks';
import type { PlannedPart } from '../../knit/piece/planned.ts';
import type { PartShape } from './outline-of.ts';
import { clothPath, notchPath } from './paths.ts';
import { heightAt } from './row-at.ts';
import { tileOf, turnedOver } from './texture.ts';

export interface PartDrawingProps {
  readonly part: PlannedPart;
  readonly shape: PartShape;
  /** rows worked */
  readonly worked: number;
  /** unique in the page */
  readonly id: string;
  /** mm that one CSS pixel stands for */
  readonly pixelMm: number;
  /** the wrong side is seen */
  readonly turned?: boolean;
}

/**
 * The cloth is drawn twice, unworked and worked; a clip that ends at the place shows the second. Finishing a row
 * changes that clip's two numbers and the few tiles of the face that is seen, whatever the number of rows.
 */
export function PartDrawing({ part, shape, worked, id, pixelMm, turned = false }: PartDrawingProps) {
  const cloth = useMemo(
    () => clothOf({ part, shape, id, pixelMm, turned }),
    [part, shape, id, pixelMm, turned],
  );
  const y = heightAt(shape, worked);
  return (
    <g>
      <defs>
        <clipPath id={`${id}-worked`}>
          <rect x={-1e5} width={2e5} y={y} height={Math.max(0, shape.base - y)} />
        </clipPath>
      </defs>
      {cloth.unworked}
      <g clip-path={`url(#${id}-worked)`}>{cloth.worked}</g>
      {cloth.outline}
    </g>
  );
}

function clothOf({ part, shape, id, pixelMm, turned }: Omit<PartDrawingProps, 'worked'>) {
  const pieces = part.sections.flatMap((section, i) => {
    const d = clothPath(shape, section.first, section.last);
    const cell = part.cells[i];
    const face = turned ? turnedOver(section.fabric) : section.fabric;
    return d && cell ? [{ d, tile: tileOf(face, cell, 4.5 * pixelMm), key: `${id}-${i}` }] : [];
  });
  const patterns = (look: 'worked' | 'unworked') =>
    pieces.map(({ tile, key }) => (
      <pattern
        key={key}
        id={`${key}-${look}`}
        patternUnits="userSpaceOnUse"
        width={tile.width}
        height={tile.height}
      >
        <path class={`map-loop-${look}`} d={tile.d} stroke-width={pixelMm} />
      </pattern>
    ));
  const layer = (look: 'worked' | 'unworked') => (
    <>
      <defs>{patterns(look)}</defs>
      {pieces.map(({ d, key }) => (
        <g key={key}>
          <path class={`map-${look}`} d={d} />
          <path d={d} fill={`url(#${key}-${look})`} />
        </g>
      ))}
    </>
  );
  const outline = (
    <>
      <path class="map-outline" d={clothPath(shape)} />
      <path class="map-notches" d={notchPath(shape.notches, 9 * pixelMm)} />
    </>
  );
  return { unworked: layer('unworked'), worked: layer('worked'), outline };
}
