import { readColourName } from '../../row/read/colour.ts';
import {
  attempt,
  type Cursor,
  isWord,
  peek,
  sees,
  seesPhrase,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
  takeTo,
  takeWhole,
} from '../../row/read/cursor.ts';
import { STS } from '../../row/read/goal.ts';
import type { Token } from '../../row/read/lex.ts';
import { readFacing, skipFacing } from './phrase/facing.ts';
import { takeSecond } from './phrase/ordinal.ts';
import type { Statement } from './statement.ts';

/** 'with RS facing rejoin yarn to rem 28 sts at neck edge', 'return to rem sts', 'slip sts from holder to needle'. */
export const readRejoin = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    const side = readFacing(c);
    const from = c.at;
    const sts = rejoined(c);
    if (sts === undefined) return undefined;
    const edge = edgeSaid(c.tokens.slice(from, c.at));
    return {
      is: 'rejoin',
      ...(edge === undefined ? {} : { edge }),
      ...(sts === 'some' ? {} : { stitches: sts }),
      ...(side === undefined ? {} : { side }),
    };
  });

/** 'Transfer left front sts from holder', 'place back sts on needle': which of the three that a body was parted in. */
function edgeSaid(tokens: readonly Token[]): 'left' | 'right' | 'middle' | undefined {
  const at = tokens.findIndex((token, i) => isWord(token, 'front', 'back') && isWord(tokens[i + 1], 'sts'));
  if (at < 0) return undefined;
  if (isWord(tokens[at], 'back')) return 'middle';
  return isWord(tokens[at - 1], 'left') ? 'left' : isWord(tokens[at - 1], 'right') ? 'right' : undefined;
}

function rejoined(c: Cursor): number | 'some' | undefined {
  if (takes(c, 'rejoin', 'join', 'attach', 'rejoining', 'tie', 'connect', 'reattach')) {
    takes(c, 'in', 'on');
    takes(c, 'the', 'a');
    takeSecond(c);
    if (!takeAnyPhrase(c, 'yarn|wool|thread|ball', 'another|new ball|yarn', 'yarns'))
      attempt(
        c,
        () =>
          readColourName(c) !== undefined &&
          sees(c, 'to', 'at') &&
          c.tokens.slice(c.at, c.end).some((one) => isWord(one, 'rem', 'sts')),
      );
    takeAnyPhrase(c, 'of yarn|wool', 'and');
    takes(c, 'to', 'at', 'on');
    if (takeAnyPhrase(c, ...OTHER_SIDE)) return 'some';
    skipFacing(c);
    return remaining(c);
  }
  if (takeAnyPhrase(c, 'sl|place|put|return|transfer the? holder|held sts to|onto|on the? working? needle')) {
    takes(c, ',');
    takeAnyPhrase(c, 'and? rejoin|join|attach yarn');
    return 'some';
  }
  const held = heldSts(c) ?? namedSts(c);
  if (held !== undefined) return held;
  if (takes(c, 'return', 'returning', 'go') || seesPhrase(c, 'to rem|other|the')) {
    takes(c, 'back');
    return takes(c, 'to') ? remaining(c) : undefined;
  }
  if (
    takeAnyPhrase(
      c,
      'sl|place|put|return|transfer|replace the? rem? sts',
      'sl|place|put|return|transfer the? left|right|other|back front|shoulder|side? sts',
      'sl|place|put these|other|held sts',
    )
  ) {
    if (!takeAnyPhrase(c, 'from|off the? st? holder', 'back', 'onto|on|to needle', 'held')) return undefined;
    takeAnyPhrase(c, 'back? onto|on|to needle', 'onto|on the needle', 'to a needle');
    takes(c, ',');
    takeAnyPhrase(c, 'and? rejoin|join|attach yarn');
    return 'some';
  }
  return undefined;
}

const SIDE = 'the? other|second side|shoulder|half';
const OTHER_SIDE = [`${SIDE} of the? v? neck|work`, SIDE];

