import { isWord } from '../../row/read/cursor.ts';
import type { Token } from '../../row/read/lex.ts';
import { headingOf } from './heading.ts';
import type { Statement } from './statement.ts';

/** 'Next row: | shape neck.', which names what comes. */
export function shapingNamed(tokens: readonly Token[]): Statement | undefined {
  const heading = isWord(tokens[0], 'shape') ? headingOf(tokens, true, true) : undefined;
  return heading?.is === 'heading' && heading.places.length > 0 ? heading : undefined;
}
