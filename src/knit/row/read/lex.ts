import { means } from './meanings.ts';
import { BEFORE_NUMBER, NUMBER_WORDS, SHORT, wordOf } from './vocabulary.ts';

/** One word, number or mark of a pattern's text. Lines and columns count from 1. */
export interface Token {
  readonly kind: 'word' | 'number' | 'mark';
  /** lower case; a mark is one character, dashes of every length are '-' */
  readonly text: string;
  /** the trade's word that the text is a spelling of; what stands in the text where it is none */
  readonly word: string;
  /** of a number; NaN otherwise */
  readonly value: number;
  readonly line: number;
  readonly column: number;
  /** where it begins in the text that was read, from 0 */
  readonly offset: number;
  /** nothing stood between it and the token before */
  readonly glued: boolean;
  /** a word that begins with a capital */
  readonly capital: boolean;
}

const FRACTIONS: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
};

const isDigit = (c: number): boolean => c >= 48 && c <= 57;
const isLower = (c: number): boolean => c >= 97 && c <= 122;
const isUpper = (c: number): boolean => c >= 65 && c <= 90;
/** Letters beyond English ones take part in words, so that 'Häkelrand' is one word that nobody knows, and so do halves of what takes two. */
const isOther = (c: number): boolean => c >= 192 && /[\p{L}\p{M}\p{Cs}]/u.test(String.fromCharCode(c));
const isLetter = (c: number): boolean => isLower(c) || isUpper(c) || isOther(c);

const DASHES = new Set(['-', '‐', '‑', '‒', '–', '—', '―', '−']);
const STARS = new Set(['*', '∗', '＊', '★', '✱']);
const INCHES = new Set(['"', '”', '“', '″']);
const SILENT = new Set(["'", '’', '‘', '`', '\u00ad', '\u200b', '\ufeff']);

/** The text of one logical line as tokens; `line` and `column` say where it starts. One pass, whatever the text. */
export function lex(text: string, line = 1, column = 1): Token[] {
  const out: Token[] = [];
  let row = line;
  let lineStart = 1 - column;
  let glued = false;
  let i = 0;
  const push = (kind: Token['kind'], from: number, word: string, value: number, capital: boolean) => {
    out.push({
      kind,
      text: word,
      // 'two' is found as '2' is
      word: kind !== 'number' ? wordOf(word) : isLetter(word.charCodeAt(0)) ? String(value) : word,
      value,
      line: row,
      column: from - lineStart + 1,
      offset: from,
      glued,
      capital,
    });
    glued = true;
  };
  while (i < text.length) {
    const c = text.charCodeAt(i);
    if (c === 10) {
      row += 1;
      lineStart = i + 1;
      glued = false;
      i += 1;
    } else if (isDigit(c) || FRACTIONS[text.charAt(i)] !== undefined) {
      const end = numberEnd(text, i);
      push('number', i, text.slice(i, end), numberValue(text.slice(i, end)), false);
      i = end;
    } else if (isLetter(c)) {
      const end = wordEnd(text, i);
      const letters = lettersOf(text, i, end);
      const said = Object.hasOwn(NUMBER_WORDS, letters) ? NUMBER_WORDS[letters] : undefined;
      if (said === undefined || said > 9 || !addToTens(out, said))
        push(said === undefined ? 'word' : 'number', i, letters, said ?? Number.NaN, isUpper(c));
      i = end;
    } else {
      // '2."' closes the inches before the stop
      const swapped = text.charAt(i) === '.' && out.at(-1)?.kind === 'number' && endsInInches(text, i + 1);
      if (swapped) push('mark', i + 1, '"', Number.NaN, false);
      const mark = text.charAt(i);
      if (c <= 32 || c === 160 || (c >= 0x2000 && c <= 0x200a)) glued = false;
      else if (!SILENT.has(mark) && !(mark === '.' && isSilentStop(text, i, out))) {
        push('mark', i, markOf(mark), Number.NaN, false);
      }
      i += swapped ? 2 : 1;
    }
  }
  return out;
}

const endsInInches = (text: string, at: number): boolean =>
  INCHES.has(text.charAt(at)) && /^\s?$/.test(text.charAt(at + 1));

