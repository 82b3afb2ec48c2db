import type { AsTold } from '../../../knit/written/as-told.ts';
import type { ReadText } from '../../off-thread/tasks.ts';
import { keepFromNowOn } from '../../start/keep-wanted.ts';

/**
 * The making up and the stripes that a text tells. What reads it is fetched when the first garment is made of a text, and then kept;
 * without it the making up is proposed from the pieces, and it has no stripes.
 */
export async function madeUp(found: ReadText): Promise<AsTold> {
  const reader = await import('../../../knit/written/as-told.ts').catch(() => undefined);
  if (!reader) return { unread: [], stripes: [] };
  void keepFromNowOn('sewing');
  return reader.asTold(found);
}
