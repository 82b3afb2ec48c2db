import { rowOutOfReach } from '../../knit/piece/rework/shoulder-anew.ts';
import type { MakeKey } from '../../progress/log.ts';
import type { GarmentView, MakeView, PieceView } from '../state.ts';

/** A shoulder that was planned before anyone asked where the yarn hangs, and cannot be finished so. */
export interface OldShoulder {
  readonly key: MakeKey;
  readonly piece: PieceView;
  readonly make: MakeView;
  /** name of the part */
  readonly part: string;
}

export const oldShoulders = ({ pieces }: GarmentView): readonly OldShoulder[] =>
  pieces.flatMap((piece) =>
    piece.makes.flatMap((make) =>
      make.places.flatMap((place) => {
        const part = make.parts[place.part];
        return part && rowOutOfReach(part, place.rows)
          ? [{ key: place.id, piece, make, part: part.name }]
          : [];
      }),
    ),
  );
