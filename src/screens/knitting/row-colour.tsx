import { colourBefore, coloursInHand } from '../../app/in-hand/before-row.ts';
import type { PlannedPart } from '../../knit/piece/planned.ts';
import { say } from '../../words/say.ts';

/** The colour that the garment's stripes give to a row; a change is said before the row instead. */
export function RowColour({ part, row }: { readonly part: PlannedPart; readonly row: number }) {
  const colour = coloursInHand(part)?.(row);
  if (colour === undefined || colourBefore(part, row) !== undefined) return null;
  return <strong class="row-colour">{say('lap.colour', { colour })}</strong>;
}
