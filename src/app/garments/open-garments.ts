import type { Result } from '../../knit/fault.ts';
import type { PlannedPart } from '../../knit/piece/planned.ts';
import { standingMake } from '../../knit/piece/standing.ts';
import { type GarmentId, makeKey, type PlanId } from '../../progress/log.ts';
import type { InHand as Read } from '../../store/place/reads.ts';
import type { GarmentRecord, PieceRecord, PlaceRecord } from '../../store/records.ts';
import type { Store } from '../../store/store.ts';
import {
  basket,
  type GarmentView,
  garmentInHand,
  garmentShown,
  lastKnitted,
  type MakeView,
  missing,
  type PieceView,
} from '../state.ts';
import { readOr, store } from '../store.ts';
import { basketOf } from './basket.ts';
import { drawings } from './drawings.ts';
import { goOnWith } from './go-on-with.ts';

/** Reads what the workbasket shows: the make in hand first, then every garment. */
export async function openBasket(): Promise<void> {
  const open = await store();
  const top = await open.inHand();
  // with rows left it is in hand, whatever else there is
  const isOpen = top.ok && top.value.place.rows < top.value.place.total;
  if (isOpen) showTop(top.value);
  else if (isNone(top)) lastKnitted.value = null;
  const list = readOr(await open.list());
  if (list === undefined) return;
  const places = await Promise.all(list.map((garment) => open.placesOf(garment.id)));
  const read = places.map(readOr);
  if (top.ok && !isOpen) showTop(await stillInHand(open, top.value, read));
  if (read.every((found) => found !== undefined)) basket.value = basketOf(list, read);
  // what was read after it hides no fault
  const failed = [top, ...places].find((one) => !one.ok && !isNone(one));
  if (failed) readOr<unknown>(failed);
}

function showTop(top: Read | undefined): void {
  const shown = top && { make: top.place.id, part: top.plan.plan, place: top.place, garment: top.garment };
  lastKnitted.value = shown ?? null;
}

/** Nothing is left of the last part that was knitted; where its whole garment is finished, another one is in hand, or none. */
async function stillInHand(
  open: Store,
  top: Read,
  places: readonly (readonly PlaceRecord[] | undefined)[],
): Promise<Read | undefined> {
  const key = await goOnWith(
    open,
    places.filter((own) => own !== undefined),
  );
  if (key === undefined || key === top.place.id) return key && top;
  const other = await open.inHand(key);
  return other.ok ? other.value : top;
}

const isNone = (found: Result<unknown>): boolean => !found.ok && found.faults[0]?.code === 'no-such-make';

/** Reads a garment's drawing into `drawings`; read again where a row was knitted since. */
export async function openDrawing(id: GarmentId): Promise<void> {
  const view = await readView(await store(), id);
  if (view) drawings.value = new Map(drawings.value).set(id, view);
}

let garmentReads = 0;

/** Of reads that overlap, only the one begun last is shown: an earlier one may be of another garment, or older. */
export async function openGarment(id: GarmentId): Promise<void> {
  garmentReads += 1;
  const read = garmentReads;
  if (garmentShown.value?.garment.id !== id) garmentShown.value = undefined;
  const view = await readView(await store(), id);
  if (view !== undefined && read === garmentReads) garmentShown.value = view;
}

/** Everything of the garment in hand beside the make itself: other makes for the drawing, what comes next. */
export async function openGarmentInHand(id: GarmentId): Promise<void> {
  const view = await readView(await store(), id);
  if (view) garmentInHand.value = view;
}

/** The garment without its drawing, for the first paint of its screen; null where there is none, undefined on a fault. */
export async function readView(open: Store, id: GarmentId): Promise<GarmentView | null | undefined> {
  const found = await open.garment(id);
  if (!found.ok && found.faults[0]?.code === 'no-such-garment') return null;
  const garment = readOr(found);
  const places = readOr(await open.placesOf(id));
  if (garment === undefined || places === undefined) return undefined;
  const plans = await readPlans(open, places);
  return plans && viewOf(garment, places, plans);
}

type Plans = ReadonlyMap<PlanId, PlannedPart>;

async function readPlans(open: Store, places: readonly PlaceRecord[]): Promise<Plans | undefined> {
  const ids = [...new Set(places.map((place) => place.plan))];
  const plans = new Map<PlanId, PlannedPart>();
  for (const result of await Promise.all(ids.map((id) => open.plan(id)))) {
    const record = readOr(result);
    if (record === undefined) return undefined;
    plans.set(record.id, record.plan);
  }
  return plans;
}

const viewOf = (garment: GarmentRecord, places: readonly PlaceRecord[], plans: Plans): GarmentView => ({
  garment,
  pieces: garment.pieces.map((piece) =>
    pieceOf(garment.id, piece, new Map(places.map((place) => [place.id, place])), plans),
  ),
});

function pieceOf(
  garment: GarmentId,
  piece: PieceRecord,
  places: ReadonlyMap<string, PlaceRecord>,
  plans: Plans,
): PieceView {
  const { recipe } = piece;
  const makes = Array.from({ length: recipe.makes }, (_, i): MakeView => {
    const make = i + 1;
    const found = recipe.parts.flatMap((_part, part) => {
      const place = places.get(makeKey({ garment, piece: piece.id, part, make }));
      const plan = place && plans.get(place.plan);
      return place && plan ? [{ place, plan }] : [];
    });
    const standing = standingMake(
      recipe,
      make,
      found.map(({ plan }) => plan),
    );
    return { ...standing, places: found.map(({ place }) => place) };
  });
  return { id: piece.id, name: recipe.name, recipe, makes };
}

/** Deletes a garment with its rows, its photos and its log. */
export async function deleteGarment(id: GarmentId): Promise<boolean> {
  const done = await (await store()).deleteGarment(id);
  readOr(done);
  if (!done.ok) return false;
  drawings.value = new Map([...drawings.value].filter(([other]) => other !== id));
  garmentShown.value = undefined;
  garmentInHand.value = undefined;
  basket.value = basket.value?.filter((entry) => entry.garment.id !== id);
  if (lastKnitted.value?.garment.id === id) lastKnitted.value = undefined;
  return true;
}

/** She goes on without what is missing. */
export async function forgetMissing(): Promise<void> {
  (await store()).forgetMissing();
  missing.value = undefined;
}
