import {
  ahead,
  attempt,
  type Cursor,
  peekNumber,
  peekWord,
  sees,
  takeAnyPhrase,
  takePhrase,
  takes,
  takesOne,
} from '../../../row/read/cursor.ts';
import { means, withoutWords } from '../../../row/read/meanings.ts';
import type { MarkName, PieceSaid, Place } from '../how-far.ts';
import { takeFirst, takeSecond } from './ordinal.ts';

const PLACES: Readonly<Record<string, Place>> = {
  armhole: 'armhole',
  armholes: 'armhole',
  underarm: 'armhole',
  underarms: 'armhole',
  neck: 'neck',
  neckline: 'neck',
  shoulder: 'shoulder',
  shoulders: 'shoulder',
  raglan: 'raglan',
  cap: 'cap',
  rib: 'rib',
  ribbing: 'rib',
  border: 'rib',
  band: 'rib',
  welt: 'rib',
  waist: 'waist',
};

/** 'armhole (shaping)', 'the beg of armhole', 'neck shaping', '1st shoulder bind-off'. */
export function readPlace(c: Cursor): Place | undefined {
  takeAnyPhrase(c, 'beg|start|end|bottom|top|base of', 'the beg|start|end|bottom|top of', 'first row of');
  if (!takeFirst(c)) takes(c, 'the', 'end', 'beg');
  takes(c, 'of');
  takes(c, 'shape', 'shaping');
  takes(c, 'the', 'of');
  takes(c, 'back', 'front', 'first');
  const place = PLACES[peekWord(c)];
  if (place === undefined) return undefined;
  c.at += 1;
  takes(c, 'armhole');
  takes(c, 'shaping', 'shapings', 'edge', 'opening', 'bind', 'bo', 'dec');
  takes(c, '-');
  takes(c, 'off', 'offs');
  takes(c, 'shaping');
  return place;
}

const NAMED = 'tab|pocket|cuff|panel|strip|flap|leg|mitten|bootie|sock|strap|tie'.split('|');

const PIECES = [...'back|front|fronts|sleeve|sleeves|left|right|other|piece|body'.split('|'), ...NAMED];

export function readPieceName(c: Cursor): PieceSaid | undefined {
  const words = pieceWords(c);
  if (words === undefined) return undefined;
  const name = withoutWords(words, 'the one or the other');
  return name === '' || name === 'piece' || name === 'side' ? { words } : { words, name };
}

function pieceWords(c: Cursor): string | undefined {
  const ordinal = takeFirst(c) ? 'first' : takeSecond(c) ? 'second' : undefined;
  if (ordinal === undefined && !sees(c, ...PIECES)) return undefined;
  const first = ordinal ?? peekWord(c);
  if (ordinal === undefined) c.at += 1;
  if (
    means(first, 'which of two') &&
    sees(c, 'front', 'back', 'sleeve', 'side', 'shoulder', 'half', 'fronts', ...NAMED)
  ) {
    const second = peekWord(c);
    c.at += 1;
    return `${first} ${second}`;
  }
  return first;
}

const FROM: readonly (readonly [string, MarkName])[] = [
  ['beg|start|starting|lower|bottom|cast|co|first|commencement', 'start'],
  ['bo|bind|bound|armhole|underarm', 'armhole'],
  ['rib|border|band|top|welt|hem|hemline|cuff|turn|change|waistband|stst|stocking|ss', 'rib'],
  ['marker|mark|m|pick|picked|pu', 'marker'],
  ['last|neck|division|divide|dividing|here|this|shaping|end|dec|inc', 'heading'],
];

/** 'from cast-on edge', 'from beg', 'above ribbing', 'after last bind-off', 'from the beg of armhole'. */
export const readFrom = (c: Cursor): MarkName | undefined =>
  attempt(c, () => {
    if (takes(c, 'altogether')) return 'start';
    if (takeAnyPhrase(c, 'in all', 'in total', 'total')) return 'start';
    takeAnyPhrase(c, 'straight? up');
    if (!takes(c, 'from', 'above', 'after', 'past', 'beyond', 'of', 'below')) return undefined;
    takeAnyPhrase(c, '1 st row? of?', 'first row of');
    const within = attempt(c, () =>
      takePhrase(c, 'the beg|start|top|end of the?') ? takeMark(c) : undefined,
    );
    if (within !== undefined) return within;
    takes(c, 'the', 'all', 'beg', 'start', 'first', 'top', 'end');
    const bare = c.tokens[c.at - 1]?.text ?? '';
    const ofSaid = takes(c, 'of');
    takes(c, 'the', 'first', 'last', 'final', 'initial');
    const found = takeMark(c);
    if (found !== undefined) return found;
    if (!ofSaid && means(bare, 'beginning of a piece')) return 'start';
  });

/** 'armhole shaping', 'bind-off edge', 'ribbing'. */
function takeMark(c: Cursor): MarkName | undefined {
  const found = FROM.find(([list]) => list.split('|').includes(peekWord(c)));
  if (found === undefined || ordersStitches(c)) return undefined;
  c.at += 1;
  skipTail(c);
  return found[1];
}

function skipTail(c: Cursor): void {
  // 'from beg bind off 5 sts'
  while (!ordersStitches(c) && takesOne(c, 'tail of a place')) {
    // the rest of the place's name
  }
}

/** 'bind off 5 sts', 'work 4 rows': an order, and no part of a place's name. */
const ordersStitches = (c: Cursor): boolean =>
  ahead(c, () => {
    if (!takes(c, 'bind', 'cast', 'dec', 'inc', 'work')) return false;
    takes(c, 'off');
    return peekNumber(c) !== undefined;
  });
