import type { PlannedPart, PlannedRow } from '../piece/planned.ts';
import { rowLoops } from './loops.ts';

/** Whether the yarn in hand finishes a part. */
export interface LastBall {
  /** g that the rows still to be knitted need */
  readonly needed: number;
  readonly enough: boolean;
  /** last row that the yarn in hand can finish; undefined when not even the next one */
  readonly lastRow?: number;
  /** row at whose beginning the next ball is best joined: at an edge that will be seamed, in a row without shaping */
  readonly joinAt?: number;
}

/** Kept for weaving in at either end of a join, mm; common practice, no published source. */
const TAIL_MM = 150;

/**
 * Grams on the scales against the rows left of a part.
 * @param rowsWorked rows already knitted
 * @param gramsLeft of the ball in hand
 * @param gramsPerLoop yarn in one stitch, g
 * @param mmPerGram thread in a gram, for the tails
 */
export function lastBall(
  part: PlannedPart,
  rowsWorked: number,
  gramsLeft: number,
  gramsPerLoop: number,
  mmPerGram: number,
): LastBall {
  const rest = part.rows.slice(rowsWorked);
  const tail = mmPerGram > 0 ? TAIL_MM / mmPerGram : 0;
  let left = gramsLeft - tail;
  let needed = 0;
  let lastRow: number | undefined;
  let runsOut = false;
  for (const row of rest) {
    const grams = rowLoops(row) * gramsPerLoop;
    needed += grams;
    left -= grams;
    if (left < -1e-9) runsOut = true;
    if (!runsOut) lastRow = row.n;
  }
  const enough = !runsOut;
  const joinAt = enough ? undefined : bestJoin(rest, lastRow);
  return {
    needed,
    enough,
    ...(lastRow === undefined ? {} : { lastRow }),
    ...(joinAt === undefined ? {} : { joinAt }),
  };
}

/** The latest plain row that the old ball need not begin, within a few rows of where it ends; else the next one. */
function bestJoin(rest: readonly PlannedRow[], lastRow: number | undefined): number | undefined {
  const latest = lastRow === undefined ? rest[0]?.n : lastRow + 1;
  if (latest === undefined) return undefined;
  const near = rest.filter((row) => row.n <= latest && row.n > latest - 4);
  const plain = near.filter((row) => row.shaping.length === 0);
  return (plain.at(-1) ?? near.at(-1))?.n;
}
