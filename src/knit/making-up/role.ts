import type { PieceRole, Recipe } from '../piece/recipe.ts';

/** Words by which knitters call their pieces, English and German, to propose what a piece is from its name. */
const called: readonly (readonly [RegExp, PieceRole])[] = [
  [/neck ?(band|edging|border)|collar|halsblende|kragen/i, 'neckband'],
  [/(front|button(hole)?) ?bands?|knopf/i, 'front band'],
  [/arm(hole)? ?(band|edging|border)|armblende/i, 'armhole band'],
  [/sleeve|ärmel/i, 'sleeve'],
  [/left front|linkes vorder/i, 'left front'],
  [/right front|rechtes vorder/i, 'right front'],
  [/front|vorder/i, 'front'],
  [/back|rücken/i, 'back'],
];

/** What a piece of this name is, most likely. */
export const proposedRole = (name: string): PieceRole =>
  called.find(([word]) => word.test(name))?.[1] ?? 'other';

/**
 * What a piece is in the garment: as the recipe states. One that was stored before pieces stated it is what its name
 * proposes; whoever renames it writes down what it was.
 */
export const roleOf = (recipe: Pick<Recipe, 'name' | 'role'>): PieceRole =>
  recipe.role ?? proposedRole(recipe.name);
