import type { PieceRole, Recipe } from '../piece/recipe.ts';

/** Words by which knitters call their pieces, English and German; read only where a recipe states no role. */
const called: readonly (readonly [RegExp, PieceRole])[] = [
  [/neck ?band|collar|halsblende|kragen/i, 'neckband'],
  [/(front|button) ?bands?|knopf/i, 'front band'],
  [/armhole ?bands?|armblende/i, 'armhole band'],
  [/sleeve|ärmel/i, 'sleeve'],
  [/front|vorder/i, 'front'],
  [/back|rücken/i, 'back'],
];

/** What a piece is in the garment: as the recipe states, else as its name says. */
export const roleOf = (recipe: Pick<Recipe, 'name' | 'role'>): PieceRole =>
  recipe.role ?? called.find(([word]) => word.test(recipe.name))?.[1] ?? 'other';
