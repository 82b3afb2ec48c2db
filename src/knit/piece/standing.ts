import type { Garment } from './garment.ts';
import { laidOut } from './lay-out.ts';
import type { PlannedPart } from './planned.ts';
import type { Recipe } from './recipe.ts';
import { recipeOfMake } from './rework/make-recipe.ts';

/**
 * A garment as it stands: every make with the plans that it is really knitted by, reworked or not. Whatever is shown of
 * a garment (measures, yarn, making up, drawings, stripes, paper) is read from this and from nothing else.
 */
export interface StandingGarment extends Omit<Garment, 'pieces'> {
  readonly pieces: readonly StandingPiece[];
}

export interface StandingPiece {
  /** the piece's, from which makes that were not reworked are knitted */
  readonly recipe: Recipe;
  readonly makes: readonly StandingMake[];
}

export interface StandingMake {
  /** from 1 */
  readonly make: number;
  /** as it is really knitted */
  readonly recipe: Recipe;
  /** plans in force, in the order of the recipe's parts */
  readonly parts: readonly PlannedPart[];
}

/** A make from the plans that its places name. */
export function standingMake(piece: Recipe, make: number, plans: readonly PlannedPart[]): StandingMake {
  const byPart = piece.parts.map(({ name }) => plans.find((plan) => plan.name === name));
  const recipe = recipeOfMake(piece, make, byPart);
  return { make, recipe, parts: laidOut(plans, recipe) };
}

/** The make that lies along a stretch of an edge, by the piece's name. */
export const makeOf = (
  pieces: readonly StandingPiece[],
  { piece, make }: { readonly piece: string; readonly make: number },
): StandingMake | undefined =>
  pieces.find(({ recipe }) => recipe.name === piece)?.makes.find((one) => one.make === make);

/**
 * Makes that are knitted alike, in groups: one group unless some were reworked and others not, or in another way. A
 * mirror image that was reworked stands by itself, since its groups lie on other rows.
 */
export function alike(makes: readonly StandingMake[]): readonly (readonly StandingMake[])[] {
  if (!makes.some(wasReworked)) return [makes];
  const groups = new Map<string, StandingMake[]>();
  for (const make of makes) {
    const key = outcome(make);
    groups.set(key, [...(groups.get(key) ?? []), make]);
  }
  return [...groups.values()];
}

/** Makes that are worked by the same rows, in groups: of a mirrored piece, its images stand by themselves. */
export function sameRows(
  { mirrored }: Pick<Recipe, 'mirrored'>,
  makes: readonly StandingMake[],
): readonly (readonly StandingMake[])[] {
  if (!mirrored) return alike(makes);
  const isImage = ({ make }: StandingMake): boolean => make % 2 === 0;
  return alike(makes)
    .flatMap((group) => [group.filter((make) => !isImage(make)), group.filter(isImage)])
    .filter((group) => group.length > 0);
}

const wasReworked = ({ parts }: StandingMake): boolean => parts.some(({ recipe }) => recipe !== undefined);

/** Counts row by row, and heights to a tenth of a millimetre. */
const outcome = ({ parts }: StandingMake): string =>
  JSON.stringify(
    parts.map(({ start, rows }) => [start, ...rows.map((row) => [row.after, Math.round(row.height * 10)])]),
  );
