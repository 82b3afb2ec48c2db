import type { Garment } from '../../knit/piece/garment.ts';
import { plan } from '../../knit/piece/plan.ts';
import type { PlannedPart } from '../../knit/piece/planned.ts';
import type { PieceId } from '../../progress/log.ts';
import { pieceIdAt } from './ids.ts';

interface PieceInLink {
  /** that it will have in a workbasket */
  readonly id: PieceId;
  readonly name: string;
  readonly parts: readonly PlannedPart[];
}

/** The pieces of a garment that is looked at before it is kept, planned; one that cannot be is left out. */
export const piecesInLink = (garment: Garment): readonly PieceInLink[] =>
  garment.pieces.flatMap((recipe, i) => {
    const planned = plan(recipe);
    return planned.ok ? [{ id: pieceIdAt(i), name: recipe.name, parts: planned.value.parts }] : [];
  });
