import type { PlannedPart, PlannedRow } from '../../src/knit/piece/planned.ts';
import { printRow } from '../../src/knit/row/print.ts';
import { knitRow } from './knit-row.ts';

/** Between which stitches the yarn hangs, counted from the right edge, when a row begins and when it is done. */
interface Hangs {
  readonly begins: number;
  readonly ends: number;
  /** the row says that the yarn is joined before its first stitch */
  readonly joined: boolean;
}

/** The row by its printed words: what is left unworked at its ends is where the yarn is not. */
function hangs({ steps, side, before, after }: PlannedRow): Hangs {
  const words = printRow(steps);
  if (!/unworked|turn|join/.test(words)) return whole(side, before, after);
  const needle = Array.from({ length: before }, () => ({ face: 'k' as const }));
  const { worked } = knitRow(words, side, needle);
  const first = worked.findIndex((word) => word !== 'unworked');
  const front = first === -1 ? worked.length : first;
  const back = first === -1 ? 0 : worked.length - 1 - worked.findLastIndex((word) => word !== 'unworked');
  const joined = worked[front] === 'join yarn';
  return side === 'RS'
    ? { begins: front, ends: after - back, joined }
    : { begins: before - front, ends: back, joined };
}

const whole = (side: 'RS' | 'WS', before: number, after: number): Hangs =>
  side === 'RS' ? { begins: 0, ends: after, joined: false } : { begins: before, ends: 0, joined: false };

export interface AtRow {
  readonly row: PlannedRow;
  readonly why: 'the yarn hangs elsewhere' | 'the yarn is joined';
}

/**
 * Rows of a part that do not begin where the last one ended, and those that say that the yarn is joined. Row 1 begins
 * where it was cast on, picked up or joined.
 */
export function notAtTheYarn(part: PlannedPart): AtRow[] {
  const out: AtRow[] = [];
  let yarn: number | undefined;
  let count = part.start;
  for (const row of part.rows) {
    const { begins, ends, joined } = hangs(row);
    // stitches counted anew lie at the left edge: from there the yarn's place is reckoned
    const moved = yarn !== undefined && yarn > 0 ? yarn + row.before - count : yarn;
    if (joined) out.push({ row, why: 'the yarn is joined' });
    else if (moved !== undefined && moved !== begins) out.push({ row, why: 'the yarn hangs elsewhere' });
    yarn = ends;
    count = row.after;
  }
  return out;
}
