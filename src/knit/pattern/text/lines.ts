import { isWord } from '../../row/read/cursor.ts';
import { lex, type Token } from '../../row/read/lex.ts';
import { beginsWith, beginsWithNumber, endsWith } from '../../row/read/meanings.ts';
import { beginsCable, goesOnAsRow, goesOnBehindStop, rowsBelow } from './broken-rows.ts';
import { MEND } from './with-lines.ts';

/** A line as its writer meant it: lines that a page broke in the middle of a sentence are joined. */
export interface LogicalLine {
  /** first and last line of the source, from 1 */
  readonly line: number;
  readonly lastLine: number;
  readonly text: string;
}

/** A row that begins with a stitch or a star. */
const ROW = /^(?:\*|\(?[kp]\d)/i;

/** '3: K1, ssk', '4-6: as rows 1-2': a row by its bare number. */
const NUMBERED = /^\d+(?:\s?[-–—]\s?\d+)?\s?:\s*[*([A-Za-z]/;

/** A line that begins like this starts a sentence of its own, even in small letters. */
const starts = (line: string): boolean =>
  NUMBERED.test(line) ||
  beginsWith(line, 'beginning of a sentence') ||
  beginsWithNumber(line, 'ordinal ending') ||
  /^(?:\*|\(?[kp]\d)\b/i.test(line);

/** What lists of steps put before a step: a bullet, a dash before a capital, a number with its stop. */
const BULLET = /^\s*(?:[•·▪◦●○■□►▶◆❖➢»£]\s*|[-–—]\s+(?=[A-Z])|\d{1,2}[.)]\s+(?=[A-Z]))/;

/** '2) rib 4, k to end': a row in small letters. */
const SMALL_ROW = /^\s*\d{1,2}\)\s+/;

/** 'Step 2: Work in rib'. */
const STEP = /^\s*[Ss]tep\s+\d{1,2}\s*[:.)]\s*(?=[A-Z])/;

/** A number without a stop ('2 Work in rib …'); '2 Rows A' counts rows. */
const BARE_NUMBER = /^\s*\d{1,2}\s+(?=[A-Z][A-Za-z]+\s)/;

function bulletOf(line: string): string | undefined {
  const bullet = (BULLET.exec(line) ?? STEP.exec(line))?.[0];
  if (bullet !== undefined) return bullet;
  const small = SMALL_ROW.exec(line)?.[0];
  const row = small === undefined ? '' : line.slice(small.length);
  if (ROW.test(row) || beginsWith(row, 'beginning of a row')) return small;
  const number = BARE_NUMBER.exec(line)?.[0];
  return number !== undefined && beginsWith(line.slice(number.length), 'begins a numbered step')
    ? number
    : undefined;
}

export function logicalLines(text: string): LogicalLine[] {
  const out: LogicalLine[] = [];
  let held: { line: number; lastLine: number; parts: string[]; open: number } | undefined;
  const flush = () => {
    if (held) out.push({ line: held.line, lastLine: held.lastLine, text: held.parts.join('\n') });
    held = undefined;
  };
  text.split(/\r\n|\n|\r/).forEach((whole, i) => {
    const line = i + 1;
    const open = (held?.open ?? 0) > 0;
    // '12) sts' closes a bracket
    const bullet = open && /^\s*\d/.test(whole) ? undefined : bulletOf(whole);
    // blanks in its place: columns stay
    const raw = bullet === undefined ? whole : ' '.repeat(bullet.length) + whole.slice(bullet.length);
    const trimmed = raw.trim();
    const last = held?.parts.at(-1)?.trimEnd() ?? '';
    if (trimmed === '') {
      // whether a list of sizes goes on below it shows the next line
      if (!(held && breaksList(last, held.open))) flush();
      return;
    }
    if (held && held.lastLine < line - 1 && !/^\d/.test(trimmed)) flush();
    if (
      bullet === undefined &&
      held &&
      held.parts.length < 30 &&
      (goesOn(held.parts.at(-1) ?? '', held.open, trimmed) || goesOnBehindStop(held.parts, trimmed))
    ) {
      held.parts.push(raw);
      held.lastLine = line;
      held.open += openBrackets(raw);
      return;
    }
    flush();
    held = { line, lastLine: line, parts: [raw], open: openBrackets(raw) };
  });
  flush();
  return out;
}

/** 'Repeat from * to end.' below 'Row 1: *K2, p2.': one row on two lines. */
const closesStar = (next: string): boolean => /^rep\w*\s+from\s+(?:the\s+)?\*(?!\s*\*)/i.test(next);

/** A star before a stitch that nothing repeats yet. */
function hasOpenStar(line: string): boolean {
  const [, open, more] = line.split('*');
  if (open === undefined || more !== undefined) return false;
  const row = open.trim().replace(/^\(/, '');
  return (
    ROW.test(row) || beginsCable(row) || (beginsWith(row, 'stitch after a star') && !/\brows?\b/i.test(row))
  );
}

/** A list of sizes that a page broke, even over an empty line. */
const breaksList = (end: string, open: number): boolean => open > 0 && /[,:;-]$/.test(end);

function goesOn(before: string, open: number, next: string): boolean {
  const end = before.trimEnd();
  if (closesStar(next) && hasOpenStar(end)) return true;
  // '(6th, 4th,' above '4th, 4th) row'
  if (breaksList(end, open) && /^\d/.test(next)) return true;
  if (goesOnAsRow(end, next)) return true;
  // what she says of a line ends it
  if (/[.:!?]$/.test(end) || MEND.test(end)) return false;
  // 'K2 to last st, k1' above '7 more rows in rib'
  if (rowsBelow(end, next)) return false;
  // '… of next row. 12' above '[13, 15] sts'
  if (/\d$/.test(end) && /^[([]\d+[,:\s]/.test(next)) return true;
  // 'of the next 4' above 'rows 2 sts', and no 'k2, p2' above 'rows 2 and 4: knit'
  if (/\p{L}{3} \d+$/u.test(end) && /^rows?\b/.test(next) && !/^[^.]*:/.test(next)) return true;
  // 'at beg of' above 'next 6 rows'
  if (/^next\b/.test(next) && endsWith(end, 'before next')) return true;
  if (isWithin(end, next)) return true;
  // 'K to end of row' above 'Section 2'
  const ended = endsWith(end, 'may end a row') && (/^[A-Z]/.test(next) || /^k\d+\s?\(/i.test(next));
  const hangs = !ended && endsWith(end, 'hanging at the end of a line');
  if (starts(next) && !ROW.test(next))
    return hangs && !beginsWith(next, 'beginning of a label') && /^[a-z0-9]/.test(next);
  if (/[,;(]$/.test(end) || open > 0) return true;
  if (hangs) return true;
  const startsSmall = /^[a-z(*\d]/.test(next) && !ROW.test(next);
  return startsSmall && !starts(next) && end.length > 20;
}

/** A line in small letters that cannot begin a sentence: 'at beg of next row', 'sts, k to end', 'row. 7 sts', or whatever follows a comma. */
function isWithin(end: string, next: string): boolean {
  if (!/^[a-z]/.test(next) || ROW.test(next)) return false;
  if (beginsWith(next, 'beginning of a label'))
    return /^rows?\b\W*(?:[.,;]|$|[A-Za-z])/.test(next) && end.length > 20;
  if (/[,;]$/.test(end)) return true;
  return end.length > 12 && beginsWith(next, 'within a sentence');
}

function openBrackets(raw: string): number {
  let open = 0;
  for (let i = 0; i < raw.length; i += 1) {
    const c = raw.charAt(i);
    if (c === '(' || c === '[') open += 1;
    else if (c === ')' || c === ']') open -= 1;
  }
  return open;
}

export const tokensOf = (line: LogicalLine): Token[] =>
  lex(line.text, line.line).filter((_, i, tokens) => !stopsNumber(tokens, i));

/** 'dec. 1. st.', 'cast on 40. sts.': the stop says nothing between a number and its stitches. */
const stopsNumber = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]?.text === '.' &&
  tokens[at - 1]?.kind === 'number' &&
  isWord(tokens[at + 1], 'st', 'sts') &&
  !tokens[at + 1]?.capital;
