import {
  attempt,
  type Cursor,
  sees,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
  took,
} from '../../row/read/cursor.ts';
import { STS } from '../../row/read/goal.ts';
import { takeFirst, takeSecond } from './phrase/ordinal.ts';
import type { Said, Statement } from './statement.ts';

const MATCHING = [
  'to match|correspond',
  'the same',
  'in the? same manner|way|fashion',
  'same as|to',
  'same',
  'likewise',
  'as for|given|on first',
  'as first|for',
  'as',
  'similarly',
  'accordingly',
];

/** 'complete other side to match, reversing shaping', 'work second side as first'. */
export const readOtherSide = (c: Cursor, before: readonly Said[] = []): Statement | undefined =>
  readTheSame(c) ??
  attempt(c, () => {
    const verb = takes(c, 'complete', 'work', 'finish', 'k', 'completing', 'make', 'shape');
    takes(c, 'the', 'in');
    takes(c, 'rem');
    const other = takes(c, 'other', 'opposite', 'left', 'right', 'this') || takeSecond(c);
    const what = takes(
      c,
      'side',
      'shoulder',
      'half',
      'neck',
      'edge',
      'sts',
      ...(took(c, 'other') ? ['front'] : []),
    );
    if (what) takeAnyPhrase(c, 'of the? neck|front|back|work');
    const matches = takeAnyPhrase(c, ...MATCHING);
    takeAnyPhrase(c, 'as for?', 'for', 'with', 'to');
    takes(c, 'the');
    const first = takes(c, 'right', 'left', 'other') || takeFirst(c);
    const firstWhat = takes(c, 'side', 'shoulder', 'half');
    // 'join yarn to other side and | work to correspond'
    const rejoined = before.at(-1)?.statement.is === 'rejoin' && (c.at >= c.end || sees(c, '.', ',', ';'));
    // 'Rejoin wool to rem 16 sts. Work to correspond.'
    const bare =
      before.length === 0 &&
      !what &&
      !first &&
      took(c, 'correspond', 'match') &&
      (c.at >= c.end || sees(c, ',', ';'));
    // 'Left front: work in reverse.'
    const inverse =
      before.length === 0 || before.at(-1)?.statement.is === 'heading'
        ? takeAnyPhrase(c, 'in? reverse|rev') && (c.at >= c.end || sees(c, '.'))
        : false;
    if (verb && !other && !matches && inverse) return { is: 'other side', reversing: true };
    if (verb && bare) return { is: 'other side', reversing: false };
    if (verb && matches && ((other && what) || (first && firstWhat) || rejoined)) {
      return { is: 'other side', reversing: readReversing(c) };
    }
  });

/** 'do the same at the other side', 'repeat for the other shoulder', 'work the remaining 20 sts in the same way'. */
const readTheSame = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    const same = takeAnyPhrase(
      c,
      'do|work the same at|on|for the? other|second side|shoulder|half',
      'rep for|on the? other|second side|shoulder|half',
      'complete|finish as for? first side|shoulder|half',
      'complete|work|finish to match|correspond to? the? other|first side|shoulder|half',
    );
    if (!same && !takeRest(c)) return undefined;
    takeAnyPhrase(c, 'of the? neck|front|back|work|neckline');
    const reversing = readReversing(c);
    return c.at >= c.end || sees(c, '.', ',', ';') ? { is: 'other side', reversing } : undefined;
  });

const takeRest = (c: Cursor): boolean =>
  attempt(c, () => {
    if (!takes(c, 'work', 'complete', 'finish')) return false;
    takes(c, 'the');
    if (!takes(c, 'rem', 'other', 'held')) return false;
    takeNumber(c);
    return (
      takePhrase(c, STS) &&
      takeAnyPhrase(c, 'in? the? same way|manner|fashion', 'to match|correspond', 'the? same', 'likewise')
    );
  });

export const readReversing = (c: Cursor): boolean =>
  attempt(c, () => {
    takes(c, ',', '(', 'but', ';');
    takes(c, 'but', 'with', 'and');
    if (takes(c, 'reversing', 'rev')) {
      takeAnyPhrase(c, 'all', 'the');
      takes(c, 'all', 'shaping', 'shapings', 'shape', 'shaped');
      takes(c, 'shaping', 'shapings');
      return true;
    }
    if (takeAnyPhrase(c, 'all shaping|shapings rev', 'shaping|shapings rev', 'shaping at opposite edge|side'))
      return true;
    return false;
  });
