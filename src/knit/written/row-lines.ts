import { factsOf } from '../fabric-facts.ts';
import type { PlannedPart, PlannedRow } from '../piece/planned.ts';
import { printRow, sayRow } from '../row/print.ts';
import type { RowWords } from '../row/row-words.ts';

/** Longest block of rows that is said once and then repeated: a stitch pattern or a shaping rhythm. */
const LONGEST_BLOCK = 24;

/** What the lines of one part are written with. */
export interface RowLineWords {
  readonly rows: RowWords;
  /** 'bind off' or 'cast off' */
  readonly bindOff: string;
}

/**
 * A part's rows in standard wording: each new row once, recurring blocks as 'Rep rows 1 and 2 8 times more',
 * needle changes where they fall, counts where they change.
 * @param needleBefore the needle that the text has named last, mm
 */
export function rowLines(part: PlannedPart, words: RowLineWords, needleBefore: number | undefined): string[] {
  const { rows } = part;
  const said = rows.map((row) => `${row.side} ${row.needle} ${printRow(row.steps, words.rows)}`);
  const lines: string[] = [];
  let needle = needleBefore;
  let at = 0;
  while (at < rows.length) {
    const row = rows[at] as PlannedRow;
    if (row.needle !== needle) {
      lines.push(`Change to ${row.needle} mm needles.`);
      needle = row.needle;
    }
    const { length, times } = fromRightSide(rows, said, at);
    for (let i = at; i < at + length; i += 1) lines.push(rowLine(part, rows[i] as PlannedRow, words));
    if (times > 1) lines.push(repeatLine(rows, at, length, times));
    at += length * times;
  }
  return lines;
}

/** '1 st', '24 sts' */
export const stitchCount = (count: number): string => `${count} ${count === 1 ? 'st' : 'sts'}`;

function rowLine(part: PlannedPart, row: PlannedRow, { rows: words, bindOff }: RowLineWords): string {
  const fabric = part.sections[row.section]?.fabric ?? 'stocking';
  const isWhole = row.after === 0 && row.steps.length === 1;
  if (isWhole) return `Row ${row.n} (${row.side}): ${bindOff} all sts${factsOf(fabric).boundOff}.`;
  const count = row.after === row.before ? '' : ` (${stitchCount(row.after)})`;
  return `Row ${row.n} (${row.side}): ${sayRow(row.steps, words)}.${count}`;
}

/** Pairs of rows are told from the right side on: a wrong-side row that begins one stands by itself. */
function fromRightSide(
  rows: readonly PlannedRow[],
  said: readonly string[],
  at: number,
): { length: number; times: number } {
  const here = blockAt(said, at);
  if (here.length !== 2 || rows[at]?.side !== 'WS') return here;
  return blockAt(said, at + 1).length === 2 ? { length: 1, times: 1 } : here;
}

function repeatLine(rows: readonly PlannedRow[], at: number, length: number, times: number): string {
  const first = rows[at] as PlannedRow;
  const last = rows[at + length - 1] as PlannedRow;
  const end = rows[at + length * times - 1] as PlannedRow;
  const which =
    length === 1
      ? `row ${first.n}`
      : length === 2
        ? `rows ${first.n} and ${last.n}`
        : `rows ${first.n}–${last.n}`;
  const more = times === 2 ? 'once more' : `${times - 1} times more`;
  const count = end.after === last.after ? '' : ` (${stitchCount(end.after)})`;
  return `Rep ${which} ${more}.${count}`;
}

/** The block from here on that is repeated and saves most lines; a single row where none is. */
function blockAt(said: readonly string[], at: number): { length: number; times: number } {
  let best = { length: 1, times: 1 };
  // a single line more says what is repeated
  let saved = 1;
  for (let length = 1; length <= LONGEST_BLOCK; length += 1) {
    let times = 1;
    while (sameBlock(said, at, at + length * times, length)) times += 1;
    const saves = length * (times - 1);
    if (saves > saved) {
      saved = saves;
      best = { length, times };
    }
  }
  return best;
}

/** Whether the rows at `b` are said as those at `a`; behind the last row nothing is. */
function sameBlock(said: readonly string[], a: number, b: number, length: number): boolean {
  for (let i = 0; i < length; i += 1) if (said[a + i] !== said[b + i]) return false;
  return true;
}
