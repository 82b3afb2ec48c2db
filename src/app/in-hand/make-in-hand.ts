import { computed } from '@preact/signals';
import { parseMakeKey } from '../../progress/log.ts';
import { garmentInHand, inHand, type MakeView } from '../state.ts';

/** Its key; the same from row to row. */
export const keyInHand = computed(() => inHand.value?.make);

const found = computed(() => {
  const key = keyInHand.value;
  const id = key === undefined ? undefined : parseMakeKey(key);
  const view = garmentInHand.value;
  if (id === undefined || view?.garment.id !== id.garment) return undefined;
  return view.pieces.find((piece) => piece.id === id.piece)?.makes.find(({ make }) => make === id.make);
});

/** The copy of the piece that the part in hand belongs to, once the garment is read. */
export const makeInHand = (): MakeView | undefined => found.value;
