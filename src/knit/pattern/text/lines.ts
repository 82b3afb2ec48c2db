import { lex, type Token } from '../../row/read/lex.ts';

/** A line as its writer meant it: lines that a page broke in the middle of a sentence are joined. */
export interface LogicalLine {
  /** first and last line of the source, from 1 */
  readonly line: number;
  readonly lastLine: number;
  readonly text: string;
}

/** Words that leave a sentence hanging at the end of a line. */
const HANGING =
  /(?:^|[\s(])(?:from|to|of|the|a|an|next|every|each|and|at|with|last|rem|foll|in|for|on|until|beg|then|dec|inc|sl|k|p|rep|ending|bind|cast|row|rows|alt|other|st|or|approx|is|into|same|first|second|all|place|pick|up|rejoin|as|measures)$/i;

/** A line that begins like this starts a sentence of its own, even in small letters. */
const STARTING =
  /^(?:rows?|rnds?|rounds?|next|rep|repeat|k|p|knit|purl|work|cont|continue|bind|cast|bo|co|dec|inc|change|with|using|shape|back|front|left|right|sleeves?|place|rejoin|join|pick|beg|sl|slip|leave|complete|sizes?|gauge|tension|\d+(?:st|nd|rd|th)|\*|\(?[kp]\d|at|turn|purl|note|divide|break|then)\b/i;

export function logicalLines(text: string): LogicalLine[] {
  const out: LogicalLine[] = [];
  let held: { line: number; lastLine: number; parts: string[]; open: number } | undefined;
  const flush = () => {
    if (held) out.push({ line: held.line, lastLine: held.lastLine, text: held.parts.join('\n') });
    held = undefined;
  };
  text.split(/\r\n|\n|\r/).forEach((raw, i) => {
    const line = i + 1;
    const trimmed = raw.trim();
    if (trimmed === '') {
      flush();
      return;
    }
    if (held && held.parts.length < 30 && goesOn(held.parts.at(-1) ?? '', held.open, trimmed)) {
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

function goesOn(before: string, open: number, next: string): boolean {
  const end = before.trimEnd();
  if (/[.:!?]$/.test(end)) return false;
  if (STARTING.test(next) && !/^(?:\*|\(?[kp]\d)/i.test(next))
    return HANGING.test(end) && !/^(?:rows?|next|rnds?)\b/i.test(next) && /^[a-z0-9]/.test(next);
  if (/[,;(]$/.test(end) || open > 0) return true;
  if (HANGING.test(end)) return true;
  const startsSmall = /^[a-z(*\d]/.test(next) && !/^(?:\*|\(?[kp]\d)/i.test(next);
  return startsSmall && !STARTING.test(next) && end.length > 30;
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

export const tokensOf = (line: LogicalLine): Token[] => lex(line.text, line.line);
