import { type ColouredMake, colouredPart } from '../../knit/written/stripe-lines.ts';
import type { WorkedSize } from '../../knit/written/work-size.ts';
import { coloursOf, isStriped, type StripesOf } from '../../knit/yarn/stripes.ts';
import type { GarmentRecord } from '../../store/records.ts';
import { garmentOf } from './garment-of.ts';
import { numbered } from './save-new.ts';
import { stripesLaid } from './stripes-laid.ts';
import { stripesToPass } from './stripes-to-pass.ts';

/** A garment, or its design in a size, with its rows in the garment's colours: stripes of another size are laid through its own rows. */
export function inColours(garment: GarmentRecord, size: WorkedSize): WorkedSize {
  if (!isStriped(garment)) return size;
  const passed = { ...garmentOf(garment), ...stripesToPass(garment) };
  const pieces = size.garment.pieces.map(({ recipe }) => recipe);
  const here = stripesLaid(passed, { ...passed, pieces, joints: size.made.joints });
  return { ...size, coloured: colouredMakes(here, size) };
}

/** Every copy of every piece in its colours; copies that are alike are told once. */
function colouredMakes(of: StripesOf, { garment }: WorkedSize): readonly ColouredMake[] {
  const ids = numbered(garment.pieces.map(({ recipe }) => recipe));
  return ids.flatMap(({ id, recipe }, at) => {
    const parts = garment.pieces[at]?.makes[0]?.parts ?? [];
    const copies = Array.from({ length: recipe.makes }, (_, i): ColouredMake => {
      const make = i + 1;
      const coloured = parts.map((part) => colouredPart(part, coloursOf(of, id, parts, part, make)));
      return { piece: recipe.name, make, parts: coloured };
    });
    return areAlike(copies)
      ? copies.slice(0, 1).map(({ piece, parts: own }) => ({ piece, parts: own }))
      : copies;
  });
}

const areAlike = (copies: readonly ColouredMake[]): boolean =>
  new Set(copies.map(({ parts }) => JSON.stringify(parts))).size <= 1;
