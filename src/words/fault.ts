import type { Fault, Where } from '../knit/fault.ts';
import type { CatalogueName } from './catalogues.ts';
import { loadWords, say, sayIfKnown } from './say.ts';

/** The catalogues that hold faults by their code. */
const faultCatalogues = [
  'recipeFaults',
  'storeFaults',
  'patternFaults',
] as const satisfies readonly CatalogueName[];

/**
 * A fault in the knitter's language, from its code and figures: by the first loaded catalogue of faults that knows
 * it (or by those named), else by its own English sentence, so that no fault is ever mute.
 */
export function saysFault(fault: Fault, from: readonly CatalogueName[] = faultCatalogues): string {
  for (const name of from) {
    const said = sayIfKnown(name, fault.code, fault.figures);
    if (said !== undefined) return said;
  }
  return fault.sentence;
}

/** Loads them all: a fault may come up on any screen, and then there may be no network. */
export const loadFaults = (): Promise<void> => loadWords(...faultCatalogues);

/** Where a fault lies: 'Front, left shoulder, row 12'; empty where it says no place. Needs the catalogue 'craft'. */
export function saysWhere({ piece, part, row, line }: Where): string {
  const places = [piece, part === piece ? undefined : part];
  if (row !== undefined) places.push(say('craft.rowNumber', { row }));
  if (line !== undefined) places.push(say('craft.lineNumber', { line }));
  return places.filter((place) => place !== undefined).join(', ');
}
