import type { Recipe } from '../../knit/piece/recipe.ts';
import type { PlaceRecord } from '../../store/records.ts';
import type { GarmentView } from '../state.ts';

export interface NextMake {
  readonly place: PlaceRecord;
  readonly piece: string;
  readonly part: string;
  /** the piece's: it tells which copy this is */
  readonly recipe: Recipe;
}

/**
 * What to knit after a make: the rest of the same copy in the order of its parts, then the other copies,
 * then the other pieces in the garment's order; begun or not, but not finished. Undefined when all is knitted.
 */
export function nextMake(view: GarmentView, done: PlaceRecord): NextMake | undefined {
  const open = view.pieces.flatMap((piece) =>
    piece.makes.flatMap((make) =>
      make.places.flatMap((place, i): NextMake[] => {
        const part = make.parts[i]?.name ?? '';
        if (place.id === done.id || place.rows >= place.total) return [];
        return [{ place, piece: piece.name, part, recipe: piece.recipe }];
      }),
    ),
  );
  const nearness = ({ place }: NextMake): number =>
    place.piece !== done.piece ? 2 : place.make !== done.make ? 1 : 0;
  return open.sort((a, b) => nearness(a) - nearness(b))[0];
}
