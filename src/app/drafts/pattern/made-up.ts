import type { JoinedAsTold } from '../../../knit/written/joined-as-told.ts';
import type { ReadText } from '../../off-thread/tasks.ts';
import { keepFromNowOn } from '../../start/keep-wanted.ts';

/**
 * The making up that a text tells. What reads it is fetched when the first garment is made of a text, and then kept;
 * without it the making up is proposed from the pieces.
 */
export async function madeUp(found: ReadText): Promise<JoinedAsTold> {
  const reader = await import('../../../knit/written/joined-as-told.ts').catch(() => undefined);
  if (!reader) return { unread: [] };
  void keepFromNowOn('sewing');
  return reader.joinedAsTold(found);
}
