import { saysNeedle } from './needle.ts';
import { japanese, type NeedleSystem, needleNumber, needleSizes } from './needle-sizes.ts';
import { speech } from './settings.ts';

/** The sizes that a system has a number for, mm, from thin to thick. */
const sizesOf = (system: NeedleSystem): readonly number[] =>
  system === 'JP' ? japanese : needleSizes.filter((mm) => needleNumber(mm, system) !== undefined);

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
