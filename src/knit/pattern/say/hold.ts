import {
  type Cursor,
  peek,
  peekText,
  sees,
  seesPhrase,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
} from '../../row/read/cursor.ts';
import { takeOnHolder } from '../../row/read/edge.ts';
import { STS } from '../../row/read/goal.ts';
import type { Side } from '../../row/step.ts';
import { readSide } from './phrase/measure.ts';
import type { Statement } from './statement.ts';

/** 'place rem 24 sts on holder', 'leave centre 17 sts on a holder', 'slip first 28 sts onto holder'. */
export function readHoldStatement(c: Cursor): Statement | undefined {
  const start = c.at;
  if (
    !takes(
      c,
      'place',
      'put',
      'sl',
      'slip',
      'leave',
      'leaving',
      'placing',
      'slipping',
      'transfer',
      'keep',
      'put',
    )
  )
    return undefined;
  takes(c, 'the', 'all');
  const which = readWhichStitches(c);
  const n = takeNumber(c);
  const late = which ?? readWhichStitches(c);
  const said = takePhrase(c, STS);
  takeAnyPhrase(
    c,
    'for neck|front|back|thumb|hood|shoulder|collar',
    'at center|centre',
    'for back|front neck|of',
  );
  if ((n !== undefined || late !== undefined) && said && takeOnHolder(c)) {
    takeAnyPhrase(
      c,
      'for neck|neckband|collar|later|hood|shoulder|shoulders|front|back',
      'for back|front of neck',
      'for back|front neck',
      'to be worked later',
      'and work|continue on first|these|rem sts',
    );
    return {
      is: 'hold',
      which: late ?? (n === undefined ? 'all' : 'rest'),
      ...(n === undefined ? {} : { stitches: n }),
    };
  }
  c.at = start;
  return undefined;
}

function readWhichStitches(c: Cursor): 'rest' | 'first' | 'last' | 'centre' | 'all' | undefined {
  if (takes(c, 'rem', 'remaining', 'other')) return 'rest';
  if (takes(c, 'first', 'next', 'these', 'those'))
    return c.tokens[c.at - 1]?.text === 'first' ? 'first' : 'all';
  if (takes(c, 'last')) return 'last';
  if (takes(c, 'center', 'centre', 'middle')) return 'centre';
  return sees(c, 'sts') ? 'all' : undefined;
}

/** 'working on last 28 sts only', 'work each side separately', 'working both sides at once'. */
export function readWorkOn(c: Cursor): Statement | undefined {
  const start = c.at;
  takes(c, 'and', 'then', 'turn');
  takes(c, 'and', ',');
  if (
    takeAnyPhrase(
      c,
      'work|working|knit each|both side|sides|shoulder separately|singly',
      'each side is worked separately',
      'work|working each side of neck|front|back separately',
      'working|work each side of the neck separately',
      'finish each side separately',
      'working each side separately',
      'work sides separately',
    )
  ) {
    return { is: 'work on', which: 'each side' };
  }
  if (
    takeAnyPhrase(c, 'work|working|continue|cont on', 'work|working|continue|cont in pattern on', 'on', '')
  ) {
    takes(c, 'the');
    if (takeAnyPhrase(c, 'both sides', 'both shoulders', 'each side')) {
      takeAnyPhrase(c, 'at once', 'at the same time', 'at same time', 'separately');
      takeAnyPhrase(c, 'with separate balls|yarn', 'using separate balls');
      return {
        is: 'work on',
        which: c.tokens[c.at - 1]?.text === 'separately' ? 'each side' : 'both at once',
      };
    }
    const which = takes(c, 'last', 'second')
      ? 'last'
      : takes(c, 'first', '1st')
        ? 'first'
        : takeOneSide(c)
          ? 'these'
          : takes(c, 'these', 'this', 'those')
            ? 'these'
            : undefined;
    takes(c, 'set', 'side');
    takes(c, 'of');
    const n = takeNumber(c);
    takes(c, 'shoulder');
    if (
      (which !== undefined || n !== undefined) &&
      (takePhrase(c, STS) || /^(side|shoulder)$/.test(c.tokens[c.at - 1]?.text ?? ''))
    ) {
      takeAnyPhrase(
        c,
        'only',
        'for first|right|left side|shoulder|front',
        'of sts',
        'for right|left front|half',
      );
      takes(c, 'only');
      return { is: 'work on', which: which ?? 'these', ...(n === undefined ? {} : { stitches: n }) };
    }
  }
  c.at = start;
  if (
    takeAnyPhrase(
      c,
      'work|working both sides at once',
      'work|working both sides at the same time',
      'work|working both sides at same time',
    )
  ) {
    takeAnyPhrase(
      c,
      'with separate balls of yarn',
      'with separate balls|yarn',
      'with 2 balls',
      'using 2 balls of yarn',
    );
    return { is: 'work on', which: 'both at once' };
  }
  c.at = start;
  return undefined;
}

