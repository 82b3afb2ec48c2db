import { readColourName, YARN } from '../../row/read/colour.ts';
import {
  attempt,
  type Cursor,
  isOneOf,
  isWord,
  peek,
  peekNumber,
  peekWord,
  sees,
  seesOne,
  seesPhrase,
  takeAll,
  takeAnyPhrase,
  takePhrase,
  takes,
  takesOne,
  takeTo,
  takeWhole,
  took,
} from '../../row/read/cursor.ts';
import { means } from '../../row/read/meanings.ts';
import { takeAnnouncedPattern, takeKeptPattern } from './announced-pattern.ts';
import { hidesOrder, joinsOrder } from './orders-behind.ts';
import { skipFacing } from './phrase/facing.ts';
import { readLength } from './phrase/measure.ts';
import { readFrom } from './phrase/place.ts';
import { readUntil, skipOrSo } from './phrase/until.ts';
import { skipYarn } from './phrase/yarn.ts';
import type { Said, Statement } from './statement.ts';

/** What makes no row: seams, pressing, breaking the yarn, markers at the edge. */
export const readNote = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    if (takeHole(c)) return { is: 'note', about: 'hole' };
    if (seesPhrase(c, '( to make')) takes(c, '(');
    const word = peekWord(c);
    const makes = takeAnother(c) ? 2 : takeMakes(c);
    if (makes !== undefined) return { is: 'note', about: 'another', makes };
    if (takeDivides(c)) return { is: 'note', about: 'divides' };
    if (takeAnnouncedPattern(c)) return { is: 'note', about: 'aside' };
    if (takeAnyPhrase(c, 'break|cut|fasten off? the? yarn|wool|thread', 'break|cut|fasten off?')) {
      takes(c, ...YARN);
      // 'break off A', 'cut B and C'
      if (readColourName(c)) attempt(c, () => takes(c, 'and', ',') && readColourName(c) !== undefined);
      takeTail(c);
      return { is: 'note', about: 'yarn' };
    }
    if (
      takeAnyPhrase(
        c,
        'place|put|mark a|the|1|each marker|end',
        'place|put|placing marker',
        'mark each|center|both',
        'tie a marker',
        'mark',
      )
    ) {
      if (seesPhrase(c, ', k|p') && word !== 'mark') return undefined;
      // 'at 3rd, and 6th st'
      const goesOn = () => peekWord(c, 1) === 'and' && peekNumber(c, 2) !== undefined;
      while (c.at < c.end && (!isOneOf(peekWord(c), ', ;') || goesOn()) && !joinsOrder(c.tokens, c.at))
        c.at += 1;
      return { is: 'note', about: 'marker' };
    }
    if (word === 'attach' && seesPhrase(c, 'attach yarn|wool|thread|ball|new|the|a|another'))
      return undefined;
    if (word === 'finishing' && seesPhrase(c, 'finishing with|on|after|at')) return undefined;
    if (word === 'join' && !seesPhrase(c, 'join seam|shoulder|side|right|left|sleeve|back|front'))
      return undefined;
    if (word === 'to' && !seesPhrase(c, 'to make|mark|finish|fit')) return undefined;
    // 'to finish, end with knit 4 rows'
    if (word === 'to' && seesPhrase(c, 'to finish ,? end|ending with k|p')) return undefined;
    if (word === 'when' && !seesPhrase(c, 'when knitting|working')) return undefined;
    // 'Sizes S and M only: work 8 rows': for some that nobody named
    if ((word === 'size' || word === 'sizes') && onlyFor(c)) return undefined;
    if (word === 'do' && (!seesPhrase(c, 'do not') || seesPhrase(c, 'do not make|work|k|p|dec|inc|turn')))
      return undefined;
    if ((word === 'these' || word === 'this') && !saysWhatRowsAre(c)) return undefined;
    const carries = takesCarrying(c);
    if (!carries && !means(peek(c)?.text, 'tells without rows')) return undefined;
    if (word === 'measure' || word === 'turn' || hidesOrder(c.tokens, c.at, c.end)) return undefined;
    // 'This is shaped as follows: cast off 4 sts …': what is told ends at the colon
    const colon = c.tokens.findIndex((token, i) => i > c.at && isWord(token, ':'));
    if ((word === 'these' || word === 'this') && colon > 0 && colon < c.end - 1) {
      takeTo(c, colon + 1);
      return { is: 'note', about: 'aside' };
    }
    takeAll(c);
    return { is: 'note', about: 'making up' };
  });

/** 'carrying the color not used loosely along the edge': what is done with the yarn. */
const takesCarrying = (c: Cursor): boolean =>
  takePhrase({ ...c }, 'carrying|carry') &&
  c.tokens.slice(c.at, c.at + 4).some((one) => isWord(one, ...YARN));

