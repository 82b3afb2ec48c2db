import { type Fault, fault, type Where } from '../../knit/fault.ts';
import { checkRecipe } from '../../knit/piece/check-recipe.ts';
import type { Recipe } from '../../knit/piece/recipe.ts';
import { piecesUnseen } from '../garment/plan-versions.ts';
import type { Backup } from './document.ts';

/** Entries and plans are numbered on from what came in: far more of them fit behind this than anyone can make. */
const HIGHEST_NUMBER = 1_000_000_000;

/**
 * What a file may hold as far as its shapes go, and must not bring into a box: recipes that the planner refuses, and
 * numbers behind which there is no room. Only what comes in is asked: what is in a box already can always be put into
 * a file.
 */
export function beyondUse({ garments, plans, entries }: Backup): Fault | undefined {
  for (const [i, garment] of garments.entries()) {
    if (piecesUnseen(garment).some(({ recipe }) => checkRecipe(recipe).length > 0))
      return damagedAt(`garments.${i}.marks`);
    for (const [at, { recipe }] of garment.pieces.entries()) {
      const [wrong] = checkRecipe(recipe);
      if (wrong !== undefined)
        return damagedAt(`garments.${i}.pieces.${at}.recipe.${placeIn(recipe, wrong.at)}`);
    }
  }
  const plan = plans.findIndex(({ version }) => version > HIGHEST_NUMBER);
  if (plan >= 0) return damagedAt(`plans.${plan}.version`);
  const entry = entries.findIndex(({ seq }) => seq > HIGHEST_NUMBER);
  return entry >= 0 ? damagedAt(`entries.${entry}.seq`) : undefined;
}

/** As the file has it: the part by its number, then the field. */
const placeIn = ({ parts }: Recipe, { part, field = 'parts' }: Where): string =>
  part === undefined ? field : `parts.${parts.findIndex(({ name }) => name === part)}.${field}`;

const damagedAt = (path: string): Fault => fault('backup-damaged', { pathText: path });
