import { type Cursor, peek, peekText, sees, seesPhrase, takeAnyPhrase, takeNumber, takePhrase, takes } from '../row/cursor.ts';
import { takeOnHolder } from '../row/read-edge.ts';
import { STS } from '../row/read-goal.ts';
import { readPieceName, readPlace, readSide, readUntil } from './read-length.ts';
import type { Side } from '../row/step.ts';
import type { Statement } from './statement.ts';

/** 'place rem 24 sts on holder', 'leave centre 17 sts on a holder', 'slip first 28 sts onto holder'. */
export function readHoldStatement(c: Cursor): Statement | undefined {
  const start = c.at;
  if (!takes(c, 'place', 'put', 'sl', 'slip', 'leave', 'leaving', 'placing', 'slipping', 'transfer', 'keep', 'put')) return undefined;
  takes(c, 'the', 'all');
  const which = readWhichStitches(c);
  const n = takeNumber(c);
  const late = which ?? readWhichStitches(c);
  const said = takePhrase(c, STS);
  takeAnyPhrase(c, 'for neck|front|back|thumb|hood|shoulder|collar', 'at center|centre', 'for back|front neck|of');
  if ((n !== undefined || late !== undefined) && said && takeOnHolder(c)) {
    takeAnyPhrase(c, 'for neck|neckband|collar|later|hood|shoulder|shoulders|front|back', 'for back|front of neck', 'for back|front neck', 'to be worked later', 'and work|continue on first|these|rem sts');
    return { is: 'hold', which: late ?? (n === undefined ? 'all' : 'rest'), ...(n === undefined ? {} : { stitches: n }) };
  }
  c.at = start;
  return undefined;
}

function readWhichStitches(c: Cursor): 'rest' | 'first' | 'last' | 'centre' | 'all' | undefined {
  if (takes(c, 'rem', 'remaining', 'other')) return 'rest';
  if (takes(c, 'first', 'next', 'these', 'those')) return c.tokens[c.at - 1]?.text === 'first' ? 'first' : 'all';
  if (takes(c, 'last')) return 'last';
  if (takes(c, 'center', 'centre', 'middle')) return 'centre';
  return sees(c, 'sts') ? 'all' : undefined;
}

