import { type Cursor, takeAnyPhrase, takePhrase, takes } from './cursor.ts';
import { readCount, STS } from './goal.ts';
import { counted, type ReadItem } from './plain.ts';

/** 'drop 1 st', 'drop next yo', 'drop st off needle'. */
export function readDrop(c: Cursor): ReadItem {
  c.at += 1;
  takes(c, 'the');
  const n = readCount(c);
  takes(c, 'extra', 'next', 'first', 'second', 'last');
  takeAnyPhrase(c, STS, 'yo|o|over|overs', 'loop', 'wrap|wraps', 'yarn over');
  takePhrase(c, 'of the? last|previous row');
  takeAnyPhrase(c, 'off the? needle', 'from left? needle');
  return counted('drop', n ?? 1);
}
