import { asItStands } from '../garments/as-it-stands.ts';
import { type GarmentView, garmentInHand, type InHand } from '../state.ts';
import { tooEarly } from './before-row.ts';

/** Before its first row a band is held against the making up: what it is picked up across has to be sewn by then. */
export async function readSeamsFirst(now: InHand | null | undefined): Promise<void> {
  const view = garmentInHand.peek();
  const isBand = now?.place.rows === 0 && 'pickUp' in now.part.from;
  const waits = isBand && view?.garment.id === now.place.garment && (await hasSeamsFirst(now, view));
  tooEarly.value = waits ? now.make : '';
}

/** Where all that is known of making up cannot be had (a first visit cut off) nothing is said of it. */
async function hasSeamsFirst({ place }: InHand, view: GarmentView): Promise<boolean> {
  const band = view.pieces.find(({ id }) => id === place.piece)?.recipe.name ?? '';
  const known = await Promise.all([
    import('../../knit/making-up/making-up.ts'),
    import('../../knit/making-up/seams-before.ts'),
  ]).catch(() => undefined);
  if (known === undefined) return false;
  const [{ makingUpOf }, { seamsBefore }] = known;
  return seamsBefore(band, makingUpOf(asItStands(view)), new Set(view.garment.ticked)).length > 0;
}
