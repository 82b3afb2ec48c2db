import { type Fault, fault } from '../../fault.ts';
import { expandRow } from '../../row/expand.ts';
import { type Item, takenBy } from '../../row/read/notation.ts';
import { settle } from '../../row/read/settle.ts';
import type { Side } from '../../row/step.ts';
import { stitches } from '../../stitch.ts';
import type { Said, Statement } from '../say/statement.ts';
import { type Build, nextSide, type PartBuild, type PieceBuild, type StitchPattern } from './build/build.ts';
import { knownFabric } from './build/fabric.ts';
import { MOST_ROWS, makeSpreadRow, makeWrittenRow } from './build/make-row.ts';
import { newPart, split } from './build/part.ts';
import { backgroundEdits, settleBackground } from './build/run-rows.ts';
import { wantSide } from './even.ts';
import { setMarkOnce } from './shape.ts';

export type Row = Extract<Statement, { is: 'row' }>;

/** A row of a stitch pattern that is being defined; nothing is knitted. */
export function defineRow(build: Build, defined: StitchPattern, said: Row): void {
  const label = said.label;
  const pattern = label?.rows[0] === 1 && defined.rows.has(1) ? nextPattern(build, defined) : defined;
  const last = Math.max(0, ...pattern.rows.keys());
  const numbers = label && label.rows.length > 0 ? label.rows : [last + 1];
  numbers.forEach((n, i) => {
    const items =
      said.like === undefined ? said.items : (pattern.rows.get(said.like + i) ?? pattern.everyOther ?? []);
    pattern.rows.set(n, items);
    pattern.lines.set(n, build.line);
  });
  if (label?.everyOther) pattern.everyOther = said.items;
}

/** Another 'Row 1' begins another stitch pattern. */
function nextPattern(build: Build, before: StitchPattern): StitchPattern {
  let n = 2;
  while (build.patterns.has(`${before.name} ${n}`)) n += 1;
  const pattern: StitchPattern = {
    name: `${before.name} ${n}`,
    of: 1,
    plus: 0,
    rows: new Map(),
    everyOther: undefined,
    lines: new Map(),
    stated: false,
  };
  build.patterns.set(pattern.name, pattern);
  build.defining = pattern;
  return pattern;
}

/** 'Row 3 (RS): …', 'Next row: …', or a row without a label. */
export function doRow(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  said: Row,
  ahead: readonly Said[],
): Fault | undefined {
  const { label } = said;
  const sideWrong =
    label?.side !== undefined && !wantSide(build, part, label.side) ? wrongSide(part, label.side) : undefined;
  if (label === undefined || label.rows.length === 0) {
    if (label?.name !== undefined) part.named.set(label.name, said.items);
    for (let i = 0; i < Math.min(label?.next ?? 1, MOST_ROWS); i += 1) {
      const wrong = writtenRow(build, piece, build.part ?? part, said.items, ahead);
      if (wrong) return wrong;
    }
    return sideWrong;
  }
  return doNumbered(build, piece, part, said, ahead) ?? sideWrong;
}

const wrongSide = (part: PartBuild, side: Side): Fault =>
  fault('side differs', { saidSide: side, foundSide: nextSide(part) });

function doNumbered(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  said: Row,
  ahead: readonly Said[],
): Fault | undefined {
  const label = said.label as NonNullable<Row['label']>;
  const first = label.rows[0] as number;
  if (first === 1 || part.cycle === undefined) {
    part.cycle = {
      rows: new Map(),
      everyOther: undefined,
      done: first - 1,
      last: 0,
      first: part.rows.length,
    };
  }
  const { cycle } = part;
  label.rows.forEach((n, i) => {
    const like =
      said.like === undefined
        ? said.items
        : (cycle.rows.get(said.like + i) ?? (said.like % 2 === 0 ? cycle.everyOther : undefined));
    if (like) cycle.rows.set(n, like);
    cycle.last = Math.max(cycle.last, n);
  });
  if (said.like !== undefined && !cycle.rows.has(first)) {
    return fault('row not known', { rowName: String(said.like) });
  }
  // a text that numbers every row of the part goes on after 'rep rows 1 and 2 8 times more' with row 19
  if (first === part.rows.length + 1 && first > cycle.done) cycle.done = first - 1;
  // rows that the text passed over were worked before ('rep rows 1 and 2 8 times more. Row 19: …')
  const filled = cycle.everyOther !== undefined && first === cycle.done + 2;
  if (first > cycle.done + 1 && !filled && !cycle.rows.has(cycle.done + 1)) cycle.done = first - 1;
  const wrong = flushCycle(build, piece, part, ahead);
  if (label.everyOther) cycle.everyOther = said.items;
  return wrong;
}

/** Works the rows that are known and due, in their order. */
export function flushCycle(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  ahead: readonly Said[] = [],
): Fault | undefined {
  const { cycle } = part;
  if (!cycle) return undefined;
  while (cycle.done < cycle.last) {
    const n = cycle.done + 1;
    const items = cycle.rows.get(n) ?? cycle.everyOther;
    if (items === undefined) return undefined;
    if (!cycle.rows.has(n)) cycle.rows.set(n, items);
    cycle.done = n;
    const wrong = writtenRow(build, piece, build.part ?? part, items, ahead);
    if (wrong) return wrong;
  }
  return undefined;
}

