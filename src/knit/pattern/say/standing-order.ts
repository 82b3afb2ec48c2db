import { ahead, type Cursor, isWord, sees, seesPhrase, takeAnyPhrase, takes } from '../../row/read/cursor.ts';
import type { Token } from '../../row/read/lex.ts';
import { means } from '../../row/read/meanings.ts';
import { readShape } from './shape.ts';
import { readSlips } from './slips.ts';
import type { Said, Statement } from './statement.ts';
import { rowsSaid } from './while-rows.ts';

/** 'On all WS rows: k1, p to end': how rows to come are worked; no row of its own. */
export const standingOrder = (c: Cursor): boolean =>
  ahead(c, () => readSlips(c)) === undefined && !ahead(c, () => isTimed(readShape(c))) && isStanding(c);

/** 'On every RS row, dec 1 st at each end 3 times' is worked so often. */
const isTimed = (shape: Statement | undefined): boolean =>
  shape?.is === 'shape' && (shape.beats.at(-1)?.times ?? shape.beats.at(-1)?.toCount) !== undefined;

const isStanding = (c: Cursor): boolean =>
  seesPhrase(c, 'the? first st in|of|on every|each row should|is|must') ||
  seesPhrase(c, 'sl the? first st in|of|on every|each rs|ws? row') ||
  seesPhrase(c, '(? always sl') ||
  saysHow(c) ||
  ahead(
    c,
    () =>
      takeAnyPhrase(
        c,
        'on|work? all|every|each other? rs|ws|alt|even|odd rows|row',
        'on|work? all|every|each right|wrong side rows|row',
        '( work|on all|every|each rs|ws rows|row',
      ) &&
      (takes(c, ':', ',', 'as', 'in') || readStitchAhead(c)),
  );

/** 'When decreasing on fronts, k2tog at end of row': how it is done whenever it is. */
const saysHow = (c: Cursor): boolean =>
  seesPhrase(c, 'when|whenever dec|decs|inc|incs|decreasing|increasing') &&
  c.tokens
    .slice(c.at, c.end)
    .some((token, i, all) => isWord(token, ',', ':') && means(all[i + 1]?.text, 'beginning of an order'));

const readStitchAhead = (c: Cursor): boolean => sees(c, 'k', 'p') && !seesPhrase(c, 'k|p row|rows');

/** 'Work 4 rows | as follows:' says how many rows are spelled out behind it; 'work 4 rows, shape the waist as follows:' works them. */
export function announcedRows(
  said: readonly Said[],
  tokens: readonly Token[],
  at: number,
): number | undefined {
  const [before, note] = [said.at(-2)?.statement, said.at(-1)?.statement];
  if (note?.is !== 'note' || !isWord(tokens[at], 'as', 'thus') || before === undefined) return undefined;
  if (isWord(tokens[at - 1], ',', ';', 'and', 'then')) return undefined;
  return rowsSaid(before);
}
