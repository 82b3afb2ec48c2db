import { signal } from '@preact/signals';
import type { Fault } from '../../knit/fault.ts';
import type { Preview } from '../../store/backup/preview.ts';

/** Why the file that is kept up to date could not be when that was tried last; undefined where it could. */
export const keptFileLate = signal<Fault | undefined>(undefined);

/** What another device has put into that file: taken in already, or to be read once she allows it. */
export interface KeptNews {
  readonly name: string;
  /** what came in; undefined where the browser wants to be asked for the file first */
  readonly took?: Preview;
}

export const keptNews = signal<KeptNews | undefined>(undefined);
