import { asPlanned } from '../../../knit/piece/as-planned.ts';
import { yarnForAnother } from '../../../knit/piece/garment.ts';
import { isStriped } from '../../../knit/yarn/stripes.ts';
import { type LostStripes, stripesAgain } from '../../../knit/yarn/stripes-again.ts';
import type { GarmentRecord, PieceRecord } from '../../../store/records.ts';
import { garmentOf } from '../../garments/garment-of.ts';

/** The garment that another one was begun like: what of it no field shows comes over when that is saved. */
export interface Like {
  readonly garment: GarmentRecord;
  /** ids of its pieces, by those of the new ones; what is not among them goes by what it is: back, front, sleeve */
  readonly ids: Readonly<Record<string, string>>;
}

/** What the new garment begins with; its swatches only while yarn and tension are those that they were knitted in. */
export function begunWith(
  { garment }: Like,
  isSameCloth: boolean,
): Pick<GarmentRecord, 'yarns' | 'swatches' | 'credits' | 'licence'> {
  const { yarns, swatches, credits, licence } = garment;
  return {
    ...(yarns && { yarns: yarns.map(yarnForAnother) }),
    ...(swatches && isSameCloth && { swatches }),
    ...(credits !== undefined && { credits }),
    ...(licence !== undefined && { licence }),
  };
}

export interface StripedLike {
  readonly garment: GarmentRecord;
  /** stripes that have no row in it */
  readonly lost: readonly LostStripes[];
}

/** With the stripes of the garment that it is like, laid in the pieces that are new in it. */
export function stripedLike(
  made: GarmentRecord,
  { garment, ids }: Like,
  before: readonly PieceRecord[],
): StripedLike {
  const was = isStriped(garment) ? asPlanned(garmentOf(garment)) : undefined;
  const now = asPlanned(garmentOf(made));
  if (!was?.ok || !now.ok) return { garment: made, lost: [] };
  const standsFor = ({ id, recipe: { role } }: PieceRecord): string | undefined => {
    if (before.some((piece) => piece.id === id)) return undefined;
    if (Object.hasOwn(ids, id)) return ids[id];
    return garment.pieces.find(({ recipe }) => role !== undefined && recipe.role === role)?.id;
  };
  const of = new Map(made.pieces.map((piece) => [piece.id as string, standsFor(piece)]));
  const { stripes, striped, restriped, lost } = stripesAgain(
    garment,
    { garment: was.value, ids: garment.pieces.map(({ id }) => id) },
    { garment: now.value, ids: made.pieces.map(({ id }) => id) },
    (id) => of.get(id),
  );
  const laid = {
    ...made,
    ...(before.length === 0 && stripes && { stripes }),
    ...(striped && { striped: { ...made.striped, ...striped } }),
    ...(restriped && { restriped: [...(made.restriped ?? []), ...restriped] }),
  };
  return { garment: laid, lost };
}
