import './panel-map.css';
import type { ComponentChildren } from 'preact';
import { useId, useMemo } from 'preact/hooks';
import type { PlannedPart } from '../../knit/piece/planned.ts';
import { type Box, shapeOfPiece } from './outline-of.ts';
import { clothPath } from './paths.ts';
import { heightAt } from './row-at.ts';
import { viewOf } from './view.ts';

export interface PieceThumbProps {
  readonly parts: readonly PlannedPart[];
  /** rows worked, by part */
  readonly worked: readonly number[];
  /** mm that it shares with the thumbs beside it, so that a sleeve is smaller than a back: the tallest piece's height */
  readonly tallestMm?: number | undefined;
  /** said to a screen reader; without it the thumb is ornament beside a word */
  readonly label?: string | undefined;
  /** drawn over the cloth, in the shape's mm */
  readonly over?: ComponentChildren;
}

/** mm around a piece in its small drawing, so that its outline is whole. */
const edgeOf = (box: Box): number => 1.5 * viewOf(box, [], 64).pixelMm;

/** mm that a small drawing of a piece is high, with its outline: in this proportion several lie to one scale. */
export const thumbHeight = (box: Box): number => box.height + 2 * edgeOf(box);

/**
 * The small drawing of a piece in its real shape with its progress; fills its box's height (class `thumb`). As in the large
 * one a finished row moves the edge of a clip, whatever the number of rows.
 */
export function PieceThumb({ parts, worked, tallestMm, label, over }: PieceThumbProps) {
  const id = useId();
  const shape = useMemo(() => shapeOfPiece(parts), [parts]);
  const whole = useMemo(() => shape.parts.map((part) => clothPath(part)), [shape]);
  const { box } = shape;
  const edge = edgeOf(box);
  const height = Math.max(box.height, tallestMm ?? 0);
  const bounds = [box.x - edge, box.y + box.height - height - edge, box.width + 2 * edge, height + 2 * edge];
  const named =
    label === undefined ? { 'aria-hidden': true } : ({ role: 'img', 'aria-label': label } as const);
  return (
    <svg class="thumb" viewBox={bounds.map((n) => n.toFixed(1)).join(' ')} {...named}>
      {shape.parts.map((part, i) => (
        <g key={parts[i]?.name}>
          <clipPath id={`${id}-${i}`}>
            <rect x={-1e5} width={2e5} y={heightAt(part, worked[i] ?? 0)} height={1e5} />
          </clipPath>
          <path class="map-unworked" d={whole[i]} />
          <path class="thumb-worked" d={whole[i]} clip-path={`url(#${id}-${i})`} />
          <path class="map-outline" d={whole[i]} />
        </g>
      ))}
      {over}
    </svg>
  );
}
