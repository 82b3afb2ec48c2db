import { straightShapeOf } from '../../../knit/piece/form/straight-again.ts';
import type { GarmentRecord } from '../../../store/records.ts';
import { speech } from '../../../words/settings.ts';
import { newGarmentId, newPieceId } from '../../garments/ids.ts';
import { readOr, store } from '../../store.ts';
import type { Begun } from '../kept/begun.ts';
import { type Draft, draftKey } from './draft.ts';
import { takeUp, writeDraft } from './editor.ts';
import { type GarmentForm, garmentToForm, readGarment } from './garment-form.ts';

/** What a length read off a piece is rounded to where it stays as many stitches or rows, mm. */
const tidyMm = { cm: [10, 5], in: [25.4, 12.7, 6.35] } as const;

/**
 * A garment that was made by its numbers, begun again under another name with all of its figures, for another size: straight
 * panels as the lengths that they are asked by, any other piece as it is. Further yarns and stripes come over when it is
 * saved; what she has of the yarn does not.
 */
export function formLike(garment: GarmentRecord, name: string): GarmentForm {
  const { pieces, yarn, ...like } = garmentToForm(garment);
  const { marks: _, ...own } = garment;
  const form = {
    ...like,
    name,
    pieces: [],
    yarn: { ...yarn, balls: '', dyeLot: '' },
    like: { garment: own, ids: {} },
  };
  const { gauge } = readGarment(form);
  const shape =
    gauge &&
    straightShapeOf(
      garment.pieces.map(({ recipe }) => recipe),
      { gauge, needle: Number(form.needle.replace(',', '.')), tidyMm: tidyMm[speech.value.units] },
    );
  if (shape) return { ...form, shape };
  const again = pieces.map((piece) => ({ was: piece.id, now: { ...piece, id: newPieceId() } }));
  const ids = Object.fromEntries(again.map(({ was, now }) => [now.id, was]));
  return { ...form, pieces: again.map(({ now }) => now), like: { garment: own, ids } };
}

/** Takes it up as the new garment that is being typed: one is kept, and another that is begun stays unless it shall be replaced. */
export async function beginLike(form: GarmentForm, replace: boolean, now = Date.now()): Promise<Begun> {
  const key = draftKey(undefined);
  const settings = readOr(await (await store()).settings());
  if (settings === undefined) return 'not kept';
  const isOther = settings[key] !== undefined && settings[key] !== null;
  if (isOther && !replace) return 'another is begun';
  const draft: Draft = { version: 2, garment: newGarmentId(), at: now, form };
  if (!(await writeDraft(key, draft))) return 'not kept';
  takeUp(draft);
  return 'taken';
}
