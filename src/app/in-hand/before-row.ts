import { signal } from '@preact/signals';
import { changesBefore, type PlannedChange } from '../../knit/piece/before-row.ts';
import type { PlannedPart, PlannedRow } from '../../knit/piece/planned.ts';
import { coloursOf, isStriped } from '../../knit/yarn/stripes.ts';
import { type MakeKey, parseMakeKey } from '../../progress/log.ts';
import { garmentInHand, inHand } from '../state.ts';
import { keyInHand, makeInHand } from './make-in-hand.ts';
import type { Reading } from './reading.ts';
import type { NoteOnRow } from './row-notes.ts';

/** What has to be done or known before a row is worked. */
export type BeforeRow =
  | PlannedChange
  | { readonly kind: 'colour'; readonly colour: string }
  /** what a band is picked up across is not sewn yet */
  | { readonly kind: 'sew' }
  /** the edge that is bound off goes over the head */
  | { readonly kind: 'loosely' }
  | Pick<NoteOnRow, 'kind' | 'text' | 'make' | 'address'>;

interface NotesOfMake {
  readonly make: MakeKey;
  readonly notes: readonly NoteOnRow[];
}

/** Her notes and lifelines on the part in hand, once they are read. */
export const notesInHand = signal<NotesOfMake | undefined>(undefined);

/** The band in hand, where it is picked up across seams that are not sewn yet; once that is known. '' for none. */
export const tooEarly = signal<MakeKey | ''>('');

/** The part in hand as it stands: as high as the tension says, or as she measured it; undefined until the garment is read. */
export const partAsItStands = (): PlannedPart | undefined =>
  makeInHand()?.parts[inHand.value?.place.part ?? -1];

/** Lengths are told only where somebody measured a tension. */
export const hasTension = (): boolean => makeInHand()?.recipe.gauge !== undefined;

/** All that comes before a row of the part in hand, in the order in which it is done. */
export const beforeRow = ({ part, row }: Reading): readonly BeforeRow[] => beforeRowsOf(part)(row);

/** The same of any row of it. Stripes and tension are asked for once: after each row all that are left may be gone through. */
function beforeRowsOf(part: PlannedPart): (row: PlannedRow) => readonly BeforeRow[] {
  const own = partAsItStands();
  const measures = hasTension();
  // a neck bound off tightly does not go over the head; common practice, no published source
  const isNeck = makeInHand()?.recipe.role === 'neckband';
  const colourAt = coloursInHand(part);
  return (row) => {
    const planned = changesBefore(own?.rows[row.n - 1] ? own : part, row);
    const colour = changeOf(colourAt, row.n);
    return [
      ...(row.n === 1 && tooEarly.value === keyInHand.value ? [{ kind: 'sew' } as const] : []),
      ...planned.filter(({ kind }) => kind !== 'measure' || measures),
      ...(colour === undefined ? [] : [{ kind: 'colour', colour } as const]),
      ...(isNeck && row.after === 0 ? [{ kind: 'loosely' } as const] : []),
      ...notesBefore(row),
    ];
  };
}

/** The colours that the garment's stripes give to the rows of the part in hand; undefined where it has none. */
export function coloursInHand(part: PlannedPart): ((row: number) => string | undefined) | undefined {
  const garment = garmentInHand.value?.garment;
  const id = parseMakeKey(keyInHand.value ?? '');
  if (!garment || !isStriped(garment) || id?.garment !== garment.id) return undefined;
  return coloursOf(garment, id.piece, makeInHand()?.parts ?? [part], part, id.make);
}

/** The colour that is taken up before a row (from 1), where it is another than that of the row before. */
export const colourBefore = (part: PlannedPart, row: number): string | undefined =>
  changeOf(coloursInHand(part), row);

function changeOf(colourAt: ReturnType<typeof coloursInHand>, row: number): string | undefined {
  const [last, colour] = [colourAt?.(row - 1), colourAt?.(row)];
  // garments from before stripes went on through the parts have no colour for the set-up
  return colour === last || (row === 1 && last === undefined) ? undefined : colour;
}

function notesBefore({ n }: PlannedRow): readonly BeforeRow[] {
  const found = notesInHand.value;
  return found?.make === keyInHand.value ? (found?.notes.filter(({ row }) => row === n) ?? []) : [];
}

/** The first row after one at which something is done before it. */
export function nextWithBefore(part: PlannedPart, after: number): PlannedRow | undefined {
  const before = beforeRowsOf(part);
  return part.rows.find((row) => row.n > after && before(row).length > 0);
}