function writtenRow(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  items: readonly Item[],
  ahead: readonly Said[],
): Fault | undefined {
  const only = items.length === 1 ? items[0] : undefined;
  if (only?.is === 'evenly') return makeSpreadRow(build, part, only.change, only.over, only.work);
  const parted = partsHere(items, ahead, build);
  if (parted) {
    const sets = setsAtTurn(part, parted);
    if (sets)
      return (
        writtenRow(build, piece, split(build, piece, part, sets, 0, true), parted, []) ??
        heldDiffers(items, sets[1] as number)
      );
  }
  const beside = build.meanwhile.length > 0;
  const joined = joinSides(build, piece, part, items);
  if (joined) return makeWrittenRow(build, joined, items);
  if (startsWithGroup(items) && part.parent === undefined) setMarkOnce(piece, 'armhole', part);
  const wrong = makeWrittenRow(build, part, items, 'row', backgroundEdits(build, part));
  if (beside && !wrong) settleBackground(build, part);
  if (wrong) return wrong;
  part.gap = items.some(mayPart) ? gapOf(part) : undefined;
  return undefined;
}

/** 'BO 4 sts, k to end' begins an armhole where none has begun. */
function startsWithGroup(items: readonly Item[]): boolean {
  const [first, second] = items;
  return first?.is === 'stitches' && first.work === 'bo' && second !== undefined;
}

/** Whether a gap can lie in a row: only what is bound off or held makes one. */
const mayPart = (item: Item): boolean =>
  'work' in item ? item.work === 'bo' || item.work === 'hold' : 'items' in item && item.items.some(mayPart);

/** The row up to a turn after which only these stitches are worked; undefined for a whole row or a short row. */
function partsHere(
  items: readonly Item[],
  ahead: readonly Said[],
  build: Build,
): readonly Item[] | undefined {
  const last = items.at(-1);
  if (isHeld(last) && !items.slice(0, -1).some((item) => item.is === 'turn')) return items.slice(0, -1);
  const turn = items.findIndex((item) => item.is === 'turn');
  if (turn < 0) return undefined;
  const held = items[turn + 1];
  if (isHeld(held)) return items.slice(0, turn);
  const next = ahead.slice(0, 4).some(({ statement }) => {
    return (
      statement.is === 'hold' ||
      statement.is === 'work on' ||
      statement.is === 'rejoin' ||
      statement.is === 'other side' ||
      (statement.is === 'shape' && statement.edge === 'neck')
    );
  });
  return next || /neck|shoulder|divide/.test(build.heading) ? items.slice(0, turn) : undefined;
}

const isHeld = (item: Item | undefined): boolean =>
  item !== undefined && 'work' in item && item.work === 'hold';

/** 'leave rem 66 sts on a spare needle' where another number is left. */
function heldDiffers(items: readonly Item[], rest: number): Fault | undefined {
  const held = items.find((item) => isHeld(item));
  if (held?.is !== 'stitches' || held.times === rest) return undefined;
  return fault('count contradicts', { statedStitches: held.times, foundStitches: rest });
}

/** Stitches before the turn (as they are on the needle) and those behind it. */
function setsAtTurn(part: PartBuild, items: readonly Item[]): number[] | undefined {
  const settled = settle(items, { stitches: part.live, markers: [] });
  if (!settled.ok) return undefined;
  const taken = expandRow(settled.value.steps, part.live).reduce(
    (sum, work) => sum + stitches[work].takes,
    0,
  );
  return taken > 0 && taken < part.live ? [taken, part.live - taken] : undefined;
}

/** 'K 28, cast on 24, k 28': a row that needs the stitches of both sides brings them together again. */
function joinSides(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  items: readonly Item[],
): PartBuild | undefined {
  if (!items.some((item) => item.is === 'stitches' && item.work === 'co')) return undefined;
  const needs = takenBy(items);
  if (needs === undefined || needs <= part.live) return undefined;
  const others = piece.parts.filter((one) => one !== part && one.live > 0 && one.end !== 'split');
  const all = nextSide(part) === 'RS' ? [part, ...others] : [...others, part];
  if (all.reduce((sum, one) => sum + one.live, 0) !== needs) return undefined;
  for (const one of all) one.end = 'hold';
  const joined = newPart(build, piece, {
    name: 'joined',
    from: { pickUp: all.map((one) => ({ along: one.name, stitches: one.live, held: true })) },
    live: needs,
    firstSide: nextSide(part),
  });
  Object.assign(joined, { fabric: part.fabric, fabricRow: part.fabricRow, height: part.height });
  return joined;
}

/** Sets of stitches parted by a gap in the middle of the last row, in the order worked. */
export function gapOf(part: PartBuild): readonly number[] | undefined {
  const row = part.rows.at(-1);
  if (!row) return undefined;
  const sets: number[] = [];
  let set = 0;
  let taken = 0;
  for (const work of expandRow(row.steps, row.before)) {
    const { takes, makes } = stitches[work];
    taken += takes;
    if (work === 'bo' || work === 'hold') {
      if (set > 0) sets.push(set);
      set = 0;
    } else set += makes;
  }
  if (set > 0) sets.push(set);
  return sets.length > 1 && taken <= row.before ? sets : undefined;
}

export const doPlainRows = (
  build: Build,
  part: PartBuild,
  said: Extract<Statement, { is: 'rows' }>,
): Fault | undefined => {
  for (let i = 0; i < Math.min(said.n, MOST_ROWS); i += 1) {
    const wrong = makeWrittenRow(build, part, said.items, 'row', backgroundEdits(build, part));
    if (wrong) return wrong;
    settleBackground(build, part);
  }
  const only = said.items[0];
  // 'knit 81 rows' is garter stitch, and so is what is worked even after it
  if (said.n > 2 && only?.is === 'stitches to' && only.work === 'k') part.fabric = knownFabric('garter');
  return undefined;
};
