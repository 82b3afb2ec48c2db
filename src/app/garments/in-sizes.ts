import { ok, type Result } from '../../knit/fault.ts';
import { type Adjustment, adjusted } from '../../knit/garment/adjust.ts';
import type { SizedBody } from '../../knit/garment/bodies.ts';
import type { Design } from '../../knit/garment/design.ts';
import { resized } from '../../knit/garment/grade.ts';
import type { Garment } from '../../knit/piece/garment.ts';
import { draftSize, type WorkedSize } from '../../knit/written/work-size.ts';
import type { GarmentRecord } from '../../store/records.ts';
import { garmentOf } from './garment-of.ts';

/** A size as it was drafted, or why it cannot be. */
export interface DraftedSize {
  readonly size: string;
  readonly worked: Result<WorkedSize>;
}

/**
 * A design in each size, one after the other in tasks of their own, the narrowest chest first.
 * @param rest what is not drafted: name, yarn, credits
 * @param inColours lays its stripes through a size
 * @param onSize told of each size before it is begun
 */
export async function inSizes(
  design: Design,
  rest: Omit<Garment, 'pieces'>,
  bodies: readonly SizedBody[],
  onSize: (size: string) => void,
  adjustments: readonly Adjustment[] = [],
  inColours: (size: WorkedSize) => WorkedSize = (size) => size,
): Promise<readonly DraftedSize[]> {
  const sizes: DraftedSize[] = [];
  for (const { size, body } of [...bodies].sort((a, b) => a.body.chest - b.body.chest)) {
    onSize(size);
    await new Promise((done) => setTimeout(done));
    const worked = draftSize(size, adjusted(resized(design, body), adjustments, size), rest);
    sizes.push({ size, worked: worked.ok ? ok(inColours(worked.value)) : worked });
  }
  return sizes;
}

/** What of a garment is not drafted. */
export function besideDraft(garment: GarmentRecord): Omit<Garment, 'pieces'> {
  const { pieces: _drafted, joints: _stated, byHand: _sewn, ...rest } = garmentOf(garment);
  return rest;
}
