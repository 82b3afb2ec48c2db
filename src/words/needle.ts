import { needleNumber, sizesOf } from './needle-sizes.ts';
import { saysNumber } from './numbers.ts';
import { speech } from './settings.ts';

/** '4 mm', 'US 6 (4 mm)', 'UK 8 (4 mm)', 'JP 8 (4.5 mm)'; metric alone where the table has no number for the size. */
export function saysNeedle(mm: number): string {
  const metric = `${saysNumber(mm)} mm`;
  const { needles } = speech.value;
  const number = needles === 'mm' ? undefined : needleNumber(mm, needles);
  return number === undefined ? metric : `${needles} ${number} (${metric})`;
}

/**
 * The sizes to choose from where she says needles by number, each with its mm as value; undefined where she says them in
 * millimetres, which are typed. A size in hand that has no number is among them.
 */
export function needleChoices(mm: number | undefined): { value: string; label: string }[] | undefined {
  const { needles } = speech.value;
  if (needles === 'mm') return undefined;
  const sizes = new Set([...sizesOf(needles), ...(mm === undefined ? [] : [mm])]);
  const options = [...sizes]
    .sort((a, b) => a - b)
    .map((size) => ({ value: String(size), label: saysNeedle(size) }));
  return mm === undefined ? [{ value: '', label: '…' }, ...options] : options;
}
