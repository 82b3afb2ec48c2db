import { hrefTo } from '../app/routes.ts';
import { parseMakeKey } from '../progress/log.ts';

/** The address of a make on the knitting screen; the workbasket's for a key that is none. */
export function hrefToMake(key: string): string {
  const id = parseMakeKey(key);
  return id === undefined ? hrefTo('workbasket') : hrefTo('knitting', { ...id });
}
