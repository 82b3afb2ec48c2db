import { needleNumber } from './needle-sizes.ts';
import { speech } from './settings.ts';

/** The number beside the millimetres in the system that she chose, as a written pattern has it: 'US 6'. */
export function numberBeside(mm: number): string | undefined {
  const { needles } = speech.value;
  const number = needles === 'mm' ? undefined : needleNumber(mm, needles);
  return number && `${needles} ${number}`;
}
