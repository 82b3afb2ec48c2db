import { expandRow } from '../row/expand.ts';
import { otherSide, type Side, type Step } from '../row/step.ts';
import { leavesUnworked, stitchOf } from '../row/stitches-of-steps.ts';
import type { PlannedRow } from './planned.ts';

/** Where a row's yarn is: so many stitches lie between it and the edge at which the row begins, or ends. */
interface YarnOfRow {
  readonly front: number;
  readonly back: number;
  /** the row says that the yarn is joined where it begins */
  readonly joined: boolean;
}

const wholeRow: YarnOfRow = { front: 0, back: 0, joined: false };

/** Stitches that a row leaves as they are where it begins, and behind its turn. A row that works none stays where it is. */
function yarnOfRow(steps: readonly Step[], before: number): YarnOfRow {
  const joins = steps[0] !== undefined && stitchOf(steps[0]) === 'join yarn';
  if (!joins && !leavesUnworked(steps)) return wholeRow;
  const worked = expandRow(steps, before);
  const front = worked.findIndex((work) => work !== 'unworked');
  if (front === -1) return { front: before, back: 0, joined: false };
  const back = [...worked].reverse().findIndex((work) => work !== 'unworked');
  return { front, back, joined: worked[front] === 'join yarn' };
}

/** Stitches behind the turn with which a row ends. */
export const behindTurn = (steps: readonly Step[], before: number): number => yarnOfRow(steps, before).back;

/** The end of the yarn while rows are worked one after the other. Row 1 begins where its stitches were cast on, picked up or taken up. */
export class YarnEnd {
  private last: { readonly side: Side; readonly back: number } | undefined;
  /** stitches between the edge and the yarn, and between the edge and the row's first stitch, of the row asked for last */
  expected = 0;
  found = 0;

  /** whether the row begins where the last one ended, or says that the yarn is joined there */
  goesOn({ steps, before, side }: PlannedRow): boolean {
    const { front, back, joined } = yarnOfRow(steps, before);
    const { last } = this;
    this.last = { side, back };
    this.expected = last?.back ?? front;
    this.found = front;
    return last === undefined || joined || (last.side === otherSide(side) && last.back === front);
  }
}

/** The rows, each of which says that the yarn is joined where it does not begin at its end. */
export function withJoins(rows: readonly PlannedRow[]): readonly PlannedRow[] {
  const yarn = new YarnEnd();
  return rows.map((row) => (yarn.goesOn(row) ? row : { ...row, steps: joinedAt(row.steps) }));
}

/** What is left unworked where the row begins, then the yarn, then the stitches. */
function joinedAt(steps: readonly Step[]): readonly Step[] {
  const from = steps.findIndex((step) => stitchOf(step) !== 'unworked');
  return [...steps.slice(0, from), { work: 'join yarn', times: 1 }, ...steps.slice(from)];
}
