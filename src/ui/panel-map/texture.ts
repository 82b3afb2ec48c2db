import type { FabricName } from '../../knit/fabric.ts';

/** A tile of cloth that repeats, in mm, with the line that its loops draw. */
export interface Tile {
  readonly width: number;
  readonly height: number;
  readonly d: string;
}

interface Cell {
  readonly width: number;
  readonly height: number;
}

type Draw = (w: number, h: number) => string;

/** Stitches and rows that a tile holds, and its line; drawn as the right side shows it; what it is from behind, if another. */
const table: Readonly<
  Record<
    FabricName,
    { readonly sts: number; readonly rows: number; readonly draw: Draw; readonly behind?: FabricName }
  >
> = {
  /** ridges: one for two rows */
  garter: {
    sts: 2,
    rows: 2,
    draw: (w, h) => `M0 ${h * 0.6}Q${w / 4} ${h * 0.35} ${w / 2} ${h * 0.6}T${w} ${h * 0.6}`,
  },
  /** columns of V */
  stocking: {
    sts: 1,
    rows: 1,
    draw: (w, h) => `M${w * 0.12} ${h * 0.1}L${w / 2} ${h * 0.85}L${w * 0.88} ${h * 0.1}`,
    behind: 'reverse stocking',
  },
  /** rows of short purl bumps, each over the gap of those below */
  'reverse stocking': {
    sts: 2,
    rows: 2,
    draw: (w, h) => `M${w * 0.1} ${h * 0.25}h${w * 0.3}M${w * 0.6} ${h * 0.75}h${w * 0.3}`,
    behind: 'stocking',
  },
  'rib 1x1': { sts: 2, rows: 4, draw: (w, h) => `M${w * 0.25} 0v${h}M${w * 0.75} 0v${h}` },
  'rib 1x1 matched': { sts: 2, rows: 4, draw: (w, h) => `M${w * 0.25} 0v${h}M${w * 0.75} 0v${h}` },
  'rib 2x2': { sts: 4, rows: 4, draw: (w, h) => `M${w * 0.2} 0v${h}M${w * 0.4} 0v${h}M${w * 0.9} 0v${h}` },
  moss: {
    sts: 2,
    rows: 2,
    draw: (w, h) => `M${w * 0.2} ${h * 0.25}h${w * 0.1}M${w * 0.7} ${h * 0.75}h${w * 0.1}`,
  },
};

/** The fabric as its other side shows it. */
export const turnedOver = (fabric: FabricName): FabricName => table[fabric].behind ?? fabric;

/**
 * The tile of a fabric. Where a stitch would be too small to see, a tile stands for a whole number of them in both
 * directions, so that the drawing stays to scale and never shimmers: `least` is the smallest tile, mm.
 */
export function tileOf(fabric: FabricName, cell: Cell, least: number): Tile {
  const { sts, rows, draw } = table[fabric];
  const times = Math.max(1, Math.ceil(least / Math.max(0.1, Math.min(cell.width * sts, cell.height * rows))));
  const width = cell.width * sts * times;
  const height = cell.height * rows * times;
  return { width, height, d: draw(width, height) };
}
