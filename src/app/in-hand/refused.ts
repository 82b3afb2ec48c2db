import { saving, tapFault } from '../state.ts';

/** The screen is left on which a tap was refused for good; what is still to be written is not forgotten. */
export function forgetRefused(): void {
  if (saving.value === 'saved') tapFault.value = undefined;
}
