import { signal } from '@preact/signals';
import type { Reading } from '../../app/in-hand/reading.ts';
import { isLastBindOff, ownWordsOf, sectionOf } from '../../app/in-hand/row-now.ts';
import type { PlannedPart, PlannedRow } from '../../knit/piece/planned.ts';
import type { Recipe } from '../../knit/piece/recipe.ts';
import { saysShaping, saysSide, saysStitches } from '../../words/craft.ts';
import { saysRow } from '../../words/row.ts';
import { say } from '../../words/say.ts';
import { saysMake } from '../says-make.ts';

/** While only the make itself is read it is not known whether there are more copies; a second one says so itself. */
export const saysMakeInHand = (part: PlannedPart, make: number, of: number | Recipe = make): string =>
  saysMake(part.piece, part.name, make, of);

/** What live region and voice say of a row: which, what, how many after it. */
function saysWholeRow(part: PlannedPart, row: PlannedRow): string {
  const shaping = isLastBindOff(row) ? '' : saysShaping(row);
  const work = ownWordsOf(part, row) ?? saysRow(row.steps, 'full');
  return say('knitting.announce', {
    row: row.n,
    rows: part.rows.length,
    side: saysSide(row.side, true),
    what: shaping ? `${say('knitting.shapingRow')}: ${shaping}. ${work}` : work,
    count: saysStitches(row.after),
  });
}

/** What is said around a row: what is done before it, where the next shaping lies. The row alone until the file that knows it has come. */
export const saysAround = signal((_read: Reading, row: string) => row);

/** The row that is read; where none is left, that the part with this title is done. */
export const saysReading = (read: Reading | undefined, title: string): string =>
  read
    ? saysAround.value(read, saysWholeRow(read.part, read.row))
    : say('knitting.announceEnd', { part: title });

/** The section's name; the one-row section of the bind-off is ours, not the recipe's. */
export function saysSection(part: PlannedPart, row: PlannedRow): string {
  return isLastBindOff(row) ? say('knitting.bindOffRow') : (sectionOf(part, row)?.name ?? '');
}
