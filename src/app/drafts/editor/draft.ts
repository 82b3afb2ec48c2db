import type { GarmentRecord } from '../../../store/records.ts';
import { textIn } from '../kept/read-kept.ts';
import type { GarmentForm } from './garment-form.ts';

/**
 * A garment that is being typed, as it is kept in the settings beside its garment: whatever happens to the page,
 * nothing typed is lost.
 */
export interface Draft {
  /** one of version 1 does not carry what no field shows, see `completed` */
  readonly version: 1 | 2;
  /** id that the garment has, or will have once it is saved */
  readonly garment: string;
  /** ms since 1970, when it was last typed at */
  readonly at: number;
  readonly form: GarmentForm;
  /** the garment that the form was made of; older drafts do not tell it */
  readonly base?: GarmentRecord;
}

/** The setting's name: one draft for each garment, and one that is new. */
export const draftKey = (garment: string | undefined): string =>
  garment === undefined ? 'draft new' : `draft ${garment}`;

/** A draft as a list shows it: also of one that cannot be read, which is told where it is opened. */
export interface DraftCard {
  readonly garment: string;
  readonly name: string;
  /** ms since 1970, when it was last typed at; 0 where that is not known */
  readonly at: number;
  readonly isNew: boolean;
}

/** Drafts among all settings, the latest first: what a list of garments shows as begun. */
export const draftsIn = (settings: Readonly<Record<string, unknown>>): readonly DraftCard[] =>
  Object.entries(settings)
    .filter(([name, stored]) => name.startsWith('draft ') && stored !== null && stored !== undefined)
    .map(([key, stored]): DraftCard => {
      const { at } = stored as { readonly at?: unknown };
      const isNew = key === draftKey(undefined);
      return {
        garment: isNew ? textIn(stored, 'garment') : key.slice('draft '.length),
        name: textIn(stored, 'form', 'name'),
        at: typeof at === 'number' && Number.isFinite(at) ? at : 0,
        isNew,
      };
    })
    .sort((a, b) => b.at - a.at);

/**
 * Writes the newest of what it is given, one write at a time: the first at once, then whatever has come meanwhile.
 * Resolves when everything given so far is stored; answers whether the last write was.
 */
export function lastWriter<T>(write: (value: T) => Promise<boolean>): (value: T) => Promise<boolean> {
  let next: { readonly value: T } | undefined;
  let running: Promise<boolean> | undefined;
  const work = async (): Promise<boolean> => {
    let stored = true;
    for (let head = next; head !== undefined; head = next) {
      next = undefined;
      stored = await write(head.value);
    }
    running = undefined;
    return stored;
  };
  return (value) => {
    next = { value };
    running ??= work();
    return running;
  };
}
