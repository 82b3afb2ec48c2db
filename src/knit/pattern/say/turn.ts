import { type Cursor, takePhrase } from '../../row/read/cursor.ts';
import type { Statement } from './statement.ts';

export function readTurn(c: Cursor): Statement | undefined {
  return takePhrase(c, 'turn') ? { is: 'turn' } : undefined;
}
