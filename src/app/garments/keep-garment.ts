import type { Result } from '../../knit/fault.ts';
import type { PassedOn } from '../../store/share/link.ts';
import { plansOf } from './plans-of.ts';
import { numbered, saveNew } from './save-new.ts';

/** Puts a garment that came from elsewhere into the workbasket as a new one. Gives its id. */
export const keepGarment = ({ pieces, ...rest }: PassedOn, now = Date.now()): Promise<Result<string>> =>
  saveNew({ ...rest, pieces: numbered(pieces) }, now, plansOf);
