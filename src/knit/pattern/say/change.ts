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
import { means } from '../../row/read/meanings.ts';
import { patternNamed, readFabric, readSpelledRib } from './phrase/fabric.ts';
import { wordsIn } from './phrase/words-in.ts';
import type { Statement } from './statement.ts';

/** 'Change to st st', 'switch to M', 'change to the pocket colour and …': a fabric, or a yarn by its words in the text. */
export const readChange = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    if (!takeAnyPhrase(c, 'change|changing|switch|switching back? to')) return undefined;
    const fabric = readFabric(c) ?? readSpelledRib(c);
    if (fabric !== undefined) {
      takePhrase(c, '( for the? sleeve|sleeves|cuff|border|band|hem|welt )');
      // 'change to pattern': not the rib that is there
      return { is: 'even', fabric: fabric.is === 'established' ? patternNamed('') : fabric };
    }
    takes(c, 'the', 'your', 'a');
    const from = c.at;
    for (let far = 0; far < 7 && peek(c) !== undefined && !sees(c, ',', 'and', ';', '.', '('); far += 1) {
      const text = peek(c)?.text;
      if (isWord(peek(c), 'needle') || means(text, 'sounds like work') || means(text, 'goes on'))
        return undefined;
      takeTo(c, c.at + 1);
    }
    const name = wordsIn(c.tokens.slice(from, c.at));
    // 'change to M (break off C1)'
    if (takePhrase(c, '( break|cut off?')) while (peek(c) && !takes(c, ')')) takeTo(c, c.at + 1);
    const ends = c.at >= c.end || takes(c, ',', 'and', ';');
    return ends && name !== '' ? { is: 'yarn', name } : undefined;
  });
