import type { Garment } from '../knit/piece/garment.ts';
import type { GarmentRecord } from '../store/records.ts';

/** The garment as the craft knows it, without the store's ids and times. */
export const garmentOf = ({
  name,
  pieces,
  swatches,
  yarns,
  notes,
  credits,
  licence,
}: GarmentRecord): Garment => ({
  name,
  pieces: pieces.map((piece) => piece.recipe),
  ...(swatches === undefined ? {} : { swatches }),
  ...(yarns === undefined ? {} : { yarns }),
  ...(notes === undefined ? {} : { notes }),
  ...(credits === undefined ? {} : { credits }),
  ...(licence === undefined ? {} : { licence }),
});
