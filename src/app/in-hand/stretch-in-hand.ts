import { computed } from '@preact/signals';
import { fault, ok, type Result, refuse } from '../../knit/fault.ts';
import { STRETCH_STEP, stretchAt } from '../../knit/pattern/stretch-at.ts';
import { readOptionsOf, wholeText } from '../drafts/pattern/read-garment.ts';
import { openGarmentInHand } from '../garments/open-garments.ts';
import { ask, only } from '../off-thread/ask.ts';
import { garmentInHand, inHand } from '../state.ts';
import { takePlans } from './count.ts';

/** The stretch given as a length that she is in, or has just ended; undefined elsewhere. */
export const stretchNow = computed(() => {
  const now = inHand.value;
  return now ? stretchAt(now.part, now.place.rows) : undefined;
});

/** Two rows more than are planned. */
export const lengthen = (): Promise<Result<true>> => setStretch((rows) => rows + STRETCH_STEP);

/** It ends with the row just worked. */
export const endHere = (): Promise<Result<true>> => setStretch((_, worked) => worked);

/** Gives the stretch in hand another number of rows: a new plan for this make, its rows worked as they were. */
async function setStretch(choose: (rows: number, worked: number) => number): Promise<Result<true>> {
  const now = inHand.peek();
  // rows come faster than the drawing below them, with which the garment is read
  if (now && garmentInHand.peek()?.garment.id !== now.place.garment)
    await openGarmentInHand(now.place.garment);
  const view = garmentInHand.peek();
  const stretch = stretchNow.peek();
  const piece = view?.pieces.findIndex(({ id }) => id === now?.place.piece) ?? -1;
  const make = view?.pieces[piece]?.makes.find((one) => one.make === now?.place.make);
  const text = view && wholeText(view.garment);
  const options = view && (await readOptionsOf(view.garment));
  if (!now || !stretch || !make || text === undefined || options === undefined) {
    return refuse(fault('text missing'));
  }
  const { part: index, rows: worked } = now.place;
  const rows = choose(stretch.last - stretch.first + 1, stretch.worked);
  const wish = { text, options, piece, parts: make.parts, part: index, worked, stretch, rows };
  const made = await only(ask('stretch', wish));
  const { place } = inHand.peek() ?? {};
  if (place?.id !== now.place.id) return refuse(fault('not stored'));
  // a row was stored meanwhile: it is counted too
  if (place.seq !== now.place.seq) return setStretch(choose);
  if (!made?.ok) return made ?? refuse(fault('not stored'));
  const found = made.value;
  if (!found.ok) return found;
  const begun = make.places.map((place) => place.rows > 0);
  const plans = found.value.flatMap((part, i) =>
    i === index || (i > index && !begun[i]) ? [{ index: i, part }] : [],
  );
  const taken = await takePlans(plans);
  return taken ? ok(true) : refuse(fault('not stored'));
}
