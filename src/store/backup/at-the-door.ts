import { type Fault, fault } from '../../knit/fault.ts';
import { checkRecipe } from '../../knit/piece/check-recipe.ts';
import type { Backup } from './document.ts';

/** Entries and plans are numbered on from what came in: far more of them fit behind this than anyone can make. */
const HIGHEST_NUMBER = 1_000_000_000;

/**
 * What a file may hold as far as its shapes go, and must not bring into a box: recipes that the planner refuses, and
 * numbers behind which there is no room. Only what comes in is asked: what is in a box already can always be put into
 * a file.
 */
export function beyondUse({ garments, plans, entries }: Backup): Fault | undefined {
  for (const [i, { pieces }] of garments.entries()) {
    for (const { recipe } of pieces) {
      const [wrong] = checkRecipe(recipe);
      if (wrong !== undefined) return odd(`garments.${i}`, wrong.code);
    }
  }
  const plan = plans.findIndex(({ version }) => version > HIGHEST_NUMBER);
  if (plan >= 0) return odd(`plans.${plan}.version`, 'number');
  const entry = entries.findIndex(({ seq }) => seq > HIGHEST_NUMBER);
  return entry >= 0 ? odd(`entries.${entry}.seq`, 'number') : undefined;
}

const odd = (path: string, what: string): Fault =>
  fault('backup-damaged', { pathText: path, whatText: what });
