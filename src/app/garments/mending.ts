import { type Edit, editedBy, type Knitted, type KnittedSoFar } from '../../knit/making-up/edit.ts';
import { plan } from '../../knit/piece/plan.ts';
import type { StandingPiece } from '../../knit/piece/standing.ts';
import type { ChangeBeside } from '../../store/garment/garment-calls.ts';
import type { Rework } from '../../store/garment/rework.ts';
import type { PieceRecord, PlanRecord } from '../../store/records.ts';
import type { GarmentView, PieceView } from '../state.ts';
import { asItStands } from './as-it-stands.ts';
import { recordsOf } from './plan-records.ts';

/** How much is knitted of each piece of a garment, by its name. */
export const knittedOf = ({ pieces }: GarmentView): Knitted =>
  new Map(
    pieces.map(({ recipe, makes }): [string, KnittedSoFar] => [
      recipe.name,
      {
        isBegun: makes.some(({ places }) => places.some(({ seq }) => seq > 0)),
        rows: makes.map(({ places }) => places.map(({ rows }) => rows)),
      },
    ]),
  );

/** What is written of the changes that mend a garment: new plans for makes begun, new recipes for pieces that are not. */
export interface MendWrites {
  readonly reworks: readonly Rework[];
  readonly beside?: ChangeBeside;
}

/** Undefined where the changes cannot be made any more: rows may have been knitted since. */
export function mendWrites(view: GarmentView, edits: readonly Edit[]): MendWrites | undefined {
  const made = editedBy(asItStands(view), edits, knittedOf(view));
  if (!made) return undefined;
  const reworks: Rework[] = [];
  const pieces: PieceRecord[] = [];
  const plans: PlanRecord[] = [];
  for (const [i, now] of made.pieces.entries()) {
    const was = view.pieces[i];
    if (!was || now === was) continue;
    if (now.recipe === was.recipe) {
      reworks.push(...reworksOf(view, was, now));
      continue;
    }
    const piece = { id: was.id, recipe: now.recipe };
    const planned = plan(now.recipe);
    if (!planned.ok) return undefined;
    pieces.push(piece);
    plans.push(...recordsOf(view.garment.id, piece, planned.value));
  }
  return { reworks, ...(pieces.length > 0 && { beside: besideOf(view, pieces, plans) }) };
}

function reworksOf({ garment }: GarmentView, was: PieceView, now: StandingPiece): readonly Rework[] {
  return was.makes.flatMap((make, no) =>
    make.places.flatMap((place, part): Rework[] => {
      const own = now.makes[no]?.parts[part];
      // laid out anew, a part that nothing changed is the same in all but its place on the others
      if (own?.recipe === undefined || own.recipe === make.parts[part]?.recipe) return [];
      const mirror = was.recipe.mirrored === true && make.make % 2 === 0;
      const record = { id: '', garment: garment.id, piece: was.id, part, mirror, version: 0, plan: own };
      return [{ key: place.id, plan: record, from: place.rows, by: place.plan }];
    }),
  );
}

/** The change of pieces that are not begun. */
const besideOf = (
  { garment }: GarmentView,
  pieces: readonly PieceRecord[],
  plans: readonly PlanRecord[],
): ChangeBeside => ({
  id: garment.id,
  plans,
  change: (now) => ({
    ...now,
    pieces: now.pieces.map((piece) => {
      const mended = pieces.find(({ id }) => id === piece.id);
      return mended ? { ...piece, recipe: mended.recipe } : piece;
    }),
  }),
});
