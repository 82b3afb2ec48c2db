import { type Fault, fault } from '../../../fault.ts';
import type { Item } from '../../../row/read/notation.ts';
import { takenBy } from '../../../row/read/notation.ts';
import { settle } from '../../../row/read/settle.ts';
import type { Step } from '../../../row/step.ts';
import { workRow } from '../../../row/work.ts';
import type { StitchPattern } from './build.ts';
import { numberedRows } from './fabric.ts';

/** A stitch pattern that the text defines, each row worked over a few repeats. */
export interface ReadStitchPattern {
  readonly name: string;
  /** 0 where it is as wide as it is and repeats nothing */
  readonly of: number;
  readonly plus: number;
  /** each row over two repeats and the edge stitches, in order; undefined where it does not come out */
  readonly rows: readonly (readonly Step[] | undefined)[];
  /** stitches on the needle after each row, for two repeats */
  readonly counts: readonly number[];
  /** stitches it is worked over here: two repeats and the edge stitches */
  readonly stitches: number;
}

/** Works every row over two and over three repeats; what does not come out is told at its line. */
export function checkPattern(
  pattern: StitchPattern,
  tell: (line: number, found: Fault) => void,
): ReadStitchPattern {
  const numbered = numberedRows(pattern);
  const rows = numbered.map(({ items }) => items);
  const { of, plus } = pattern.stated ? pattern : impliedMultiple(rows);
  const lineOf = (i: number) => pattern.lines.get(numbered[i]?.n ?? 0) ?? [...pattern.lines.values()][0] ?? 1;
  const told = new Set<number>();
  let first: Worked = { rows: [], counts: [] };
  for (const repeats of of > 0 ? [2, 3] : [1]) {
    const worked = workOver(numbered, of, plus, plus + of * repeats, (i, found) => {
      if (!told.has(i)) tell(lineOf(i), found);
      told.add(i);
    });
    if (repeats !== 3) first = worked;
  }
  return {
    name: pattern.name,
    of,
    plus,
    rows: first.rows,
    counts: first.counts,
    stitches: plus + of * (of > 0 ? 2 : 1),
  };
}

/** A row by the number that the text gives it. */
type NumberedRow = ReturnType<typeof numberedRows>[number];

interface Worked {
  readonly rows: (readonly Step[] | undefined)[];
  readonly counts: number[];
}

function workOver(
  rows: readonly NumberedRow[],
  of: number,
  plus: number,
  start: number,
  tell: (row: number, found: Fault) => void,
): Worked {
  const out: Worked = { rows: [], counts: [] };
  let count = start;
  rows.forEach(({ n, items }, i) => {
    const settled = settle(items, { stitches: count, markers: [] });
    const worked = settled.ok ? workRow(settled.value.steps, count) : settled;
    if (settled.ok && worked.ok) {
      count = (worked.value as { after: number }).after;
      out.rows.push(settled.value.steps);
    } else {
      out.rows.push(undefined);
      tell(i, misses({ n, items }, of, plus, count));
    }
    out.counts.push(count);
  });
  if (count !== start && rows.length > 1 && out.rows.every((row) => row !== undefined)) {
    tell(
      rows.length - 1,
      fault('pattern does not return', { rows: rows.length, afterStitches: count, startStitches: start }),
    );
  }
  return out;
}

/** 'Row 13 takes 8 stitches a repeat; the pattern is a multiple of 7'; the row as the text numbers it. */
function misses({ n, items }: NumberedRow, of: number, plus: number, count: number): Fault {
  const repeat = items.find((item) => item.is === 'group to');
  const takes = repeat && 'items' in repeat ? takenBy(repeat.items) : takenBy(items);
  return fault('pattern row does not come out', {
    row: n,
    takesStitches: takes ?? 0,
    stitches: count,
    ofStitches: of,
    plusStitches: plus,
  });
}

/** Without a stated multiple the first row that repeats some stitches says it, or the first of all. */
function impliedMultiple(rows: readonly (readonly Item[])[]): { of: number; plus: number } {
  const said = rows.map(multipleOf);
  return said.find(({ of }) => of > 1) ?? said[0] ?? { of: 0, plus: 0 };
}

/** A row's repeat, and what stands before and after. */
function multipleOf(row: readonly Item[]): { of: number; plus: number } {
  const repeat = row.find((item) => item.is === 'group to' || item.is === 'stitches to');
  if (repeat === undefined) return { of: 0, plus: takenBy(row) ?? 0 };
  const of = repeat.is === 'group to' ? (takenBy(repeat.items) ?? 1) : 1;
  const fixed = takenBy(row.filter((item) => item !== repeat));
  return { of: Math.max(1, of), plus: fixed ?? 0 };
}
