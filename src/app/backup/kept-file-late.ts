import { signal } from '@preact/signals';
import type { Fault } from '../../knit/fault.ts';

/** Why the file that is kept up to date could not be when that was tried last; undefined where it could. */
export const keptFileLate = signal<Fault | undefined>(undefined);
