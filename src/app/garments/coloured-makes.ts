import type { PlannedPart } from '../../knit/piece/planned.ts';
import { type ColouredMake, colouredPart } from '../../knit/written/stripe-lines.ts';
import { coloursOf, isStriped } from '../../knit/yarn/stripes.ts';
import type { GarmentRecord } from '../../store/records.ts';

/**
 * Every copy of every piece in its colours; copies that are alike are told once.
 * @param partsOf the parts of the piece at a place of the garment, as they are written
 */
export function colouredMakes(
  garment: GarmentRecord,
  partsOf: (piece: number) => readonly PlannedPart[],
): readonly ColouredMake[] {
  if (!isStriped(garment)) return [];
  return garment.pieces.flatMap(({ id, recipe }, at) => {
    const parts = partsOf(at);
    const copies = Array.from({ length: recipe.makes }, (_, i): ColouredMake => {
      const make = i + 1;
      const coloured = parts.map((part) => colouredPart(part, coloursOf(garment, id, parts, part, make)));
      return { piece: recipe.name, make, parts: coloured };
    });
    return areAlike(copies)
      ? copies.slice(0, 1).map(({ piece, parts: own }) => ({ piece, parts: own }))
      : copies;
  });
}

const areAlike = (copies: readonly ColouredMake[]): boolean =>
  new Set(copies.map(({ parts }) => JSON.stringify(parts))).size <= 1;
