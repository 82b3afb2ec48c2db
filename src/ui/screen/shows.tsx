import { useShows } from './use-shows.ts';

/** As useShows, for what is there only at times. */
export function Shows({ what }: { readonly what: string }) {
  useShows(what);
  return null;
}
