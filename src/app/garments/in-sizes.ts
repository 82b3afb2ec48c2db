import type { Result } from '../../knit/fault.ts';
import type { SizedBody } from '../../knit/garment/bodies.ts';
import { resized } from '../../knit/garment/grade.ts';
import { draftSize, type WorkedSize } from '../../knit/written/work-size.ts';
import type { GarmentRecord } from '../../store/records.ts';
import { type DesignForm, designOf, type Person } from '../drafts/design/form.ts';
import { garmentOf } from './garment-of.ts';

/** A size as it was drafted, or why it cannot be. */
export interface DraftedSize {
  readonly size: string;
  readonly worked: Result<WorkedSize>;
}

/**
 * The garment's design in each size, one after the other in tasks of their own, the narrowest chest first.
 * @param onSize told of each size before it is begun
 */
export async function inSizes(
  garment: GarmentRecord,
  form: DesignForm,
  bodies: readonly SizedBody[],
  onSize: (size: string) => void,
): Promise<readonly DraftedSize[]> {
  const { pieces: _drafted, joints: _stated, byHand: _sewn, ...rest } = garmentOf(garment);
  const design = designOf(form);
  const sizes: DraftedSize[] = [];
  for (const { size, body } of [...bodies].sort((a, b) => a.body.chest - b.body.chest)) {
    onSize(size);
    await new Promise((done) => setTimeout(done));
    sizes.push({ size, worked: draftSize(size, resized(design, body), rest) });
  }
  return sizes;
}

/** The name of a size in a written list holds neither brackets nor commas. */
export const sizedPerson = ({ name, body }: Person): SizedBody => ({
  size: name
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
    .slice(0, 16),
  body,
});