/** 'one side', which reads as '1 side'. */
function takeOneSide(c: Cursor): boolean {
  if (peek(c)?.value !== 1 || !/^(side|shoulder)$/.test(peekText({ ...c, at: c.at + 1 }))) return false;
  c.at += 1;
  return true;
}

/** 'with RS facing rejoin yarn to rem 28 sts at neck edge', 'return to rem sts', 'slip sts from holder to needle'. */
export function readRejoin(c: Cursor): Statement | undefined {
  const start = c.at;
  const side = readFacing(c);
  const sts = rejoined(c);
  if (sts === undefined) {
    c.at = start;
    return undefined;
  }
  return {
    is: 'rejoin',
    ...(sts === 'some' ? {} : { stitches: sts }),
    ...(side === undefined ? {} : { side }),
  };
}

export const skipFacing = (c: Cursor): boolean => readFacing(c) !== undefined;

/** 'with RS facing', 'on right side of work'. */
function readFacing(c: Cursor): Side | undefined {
  const start = c.at;
  if (takes(c, 'with', 'on', 'from')) {
    takes(c, 'the');
    const side = readSide(c);
    if (side !== undefined) {
      takeAnyPhrase(c, 'of work facing', 'facing you', 'facing', 'of work|piece', 'side facing');
      takes(c, 'you');
      takes(c, ',');
      return side;
    }
  }
  c.at = start;
  return undefined;
}

function rejoined(c: Cursor): number | 'some' | undefined {
  if (takes(c, 'rejoin', 'join', 'attach', 'rejoining', 'fasten', 'tie')) {
    takes(c, 'in', 'on');
    takeAnyPhrase(
      c,
      'yarn|wool|thread|ball',
      'a|another|new|the ball|yarn',
      'second|2nd ball',
      'yarns',
      'another ball of yarn',
      'a new|second ball',
    );
    takeAnyPhrase(c, 'of yarn|wool', 'and');
    takes(c, 'to', 'at', 'on');
    skipFacing(c);
    return remaining(c);
  }
  if (takes(c, 'return', 'returning', 'go') || seesPhrase(c, 'to rem|remaining|other|the')) {
    takes(c, 'back');
    if (!takes(c, 'to')) return undefined;
    return remaining(c) ?? undefined;
  }
  if (
    takeAnyPhrase(
      c,
      'sl|slip|place|put|return sts|stitches',
      'sl|slip|place|put|return rem|remaining|the sts|stitches',
      'sl|slip|place|put these|other|held sts',
    )
  ) {
    if (
      !takeAnyPhrase(
        c,
        'from|on holder',
        'from|off the|st|stitch holder',
        'back',
        'onto|on|to needle',
        'back on|onto|to needle',
        'held',
      )
    )
      return undefined;
    takeAnyPhrase(
      c,
      'back on|onto|to needle|needles',
      'onto|on|to needle|needles',
      'on needle',
      'to needle',
      'onto|on the needle',
      'to a needle',
    );
    takes(c, ',');
    takeAnyPhrase(c, 'and rejoin|join|attach yarn', 'rejoin|join|attach yarn');
    return 'some';
  }
  return undefined;
}

export function remaining(c: Cursor): number | 'some' {
  takes(c, 'the', 'inner', 'inside', 'neck', 'end');
  takes(c, 'end', 'edge');
  takes(c, 'of');
  const rest = takes(
    c,
    'rem',
    'remaining',
    'other',
    'first',
    'next',
    'last',
    'these',
    'second',
    'held',
    'center',
    'centre',
  );
  takes(c, 'set', 'side');
  takes(c, 'of');
  const n = takeNumber(c);
  const sts = takePhrase(c, STS);
  takeAnyPhrase(
    c,
    'at neck|inner|front|inside|armhole edge',
    'at center|centre',
    'at beg|beginning',
    'on holder',
    'at neck',
    'left on holder',
    'for second|other side|shoulder',
    'for left|right front|shoulder|side',
  );
  takes(c, 'and');
  return n !== undefined && (sts || rest) && Number.isSafeInteger(n) ? n : 'some';
}
