import type { PlannedPart } from '../../knit/piece/planned.ts';
import { type Box, shapeOfPiece } from './outline-of.ts';

export interface OtherMake {
  readonly name: string;
  /** it is numbered before the one in hand: each keeps its place, whichever is in hand */
  readonly isBefore: boolean;
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

/** px above makes that stand beside each other: their names */
const NAMES_PX = 26;

/** What of the plane is shown, all makes side by side, and how thick a pixel is in it. */
export function viewOf(box: Box, others: readonly OtherMake[], sizePx: number): MapView {
  const boxes = others.map(({ parts }) => shapeOfPiece(parts).box);
  const widths = boxes.reduce((sum, other) => sum + other.width, box.width);
  const pixelMm = Math.max(box.height, widths * 0.9, 1) / sizePx;
  const room = ROOM_PX * pixelMm;
  const end = { left: box.x, right: box.x + box.width };
  const besideX: number[] = [];
  // those before it from the nearest on, to the left
  const outward = [...others.keys()].sort((a, b) => (others[a]?.isBefore ? b - a : a - b));
  for (const i of outward) {
    const other = boxes[i] as Box;
    const far = 2 * room + other.width;
    if (others[i]?.isBefore) end.left -= far;
    else end.right += far;
    besideX[i] = (others[i]?.isBefore ? end.left : end.right - other.width) - other.x;
  }
  const names = others.length > 0 ? NAMES_PX * pixelMm : 0;
  const top = Math.min(box.y, ...boxes.map(({ y }) => y)) - names;
  const bottom = box.y + box.height;
  const scaleY = bottom + SCALE_PX * pixelMm;
  const x = end.left - room;
  const width = end.right + room - x;
  const height = scaleY + 3 * pixelMm - (top - room);
  return {
    viewBox: [x, top - room, width, height].map((n) => n.toFixed(2)).join(' '),
    box,
    pixelMm,
    scaleY,
    besideX,
  };
}
