import type { Recipe } from '../knit/piece/recipe.ts';
import { wornSide } from '../knit/piece/worn-side.ts';
import { say } from '../words/say.ts';

/**
 * 'Front: Left shoulder', 'Sleeve, no. 2', 'Front, left as worn'; needs the catalogue 'craft'. A part that is the whole
 * piece is named once.
 * @param of the piece's recipe, or how many makes it has where no more is known
 */
export function saysMake(piece: string, part: string, make: number, of: number | Recipe): string {
  const copy = saysCopy(piece, make, of);
  return part === piece || part === '' ? copy : say('craft.part', { piece: copy, part });
}

function saysCopy(piece: string, make: number, of: number | Recipe): string {
  const isCount = typeof of === 'number';
  const side = isCount ? undefined : wornSide(of, make);
  if (side) return say(side === 'left' ? 'craft.makeLeft' : 'craft.makeRight', { piece });
  return (isCount ? of : of.makes) > 1 ? say('craft.make', { piece, make }) : piece;
}