/** 'Fifty-five', 'fifty five' is one number. */
function addToTens(out: Token[], ones: number): boolean {
  const at = out.at(-1)?.text === '-' ? -2 : -1;
  const tens = out.at(at);
  if (tens === undefined || !NUMBER_WORDS[tens.text] || tens.value < 20 || tens.value % 10 > 0) return false;
  const value = tens.value + ones;
  out.splice(at, 2, { ...tens, value, word: String(value) });
  return true;
}

function markOf(mark: string): string {
  if (DASHES.has(mark)) return '-';
  if (STARS.has(mark)) return '*';
  if (INCHES.has(mark)) return '"';
  if (mark === '…') return '.';
  return mark === '×' || mark === '✕' ? '×' : mark;
}

function numberEnd(text: string, from: number): number {
  let i = from;
  while (isDigit(text.charCodeAt(i))) i += 1;
  if (text.charAt(i) === '.' && isDigit(text.charCodeAt(i + 1))) {
    i += 2;
    while (isDigit(text.charCodeAt(i))) i += 1;
  } else if (FRACTIONS[text.charAt(i)] !== undefined) i += 1;
  return i;
}

function numberValue(text: string): number {
  const part = FRACTIONS[text.charAt(text.length - 1)];
  if (part === undefined) return Number(text);
  return text.length === 1 ? part : Number(text.slice(0, -1)) + part;
}

/** A word's end; single letters each with a full stop ('p.s.s.o.') are one word. */
function wordEnd(text: string, from: number): number {
  let i = from + 1;
  if (isDottedAt(text, from)) {
    while (isDottedAt(text, i + 1)) i += 2;
    return i + 2;
  }
  while ((isLetter(text.charCodeAt(i)) && !beginsGlued(text, i)) || isInflected(text, i)) i += 1;
  return gluedEnd(text, from, i) ?? i;
}

/** 'NeckNext row:': a line break that got lost. */
function beginsGlued(text: string, i: number): boolean {
  if (!isUpper(text.charCodeAt(i)) || !isLower(text.charCodeAt(i - 1))) return false;
  let end = i + 1;
  while (isLower(text.charCodeAt(end))) end += 1;
  return means(text.slice(i, end).toLowerCase(), 'beginning of a line that was lost');
}

/** 'untilarmhole', 'cmending': a blank that got lost; where the first of the two words ends. */
function gluedEnd(text: string, from: number, end: number): number | undefined {
  if (end - from < 7) return undefined;
  for (let at = from + 2; at < from + 7; at += 1)
    if (
      means(text.slice(from, at), 'before a blank that was lost') &&
      means(text.slice(at, end), 'behind a blank that was lost')
    )
      return at;
  return undefined;
}

/** The apostrophe of 'inc'ing' and 'dec’ing'. */
const isInflected = (text: string, i: number): boolean =>
  (text.charAt(i) === "'" || text.charAt(i) === '’') && text.slice(i + 1, i + 4).toLowerCase() === 'ing';

const isDottedAt = (text: string, i: number): boolean =>
  isLetter(text.charCodeAt(i)) &&
  text.charAt(i + 1) === '.' &&
  isLetter(text.charCodeAt(i + 2)) &&
  !isLetter(text.charCodeAt(i + 3));

const lettersOf = (text: string, from: number, end: number): string =>
  text.slice(from, end).replace(/[.'’]/g, '').toLowerCase();

/** Whether a full stop only shortens the word before it. */
function isSilentStop(text: string, at: number, out: readonly Token[]): boolean {
  const last = out[out.length - 1];
  if (last?.kind !== 'word' || text.charAt(at - 1) === ' ' || !SHORT.has(last.text)) return false;
  let next = at + 1;
  while (text.charCodeAt(next) <= 32) next += 1;
  const c = text.charCodeAt(next);
  // 'Row 3: K. **'
  if (STARS.has(text.charAt(next)) && STARS.has(text.charAt(next + 1))) return false;
  if (last.text === 'st' && /^st\b/i.test(text.slice(next, next + 4))) return true;
  if ((last.text === 'k' || last.text === 'p') && isDigit(c)) return true;
  // 'at beg. Of next row'
  if (next === text.length || (isUpper(c) && !text.startsWith('Of ', next))) return false;
  // '… k2tog. 39 sts' ends a sentence, 'inc. 1 st' and 'No. 8' do not
  if (/^\d+\s*(?:[([][^)\]]*[)\]]\s*)?times?\b/.test(text.slice(next, next + 60))) return true;
  return next === at + 1 || !isDigit(c) || BEFORE_NUMBER.has(last.text);
}
