import type { GarmentForm } from './garment-form.ts';

/**
 * A garment that is being typed, as it is kept in the settings beside its garment: whatever happens to the page,
 * nothing typed is lost.
 */
export interface Draft {
  readonly version: 1;
  /** id that the garment has, or will have once it is saved */
  readonly garment: string;
  /** ms since 1970, when it was last typed at */
  readonly at: number;
  readonly form: GarmentForm;
}

/** The setting's name: one draft for each garment, and one that is new. */
export const draftKey = (garment: string | undefined): string =>
  garment === undefined ? 'draft new' : `draft ${garment}`;

/** What stands in the settings; undefined when there is none, or none that this app can read. */
export function readDraft(stored: unknown): Draft | undefined {
  if (typeof stored !== 'object' || stored === null) return undefined;
  const { version, garment, form } = stored as Partial<Draft>;
  const isWhole = version === 1 && typeof garment === 'string' && Array.isArray(form?.pieces);
  return isWhole ? (stored as Draft) : undefined;
}

/** Drafts among all settings, the latest first: what a list of garments shows as begun. */
export function draftsIn(
  settings: Readonly<Record<string, unknown>>,
): readonly (Draft & { readonly isNew: boolean })[] {
  return Object.entries(settings)
    .filter(([name]) => name.startsWith('draft '))
    .flatMap(([name, stored]) => {
      const draft = readDraft(stored);
      return draft === undefined ? [] : [{ ...draft, isNew: name === draftKey(undefined) }];
    })
    .sort((a, b) => b.at - a.at);
}

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
