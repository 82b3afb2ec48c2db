import { signal } from '@preact/signals';
import type { GarmentId } from '../../../progress/log.ts';
import { store } from '../../store.ts';
import { textIn } from '../kept/read-kept.ts';
import { draftKey } from './draft.ts';

/** A draft as a list shows it: also of one that cannot be read, which is told where it is opened. */
export interface DraftCard {
  readonly garment: GarmentId;
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

/** Garments that she was typing at and has not saved, the latest first; for the workbasket. */
export const drafts = signal<readonly DraftCard[]>([]);

export async function openDrafts(): Promise<void> {
  const settings = await (await store()).settings();
  if (settings.ok) drafts.value = draftsIn(settings.value);
}
