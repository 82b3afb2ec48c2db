import { signal } from '@preact/signals';
import { store } from '../../store.ts';
import { type DraftCard, draftsIn } from './draft.ts';

/** Garments that she was typing at and has not saved, the latest first; for the workbasket. */
export const drafts = signal<readonly DraftCard[]>([]);

export async function openDrafts(): Promise<void> {
  const settings = await (await store()).settings();
  if (settings.ok) drafts.value = draftsIn(settings.value);
}
