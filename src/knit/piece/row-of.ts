import { fabrics } from '../fabric.ts';
import { factsOf } from '../fabric-facts.ts';
import { type Fault, ok, type Result, refuse } from '../fault.ts';
import { addRun, type Run } from '../row/shorten.ts';
import { acrossRow } from './across-row.ts';
import { decreaseFor, leansLeftAt, madeInside, makeFor, topOf, widthOf } from './edge-stitch.ts';
import { type Columns, pushedOut, without } from './needle.ts';
import type { ShapingMark } from './planned.ts';
import type { Edge } from './recipe.ts';
import { isCount, mixed, noCentre, tooFew } from './row-faults.ts';
import { allWorked, type BuiltRow, faceOf, type RowSetting, type Unworked } from './row-setting.ts';
import type { EdgeWork, RowShaping } from './row-shaping.ts';
import { slipFirst } from './slip-first.ts';

/** Builds a shaped or plain row over the needle. Faults: 'not enough stitches', 'too many for one row', 'mixed shaping'. */
export function buildRow(
  columns: Columns,
  shaping: RowShaping | undefined,
  setting: RowSetting,
): Result<BuiltRow> {
  if (shaping?.across !== undefined) return acrossRow(columns, shaping, setting);
  const row = new RowInWork(columns, setting);
  return shaping ? row.shaped(shaping) : row.plain();
}

const seenAsKnit = (side: RowSetting['side']): 'k' | 'p' => (side === 'RS' ? 'k' : 'p');

class RowInWork {
  private readonly runs: Run[] = [];
  private readonly marks: ShapingMark[] = [];
  private readonly face: (column: number) => 'k' | 'p';
  private columns: Columns;
  private readonly unworked: Unworked;

  constructor(
    columns: Columns,
    private readonly setting: RowSetting,
  ) {
    this.columns = columns;
    this.face = faceOf(setting);
    this.unworked = setting.unworked ?? allWorked;
  }

  plain(): Result<BuiltRow> {
    const { first, last } = this.ends();
    const order = this.inOrder();
    const front = this.unworked[first];
    const back = this.unworked[last];
    addRun(this.runs, 'unworked', front);
    this.workOver(order.slice(front, order.length - back));
    addRun(this.runs, 'unworked', back);
    return ok(this.done());
  }

  /** The edges at which this row begins and ends. */
  private ends(): { first: Edge; last: Edge } {
    return this.setting.side === 'RS' ? { first: 'right', last: 'left' } : { first: 'left', last: 'right' };
  }

  shaped(shaping: RowShaping): Result<BuiltRow> {
    const { first, last } = this.ends();
    const trouble =
      this.turned(shaping, first, last) ??
      this.group(shaping, first) ??
      this.tooNarrow(shaping) ??
      this.edgesAndMiddle(shaping, first, last);
    return trouble ? refuse(trouble) : ok(this.done());
  }

  private done(): BuiltRow {
    if (this.setting.slipped) slipFirst(this.runs);
    return { runs: this.runs, columns: this.columns, marks: this.marks };
  }

  /** Columns in the order in which this row meets them. */
  private inOrder(): Columns {
    return this.setting.side === 'RS' ? this.columns : [...this.columns].reverse();
  }

  private workOver(columns: Columns): void {
    if (fabrics[this.setting.fabric].rows.every((row) => row.length === 1)) {
      addRun(this.runs, this.face(0), columns.length);
      return;
    }
    for (const column of columns) addRun(this.runs, this.face(column), 1);
  }

  private group({ boundOff, castOn }: RowShaping, edge: Edge): Fault | undefined {
    if (boundOff && castOn) return mixed();
    if (boundOff) {
      const { stitches } = boundOff;
      if (!isCount(stitches) || stitches > this.columns.length) return tooFew(stitches, this.columns.length);
      addRun(this.runs, 'bo', stitches);
      const from = edge === 'right' ? 0 : this.columns.length - stitches;
      this.columns = without(this.columns, from, stitches);
      this.marks.push({ kind: 'bind off', edge, by: -stitches });
    }
    if (castOn) {
      const { stitches } = castOn;
      if (!isCount(stitches)) return tooFew(stitches, this.columns.length);
      addRun(this.runs, 'co', stitches);
      this.marks.push({ kind: 'cast on', edge, by: stitches });
      this.newAt = { edge, stitches };
    }
    return undefined;
  }

  /** Stitches cast on in this row join the needle after it. */
  private newAt: { edge: Edge; stitches: number } | undefined;

  private tooNarrow({ right, left, middle }: RowShaping): Fault | undefined {
    const grows = (right?.by ?? 0) > 0 || (left?.by ?? 0) > 0;
    const between = middle === undefined ? (grows ? 1 : 0) : 3 * middle.length;
    const need = Math.max(widthOf(right) + widthOf(left) + between, grows ? 2 : 0);
    return need > this.columns.length ? tooFew(need, this.columns.length) : undefined;
  }

