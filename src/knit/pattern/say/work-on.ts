import {
  ahead,
  attempt,
  type Cursor,
  peek,
  peekWord,
  sees,
  seesOne,
  seesPhrase,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
  took,
} from '../../row/read/cursor.ts';
import { STS } from '../../row/read/goal.ts';
import { means } from '../../row/read/meanings.ts';
import { takeFirst, takeSecond } from './phrase/ordinal.ts';
import { takeWhose } from './phrase/whose.ts';
import type { Statement } from './statement.ts';

/** 'working on last 28 sts only', 'work each side separately', 'working both sides at once'. */
export const readWorkOn = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    takes(c, 'turn');
    takes(c, 'and', ',');
    // 'work each side separately' would be worked on some stitches
    return readBothAtOnce(c) ?? readEachSide(c) ?? readOn(c) ?? readWith(c);
  });

function readEachSide(c: Cursor): Statement | undefined {
  const each = takeAnyPhrase(
    c,
    'work|working|k|finish each|both side|sides|shoulder|half of? the? neck|neckline|front|back|work? separately|singly',
    'each side|shoulder is now|then? worked separately',
    '2|both|the? 2? sides|side|shoulders|shoulder are now? worked separately',
    'cont|continuing|work|working on each side|shoulder separately',
    'work sides separately',
  );
  return each ? { is: 'work on', which: 'each side' } : undefined;
}

const readOn = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    if (
      takeAnyPhrase(c, 'cont|work|continuing|working working? left|right side of? the? back|front|neck? only')
    )
      return { is: 'work on', which: 'these' };
    // 'work across rem 25 sts' is a row, where nobody says 'only'
    const across = takePhrase(c, 'work|working across');
    if (
      !across &&
      !takeAnyPhrase(
        c,
        'work|working|cont|continuing back and forth on|over',
        'work|working|cont|continuing|proceed|proceeding on|with|over',
        'start|begin the? front|back|other? side? on|over|with',
        'work|working|cont in patt on',
        'cont|continuing to? work|working on|with|over',
        'on',
      )
    )
      return undefined;
    takes(c, 'the');
    // 'On other side dec 1 st at neck edge …'
    if (takeAnyPhrase(c, 'other side|half|shoulder') && seesOne(c, 'beginning of an order'))
      return { is: 'work on', which: 'these' };
    if (takeAnyPhrase(c, 'both sides', 'both shoulder', 'each side')) {
      takeAnyPhrase(c, 'at once', 'separately? at the? same time', 'separately');
      takeSeparate(c);
      return { is: 'work on', which: took(c, 'separately') ? 'each side' : 'both at once' };
    }
    const rem = sees(c, 'rem');
    const which = readWhichOnes(c);
    while (takes(c, 'last', 'first', 'set', 'side', 'group')) {
      // 'this last group'
    }
    takes(c, 'of');
    const n = takeNumber(c);
    takeAnyPhrase(c, 'shoulder', 'left|right? front|back|shoulder');
    if (n === undefined && which === undefined) return undefined;
    if (!takePhrase(c, STS) && !took(c, 'side', 'shoulder')) return undefined;
    // 'on rem sts start shoulder'
    if (n === undefined && rem && !takePhrase(c, 'start|begin the? shoulder|front|neck')) return undefined;
    takeAnyPhrase(c, 'as before', 'of sts');
    const only = takes(c, 'only');
    takeWhose(c);
    takes(c, 'only');
    if (across && !only && !took(c, 'only')) return undefined;
    if (takeAnyPhrase(c, 'as foll', 'thus')) takes(c, ':', '-');
    if (seesHolder(c)) return undefined;
    return {
      is: 'work on',
      which: which ?? (only || took(c, 'only') ? 'only' : 'these'),
      ...(n === undefined ? {} : { stitches: n }),
    };
  });

/** 'With 66 sts, work even …' says what is on the needle. */
const readWith = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    if (!takes(c, 'with', 'having')) return undefined;
    takes(c, 'these', 'the', 'rem');
    const n = takeNumber(c);
    if (n === undefined || !Number.isSafeInteger(n) || !takePhrase(c, STS)) return undefined;
    takeAnyPhrase(c, 'on the? needle', 'left', 'rem');
    takes(c, ',');
    return sees(c, 'work', 'cont', 'k', 'p', 'beg') ? { is: 'stated', stitches: n } : undefined;
  });

/** 'work across 25 sts and slip them to a holder' is a row, and so is 'work over 25 sts, bind off next 12 sts'. */
const seesHolder = (c: Cursor): boolean =>
  ahead(c, () => {
    const parted = takes(c, ',', '.');
    takes(c, 'and', 'then');
    if (parted && seesPhrase(c, 'bind|cast off the? next|center')) return true;
    return (
      takes(c, 'place', 'put', 'sl', 'leave', 'transfer') && sees(c, 'them', 'these', 'those', 'on', 'onto')
    );
  });

function readWhichOnes(c: Cursor): 'first' | 'last' | 'these' | undefined {
  if (takes(c, 'last') || takeSecond(c)) return 'last';
  if (takeFirst(c)) return 'first';
  if (!takeOneSide(c) && !takes(c, 'these', 'this', 'those', 'rem')) return undefined;
  // 'on this second set of 30 sts'
  if (took(c, 'this') && takeFirst(c)) return 'first';
  takeSecond(c);
  return 'these';
}

function readBothAtOnce(c: Cursor): Statement | undefined {
  if (
    takeAnyPhrase(
      c,
      'both sides are worked at the? once|same time?',
      'work|working each side|shoulder with|using a? separate|its own? ball of? yarn|wool?',
    )
  )
    return { is: 'work on', which: 'both at once' };
  if (
    !takeAnyPhrase(
      c,
      'work|working both|each side|sides|shoulder separately? at the? once|same time? ,?',
      'at the? same time work|working both|each side|sides',
      'work|working both side|sides with|using separate|2 ball of? yarn|wool?',
    )
  )
    return undefined;
  takeSeparate(c);
  return { is: 'work on', which: 'both at once' };
}

/** 'with separate balls', 'using 2 balls of yarn' */
const takeSeparate = (c: Cursor): boolean => takePhrase(c, 'with|using separate|2 ball|yarn of? yarn|wool?');

/** 'one side', which reads as '1 side'. */
function takeOneSide(c: Cursor): boolean {
  if (peek(c)?.value !== 1 || !means(peekWord(c, 1), 'side of a neck')) return false;
  c.at += 1;
  return true;
}
