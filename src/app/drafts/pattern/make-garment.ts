import { fault, type Result, refuse } from '../../../knit/fault.ts';
import { plansOf } from '../../garments/plans-of.ts';
import { numbered, saveNew } from '../../garments/save-new.ts';
import type { ReadDesign } from './draft.ts';
import { madeUp } from './made-up.ts';
import { textsOf } from './read-garment.ts';
import { forgetPattern, options, pattern, read, settle } from './reader.ts';
import { titleOf } from './title-of.ts';

/**
 * Makes an ordinary garment of what was read, with its text and how it was read, made up as the text tells. Gives its id.
 * It is called as she typed it, else as its text calls it.
 * @param noteOf says what of the making up was not understood, to be kept with the garment
 */
export async function makeGarment(
  fallbackName: string,
  noteOf: (unread: readonly string[]) => string,
  now = Date.now(),
): Promise<Result<string>> {
  await settle();
  const from = pattern.peek();
  const found = read.peek();
  if (!from || !found || found.pieces.length === 0) {
    return refuse(fault('nothing to save'));
  }
  const design: ReadDesign = { kind: 'read', version: 1, options: options.peek() };
  const { joints, unread, stripes } = await madeUp(found);
  const pieces = numbered(found.pieces.map(({ recipe }) => recipe));
  const restriped = stripes.flatMap(({ piece, ...one }) => {
    const id = pieces[piece]?.id;
    return id === undefined ? [] : [{ ...one, piece: id }];
  });
  const saved = await saveNew(
    {
      name: from.name.trim() || titleOf(found) || fallbackName,
      pieces,
      texts: textsOf(from.text),
      design,
      ...(joints && { joints }),
      ...(restriped.length > 0 && { restriped }),
      ...(unread.length > 0 && { notes: noteOf(unread) }),
    },
    now,
    plansOf,
  );
  if (saved.ok) await forgetPattern();
  return saved;
}
