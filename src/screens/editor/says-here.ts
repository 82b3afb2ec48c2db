import { signal } from '@preact/signals';
import type { Fault, FaultCode } from '../../knit/fault.ts';
import type { FormFault } from '../../knit/piece/form/check.ts';
import { saysFault } from '../../words/fault.ts';
import { say } from '../../words/say.ts';

/** Blank fields are spoken of only once she asks what is missing: an empty form is no reproach. */
export const showBlanks = signal(false);

const blanks: readonly FaultCode[] = ['blank', 'no name', 'nothing picked up'];

/** Something that is only still to be filled in. */
export const isBlank = (fault: Fault): boolean => blanks.includes(fault.code);

const isQuiet = (fault: Fault): boolean => !showBlanks.value && isBlank(fault);

/** '2 things to mend', or, where nothing is wrong, '3 still to fill in'. */
export function saysHowMany(faults: readonly FormFault[]): {
  readonly text: string;
  readonly isWrong: boolean;
} {
  const wrong = faults.filter(({ fault }) => !isBlank(fault)).length;
  return wrong > 0
    ? { text: say('editor.toMend', { count: wrong }), isWrong: true }
    : { text: say('editor.toFill', { count: faults.length }), isWrong: false };
}

/** What is said at a field of a part or section; undefined where all is well. */
export type SaysAt = (field: string) => string | undefined;

export function saysAt(faults: readonly FormFault[], part?: number, section?: number): SaysAt {
  const here = faults.filter((found) => found.part === part && found.section === section);
  return (field) => {
    const found = here.find((one) => one.field === field && !isQuiet(one.fault));
    return found && saysFault(found.fault);
  };
}

export function saysGarmentFault(faults: readonly Fault[], field: string): string | undefined {
  const found = faults.find((one) => one.at.field === field && !isQuiet(one));
  return found && saysFault(found);
}
