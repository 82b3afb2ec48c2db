import { attempt, type Cursor, takeAnyPhrase, takes } from '../../../row/read/cursor.ts';
import type { Side } from '../../../row/step.ts';
import { readSide } from './side.ts';

export const skipFacing = (c: Cursor): boolean => readFacing(c) !== undefined;

/** 'with RS facing', 'on right side of work'. */
export const readFacing = (c: Cursor): Side | undefined =>
  attempt(c, () => {
    if (takes(c, 'with', 'on', 'from')) {
      takes(c, 'the');
      const side = readSide(c);
      if (side !== undefined) {
        takeAnyPhrase(
          c,
          'of work facing',
          'facing you',
          'facing',
          'of work|piece toward|towards you',
          'toward|towards you',
          'of work|piece',
          'side facing',
        );
        takes(c, 'you');
        takes(c, ',');
        return side;
      }
    }
  });
