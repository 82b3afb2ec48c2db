import { type Cursor, takeAnyPhrase } from '../../../row/read/cursor.ts';
import type { Side } from '../../../row/step.ts';

/** 'RS', 'wrong side', 'k row', 'purl row'. */
export function readSide(c: Cursor): Side | undefined {
  if (takeAnyPhrase(c, 'rs', 'right side|s', 'r s', 'k', 'right - side')) return 'RS';
  if (takeAnyPhrase(c, 'ws', 'wrong side|s', 'w s', 'p', 'wrong - side')) return 'WS';
  return undefined;
}
