import { MM_PER_INCH } from '../gauge.ts';

export const lengthUnits = ['cm', 'in', 'both'] as const;
export type LengthUnits = (typeof lengthUnits)[number];

/** A length in mm in words: centimetres to a half, inches to a quarter, as leaflets give them. */
export type SaysLength = (mm: number) => string;

export function saysLengthIn(units: LengthUnits): SaysLength {
  const cm = (mm: number) => `${Math.round(mm / 5) / 2} cm`;
  const inches = (mm: number) => `${Math.round((4 * mm) / MM_PER_INCH) / 4} in`;
  return units === 'cm' ? cm : units === 'in' ? inches : (mm) => `${cm(mm)} / ${inches(mm)}`;
}
