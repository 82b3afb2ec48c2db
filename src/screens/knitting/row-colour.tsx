import { keyInHand, makeInHand } from '../../app/in-hand/make-in-hand.ts';
import { garmentInHand } from '../../app/state.ts';
import type { PlannedPart } from '../../knit/piece/planned.ts';
import { coloursOf } from '../../knit/yarn/stripes.ts';
import { parseMakeKey } from '../../progress/log.ts';
import { say } from '../../words/say.ts';

/** The colours that the garment's stripes give to the rows of the part in hand; undefined where it has none. */
export function coloursInHand(part: PlannedPart): ((row: number) => string | undefined) | undefined {
  const garment = garmentInHand.value?.garment;
  const id = parseMakeKey(keyInHand.value ?? '');
  if (!garment?.stripes?.length || id?.garment !== garment.id) return undefined;
  return coloursOf(garment, id.piece, makeInHand()?.parts ?? [part], part);
}

/** The colour of a row; said as a change where it differs from the row before. */
export function RowColour({ part, row }: { readonly part: PlannedPart; readonly row: number }) {
  const colourAt = coloursInHand(part);
  const colour = colourAt?.(row);
  if (colourAt === undefined || colour === undefined) return null;
  return (
    <strong class="row-colour">
      {colour === colourAt(row - 1)
        ? say('knitting.colour', { colour })
        : say('knitting.colourNew', { colour })}
    </strong>
  );
}
