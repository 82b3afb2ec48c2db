import type { GarmentRecord } from '../../store/records.ts';

/** Changes what is written down of the garment's yarn. */
export type ChangeYarn = (change: (garment: GarmentRecord) => GarmentRecord) => void;