/** '(To make a buttonhole, on one row bind off 4 sts; on next row cast on 4 sts)': how they are made, wherever they lie. */
const takeHole = (c: Cursor): boolean =>
  attempt(c, () => {
    const open = takes(c, '(');
    if (!takeAnyPhrase(c, 'to make a|each|the? buttonhole|buttonholes ,|:')) return false;
    while (c.at < c.end && !(open && sees(c, ')'))) takeTo(c, c.at + 1);
    return !open || takes(c, ')');
  });

/** 'Divide for fronts and back.', 'Continue working on front and back separately:': the row that does it stands behind it. */
const takeDivides = (c: Cursor): boolean =>
  attempt(c, () => {
    if (
      !takeAnyPhrase(c, 'now? divide|dividing the? work|sts? for|into?') &&
      !takeAnyPhrase(
        c,
        'now? cont|work|continue working? on? the? back|front|fronts and the? back|front|fronts separately',
      )
    )
      return false;
    while (
      peek(c)?.kind === 'word' &&
      !seesOne(c, 'beginning of an order') &&
      !seesOne(c, 'beginning of a label')
    )
      takeTo(c, c.at + 1);
    takes(c, ':', '-');
    return c.at >= c.end || (seesOne(c, 'beginning of a label') && peek(c)?.capital === true);
  });

/** 'Make another sleeve the same', 'work a second piece in same way': one more of what was made. */
const takeAnother = (c: Cursor): boolean =>
  attempt(c, () => {
    takePhrase(c, 'rep to');
    if (!takes(c, 'work', 'make', 'k')) return false;
    takes(c, 'a', 'the', '1');
    if (!takes(c, 'another', 'other', 'second') || !takesOne(c, 'made again')) return false;
    const alike = takeAnyPhrase(
      c,
      'to match|correspond',
      'the? same',
      'in the? same way|manner|fashion',
      'like|as the? first|this|it 1?',
      'like|as the? 1 st?',
      'identical to the? first|other|this? piece|1?',
      'alike',
    );
    return (alike || took(c, ...AGAIN)) && (c.at >= c.end || isOneOf(peekWord(c), '. ;'));
  });

/** 'Make two.', 'Knit 2 alike', 'Make 4 pieces': how many of what is named, or was made. */
const takeMakes = (c: Cursor): number | undefined =>
  attempt(c, () => {
    const open = takes(c, '(');
    const make = takes(c, 'make');
    if (!make && !takes(c, 'k', 'work')) return undefined;
    const n = takes(c, 'both') ? 2 : takeWhole(c);
    const alike = takeAnyPhrase(c, 'alike', 'piece|pieces|of these? alike?', 'the same');
    const closed = open && takes(c, ')');
    return n !== undefined && n > 1 && n < 20 && (make || alike || closed) && c.at >= c.end ? n : undefined;
  });

const AGAIN = ['sleeve', 'piece', 'pocket'];

/** 'these 2 rows form the pattern', 'this completes the armhole'. */
const saysWhatRowsAre = (c: Cursor): boolean =>
  (seesPhrase(c, 'these rows|sts|1|2|4|6|8|10|12|16 form|rows|are|sts') ||
    seesPhrase(c, 'this forms|completes|is')) &&
  c.tokens.slice(c.at, c.end).some(({ word }) => means(word, 'says what rows are'));

/** ', leaving a tail of 20 cm', ', leaving a long end for sewing': up to the next mark. */
const takeTail = (c: Cursor): boolean =>
  attempt(c, () => {
    takes(c, ',', '(');
    if (!takes(c, 'leave')) return false;
    const from = c.at;
    while (peek(c) && !sees(c, ',', '.', ';', ')', 'and')) takeTo(c, c.at + 1);
    takes(c, ')');
    return c.tokens.slice(from, c.at).some((token) => isWord(token, 'tail', 'end', 'ends', 'length'));
  });

const onlyFor = (c: Cursor): boolean =>
  c.tokens.slice(c.at, c.end).some((token, i, all) => isWord(token, 'only') && isWord(all[i + 1], ':'));

/** What leads on to the next words, or leaves something to her, and makes no row. */
const ASIDES = [
  'work|cont|proceed as foll',
  'work|cont|proceed the? foll inc|dec|buttonhole? row|rows',
  'as|thus foll',
  'now? place|set|position the? chart|charts|patt|panel|panels as foll',
  'beg|start|work short rows|row :',
  'keeping|keep the? rib|patt|pats|border|borders|rhythm going|correct|continuous throughout?',
  'working|taking|keeping inc|dec|incs|decs into|in the? patt',
  'taking|working|bringing|incorporating inc|increased|extra|added|new sts into|in patt as? they? occur?',
  'keeping|keep continuity|correctness? of? the? patt and front|button|neck|side? border|borders|bands|band|edge|edges as? set|est|correct|before',
  'keeping|keep continuity|correctness of the? patt as set|est throughout?',
  'being|taking careful|care to keep|follow|maintain the? patt st? correct?',
  'keeping|keep continuity|correctness of the? patt throughout?',
  'keeping|keep the? both|front|neck|other|opposite? edge|side|sides|armhole edge? straight|even',
  'to finish off? ,',
  'for a? ridge|foldline|hemline|fold|turn line|row|ridge?',
  'for a? hem turn|line?',
  'for the? border|welt|band|hem|edging ,',
  'work|working? in? rows? back and forth in? rows? with|on|using a|the? circular? needle',
  'beg|starting|commencing with row 1 of? patt? ,',
  'beg|starting|commencing at|from the? lower|bottom|upper|top? back|front|cuff|toe|heel|wrist|hem ,',
  'beg|begin|start|commence neck|armhole|shoulder|raglan|front? shaping',
  'beg|begin|start|commence to shape the? neck|armhole|shoulder|raglan',
];

