import type { Recipe } from '../../knit/piece/recipe.ts';
import type { MakeKey, PlanId } from '../../progress/log.ts';
import { deviceOf } from '../../progress/log-chain.ts';
import type { Tx } from '../box/schema.ts';
import { present } from '../place/reads.ts';
import { withWaysTold } from '../place/told-ways.ts';
import { checkPlace, type Wish, writeMove } from '../place/write-log.ts';
import { type NewPlan, type PlaceRecord, type PlanRecord, planSlot } from '../records.ts';
import { stampedChange } from '../uniting/stamped-change.ts';
import { plansOfGarment, writePlan } from './plan-versions.ts';
import { changedGarment, type GarmentChange, putGarment } from './write-garment.ts';

/** A new plan for a make. */
export interface Rework {
  /** of the make */
  readonly key: MakeKey;
  readonly plan: NewPlan;
  /** rows worked and the plan, as they were shown when it was made */
  readonly from?: number;
  readonly by?: PlanId;
  /** rows worked on the new plan; as many as now unless said */
  readonly rows?: number;
  /** what the piece is from now on */
  readonly recipe?: Recipe;
}

/**
 * Moves a make to a new plan in the caller's transaction: the plan as a new version, an entry, the place, and
 * the piece's recipe where one is given. The rows worked stay worked; the old plan stays for an undo.
 */
export async function writeRework(
  tx: Tx<'readwrite'>,
  wish: Wish,
  plan: NewPlan,
  recipe: Recipe | undefined,
  again: boolean,
): Promise<PlaceRecord> {
  const place = present(await tx.objectStore('places').get(wish.make), 'no-such-make');
  if (again && (await tx.objectStore('log').get(wish.id)) !== undefined) return place;
  checkPlace(wish, place);
  const plans = plansOfGarment(await tx.objectStore('plans').index('garment').getAll(place.garment));
  const stored = await writePlan(tx, plans, {
    ...plan,
    garment: place.garment,
    piece: place.piece,
    part: place.part,
  });
  const row = wish.row ?? place.rows;
  // already there: the same rework asked for again, because no answer came the first time
  const there = stored.id === place.plan && row === place.rows;
  const moved = there
    ? place
    : await withWaysTold(
        tx,
        await writeMove(tx, { ...wish, plan: stored.id, row }, await begun(tx, wish, place)),
      );
  await writeRecipe(tx, place, recipe, stored, wish);
  return moved;
}

/** Nothing was logged yet: the plan that it leaves is said first, so that the rework can be taken back. */
const begun = async (
  tx: Tx<'readwrite'>,
  { id, make, at }: Wish,
  place: PlaceRecord,
): Promise<PlaceRecord> =>
  place.seq > 0 ? place : writeMove(tx, { id: `${id}.0`, make, at, kind: 'place', row: place.rows }, place);

async function writeRecipe(
  tx: Tx<'readwrite'>,
  place: PlaceRecord,
  recipe: Recipe | undefined,
  plan: PlanRecord,
  { id, at }: Wish,
) {
  const slot = planSlot(plan.garment, plan.piece, plan.part, plan.mirror);
  const withRecipe: GarmentChange = (was) => ({
    ...was,
    pieces: was.pieces.map((piece) => {
      if (piece.id !== place.piece || recipe === undefined) return piece;
      const others = piece.plans?.filter((name) => !name.startsWith(slot));
      // a plan that is one make's own is for no other
      const plans = plan.plan.recipe === undefined ? [...(others ?? []), plan.id] : piece.plans;
      // how often it is made was not asked here, and may be another by now
      const { makes } = piece.recipe;
      return { ...piece, recipe: { ...recipe, makes }, ...(plans && { plans }) };
    }),
  });
  const { was, garment } = await changedGarment(tx, place.garment, withRecipe, at);
  const stamped = stampedChange(was, garment, { device: deviceOf({ id }), at });
  await putGarment(tx, stamped, await tx.objectStore('places').index('garment').getAll(garment.id));
}
