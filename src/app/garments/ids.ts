import type { GarmentId, PieceId } from '../../progress/log.ts';
import { randomId } from '../../store/ids.ts';

/** A piece's id, which its places are kept by. */
export const newPieceId = (): PieceId => randomId(10);

/** That of a piece that nobody has begun, by its place in the garment, from 0. */
export const pieceIdAt = (place: number): PieceId => `piece${place + 1}`;

export const newGarmentId = (): GarmentId => randomId(12);
