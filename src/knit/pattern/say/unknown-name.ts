import { attempt, type Cursor, seesPhrase, takeTo } from '../../row/read/cursor.ts';
import { means } from '../../row/read/meanings.ts';
import { HEADINGS } from '../../row/read/vocabulary.ts';
import { castOnAhead } from './front-door.ts';

/** 'Trinket: cast on 12 sts', 'Trinket: work as for back': a name that no list has, before what begins a piece. */
export const takeUnknownName = (c: Cursor, end: number): { name: string; like: boolean } | undefined =>
  attempt(c, () => {
    const words = c.tokens.slice(c.at, end);
    const inner = { ...c, at: end + 1 };
    const plain =
      words.length < 4 &&
      words.every(({ kind, text }) => kind === 'word' && !means(text, 'no name of a piece'));
    const name = words.map(({ text }) => text).join(' ');
    if (!plain || !words[0]?.capital || c.tokens[end]?.text !== ':' || HEADINGS.has(words[0].text))
      return undefined;
    const like = seesPhrase(inner, 'work|make|k the? exactly? same|as|like for|as?');
    if (!like && castOnAhead(inner) === undefined) return undefined;
    takeTo(c, end + 1);
    return { name, like };
  });

/** 'Sole – With 4 mm needle, cast on 26 sts': a name that no list has, before what is cast on. */
export const namesWhatIsCastOn = (c: Cursor, end: number, parted: number): boolean =>
  c.tokens[end]?.text === '-' &&
  !means(c.tokens[c.at]?.text, 'beginning of a sentence') &&
  castOnAhead({ ...c, at: parted }) !== undefined;