/** 'working on last 28 sts only', 'work each side separately', 'working both sides at once'. */
export function readWorkOn(c: Cursor): Statement | undefined {
  const start = c.at;
  takes(c, 'and', 'then', 'turn');
  takes(c, 'and', ',');
  if (takeAnyPhrase(c, 'work|working|knit each|both side|sides|shoulder separately|singly', 'each side is worked separately', 'work|working each side of neck|front|back separately', 'working|work each side of the neck separately', 'finish each side separately', 'working each side separately', 'work sides separately')) {
    return { is: 'work on', which: 'each side' };
  }
  if (takeAnyPhrase(c, 'work|working|continue|cont on', 'work|working|continue|cont in pattern on', 'on', '')) {
    takes(c, 'the');
    if (takeAnyPhrase(c, 'both sides', 'both shoulders', 'each side')) {
      takeAnyPhrase(c, 'at once', 'at the same time', 'at same time', 'separately');
      takeAnyPhrase(c, 'with separate balls|yarn', 'using separate balls');
      return { is: 'work on', which: c.tokens[c.at - 1]?.text === 'separately' ? 'each side' : 'both at once' };
    }
    const which = takes(c, 'last', 'second') ? 'last' : takes(c, 'first', '1st') ? 'first' : takeOneSide(c) ? 'these' : takes(c, 'these', 'this', 'those') ? 'these' : undefined;
    takes(c, 'set', 'side');
    takes(c, 'of');
    const n = takeNumber(c);
    takes(c, 'shoulder');
    if ((which !== undefined || n !== undefined) && (takePhrase(c, STS) || /^(side|shoulder)$/.test(c.tokens[c.at - 1]?.text ?? ''))) {
      takeAnyPhrase(c, 'only', 'for first|right|left side|shoulder|front', 'of sts', 'for right|left front|half');
      takes(c, 'only');
      return { is: 'work on', which: which ?? 'these', ...(n === undefined ? {} : { stitches: n }) };
    }
  }
  c.at = start;
  if (takeAnyPhrase(c, 'work|working both sides at once', 'work|working both sides at the same time', 'work|working both sides at same time')) {
    takeAnyPhrase(c, 'with separate balls of yarn', 'with separate balls|yarn', 'with 2 balls', 'using 2 balls of yarn');
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
  return { is: 'rejoin', ...(sts === 'some' ? {} : { stitches: sts }), ...(side === undefined ? {} : { side }) };
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
    takeAnyPhrase(c, 'yarn|wool|thread|ball', 'a|another|new|the ball|yarn', 'second|2nd ball', 'yarns', 'another ball of yarn', 'a new|second ball');
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
  if (takeAnyPhrase(c, 'sl|slip|place|put|return sts|stitches', 'sl|slip|place|put|return rem|remaining|the sts|stitches', 'sl|slip|place|put these|other|held sts')) {
    if (!takeAnyPhrase(c, 'from|on holder', 'from|off the|st|stitch holder', 'back', 'onto|on|to needle', 'back on|onto|to needle', 'held')) return undefined;
    takeAnyPhrase(c, 'back on|onto|to needle|needles', 'onto|on|to needle|needles', 'on needle', 'to needle', 'onto|on the needle', 'to a needle');
    takes(c, ',');
    takeAnyPhrase(c, 'and rejoin|join|attach yarn', 'rejoin|join|attach yarn');
    return 'some';
  }
  return undefined;
}

function remaining(c: Cursor): number | 'some' {
  takes(c, 'the', 'inner', 'inside', 'neck', 'end');
  takes(c, 'end', 'edge');
  takes(c, 'of');
  const rest = takes(c, 'rem', 'remaining', 'other', 'first', 'next', 'last', 'these', 'second', 'held', 'center', 'centre');
  takes(c, 'set', 'side');
  takes(c, 'of');
  const n = takeNumber(c);
  const sts = takePhrase(c, STS);
  takeAnyPhrase(c, 'at neck|inner|front|inside|armhole edge', 'at center|centre', 'at beg|beginning', 'on holder', 'at neck', 'left on holder', 'for second|other side|shoulder', 'for left|right front|shoulder|side');
  takes(c, 'and');
  return n !== undefined && (sts || rest) && Number.isSafeInteger(n) ? n : 'some';
}

const MATCHING = [
  'to match|correspond',
  'to correspond with|to',
  'to match first|1st|other|right|left',
  'the same',
  'in same manner|way',
  'in the same manner|way',
  'same as|to',
  'same',
  'likewise',
  'as for|given|on first',
  'as first|1st|for',
  'as',
  'similarly',
];

/** 'complete other side to match, reversing shaping', 'work second side as first'. */
export function readOtherSide(c: Cursor): Statement | undefined {
  const start = c.at;
  takes(c, 'then', 'and');
  const verb = takes(c, 'complete', 'work', 'finish', 'knit', 'completing', 'make', 'shape');
  takes(c, 'the');
  takes(c, 'rem', 'remaining');
  const other = takes(c, 'other', 'second', '2nd', 'opposite', 'left', 'right') || (peek(c)?.kind === 'number' && seesPhrase({ ...c, at: c.at + 1 }, 'nd') ? ((c.at += 2), true) : false);
  const what = takes(c, 'side', 'shoulder', 'half', 'neck', 'edge', 'sts');
  const matches = takeAnyPhrase(c, ...MATCHING);
  takeAnyPhrase(c, 'for', 'with', 'to');
  takes(c, 'the', 'other');
  const first = takes(c, 'first', '1st', 'one', 'right', 'left') || (peek(c)?.kind === 'number' && seesPhrase({ ...c, at: c.at + 1 }, 'st') ? ((c.at += 2), true) : false);
  const firstWhat = takes(c, 'side', 'shoulder', 'half', 'one');
  if (verb && matches && ((other && what) || (first && firstWhat))) {
    return { is: 'other side', reversing: readReversing(c) };
  }
  c.at = start;
  return undefined;
}

export function readReversing(c: Cursor): boolean {
  const start = c.at;
  takes(c, ',', '(', 'but', ';');
  takes(c, 'but', 'with', 'and');
  if (takes(c, 'reversing', 'reverse', 'reversed')) {
    takeAnyPhrase(c, 'all', 'the');
    takes(c, 'all', 'shaping', 'shapings', 'shape', 'shaped');
    takes(c, 'shaping', 'shapings');
    takes(c, ')');
    return true;
  }
  if (takeAnyPhrase(c, 'all shaping|shapings reversed', 'shaping|shapings reversed', 'shaping at opposite edge|edges|side')) return true;
  c.at = start;
  return false;
}

/** 'work as for back to armhole', 'shape armhole as for back', 'same as left front, reversing all shaping'. */
export function readAsFor(c: Cursor): Statement | undefined {
  const start = c.at;
  takes(c, 'then', 'and');
  const only = readOnly(c);
  takes(c, 'work', 'knit', 'make', 'cast', 'shape', 'complete', 'finish', 'follow', 'continue', 'cont', 'begin', 'working', 'do');
  takes(c, 'on', 'the', 'and');
  const shaped = only ?? readOnly(c);
  takes(c, 'it', 'exactly', 'piece', 'this', 'to');
  takes(c, 'and', 'correspond', 'match');
  takes(c, 'work');
  const as =
    takeAnyPhrase(
      c,
      'same number of sts and work as for',
      'as given|directed|described|instructed for',
      'as for',
      'the same as for',
      'the same as',
      'same as for',
      'same as',
      'in same manner|way as for',
      'in same manner|way as',
      'in the same manner|way as',
      'directions|instructions for|of',
      'as on|in',
      'as',
      'to match|correspond to|with',
      'to match',
      'with|to',
    ) || c.tokens[c.at - 1]?.text === 'match';
  takes(c, 'given', 'for');
  takes(c, 'the');
  const piece = as ? readPieceName(c) : undefined;
  if (piece === undefined || (c.at - start < 2)) {
    c.at = start;
    return undefined;
  }
  takes(c, ',');
  const reversing = readReversing(c);
  const to = readAsFarAs(c);
  const reversing2 = readReversing(c) || reversing;
  return { is: 'as for', piece, reversing: reversing2, ...(to === undefined ? {} : { to }), ...(shaped === undefined ? {} : { only: shaped }) };
}

/** 'shape armhole(s)', 'armhole shaping', 'shoulder': only that stretch of the other piece is worked. */
function readOnly(c: Cursor): string | undefined {
  const start = c.at;
  const shape = takes(c, 'shape', 'shaping');
  const place = readPlace(c);
  if (place !== undefined && (shape || sees(c, 'as', 'same', 'in', 'to') || /^(shaping|shapings)$/.test(c.tokens[c.at - 1]?.text ?? ''))) return place;
  c.at = start;
  return undefined;
}

function readAsFarAs(c: Cursor): string | undefined {
  const start = c.at;
  takes(c, ',');
  if (!takes(c, 'to', 'until', 'till', 'up', 'as')) {
    c.at = start;
    return undefined;
  }
  takes(c, 'to', 'far', 'end');
  takes(c, 'as', 'of');
  takes(c, 'the', 'where', 'beg', 'start');
  const place = readPlace(c);
  if (place !== undefined && !sees(c, 'measure', 'measures', 'is', 'are')) {
    takeAnyPhrase(c, 'is|are reached|completed|complete', 'has|have been completed', 'are worked', 'begins');
    return place;
  }
  c.at = start;
  const until = readUntil(c);
  if (until?.is === 'same length' && until.lessRows !== undefined) return `less ${until.lessRows} ${until.to}`;
  if (until?.is === 'count') return `count ${until.stitches}`;
  if (until?.is === 'length') return `length ${until.mm} ${until.from} ${until.end ?? ''}`;
  c.at = start;
  return undefined;
}

/** 'with RS facing pick up and knit 72 sts evenly along armhole edge'. */
export function seesPickUp(c: Cursor): boolean {
  const start = c.at;
  let far = 0;
  while (far < 25 && c.at < c.end && !seesPhrase(c, 'pick|picking up') && !/^[.]$/.test(peekText(c))) {
    c.at += 1;
    far += 1;
  }
  const found = seesPhrase(c, 'pick|picking up');
  c.at = start;
  return found;
}
