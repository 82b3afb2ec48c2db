import { useEffect, useMemo, useState } from 'preact/hooks';
import { asItStands } from '../../app/garments/as-it-stands.ts';
import { knittedOf, type MendWrites, mendWrites } from '../../app/garments/mending.ts';
import { type GarmentView, garmentInHand, type InHand } from '../../app/state.ts';
import type { Result } from '../../knit/fault.ts';
import { type Edit, editedBy } from '../../knit/making-up/edit.ts';
import type { Asked } from '../../knit/making-up/mends.ts';
import type { Rework } from '../../knit/piece/rework/replan.ts';
import { type StandingGarment, standingMake } from '../../knit/piece/standing.ts';

/** What a new plan breaks in its garment, and the mends that are taken with it. */
export function useMends(now: InHand, made: Result<Rework> | undefined) {
  const [edits, setEdits] = useState<readonly Edit[]>([]);
  const view = garmentInHand.value;
  // another wish breaks other things
  useEffect(() => setEdits([]), [made]);
  const asked = useMemo(
    () => (view && made?.ok ? askedOf(view, now, made.value, edits) : undefined),
    [view, now, made, edits],
  );
  return {
    asked,
    edits,
    take: (more: readonly Edit[]) => setEdits([...edits, ...more]),
    leave: () => setEdits([]),
    writes: (): MendWrites | undefined => (view && edits.length > 0 ? mendWrites(view, edits) : undefined),
  };
}

/** The garment as it stands, and with the make in hand by its new plan. */
function askedOf(
  view: GarmentView,
  { place }: InHand,
  made: Rework,
  edits: readonly Edit[],
): Asked<StandingGarment> {
  const before = asItStands(view);
  const at = view.pieces.findIndex(({ id }) => id === place.piece);
  const pieces = before.pieces.map((piece, i) => {
    if (i !== at) return piece;
    const makes = piece.makes.map((make) => {
      if (make.make !== place.make) return make;
      const plans = make.parts.map((part, index) => made.parts.find((p) => p.index === index)?.part ?? part);
      return standingMake(piece.recipe, make.make, plans);
    });
    return { ...piece, makes };
  });
  const knitted = knittedOf(view);
  const after = { ...before, pieces };
  return {
    before,
    after: editedBy(after, edits, knitted) ?? after,
    knitted,
    inHand: view.pieces[at]?.name,
  };
}
