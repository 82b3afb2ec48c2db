import { inUnit } from './in-unit.ts';
import { needleNumber } from './needle-sizes.ts';
import { saysNumber } from './numbers.ts';
import { speech } from './settings.ts';

/** '4 mm', 'US 6 (4 mm)', 'UK 8 (4 mm)', 'JP 8 (4.5 mm)'; metric alone where the table has no number for the size. */
export function saysNeedle(mm: number): string {
  const metric = inUnit(saysNumber(mm), 'mm');
  const { needles } = speech.value;
  const number = needles === 'mm' ? undefined : needleNumber(mm, needles);
  return number === undefined ? metric : `${inUnit(needles, number)} (${metric})`;
}
