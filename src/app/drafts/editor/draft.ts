import type { GarmentId } from '../../../progress/log.ts';
import type { GarmentRecord } from '../../../store/records.ts';
import type { GarmentForm } from './garment-form.ts';

/**
 * A garment that is being typed, as it is kept in the settings beside its garment: whatever happens to the page,
 * nothing typed is lost.
 */
export interface Draft {
  /** one of version 1 does not carry what no field shows, see `completed` */
  readonly version: 1 | 2;
  /** id that the garment has, or will have once it is saved */
  readonly garment: GarmentId;
  /** ms since 1970, when it was last typed at */
  readonly at: number;
  readonly form: GarmentForm;
  /** the garment that the form was made of; older drafts do not tell it */
  readonly base?: GarmentRecord;
}

/** The setting's name: one draft for each garment, and one that is new. */
export const draftKey = (garment: GarmentId | undefined): string =>
  garment === undefined ? 'draft new' : `draft ${garment}`;
