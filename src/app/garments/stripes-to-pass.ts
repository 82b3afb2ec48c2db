import type { StripesOf } from '../../knit/yarn/stripes.ts';
import type { GarmentRecord } from '../../store/records.ts';
import { pieceIdAt } from './ids.ts';

/** A garment's stripes under the ids that its pieces have wherever it is put into a workbasket; nothing where it has none. */
export function stripesToPass(garment: GarmentRecord): StripesOf {
  const { pieces, stripes, striped, restriped } = garment;
  if (!stripes?.length && !restriped?.length) return {};
  const ids = new Map(pieces.map(({ id }, i) => [id, pieceIdAt(i)]));
  const under = <T>(own: string, of: T): [string, T][] => {
    const id = ids.get(own);
    return id === undefined ? [] : [[id, of]];
  };
  return {
    ...(stripes && { stripes }),
    ...(striped && {
      striped: Object.fromEntries(Object.entries(striped).flatMap(([id, of]) => under(id, of))),
    }),
    ...(restriped && {
      restriped: restriped.flatMap((one) => under(one.piece, one).map(([piece, of]) => ({ ...of, piece }))),
    }),
  };
}
