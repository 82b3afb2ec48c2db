import type { CatalogueName } from './catalogues.ts';

/** The catalogues that hold faults by their code; each code stands in one of them. */
export const faultCatalogues = [
  'recipeFaults',
  'storeFaults',
  'patternFaults',
  'courseFaults',
  'draftFaults',
] as const satisfies readonly CatalogueName[];
