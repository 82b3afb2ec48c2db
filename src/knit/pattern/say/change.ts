import {
  attempt,
  type Cursor,
  isWord,
  peek,
  sees,
  takeAnyPhrase,
  takePhrase,
  takes,
  takeTo,
} from '../../row/read/cursor.ts';
import { patternNamed, readFabric, readSpelledRib } from './phrase/fabric.ts';
import type { Statement } from './statement.ts';

/** 'Change to st st', 'switch to MC', 'change to 2 strands of CC and …': a fabric, or a yarn that is passed over. */
export const readChange = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    if (!takeAnyPhrase(c, 'change|changing|switch|switching back? to')) return undefined;
    const fabric = readFabric(c) ?? readSpelledRib(c);
    if (fabric !== undefined) {
      takePhrase(c, '( for the? sleeve|sleeves|cuff|border|band|hem|welt )');
      // 'change to pattern': not the rib that is there
      return { is: 'even', fabric: fabric.is === 'established' ? patternNamed('') : fabric };
    }
    for (let far = 0; far < 7 && peek(c) !== undefined && !sees(c, ',', 'and', ';', '.'); far += 1) {
      if (isWord(peek(c), 'needle', 'st', 'sts', 'k', 'p')) return undefined;
      takeTo(c, c.at + 1);
    }
    return c.at >= c.end || takes(c, ',', 'and', ';') ? { is: 'note', about: 'yarn' } : undefined;
  });
