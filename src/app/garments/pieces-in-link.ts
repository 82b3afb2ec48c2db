import type { Garment } from '../../knit/piece/garment.ts';
import { plan } from '../../knit/piece/plan.ts';
import type { PlannedPart } from '../../knit/piece/planned.ts';

interface PieceInLink {
  readonly name: string;
  readonly parts: readonly PlannedPart[];
}

/** The pieces of a garment that is looked at before it is kept, planned; one that cannot be is left out. */
export const piecesInLink = (garment: Garment): readonly PieceInLink[] =>
  garment.pieces.flatMap((recipe) => {
    const planned = plan(recipe);
    return planned.ok ? [{ name: recipe.name, parts: planned.value.parts }] : [];
  });
