import { attempt, type Cursor, sees, takeAnyPhrase, takes, took } from '../../row/read/cursor.ts';
import { takeFirst, takeSecond } from './phrase/ordinal.ts';
import type { Said, Statement } from './statement.ts';

const MATCHING = [
  'to match|correspond',
  'the same',
  'in the? same manner|way',
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
    takeAnyPhrase(c, 'for', 'with', 'to');
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
