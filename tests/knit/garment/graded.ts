import type { SizedBody } from '../../../src/knit/garment/bodies.ts';
import type { Design } from '../../../src/knit/garment/design.ts';
import { gradedPiece, resized } from '../../../src/knit/garment/grade.ts';
import type { Garment } from '../../../src/knit/piece/garment.ts';
import { draftSize } from '../../../src/knit/written/work-size.ts';

/** A design in several sizes as the table of sizes has them. */
export const graded = (
  design: Design,
  sizes: readonly SizedBody[],
  beside: Pick<Garment, 'swatches' | 'yarns'> = {},
) =>
  sizes.map(({ size, body }) => {
    const made = draftSize(size, resized(design, body), { name: '', ...beside });
    if (!made.ok) return { size, faults: made.faults, pieces: [], metres: 0 };
    const pieces = made.value.garment.pieces.map(({ recipe, makes }) =>
      gradedPiece(recipe, makes[0]?.parts ?? []),
    );
    return { size, faults: [], pieces, metres: made.value.yarn.metresToBuy };
  });
