import {
  attempt,
  type Cursor,
  isWord,
  peek,
  peekWord,
  seesPhrase,
  takeAll,
  takeAnyPhrase,
} from '../../row/read/cursor.ts';
import { skipEnding } from './phrase/ending.ts';
import { skipFacing } from './phrase/facing.ts';
import { skipYarn } from './phrase/yarn.ts';
import type { Statement } from './statement.ts';

const NOTES = new Set(
  (
    'block press sew weave steam fold seam stitch wash measure finishing note notes turn-up attach overcast darn crochet ' +
    'abbreviations materials instructions directions changes repeat-for run draw gather allow lay pin cover dampen make-up ' +
    'back-stitch backstitch insert this these when do join size sizes to needles yarn you'
  ).split(' '),
);

/** What makes no row: seams, pressing, breaking the yarn, markers at the edge. */
export const readNote = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    const word = peekWord(c);
    if (
      takeAnyPhrase(
        c,
        'break|cut|fasten off the yarn|wool|thread',
        'break|cut|fasten off|the yarn|wool|thread',
        'break|cut|fasten off|yarn|wool|thread',
        'break|cut|fasten',
      )
    ) {
      return { is: 'note', about: 'yarn' };
    }
    if (
      takeAnyPhrase(
        c,
        'place|put|mark a|the|1|each marker|end',
        'place|put marker',
        'mark each|center|both',
        'tie a marker',
        'mark',
      )
    ) {
      if (seesPhrase(c, ', k|p') && word !== 'mark') return undefined;
      while (c.at < c.end && !/^[,;]$/.test(peekWord(c))) c.at += 1;
      return { is: 'note', about: 'marker' };
    }
    if (word === 'attach' && seesPhrase(c, 'attach yarn|wool|thread|ball|new|the|a|another'))
      return undefined;
    if (word === 'finishing' && seesPhrase(c, 'finishing with|on|after|at')) return undefined;
    if (word === 'join' && !seesPhrase(c, 'join seam|shoulder|side|right|left|sleeve|back|front'))
      return undefined;
    if (word === 'to' && !seesPhrase(c, 'to make|finish|fit')) return undefined;
    if (word === 'when' && !seesPhrase(c, 'when knitting|working')) return undefined;
    if (
      /^(these|this)$/.test(word) &&
      !seesPhrase(c, 'these rows|sts|1|2|4|6|8|10|12|16 form|rows|are|sts') &&
      !seesPhrase(c, 'this forms|completes|is')
    )
      return undefined;
    if (
      /^(these|this)$/.test(word) &&
      !c.tokens
        .slice(c.at, c.end)
        .some((token) =>
          isWord(
            token,
            'form',
            'forms',
            'set',
            'sets',
            'establish',
            'establishes',
            'completes',
            'complete',
            'is',
            'are',
          ),
        )
    )
      return undefined;
    if (!NOTES.has(peek(c)?.text ?? '')) return undefined;
    if (word === 'measure' || word === 'turn') return undefined;
    takeAll(c);
    return { is: 'note', about: 'making up' };
  });

/** Words that may stand alone between instructions: 'with RS facing', 'ending with a WS row', 'with white'. */
export const readPassing = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    const start = c.at;
    if (skipFacing(c)) return { is: 'note', about: 'facing' };
    skipEnding(c);
    if (c.at !== start) return { is: 'even', until: { is: 'open', end: 'WS' } };
    return skipYarn(c) ? { is: 'note', about: 'yarn' } : undefined;
  });
