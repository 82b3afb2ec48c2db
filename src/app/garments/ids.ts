import type { GarmentId, PieceId } from '../../progress/log.ts';
import { randomId } from '../../store/ids.ts';

/** A piece's id, which its places are kept by. */
export const newPieceId = (): PieceId => randomId(10);

export const newGarmentId = (): GarmentId => randomId(12);
