import type { StandingGarment } from '../../knit/piece/standing.ts';
import type { GarmentView, InHand } from '../state.ts';
import { garmentOf } from './garment-of.ts';

/** The garment as it stands, for what reckons with it: its pieces by the plans in force, its yarn as written down now. */
export const asItStands = ({ garment, pieces }: GarmentView): StandingGarment => ({
  ...garmentOf(garment),
  pieces,
});

/** The make in hand with its part as it stands in the garment; as it was planned while the garment is not read so far. */
export function inHandAsItStands(now: InHand, view: GarmentView | undefined): InHand {
  const piece =
    view?.garment.id === now.place.garment && view.pieces.find(({ id }) => id === now.place.piece);
  const make = piece ? piece.makes.find(({ make: no }) => no === now.place.make) : undefined;
  const at = make?.places.findIndex(({ id, plan }) => id === now.make && plan === now.place.plan) ?? -1;
  const part = make?.parts[at];
  return part ? { ...now, part } : now;
}