/** 'work measures 40 cm from beg' says how long it is by now; 'until work measures …' is taken where it ends rows. */
const takeMeasured = (c: Cursor): boolean =>
  attempt(c, () => {
    if (!takeAnyPhrase(c, 'the? piece|work|back|front|sleeve now? should? now? measures|measure'))
      return false;
    takes(c, 'about', 'approx');
    if (readLength(c) === undefined) return false;
    readFrom(c);
    return true;
  });

/** 'Make neck hole as follows:', 'Decrease the back with following pattern:': what comes is named, and nothing is worked yet. */
const takeAnnounced = (c: Cursor): boolean =>
  attempt(c, () => {
    if (!takesOne(c, 'announces')) return false;
    for (let far = 0; far < 7; far += 1) {
      if (takeAnyPhrase(c, ',? as foll', ',? thus', 'with|in|using the? foll patt|rows|row|way|manner')) {
        takes(c, ':', ';', '-');
        return c.at >= c.end;
      }
      if (
        peek(c)?.kind !== 'word' ||
        (seesOne(c, 'beginning of an order') && !sees(c, 'dec', 'inc')) ||
        seesOne(c, 'fabric by name')
      )
        return false;
      takeTo(c, c.at + 1);
    }
    return false;
  });

/** 'dec 1 st at each end 4 times, 6 inches, 82 sts': how long it is by then. */
const takeLengthByThen = (c: Cursor, said: readonly Said[]): boolean =>
  attempt(c, () => {
    const last = said.at(-1)?.statement.is;
    if (last === undefined || !SHAPED_BEFORE.has(last) || c.tokens[c.at - 1]?.text !== ',') return false;
    return readLength(c) !== undefined && (c.at >= c.end || isOneOf(peekWord(c), ', . ( ;'));
  });

/** 'rep last 2 rows 8 times more, or until the sleeve measures about 3 in': what it comes to, said twice. */
const takeOrUntil = (c: Cursor, said: readonly Said[]): boolean =>
  attempt(c, () => {
    const last = said.at(-1)?.statement;
    if (last?.is !== 'repeat rows' || last.times === undefined || !takes(c, 'or')) return false;
    return readUntil(c)?.is === 'length' && (c.at >= c.end || isOneOf(peekWord(c), '. , ;'));
  });

const SHAPED_BEFORE: ReadonlySet<Statement['is']> = new Set([
  'shape',
  'repeat from stars',
  'repeat named',
  'groups',
]);

/** '4 rows worked.' */
const takeRowsByThen = (c: Cursor): boolean =>
  attempt(
    c,
    () =>
      takeWhole(c) !== undefined &&
      takeAnyPhrase(c, 'rows are|have? been? worked|completed|done|made') &&
      (c.at >= c.end || isOneOf(peekWord(c), '. ;')),
  );

function takeAside(c: Cursor, said: readonly Said[]): boolean {
  if (takeRowsByThen(c)) return true;
  if (takeMeasured(c) || takeAnnounced(c) || takeLengthByThen(c, said) || takeOrUntil(c, said) || skipOrSo(c))
    return true;
  if (!takeAnyPhrase(c, ...ASIDES) && !takeKeptPattern(c)) return false;
  takes(c, ':', ',');
  return true;
}

/** Words that may stand alone between instructions: 'with RS facing', 'ending with a WS row', 'with white'. */
export const readPassing = (c: Cursor, said: readonly Said[]): Statement | undefined =>
  attempt(c, () => {
    const from = c.at;
    // 'keeping continuity of pattern': what the text numbered is worked on
    const keeps = sees(c, 'keeping', 'keep', 'maintain');
    if (takeAside(c, said))
      return {
        is: 'note',
        about: keeps && c.tokens.slice(from, c.at).some((one) => isWord(one, 'patt')) ? 'pattern' : 'aside',
      };
    if (skipFacing(c)) return { is: 'note', about: 'facing' };
    return skipYarn(c) ? { is: 'note', about: 'yarn' } : undefined;
  });
