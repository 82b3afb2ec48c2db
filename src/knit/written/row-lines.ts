import { factsOf } from '../fabric-facts.ts';
import { BIND_OFF } from '../piece/plan.ts';
import type { PlannedPart, PlannedRow } from '../piece/planned.ts';
import { expandRow } from '../row/expand.ts';
import { printRow, sayRow } from '../row/print.ts';
import { addRun, type Run } from '../row/shorten.ts';
import type { WrittenWords } from './written-words.ts';

/** Longest block of rows that is said once and then repeated: a stitch pattern or a shaping rhythm. */
const LONGEST_BLOCK = 24;

/** What the lines of one part are written with. */
export interface RowLineWords extends Pick<WrittenWords, 'rows' | 'work' | 'point' | 'name' | 'facts'> {
  /** its edge goes over the head: it is bound off loosely */
  readonly isLoose?: boolean;
}

/** A size of needles in mm, as it stands in the text. */
export const needleIn = ({ point }: Pick<WrittenWords, 'point'>, mm: number): string =>
  String(mm).replace('.', point);

/**
 * A part's rows in standard wording: each new row once, recurring blocks as 'Rep rows 1 and 2, 8 times more',
 * needle changes where they fall, counts where they change.
 * @param needleBefore the needle that the text has named last, mm
 */
export function rowLines(part: PlannedPart, words: RowLineWords, needleBefore: number | undefined): string[] {
  const { rows } = part;
  const said = rows.map((row) => `${row.side} ${row.needle} ${printRow(row.steps, words.rows)}`);
  const lines: string[] = [];
  let needle = needleBefore;
  let at = 0;
  let named: number | undefined;
  while (at < rows.length) {
    const row = rows[at] as PlannedRow;
    if (row.section !== named) {
      lines.push(...sectionLine(part, row.section, words));
      named = row.section;
    }
    if (row.needle !== needle) {
      lines.push(words.work.change(needleIn(words, row.needle)));
      needle = row.needle;
    }
    const rhythm = rhythmAt(rows, said, at);
    if (rhythm.length > 0) {
      lines.push(rowLine(part, row, words), words.work.rhythm(row.n, rhythm));
      at = (rhythm.at(-1) as Beat).last + 1;
      continue;
    }
    const { length, times } = fromRightSide(
      rows,
      said.slice(0, Math.min(nextRhythm(rows, said, at), endOfSection(rows, at))),
      at,
    );
    for (let i = at; i < at + length; i += 1) lines.push(rowLine(part, rows[i] as PlannedRow, words));
    if (times > 1) lines.push(repeatLine(rows, at, length, times, words));
    at += length * times;
  }
  return lines;
}

/** What the rows from here on are called, worked in and how many they are; the row that binds all off is none of that. */
export function sectionLine(
  part: PlannedPart,
  section: number,
  { work, name, facts }: Pick<RowLineWords, 'work' | 'name' | 'facts'>,
): string[] {
  const own = part.sections[section];
  if (!own || own.name === BIND_OFF) return [];
  const fabric = facts.fabrics[own.fabric];
  const called = IN_PLAIN_WORDS.test(own.name) ? name(own.name) : fabric.replaceAll(',', '');
  return [work.section(called, fabric, own.last - own.first + 1)];
}

/** A name that stands before a comma without being taken for more than a name. */
const IN_PLAIN_WORDS = /^\p{L}[\p{L}\d]*(?: [\p{L}\d]+){0,5}$/u;

function endOfSection(rows: readonly PlannedRow[], at: number): number {
  let to = at;
  while (to < rows.length && rows[to]?.section === rows[at]?.section) to += 1;
  return to;
}

/** A shaping row that comes again in a rhythm over plain rows. */
interface Beat {
  readonly every: number;
  /** index of its last shaping row, and stitches after it */
  readonly last: number;
  readonly to: number;
}

/** Fewer rows apart, or fewer times, the rows are said sooner as they are. */
const LEAST_APART = 4;
const LEAST_TIMES = 2;

/** 'Every foll 8th row to 63 sts, then every foll 6th row to 83 sts': how the shaping right side row here comes again; [] where it does not. */
function rhythmAt(rows: readonly PlannedRow[], said: readonly string[], at: number): Beat[] {
  const row = rows[at];
  if (row?.side !== 'RS' || row.before === row.after) return [];
  const beats: Beat[] = [];
  for (let from = at; ; ) {
    const every = nextSame(rows, said, from);
    let last = from;
    while (every >= LEAST_APART && nextSame(rows, said, last) === every) last += every;
    if (last - from < LEAST_TIMES * every || every < LEAST_APART) return beats;
    beats.push({ every, last, to: (rows[last] as PlannedRow).after });
    from = last;
  }
}

