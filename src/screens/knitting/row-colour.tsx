import { keyInHand } from '../../app/in-hand/make-in-hand.ts';
import { garmentInHand } from '../../app/state.ts';
import { colourOf } from '../../knit/yarn/stripes.ts';
import { say } from '../../words/say.ts';

/** The colour that the garment's stripes give to a row; said as a change where it differs from the row before. */
export function RowColour({ row }: { readonly row: number }) {
  const garment = garmentInHand.value?.garment;
  if (garment?.stripes === undefined || !keyInHand.value?.startsWith(`${garment.id}/`)) return null;
  const colour = colourOf(garment.stripes, row);
  if (colour === undefined) return null;
  const isNew = colour !== colourOf(garment.stripes, row - 1);
  return (
    <strong class="row-colour">
      {isNew ? say('knitting.colourNew', { colour }) : say('knitting.colour', { colour })}
    </strong>
  );
}
