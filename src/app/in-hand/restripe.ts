import type { Recipe } from '../../knit/piece/recipe.ts';
import { knittedAbove, restripedFrom, type StripedMake, withRestriped } from '../../knit/yarn/restripe.ts';
import { rowsBeside } from '../../knit/yarn/striped-through.ts';
import { type Restriped, rowsBelow, type Stripe } from '../../knit/yarn/stripes.ts';
import { asItStands } from '../garments/as-it-stands.ts';
import { changeGarment } from '../garments/change-garment.ts';
import { openGarmentInHand } from '../garments/open-garments.ts';
import { type GarmentView, garmentInHand, type InHand, type PieceView } from '../state.ts';

/** Other stripes for the rows of the make in hand that are not knitted, and of what lies beside it. */
export interface StripesWish {
  readonly stripes: readonly Stripe[];
  /** of the part in hand, with which they begin */
  readonly row: number;
  /** those beside it that stay as they are, by their keys */
  readonly left: ReadonlySet<string>;
}

/** A make whose rows lie beside those of the make in hand: sewn to it, another copy, or a sleeve at the underarm. */
export interface Beside extends StripedMake {
  readonly key: string;
  readonly name: string;
  readonly recipe: Recipe;
  /** of the piece, from its cast-on, where the same height lies */
  readonly from: number;
  /** rows from there on that are knitted, and keep their colours */
  readonly knitted: number;
  /** whether any row of it is left that can change */
  readonly isOpen: boolean;
}

/** The stripes of the rows to come, as a beginning for others. */
export const stripesInForce = ({ place }: InHand): readonly Stripe[] => {
  const garment = garmentInHand.value?.garment;
  const own = garment?.restriped?.filter(({ piece, make }) => piece === place.piece && make === place.make);
  return own?.at(-1)?.stripes ?? garment?.stripes ?? [];
};

const makesOf = (piece: PieceView, now: InHand): (StripedMake & { readonly make: number })[] =>
  piece.makes.map(({ make, parts, places }) => ({
    piece: piece.id,
    make,
    parts,
    // the place that is shown is the newest
    worked: places.map(({ id, rows }) => (id === now.make ? now.place.rows : rows)),
  }));

const pieceInHand = (view: GarmentView, { place }: InHand): PieceView | undefined =>
  view.pieces.find(({ id }) => id === place.piece);

/** The make in hand, and the row of its piece, from the cast-on, that a row of the part in hand is. */
function ownAt(view: GarmentView, now: InHand, row: number) {
  const piece = pieceInHand(view, now);
  const make = piece && makesOf(piece, now).find((one) => one.make === now.place.make);
  const part = make?.parts[now.place.part];
  return make && part ? { make, height: rowsBelow(make.parts, part) + row } : undefined;
}

/** All that lies beside the make in hand from a row of its part on. */
export function besideFrom(view: GarmentView, now: InHand, row: number): readonly Beside[] {
  const own = ownAt(view, now, row);
  const piece = pieceInHand(view, now);
  if (!own || !piece) return [];
  const higher = rowsBeside(asItStands(view), piece.recipe.name);
  return view.pieces.flatMap((other) => {
    const by = other === piece ? 0 : higher.get(other.recipe.name);
    if (by === undefined) return [];
    const from = own.height + by;
    return makesOf(other, now)
      .filter(({ make }) => other !== piece || make !== now.place.make)
      .map((make): Beside => {
        const { name, recipe } = other;
        const key = `${other.id}/${make.make}`;
        const isOpen = restripedFrom(make, from, []).length > 0;
        return { ...make, key, name, recipe, from, knitted: knittedAbove(make, from), isOpen };
      });
  });
}

/** The garment's changes of stripes with these; undefined while the garment is not read. */
export function restripedBy(
  view: GarmentView,
  now: InHand,
  { stripes, row, left }: StripesWish,
): readonly Restriped[] | undefined {
  const own = ownAt(view, now, Math.max(row, now.place.rows + 1));
  if (!own) return undefined;
  const beside = besideFrom(view, now, row).filter(({ key, isOpen }) => isOpen && !left.has(key));
  const all = [{ ...own.make, from: own.height }, ...beside];
  return all.reduce<readonly Restriped[]>(
    (changes, make) => withRestriped(changes, make, restripedFrom(make, make.from, stripes)),
    view.garment.restriped ?? [],
  );
}

/** @returns whether it was stored */
export async function takeStripes(now: InHand, wish: StripesWish): Promise<boolean> {
  const { garment } = now.place;
  const done = await changeGarment(garment, (record) => {
    const view = garmentInHand.value;
    const restriped = view && restripedBy({ ...view, garment: record }, now, wish);
    return restriped ? { ...record, restriped } : record;
  });
  await openGarmentInHand(garment);
  return done;
}
