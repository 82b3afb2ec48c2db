import { type Fault, fault } from '../../../fault.ts';
import { MOST_PIECES } from '../../../piece/check-recipe.ts';
import type { Build } from './build.ts';

/** Far more than a piece keeps: those that were cast on and never worked count here too. */
const MOST_PARTS_BEGUN = 100;

/**
 * Whether the text has come to more pieces or parts than a garment can have. What follows is not read then: it could
 * not be kept, and a text without end would be read without end.
 */
export function fullNow(build: Build): Fault | undefined {
  const { piece } = build;
  const pieces = build.begun.length > MOST_PIECES;
  if (build.full || !(pieces || (piece !== undefined && piece.parts.length > MOST_PARTS_BEGUN)))
    return undefined;
  build.full = true;
  if (!pieces) {
    return fault('too many parts begun', { pieceName: piece?.name ?? '', mostTimes: MOST_PARTS_BEGUN });
  }
  const last = build.begun.pop();
  if (last) build.pieces.splice(build.pieces.indexOf(last), 1);
  build.piece = undefined;
  build.part = undefined;
  return fault('too many pieces read', { mostPieces: MOST_PIECES });
}