const HELD = [
  'left|held? on the? a? spare|st? holder|needle',
  'left|held for the? left|right|other|second side|shoulder|front|back',
  'left',
];

/** What waits is taken up again; 'pick up 20 sts along the edge' picks up others. */
export const readTakenUp = (c: Cursor): Statement | undefined => {
  const sts = takenUp(c);
  if (sts === undefined) return undefined;
  return { is: 'rejoin', ...(sts === 'some' ? {} : { stitches: sts }) };
};

/** 'pick up the other side', 'take up the 20 sts left for other shoulder', 'slip the remaining 20 sts on to the needle'. */
const takenUp = (c: Cursor): number | 'some' | undefined =>
  attempt(c, () => {
    const up = takeAnyPhrase(c, 'pick|take up');
    if (!up && !takePhrase(c, 'sl|place|put|return|transfer')) return undefined;
    if (up && takeAnyPhrase(c, ...OTHER_SIDE)) return 'some';
    takes(c, 'the');
    const which = takes(c, 'rem', 'held', 'other');
    const n = takeNumber(c);
    const late = takes(c, 'held', 'rem');
    if (!takePhrase(c, STS)) return undefined;
    const left = takeAnyPhrase(c, ...HELD);
    if (!up && !takeAnyPhrase(c, 'back? on|onto|to to? the needle', 'back on|onto|to needle'))
      return undefined;
    if (!which && !late && !left) return undefined;
    takeAnyPhrase(c, 'and|, rejoin|join|attach|reattach yarn');
    return n !== undefined && Number.isSafeInteger(n) ? n : 'some';
  });

/** 'Place held 8 sts of right shoulder on needle and reattach yarn' */
const heldSts = (c: Cursor): number | undefined =>
  attempt(c, () => {
    if (!takePhrase(c, 'sl|place|put|return|transfer the? held|rem')) return undefined;
    const n = takeNumber(c);
    if (n === undefined || !Number.isSafeInteger(n) || !takePhrase(c, STS)) return undefined;
    takeAnyPhrase(c, 'of|for the? left|right|first|second|other? shoulder|front|side|back');
    if (!takePhrase(c, 'back? on|onto|to the? needle')) return undefined;
    if (takeAnyPhrase(c, 'and|, rejoin|join|attach|reattach'))
      while (peek(c)?.kind === 'word' && !readFacing(c)) takeTo(c, c.at + 1);
    return n;
  });

/** 'Return the 20 left front sts to needle' */
const namedSts = (c: Cursor): number | undefined =>
  attempt(c, () => {
    if (!takePhrase(c, 'sl|place|put|return|transfer the?')) return undefined;
    const n = takeWhole(c);
    if (n === undefined || !takeAnyPhrase(c, 'left|right front|shoulder sts', 'back sts')) return undefined;
    return takePhrase(c, 'back? onto|on|to the? needle') ? n : undefined;
  });

export function remaining(c: Cursor): number | 'some' {
  takes(c, 'the', 'inner', 'inside', 'neck', 'end');
  takes(c, 'end', 'edge');
  takes(c, 'of');
  const rest = takes(c, 'rem', 'other', 'first', 'next', 'last', 'these', 'second', 'held', 'center');
  takes(c, 'set', 'side');
  takes(c, 'of');
  const n = takeNumber(c);
  const sts = takePhrase(c, STS);
  takeAnyPhrase(
    c,
    ...HELD,
    'on|from the? holder',
    'at neck|inner|front|inside|armhole edge',
    'opposite|other side of neck edge?',
    'at center',
    'at beg',
    'on holder',
    'at neck',
    'left on holder',
    'for second|other side|shoulder',
    'for left|right front|shoulder|side',
    'for the? back|front',
    'left|right shoulder|front',
  );
  takes(c, 'and');
  return n !== undefined && (sts || rest) && Number.isSafeInteger(n) ? n : 'some';
}
