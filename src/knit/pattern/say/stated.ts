import type { Cursor } from '../../row/read/cursor.ts';
import { takeChangeNote } from './phrase/change-note.ts';
import { takeStated } from './phrase/stated-count.ts';
import type { Statement } from './statement.ts';

export function readStated(c: Cursor): Statement | undefined {
  if (takeChangeNote(c)) return { is: 'note', about: 'change' };
  const stitches = takeStated(c);
  return stitches === undefined ? undefined : { is: 'stated', stitches };
}
