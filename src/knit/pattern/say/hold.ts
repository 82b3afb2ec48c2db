import {
  attempt,
  type Cursor,
  sees,
  seesPhrase,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
  took,
} from '../../row/read/cursor.ts';
import { STS } from '../../row/read/goal.ts';
import { takeOnHolder } from '../../row/read/holder.ts';
import { takePurpose } from './phrase/purpose.ts';
import { takeWhose } from './phrase/whose.ts';
import type { Statement } from './statement.ts';

/** 'place rem 24 sts on holder', 'leave centre 17 sts on a holder', 'slip first 28 sts onto holder'. */
export const readHold = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    const half =
      takePhrase(c, 'divide|dividing|part the? sts|work in') && (takes(c, 'half') || takeNumber(c) === 2);
    if (half) takeAnyPhrase(c, ',? and');
    if (!takes(c, 'place', 'put', 'sl', 'leave', 'transfer', 'keep', 'move')) return undefined;
    if (half) {
      takeAnyPhrase(c, 'the? 1|first|one half|side|set of? the? sts?');
      return takeOnHolder(c) ? { is: 'hold', which: 'half' } : undefined;
    }
    // 'Leave on a spare needle.'
    if (sees(c, 'on', 'onto') && takeOnHolder(c)) return { is: 'hold', which: 'all' };
    if (takeAnyPhrase(c, 'half of? the? sts') && takeOnHolder(c)) return { is: 'hold', which: 'half' };
    takes(c, 'the', 'all');
    const which = readWhichStitches(c);
    const n = takeNumber(c) ?? takeBracketed(c);
    const late = which ?? readWhichStitches(c);
    const said = takePhrase(c, STS);
    const centre = takeAnyPhrase(c, 'from|in|at the? center|middle');
    takeAnyPhrase(c, 'from|off the? spare|left needle|holder');
    takeWhose(c);
    const whose = said || n !== undefined || took(c, 'these', 'them', 'rem');
    if (late !== undefined && whose && (takeOnHolder(c) || takeExtraNeedle(c))) {
      const purpose =
        takeAnyPhrase(c, 'to be worked later', 'and work|cont on first|these|rem sts') || takeWhose(c);
      if (!purpose) takePurpose(c);
      takePhrase(c, 'and leave');
      return {
        is: 'hold',
        which: centre ? 'centre' : late,
        ...(n === undefined ? {} : { stitches: n }),
      };
    }
  });

/** 'place remaining (42) sts on a holder'. */
const takeBracketed = (c: Cursor): number | undefined =>
  attempt(c, () => {
    const n = takes(c, '(', '[') ? takeNumber(c) : undefined;
    return takes(c, ')', ']') ? n : undefined;
  });

/** 'slip the first 26 sts off on an extra needle'; 'onto extra needle and hold in front' is a cable. */
const takeExtraNeedle = (c: Cursor): boolean =>
  attempt(
    c,
    () =>
      takeAnyPhrase(c, 'off? on|onto an|a|the? extra|spare needle|pin') &&
      !seesPhrase(c, 'and|, hold|leave|k|p'),
  );

function readWhichStitches(c: Cursor): 'rest' | 'first' | 'last' | 'centre' | 'all' | undefined {
  if (takes(c, 'rem', 'other')) return 'rest';
  if (takes(c, 'first', 'next', 'these', 'those', 'them')) return took(c, 'first') ? 'first' : 'all';
  if (takes(c, 'last')) return 'last';
  if (takes(c, 'center', 'middle')) return 'centre';
  return sees(c, 'st', 'sts') ? 'all' : undefined;
}
