import {
  type Cursor,
  peekNumber,
  peekText,
  seesPhrase,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
} from '../../row/read/cursor.ts';
import { takeBindOff, takeRest } from '../../row/read/edge.ts';
import { STS } from '../../row/read/goal.ts';
import { skipYarn } from './gauge.ts';
import { skipFacing } from './hold.ts';
import { readUntil } from './phrase/until.ts';
import { skipEnding } from './shape.ts';
import { takeChangeNote, takeStated } from './stated.ts';
import type { Statement } from './statement.ts';

export function readStatedAlone(c: Cursor): Statement | undefined {
  if (takeChangeNote(c)) return { is: 'note', about: 'change' };
  const stitches = takeStated(c);
  return stitches === undefined ? undefined : { is: 'stated', stitches };
}

/** 'AT THE SAME TIME', 'at the same time, when armhole measures 5 cm, …'. */
export function readSameTime(c: Cursor): Statement | undefined {
  const start = c.at;
  takes(c, 'while', 'and', '(', '[');
  if (!takeAnyPhrase(c, 'at the same time', 'at same time', 'meanwhile', 'simultaneously')) {
    c.at = start;
    return undefined;
  }
  takes(c, ',', ':', '-', ')');
  const after = seesPhrase(c, 'when|once|after') ? readUntil(c) : undefined;
  takes(c, ',');
  takes(c, 'beg', 'beginning', 'starting');
  return after === undefined ? { is: 'at the same time' } : { is: 'at the same time', after };
}

/** 'these 2 rows form rib', 'last 4 rows set the pattern': the rows get a name. */
export function readNamedRows(c: Cursor): Statement | undefined {
  const start = c.at;
  if (takes(c, 'these', 'last', 'above', 'the', 'this')) {
    takes(c, 'last', 'above');
    const n = takeNumber(c);
    if (takePhrase(c, 'row|rows') && takes(c, 'form', 'forms', 'set', 'sets', 'establish', 'complete')) {
      const name = c.tokens
        .slice(c.at, c.end)
        .filter(({ kind, text }) => kind === 'word' && !/^(the|a|patt|pattern|st|stitch|in|as)$/.test(text))
        .map(({ text }) => text)
        .slice(0, 4)
        .join(' ');
      c.at = c.end;
      return { is: 'named rows', name, ...(n === undefined ? {} : { rows: n }) };
    }
  }
  c.at = start;
  return undefined;
}

const NOTES = new Set(
  (
    'block press sew weave steam fold seam stitch wash measure finishing note notes turn-up attach overcast darn crochet ' +
    'abbreviations materials instructions directions changes repeat-for run draw gather allow lay pin cover dampen make-up ' +
    'back-stitch backstitch insert this these when do join size sizes to needles yarn you'
  ).split(' '),
);

/** What makes no row: seams, pressing, breaking the yarn, markers at the edge. */
export function readNote(c: Cursor): Statement | undefined {
  const word = peekText(c);
  const start = c.at;
  if (
    takeAnyPhrase(
      c,
      'break|cut|fasten off yarn|wool|thread',
      'break|cut off|the yarn|wool|thread',
      'break|cut|fasten',
      'fasten off',
    )
  ) {
    takeAnyPhrase(c, 'off', 'yarn', 'wool', 'the yarn');
    return { is: 'note', about: word };
  }
  if (
    takeAnyPhrase(
      c,
      'place|put|mark a|the|1|each marker|end',
      'place|put marker|markers',
      'mark each|center|centre|both',
      'tie a marker',
      'mark',
    )
  ) {
    if (seesPhrase(c, ', k|p') && word !== 'mark') {
      c.at = start;
      return undefined;
    }
    while (c.at < c.end && !/^[,;]$/.test(peekText(c))) c.at += 1;
    return { is: 'note', about: 'marker' };
  }
  if (
    word === 'join' &&
    !seesPhrase(c, 'join seams|seam|shoulder|shoulders|side|right|left|sleeve|back|front')
  )
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
        /^(form|forms|set|sets|establish|establishes|completes|complete|is|are)$/.test(token.text),
      )
  )
    return undefined;
  if (!NOTES.has(word)) return undefined;
  if (word === 'measure' || word === 'turn') return undefined;
  c.at = c.end;
  return { is: 'note', about: word };
}

export function readTurn(c: Cursor): Statement | undefined {
  return takePhrase(c, 'turn') ? { is: 'turn' } : undefined;
}

/** 'Bind off.', 'bind off rem 24 sts in pattern', 'cast off all sts loosely', 'bind off 24 sts'. */
export function readBindOffAll(c: Cursor): Statement | undefined {
  const start = c.at;
  takes(c, 'loosely');
  if (!takeBindOff(c)) return undefined;
  skipHow(c);
  const all = takeRest(c) || takes(c, 'rem', 'remaining', 'all', 'the', 'these');
  if (all) takes(c, 'rem', 'remaining', 'the');
  const stitches = peekNumber(c);
  if (stitches !== undefined) c.at += 1;
  takePhrase(c, STS);
  takeAnyPhrase(
    c,
    'for back|front of neck',
    'for neck|back|shoulder',
    'for each shoulder',
    'on each side',
    'each side|shoulder',
    'at each side',
  );
  skipHow(c);
  takeAnyPhrase(c, 'at same gauge|tension', 'in 1 row', 'on next row');
  skipHow(c);
  const done = c.at >= c.end || /^[.,;([:-]$/.test(peekText(c));
  const more =
    peekText(c) === ',' &&
    /^(k|p|knit|purl|work|pattern|patt|sl|dec|ssk|inc|rib|pat)$/.test(c.tokens[c.at + 1]?.text ?? '');
  if (!done || (more && !all)) {
    c.at = start;
    return undefined;
  }
  return { is: 'bind off', ...(stitches === undefined ? {} : { stitches }), ...(all ? { rest: true } : {}) };
}

function skipHow(c: Cursor): void {
  takeAnyPhrase(
    c,
    'loosely in pattern|patt|pat|rib|ribbing',
    'in pattern|patt|pat|rib|ribbing|knitting',
    'loosely',
    'in garter|moss|seed st',
    'knitwise|purlwise|kwise|pwise|ribwise',
    'as if to k|knit|p|purl',
    'in k',
    'very loosely',
    'firmly',
    'on rs|ws',
    'in p',
  );
}

/** Words that may stand alone between instructions: 'with RS facing', 'ending with a WS row', 'with white'. */
export function readPassing(c: Cursor): Statement | undefined {
  const start = c.at;
  if (skipFacing(c)) return { is: 'note', about: 'facing' };
  skipEnding(c);
  if (c.at !== start) return { is: 'even', until: { is: 'open', end: 'WS' } };
  return skipYarn(c) ? { is: 'note', about: 'yarn' } : undefined;
}
