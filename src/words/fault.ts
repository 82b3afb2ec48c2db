import { signal } from '@preact/signals';
import type { Fault } from '../knit/fault.ts';
import { faultCatalogues } from './fault-catalogues.ts';
import { loadWords } from './say.ts';

/** How a fault is said; it comes with the catalogues, so that the row in hand does not wait for it. */
const sentence = signal<((fault: Fault) => string | undefined) | undefined>();

/**
 * A fault in the knitter's language. Until its catalogue is there, or where it cannot be had, the code stands for the
 * sentence, so that no fault is ever mute.
 */
export const saysFault = (fault: Fault): string => sentence.value?.(fault) ?? fault.code;

/** Loads them all: a fault may come up on any screen, and then there may be no network. */
export async function loadFaults(): Promise<void> {
  const [{ sentenceOf }] = await Promise.all([import('./says-fault.ts'), loadWords(...faultCatalogues)]);
  sentence.value = sentenceOf;
}
