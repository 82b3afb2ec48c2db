import { type Cursor, takeAnyPhrase } from './cursor.ts';
import type { ReadItem } from './plain.ts';

/** 'pm', 'place marker', 'rm', 'remove marker', 'sm'. */
export function readMarker(c: Cursor): ReadItem | undefined {
  const marker = 'm|mk|mkr|marker|markers|mrk';
  const does = (what: 'place' | 'slip' | 'remove'): ReadItem => ({
    item: { is: 'marker', does: what },
  });
  if (takeAnyPhrase(c, 'pm', `place|put ${marker}`, `place|put a|1 ${marker}`)) return does('place');
  if (takeAnyPhrase(c, 'sm', 'slm', `sl ${marker}`)) return does('slip');
  if (takeAnyPhrase(c, 'rm', `remove|drop ${marker}`)) return does('remove');
  return undefined;
}
