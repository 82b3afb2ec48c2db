import { blocksOf } from './columns.ts';
import { type Bit, endOf, type PageOfBits, type Row, rowsOf, textOfRow } from './page.ts';

/**
 * The text of a printed pattern as its writer typed it: columns one after the other, without what stands on every page,
 * words parted at the end of a line joined, and a line going on where the page's width alone broke it.
 */
export function textOfPages(pages: readonly PageOfBits[]): string {
  const lines = withoutRunning(pages).flatMap((page) => blocksOf(page.bits).flatMap(linesOf));
  return joined(lines)
    .replace(/\n{3,}/g, '\n\n')
    .trim();
}

interface Line {
  readonly text: string;
  /** what is free behind it, up to the edge of its column, and what a word takes: points */
  readonly free: number;
  readonly firstWord: number;
  /** of a table: its cells stand wide apart */
  readonly cells: boolean;
  readonly apart: boolean;
  readonly opensBlock: boolean;
}

/** So much of a page's height at its head and at its foot is where titles and numbers of pages stand. */
const MARGIN = 0.1;

/** Without the numbers of the pages, and without what stands at the head or foot of half of them. */
function withoutRunning(pages: readonly PageOfBits[]): PageOfBits[] {
  const inMargin = ({ height }: PageOfBits, { y }: Row) => y < MARGIN * height || y > (1 - MARGIN) * height;
  const seen = new Map<string, number>();
  for (const page of pages) {
    const texts = rowsOf(page.bits).filter((row) => inMargin(page, row));
    for (const text of new Set(texts.map(shapeOf))) seen.set(text, (seen.get(text) ?? 0) + 1);
  }
  const isRunning = (row: Row) => {
    const times = seen.get(shapeOf(row)) ?? 0;
    return PAGE_NUMBER.test(textOfRow(row)) || (times >= 2 && times >= pages.length / 2);
  };
  return pages.map((page) => ({
    ...page,
    bits: rowsOf(page.bits)
      .filter((row) => !(inMargin(page, row) && isRunning(row)))
      .flatMap(({ bits }) => bits),
  }));
}

const PAGE_NUMBER = /^(?:page|seite|p\.|S\.)?\s*[-–|]?\s*\d{1,3}(?:\s*(?:of|von|\/)\s*\d{1,3})?\s*[-–|]?$/i;

/** The same on every page but for a number. */
const shapeOf = (row: Row): string => textOfRow(row).replace(/\d+/g, '#');

/** A line this far from the one above begins something new, in the distances usual there. */
const APART = 1.45;
/** Cells of a table stand this far apart, in sizes of a letter. */
const CELL_GAP = 2;

function linesOf(rows: readonly Row[]): Line[] {
  const right = Math.max(...rows.map(rightOf));
  const steps = rows.slice(1).map(({ y }, at) => (rows[at] as Row).y - y);
  const usual = [...steps].sort((a, b) => a - b)[Math.floor(steps.length / 3)] ?? 0;
  return rows.map((row, at) => ({
    text: textOfRow(row),
    free: right - rightOf(row),
    firstWord: firstWordOf(row),
    cells: row.bits.some((bit, i) => i > 0 && bit.x - endOf(row.bits[i - 1] as Bit) > CELL_GAP * bit.size),
    apart: at > 0 && (steps[at - 1] as number) > APART * usual,
    opensBlock: at === 0,
  }));
}

/** The width of the first word and of the space before it, points. */
function firstWordOf(row: Row): number {
  const text = textOfRow(row);
  const left = (row.bits[0] as Bit).x;
  const letters = (text.split(' ')[0] ?? '').length + 1;
  return (letters * (rightOf(row) - left)) / Math.max(1, text.length);
}

const rightOf = ({ bits }: Row): number => Math.max(...bits.map(endOf));

function joined(lines: readonly Line[]): string {
  const whole = lines.map(({ text }) => text).join(' ');
  let text = '';
  lines.forEach((line, at) => {
    const before = lines[at - 1];
    if (before === undefined) text = line.text;
    else if (!goesOn(before, line)) text += `${line.apart || line.opensBlock ? '\n\n' : '\n'}${line.text}`;
    else text = withNext(text, line.text, whole);
  });
  return text.replace(/\u00ad/g, '');
}

/** 'Row 3:', 'Next row', '2nd row', '*', '4.', 'Neck:' begin a line of their own, however full the one above is. */
const OPENS =
  /^(?:[*•▪◦–—]|-\s|\d+[.)]\s|(?:next|following|foll|\d+(?:st|nd|rd|th))\s+(?:row|rnd|round)|(?:row|rnd|round)s?\s*[\d(:]|\p{L}[\p{L} ]{1,24}:)/iu;
/** 'BACK', 'SLEEVES (make 2)' */
const HEADING = /^\p{Lu}[\p{Lu}\d\s&/,-]{2,}(?:\(.*\))?$/u;

/** Whether only the width of the column broke the sentence: its next word had no room left. */
function goesOn(before: Line, line: Line): boolean {
  if (/\p{L}\u00ad$/u.test(before.text)) return true;
  if (before.cells || line.cells || line.apart || before.free > line.firstWord) return false;
  if (HEADING.test(before.text) || HEADING.test(line.text)) return false;
  const ended = /[.!?:]$/.test(before.text);
  // 'at the beginning of the next 4' above 'rows 2 sts'
  if (OPENS.test(line.text) && (ended || !/^(?:row|rnd|round)/.test(line.text))) return false;
  if (ended && /^\p{Lu}/u.test(line.text)) return false;
  return !line.opensBlock || (!ended && /^[\p{Ll}(]/u.test(line.text));
}

/** Words that the trade writes with a hyphen when no line ends there. */
const KEEPS_HYPHEN = /(?:^|[\s(])(?:right|left|st|bind|cast|three|double|single|short|self|well|non|pre)-$/i;

/** A word that a hyphen parts at the end of a line is one, unless the text writes it with one elsewhere. */
function withNext(text: string, next: string, whole: string): string {
  if (text.endsWith('\u00ad')) return text.slice(0, -1) + next;
  const first = /(\p{L}{2,})-$/u.exec(text)?.[1];
  const second = /^\p{Ll}+/u.exec(next)?.[0];
  if (first === undefined || second === undefined) return `${text} ${next}`;
  const kept = KEEPS_HYPHEN.test(text) || whole.includes(`${first}-${second}`);
  return (kept ? text : text.slice(0, -1)) + next;
}
