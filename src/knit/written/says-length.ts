import { MM_PER_INCH } from '../gauge.ts';

export const lengthUnits = ['cm', 'in', 'both'] as const;
export type LengthUnits = (typeof lengthUnits)[number];

/** A length in mm in words: centimetres to a half, inches to a quarter, as leaflets give them. */
export type SaysLength = (mm: number) => string;

/** `point` within a figure, and what inches are called in the language. */
export function saysLengthIn(units: LengthUnits, point = '.', inch = 'in'): SaysLength {
  const figure = (value: number, unit: string) => `${String(value).replace('.', point)} ${unit}`;
  const cm = (mm: number) => figure(Math.round(mm / 5) / 2, 'cm');
  const inches = (mm: number) => figure(Math.round((4 * mm) / MM_PER_INCH) / 4, inch);
  return units === 'cm' ? cm : units === 'in' ? inches : (mm) => `${cm(mm)} / ${inches(mm)}`;
}
