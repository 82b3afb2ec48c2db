import { MM_PER_INCH } from '../gauge.ts';
import type { Ease } from './design.ts';

/**
 * How a garment fits by its chest ease, in inches: Craft Yarn Council, before its chart of August 2021 (which calls no
 * ease 'close'): very close 0 and less, close 1 to 2, standard 2 to 4, loose 4 to 6, oversized more than 6. The outer
 * ends, −2 and 12, are our own.
 */
export const fitsByEase = {
  'very close': [-2, 0],
  close: [1, 2],
  standard: [2, 4],
  loose: [4, 6],
  oversized: [6, 12],
} as const satisfies Record<string, readonly [number, number]>;
export type Fit = keyof typeof fitsByEase;
export const fits = Object.keys(fitsByEase) as readonly Fit[];

/** Ease in mm outside of which a garment is asked about, our own choice; the chest's range spans all classes of fit. */
export const usualEase = {
  chest: [-2 * MM_PER_INCH, 12 * MM_PER_INCH],
  hip: [-2 * MM_PER_INCH, 12 * MM_PER_INCH],
  upperArm: [-MM_PER_INCH, 8 * MM_PER_INCH],
  wrist: [-MM_PER_INCH, 8 * MM_PER_INCH],
} as const satisfies Partial<Record<keyof Ease, readonly [number, number]>>;

/** Ease for a fit: the middle of its class at the chest, shares of that elsewhere (common practice, no published source). */
export function easeFor(fit: Fit): Ease {
  const [least, most] = fitsByEase[fit];
  const chest = ((least + most) / 2) * MM_PER_INCH;
  return {
    chest,
    waist: chest,
    hip: chest * 0.7,
    upperArm: Math.max(0, chest * 0.6),
    wrist: Math.max(15, chest * 0.55),
    crossBack: Math.max(0, chest * 0.15),
    armholeDepth: Math.max(0, chest * 0.15),
  };
}
