/** Packages without types of their own, as far as the tests use them. */
declare module 'euclidean-rhythms' {
  /** 1 for a pulse, 0 for a rest. */
  export function getPattern(pulses: number, steps: number): number[];
}
declare module 'bresenham' {
  /** Cells that a line passes, both ends included. */
  export default function line(x0: number, y0: number, x1: number, y1: number): { x: number; y: number }[];
}