/** Rows from the shaping row here to the next like it, where those between are plain as the rows before; 0 where there is none. */
function nextSame(rows: readonly PlannedRow[], said: readonly string[], at: number): number {
  const first = rows[at] as PlannedRow;
  let to = at + 1;
  while (to < rows.length && isPlain(rows[to] as PlannedRow)) to += 1;
  const next = rows[to];
  if (next?.section !== first.section || said[to] !== said[at] || (to - at) % 2 === 1) return 0;
  for (let i = at + 3; i < to; i += 1) if (said[i] !== said[i - 2]) return 0;
  return said[at + 1] === said[at - 1] && after(first) === after(next) ? to - at : 0;
}

/** What a shaping row adds. */
const after = (row: PlannedRow): number => row.after - row.before;

const isPlain = ({ steps }: PlannedRow): boolean => {
  const [only] = steps;
  return (
    steps.length === 1 && only !== undefined && 'until' in only && 'work' in only && /^[kp]$/.test(only.work)
  );
};

/** Where the next such rhythm begins behind the plain rows from here on; the end of the rows where none does. */
function nextRhythm(rows: readonly PlannedRow[], said: readonly string[], at: number): number {
  let to = at;
  while (to < rows.length && isPlain(rows[to] as PlannedRow)) to += 1;
  return rhythmAt(rows, said, to).length > 0 ? to : rows.length;
}

function rowLine(
  part: PlannedPart,
  row: PlannedRow,
  { rows: words, work, isLoose = false }: RowLineWords,
): string {
  const fabric = part.sections[row.section]?.fabric ?? 'stocking';
  const isWhole = row.after === 0 && row.steps.length === 1;
  if (isWhole) return work.row(row.n, row.side, work.bindOffAll(isLoose, factsOf(fabric).boundOff));
  const count = row.after === row.before ? '' : ` (${work.count(row.after)})`;
  const runs = inRib(row, part.rows[row.n - 2]);
  const said = runs ? ribWords(runs, words, work) : sayRow(row.steps, words);
  return `${work.row(row.n, row.side, said)}${count}`;
}

/** A row of button-holes in a rib, its stitches between them as 'rib'; undefined where it is none, or its stitches do not go on as they look. */
function inRib(row: PlannedRow, last: PlannedRow | undefined): Run[] | undefined {
  const works = expandRow(row.steps, row.before);
  if (!last || works[0] === 'bo' || !works.some((work) => work === 'bo' || work === 'co')) return undefined;
  const below = expandRow(last.steps, last.before)
    .filter((work) => work !== 'bo')
    .reverse();
  const runs: Run[] = [];
  let at = 0;
  for (const work of works) {
    const turnedOver = below[at] === 'k' ? 'p' : below[at] === 'p' ? 'k' : undefined;
    if (work !== 'bo' && work !== 'co' && work !== turnedOver) return undefined;
    addRun(runs, work === turnedOver ? 'patt' : work, 1);
    if (work !== 'co') at += 1;
  }
  const isRib = new Set(below).size === 2;
  return isRib && at === row.before && runs.length > 2 ? runs : undefined;
}

/** 'rib 4, [bind off 3 sts, rib until 12 sts on needle after gap] 5 times, bind off 3 sts, rib to end'. */
function ribWords(
  runs: readonly Run[],
  words: RowLineWords['rows'],
  { rib, ribAfterGap, ribToEnd }: RowLineWords['work'],
): string {
  const open = runs.map(({ work, times }, i): string => {
    if (work !== 'patt') return words.stitches(work, times);
    if (i === runs.length - 1) return ribToEnd;
    return runs[i - 1]?.work === 'bo' ? ribAfterGap(times) : rib(times);
  });
  const said: string[] = open.slice(0, 1);
  for (let i = 1; i < open.length; ) {
    let times = 1;
    while (
      i + 2 * times + 1 < open.length &&
      open[i + 2 * times] === open[i] &&
      open[i + 2 * times + 1] === open[i + 1]
    )
      times += 1;
    const pair = open.slice(i, i + 2).join(words.comma);
    said.push(times > 1 ? words.group(pair, times) : pair);
    i += 2 * times;
  }
  return said.join(words.comma);
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

function repeatLine(
  rows: readonly PlannedRow[],
  at: number,
  length: number,
  times: number,
  { work }: RowLineWords,
): string {
  const first = rows[at] as PlannedRow;
  const last = rows[at + length - 1] as PlannedRow;
  const end = rows[at + length * times - 1] as PlannedRow;
  const count = end.after === last.after ? '' : ` (${work.count(end.after)})`;
  return `${work.repeat(first.n, last.n, times - 1)}${count}`;
}

/** The block from here on that is repeated and saves most lines; a single row where none is. */
function blockAt(said: readonly string[], at: number): { length: number; times: number } {
  let best = { length: 1, times: 1 };
  // a single line more says what is repeated
  let saved = 1;
  // right and wrong side take turns: what comes again is an even number of rows
  for (let length = 2; length <= LONGEST_BLOCK; length += 2) {
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
