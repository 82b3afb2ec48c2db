import { signal } from '@preact/signals';
import type { ComponentType } from 'preact';

/** A component that is fetched after the first paint; nothing stands in its place until `fetch` has got it, which says so. */
export type Later<Props> = ComponentType<Props> & { readonly fetch: () => Promise<boolean> };

/** Where its file cannot be had (a first visit cut off) it is missed until the screen is opened anew. */
export function later<Props extends object>(load: () => Promise<ComponentType<Props>>): Later<Props> {
  const loaded = signal<ComponentType<Props> | undefined>(undefined);
  const Place = (props: Props) => {
    const Loaded = loaded.value;
    return Loaded === undefined ? null : <Loaded {...props} />;
  };
  const fetch = async () => {
    loaded.value ??= await load().catch(() => undefined);
    return loaded.value !== undefined;
  };
  return Object.assign(Place, { fetch });
}
