import type { PlannedPart } from '../../knit/piece/planned.ts';
import { type Box, shapeOfPiece } from './outline-of.ts';

export interface OtherMake {
  readonly parts: readonly PlannedPart[];
  /** rows worked, by part */
  readonly worked: readonly number[];
}

export interface MapView {
  readonly viewBox: string;
  readonly box: Box;
  /** mm that one CSS pixel stands for */
  readonly pixelMm: number;
  /** y of the scale bar */
  readonly scaleY: number;
  /** x by which each of the other makes is moved to stand beside */
  readonly besideX: readonly number[];
}

/** px that needle ends and notches need around the cloth */
const ROOM_PX = 16;
/** px from the cloth to the scale bar: the arrow of a row that is just cast on lies between them */
const SCALE_PX = 30;

/** What of the plane is shown, all makes side by side, and how thick a pixel is in it. */
export function viewOf(box: Box, others: readonly OtherMake[], sizePx: number): MapView {
  const boxes = others.map(({ parts }) => shapeOfPiece(parts).box);
  const widths = boxes.reduce((sum, other) => sum + other.width, box.width);
  const pixelMm = Math.max(box.height, widths * 0.9, 1) / sizePx;
  const room = ROOM_PX * pixelMm;
  let end = box.x + box.width;
  let top = box.y;
  const besideX = boxes.map((other) => {
    const x = end + 2 * room - other.x;
    end += 2 * room + other.width;
    top = Math.min(top, other.y);
    return x;
  });
  const bottom = box.y + box.height;
  const scaleY = bottom + SCALE_PX * pixelMm;
  const x = box.x - room;
  const width = end + room - x;
  const height = scaleY + 3 * pixelMm - (top - room);
  return {
    viewBox: [x, top - room, width, height].map((n) => n.toFixed(2)).join(' '),
    box,
    pixelMm,
    scaleY,
    besideX,
  };
}
