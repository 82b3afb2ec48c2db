import {
  ahead,
  attempt,
  type Cursor,
  sees,
  takeAnyPhrase,
  takes,
  takesOne,
  takeTo,
} from '../../row/read/cursor.ts';
import { means } from '../../row/read/meanings.ts';
import { readAsFor } from './as-for.ts';
import { headingOf } from './heading.ts';
import type { PieceSaid } from './how-far.ts';
import { readReversing } from './other-side.ts';
import { readPieceName } from './phrase/place.ts';
import type { Add, Statement } from './statement.ts';

/** 'Work left front to correspond', 'make right front to match left front, reversing shapings': a heading and what it is worked as. */
export const readOtherPiece = (c: Cursor, add: Add): boolean =>
  attempt(c, () => {
    const at = c.at;
    const made = takesOne(c, 'made as another') ? takeMade(c, HALVES) : undefined;
    if (made === undefined || !takeAnyPhrase(c, 'to match|correspond', 'the? same')) return false;
    takes(c, 'with', 'to', 'as');
    takes(c, 'the');
    const named = readPieceName(c);
    readReversing(c);
    if (c.at < c.end && !sees(c, '.', ';', ',') && !means(c.tokens[c.at]?.word, 'beginning of an aside'))
      return false;
    add(made.heading, at);
    add({ is: 'as for', piece: named ?? otherHalf(made.name), reversing: true }, at);
    return true;
  });

/**
 * 'Work front as for back until …', 'knit the sleeves same as …': which piece it is, where no heading says it. As which other
 * one, and how far, is left to be read.
 */
export const readPieceAsOther = (c: Cursor, add: Add): boolean =>
  attempt(c, () => {
    const at = c.at;
    const made = takes(c, 'work', 'make', 'k') ? takeMade(c, PIECES) : undefined;
    if (made === undefined || !ahead(c, () => readAsFor(c)?.is === 'as for')) return false;
    add(made.heading, at);
    return true;
  });

/** '(work) the left front': one of these pieces, and the heading that it would have. */
function takeMade(
  c: Cursor,
  names: ReadonlySet<string>,
): { readonly name: string; readonly heading: Statement } | undefined {
  takes(c, 'the');
  const from = c.at;
  const name = ahead(c, () => readPieceName(c))?.name;
  if (name === undefined || !names.has(name)) return undefined;
  takeTo(c, from + name.split(' ').length);
  const heading = headingOf(c.tokens.slice(from, c.at), true, true);
  return heading && { name, heading };
}

const PIECES: ReadonlySet<string> = new Set(['front', 'left front', 'right front', 'sleeve', 'sleeves']);

const HALVES: ReadonlySet<string> = new Set(['left front', 'right front']);

const otherHalf = (half: string): PieceSaid => {
  const words = half === 'left front' ? 'right front' : 'left front';
  return { words, name: words };
};
