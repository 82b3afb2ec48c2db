import type { Recipe } from '../knit/piece/recipe.ts';
import { wornSide } from '../knit/piece/worn-side.ts';
import { say } from '../words/say.ts';

/**
 * 'Front: Left shoulder', 'Sleeve no. 2', 'Front, left as worn'; needs the catalogue 'craft'. A part that is the whole
 * piece is named once.
 * @param of the piece's recipe, or how many makes it has where no more is known
 */
export function saysMake(piece: string, part: string, make: number, of: number | Recipe): string {
  const recipe: Pick<Recipe, 'role' | 'makes' | 'mirrored'> = typeof of === 'number' ? { makes: of } : of;
  const copy = recipe.makes > 1 ? say(`craft.make${wornSide(recipe, make) ?? ''}`, { piece, make }) : piece;
  return part === piece || part === '' ? copy : say('craft.part', { piece: copy, part });
}
