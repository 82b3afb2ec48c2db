import type { Garment } from '../../knit/piece/garment.ts';
import type { GarmentRecord } from '../../store/records.ts';

/** What stays with the store; all else of a record is the garment's, whatever it may learn. */
type OfTheStore = Exclude<keyof GarmentRecord, keyof Garment>;
const ofTheStore: Readonly<Record<OfTheStore, true>> = {
  id: true,
  createdAt: true,
  changedAt: true,
  design: true,
  sizes: true,
  rowNotes: true,
  texts: true,
  ticked: true,
  taken: true,
  stripes: true,
  striped: true,
  restriped: true,
  marks: true,
};

/** The garment as the craft knows it, without the store's ids and times. */
export function garmentOf(record: GarmentRecord): Garment {
  const { pieces, ...rest } = record;
  const own = Object.entries(rest).filter(([field]) => !Object.hasOwn(ofTheStore, field));
  const { name } = record;
  return { ...Object.fromEntries(own), name, pieces: pieces.map((piece) => piece.recipe) };
}
