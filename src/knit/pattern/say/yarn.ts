import { readColour, readColourName, YARN } from '../../row/read/colour.ts';
import {
  attempt,
  type Cursor,
  isOneOf,
  isWord,
  peekWord,
  sees,
  seesPhrase,
  takePhrase,
  takes,
} from '../../row/read/cursor.ts';
import { readStrands } from './phrase/strands.ts';
import type { Statement } from './statement.ts';

/** 'With B, …', 'in A' behind rows, 'change to MC', 'join B': what follows is worked in that yarn. */
export const readYarn = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    // 'with A and B held together': both of them, not the first
    const held = readStrands(c);
    const name = held ?? readColour(c) ?? changed(c) ?? behindRows(c);
    if (name === undefined) return undefined;
    takes(c, 'only');
    const all = held !== undefined && takes(c, 'throughout');
    const done =
      c.at >= c.end ||
      isOneOf(peekWord(c), ', ; . :') ||
      seesPhrase(c, '( with') ||
      sees(c, 'and', 'k', 'p', 'work', 'cont', 'bind', 'bo', 'pick');
    return done
      ? { is: 'yarn', name, ...(held !== undefined && { held: true, ...(all && { all }) }) }
      : undefined;
  });

/** 'Work 4 rows A'. */
const behindRows = (c: Cursor): string | undefined =>
  isWord(c.tokens[c.at - 1], 'row', 'rows') ? readColourName(c) : undefined;

const changed = (c: Cursor): string | undefined =>
  attempt(c, () => {
    if (
      takes(c, 'change', 'changing', 'switch', 'switching')
        ? !takePhrase(c, 'back? to')
        : !takes(c, 'join', 'joining', 'attach') && !seesPhrase(c, 'tie in|on')
    )
      return undefined;
    if (takes(c, 'tie')) takes(c, 'on');
    takes(c, 'in');
    takes(c, 'the', 'your');
    takes(c, ...YARN);
    return readColourName(c);
  });
