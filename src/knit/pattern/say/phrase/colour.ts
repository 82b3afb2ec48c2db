import { attempt, type Cursor, peek, takes, takeTo } from '../../../row/read/cursor.ts';
import { means } from '../../../row/read/meanings.ts';

/** 'in A', 'with MC', 'using yarn B', 'in white': the yarn's name as the text has it; 'in a pattern' names none. */
export const readColour = (c: Cursor): string | undefined =>
  attempt(c, () => {
    if (!takes(c, 'with', 'in', 'using')) return undefined;
    takes(c, 'the');
    takes(c, 'yarn', 'wool', 'color', 'colour', 'shade');
    return readColourName(c);
  });

/** 'A', 'MC', 'main colour', 'white'. */
export const readColourName = (c: Cursor): string | undefined =>
  attempt(c, () => {
    const token = peek(c);
    const letter = token?.text.length === 1 && token.capital && means(token.text, 'letter of a yarn');
    if (token === undefined || !(letter || means(token.text, 'name of a yarn'))) return undefined;
    takeTo(c, c.at + 1);
    takes(c, 'yarn', 'wool', 'color', 'colour', 'shade');
    return letter || token.text.length < 3 ? token.text.toUpperCase() : token.text;
  });