  private edgesAndMiddle(shaping: RowShaping, first: Edge, last: Edge): Fault | undefined {
    const order = this.inOrder();
    const head = shaping[first];
    const tail = shaping[last];
    const headWidth = widthOf(head);
    const tailWidth = widthOf(tail);
    const front = this.unworked[first];
    const back = this.back(shaping, last);
    const body = order.slice(Math.max(front, headWidth), order.length - Math.max(back, tailWidth));
    const kept: number[] = order.slice(0, front);
    addRun(this.runs, 'unworked', front);
    this.edgeStart(head, order.slice(0, headWidth), first, kept);
    const trouble = this.middle(shaping.middle, body, kept);
    if (trouble) return trouble;
    this.edgeEnd(tail, order.slice(order.length - tailWidth), last, kept);
    if (shaping.turn) this.marks.push({ kind: 'turn', edge: shaping.turn.edge, by: 0 });
    addRun(this.runs, 'unworked', back);
    kept.push(...order.slice(order.length - back));
    this.columns = first === 'right' ? kept : kept.reverse();
    this.grow(head, first);
    this.grow(tail, last);
    if (this.newAt) this.columns = pushedOut(this.columns, this.newAt.edge, 0, this.newAt.stitches);
    return undefined;
  }

  /** Stitches that this row leaves unworked at its end. */
  private back({ turn }: RowShaping, last: Edge): number {
    return this.unworked[last] + (turn?.stitches ?? 0);
  }

  /** A turn needs stitches to leave, and an edge that is not shaped in the same row. */
  private turned(shaping: RowShaping, first: Edge, last: Edge): Fault | undefined {
    const { turn } = shaping;
    const { unworked } = this;
    if (turn && !isCount(turn.stitches)) return tooFew(turn.stitches, this.columns.length);
    const left = unworked[first] + this.back(shaping, last);
    if (left > 0 && left >= this.columns.length) return tooFew(left + 1, this.columns.length);
    const edgeWork = (edge: Edge) =>
      shaping[edge] !== undefined || shaping.boundOff?.edge === edge || shaping.castOn?.edge === edge;
    const clash =
      (unworked[first] > 0 && edgeWork(first)) || (this.back(shaping, last) > 0 && edgeWork(last));
    return clash ? mixed() : undefined;
  }

  private edgeStart(work: EdgeWork | undefined, over: Columns, edge: Edge, kept: number[]): void {
    if (!work) return;
    const rest = over.slice(work.inset);
    this.workOver(over.slice(0, work.inset));
    kept.push(...over.slice(0, work.inset));
    this.shapeAt(work, rest, edge, kept);
  }

  private edgeEnd(work: EdgeWork | undefined, over: Columns, edge: Edge, kept: number[]): void {
    if (!work) return;
    const rest = over.slice(0, over.length - work.inset);
    const inset = over.slice(over.length - work.inset);
    this.shapeAt(work, rest, edge, kept);
    this.workOver(inset);
    kept.push(...inset);
  }

  /** The decrease or increase itself; `rest` are the stitches that it is worked over or beside. */
  private shapeAt(work: EdgeWork, rest: Columns, edge: Edge, kept: number[]): void {
    this.marks.push({ kind: 'edge', edge, by: work.by });
    if (work.by > 0) {
      this.increase(work, rest, edge);
      kept.push(...rest);
      return;
    }
    const { side, fabric } = this.setting;
    const top = topOf(rest, work.lean, edge, side);
    if (top === undefined) return;
    const follows = work.lean === 'mirrored';
    const facing = follows && factsOf(fabric).edgesKnit ? seenAsKnit(side) : this.face(top);
    const leansLeft = follows && leansLeftAt(edge, side, facing);
    addRun(this.runs, decreaseFor(work.by, facing, leansLeft), 1);
    kept.push(top);
  }

  private increase(work: EdgeWork, rest: Columns, edge: Edge): void {
    if (work.inset === 0) {
      const facing = this.face(rest[0] ?? 0);
      addRun(this.runs, work.by === 2 ? 'kfbf' : facing === 'k' ? 'kfb' : 'pfb', 1);
      return;
    }
    // a made stitch shows what the fabric shows in the column in which it will stand
    const made = (nth: number): void =>
      addRun(
        this.runs,
        makeFor(work.lean, edge, this.setting.side, this.face(this.outward(work, edge, nth))),
        1,
      );
    if (work.by === 1) made(1);
    else this.pair(made, rest, edge);
  }

  /** The nth column outward from the body of the piece. */
  private outward(work: EdgeWork, edge: Edge, nth: number): number {
    const inside = madeInside(work);
    return edge === 'right'
      ? (this.columns[inside] ?? 0) - nth
      : (this.columns[this.columns.length - 1 - inside] ?? 0) + nth;
  }

  /** Two made stitches need a worked stitch between them. */
  private pair(made: (nth: number) => void, rest: Columns, edge: Edge): void {
    const outerFirst = edge === this.ends().first;
    made(outerFirst ? 3 : 1);
    this.workOver(rest);
    made(outerFirst ? 1 : 3);
  }

  private middle(froms: readonly number[] = [], body: Columns, kept: number[]): Fault | undefined {
    // the row meets the centres from the edge at which it begins
    const order = this.setting.side === 'RS' ? froms : [...froms].reverse();
    let rest = body;
    for (const from of order) {
      const centre = this.setting.centres?.get(from);
      const i = centre === undefined ? -1 : rest.indexOf(centre);
      if (centre === undefined || i < 1 || i > rest.length - 2) return noCentre();
      this.workOver(rest.slice(0, i - 1));
      addRun(this.runs, this.setting.side === 'RS' ? 's2kp' : 's2pp', 1);
      kept.push(...rest.slice(0, i - 1), centre);
      this.marks.push({ kind: 'middle', edge: 'middle', by: -2 });
      rest = rest.slice(i + 2);
    }
    this.workOver(rest);
    kept.push(...rest);
    return undefined;
  }

  private grow(work: EdgeWork | undefined, edge: Edge): void {
    if (work && work.by > 0) this.columns = pushedOut(this.columns, edge, madeInside(work), work.by);
  }
}
