import {
  attempt,
  type Cursor,
  peek,
  peekText,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
} from '../../row/read/cursor.ts';
import { STS } from '../../row/read/goal.ts';
import type { Statement } from './statement.ts';

/** 'working on last 28 sts only', 'work each side separately', 'working both sides at once'. */
export const readWorkOn = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
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
  });

/** 'one side', which reads as '1 side'. */
function takeOneSide(c: Cursor): boolean {
  if (peek(c)?.value !== 1 || !/^(side|shoulder)$/.test(peekText({ ...c, at: c.at + 1 }))) return false;
  c.at += 1;
  return true;
}
