import { colourBefore, coloursInHand } from '../../app/in-hand/before-row.ts';
import type { PlannedPart } from '../../knit/piece/planned.ts';
import { saysRidge } from '../../words/ridge.ts';
import { say } from '../../words/say.ts';

/**
 * The ridge of garter stitch that the row belongs to, and the colour that the garment's stripes give it; a change of
 * colour is said before the row instead.
 */
export function RowFacts({ part, row }: { readonly part: PlannedPart; readonly row: number }) {
  const ridge = saysRidge(part, row);
  const striped = coloursInHand(part)?.(row);
  const colour = striped === undefined || colourBefore(part, row) !== undefined ? undefined : striped;
  return (
    <>
      {ridge !== '' && <span class="row-ridge">{ridge}</span>}
      {colour !== undefined && <strong class="row-colour">{say('lap.colour', { colour })}</strong>}
    </>
  );
}
