import { garmentInHand, inHand, type MakeView } from './state.ts';

/** The copy of the piece that the part in hand belongs to, once the garment is read. */
export function makeInHand(): MakeView | undefined {
  const now = inHand.value;
  const view = garmentInHand.value;
  if (!now || view?.garment.id !== now.place.garment) return undefined;
  const piece = view.pieces.find(({ id }) => id === now.place.piece);
  return piece?.makes.find(({ make }) => make === now.place.make);
}
