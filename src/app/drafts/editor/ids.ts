import { randomId } from '../../../store/ids.ts';

/** A piece's id, which its places are kept by. */
export const newPieceId = (): string => randomId(10);

export const newGarmentId = (): string => randomId(12);
