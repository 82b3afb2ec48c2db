import { type Fault, fault } from '../../../fault.ts';
import { expandRow } from '../../../row/expand.ts';
import { END, type Item, takenBy } from '../../../row/read/notation.ts';
import { settle } from '../../../row/read/settle.ts';
import { stitches } from '../../../stitch.ts';
import type { Label, Said, Statement } from '../../say/statement.ts';
import { dropBorderAt } from './borders.ts';
import { type Build, nextSide, type PartBuild, type PieceBuild, startEdge } from './build.ts';
import { gapOf } from './gap.ts';
import { makeSpreadRow, makeWrittenRow } from './make-row.ts';
import { newPart, setMarkOnce, split } from './part.ts';
import { backgroundEdits, settleBackground } from './run-rows.ts';

export function writtenRow(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  written: readonly Item[],
  ahead: readonly Said[],
): Fault | undefined {
  const centred = withSides(written, part.live - part.unworked);
  if (centred === undefined)
    return fault('centre not in the middle', { stitches: part.live, centreStitches: takenBy(written) ?? 0 });
  const items = acrossTheRest(centred, part.live, ahead[0]?.statement);
  const only = items.length === 1 ? items[0] : undefined;
  if (only?.is === 'evenly') {
    const change = only.to === undefined ? only.change : only.to - part.live;
    if (only.to !== undefined && Math.sign(change) !== Math.sign(only.change))
      return fault('count contradicts', { statedStitches: only.to, foundStitches: part.live });
    return makeSpreadRow(build, part, change, only.over, only.work);
  }
  const parted = partsHere(items, ahead, build, part);
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
  const group = startsWithGroup(items);
  const begin = startEdge(part);
  const { live } = part;
  if (group && part.parent === undefined) setMarkOnce(piece, 'armhole', part);
  const wrong = makeWrittenRow(build, part, items, 'row', backgroundEdits(build, part));
  if (beside && !wrong) settleBackground(build, part);
  if (wrong) return wrong;
  if (group) dropBorderAt(part, begin);
  part.gap = items.some(mayPart) ? gapOf(part, cutsIn(items, live)) : undefined;
  if (!items.some(byBall)) return undefined;
  if (part.gap === undefined) return fault('place not known');
  // where nothing else parts it, both sides go on at once
  if (items.filter(mayPart).length === 1) piece.bothSides = true;
  return undefined;
}

const byBall = (item: Item): boolean => item.is === 'parting' && item.ball === true;

/** 'Bind off center 12 sts' and nothing else: as many before them as behind; undefined where they have no middle. */
function withSides(items: readonly Item[], live: number): readonly Item[] | undefined {
  const [only, ...more] = items;
  if (only?.is !== 'stitches' || !only.centre || more.length > 0 || only.times >= live) return items;
  const side = (live - only.times) / 2;
  if (!Number.isInteger(side)) return undefined;
  return [
    { is: 'stitches', work: 'patt', times: side },
    only,
    { is: 'stitches to', work: 'patt', goal: END },
  ];
}

/** 'BO 4 sts, k to end' begins an armhole where none has begun. */
function startsWithGroup(items: readonly Item[]): boolean {
  const [first, second] = items;
  return first?.is === 'stitches' && first.work === 'bo' && second !== undefined;
}

/** 'Work over 30 sts, place on a holder, bind off 32 sts': what is left of the row is worked, though nobody says so. */
function acrossTheRest(items: readonly Item[], live: number, next: Statement | undefined): readonly Item[] {
  const last = items.at(-1);
  const before = items.at(-2);
  // 'knit to last 6 sts, place these on a holder': these are not worked
  const left = before?.is === 'stitches to' && 'left' in before.goal ? before.goal.left : 0;
  const taken = takenBy(items.slice(0, -2));
  if (
    last?.is === 'parting' &&
    before?.is === 'stitches to' &&
    typeof left === 'number' &&
    left > 0 &&
    taken !== undefined &&
    live > left + taken
  )
    return [
      ...items.slice(0, -2),
      { is: 'stitches', work: before.work, times: live - left - taken },
      { is: 'stitches to', work: 'hold', goal: END },
    ];
  const cut = items.some(({ is }) => is === 'parting');
  const bound = last?.is === 'stitches' && last.work === 'bo';
  // 'k 16, bind off next 8 sts; on last 16 sts …': those are worked in that row as well
  const goesOn = next?.is === 'work on' && next.stitches === live - (takenBy(items) ?? live);
  const open = last?.is === 'parting' || (bound && (cut || (items.length > 1 && goesOn)));
  return open ? [...items, { is: 'stitches to', work: 'patt', goal: END }] : items;
}

/** Stitches made before each parting of a row that is counted out. */
function cutsIn(items: readonly Item[], live: number): number[] {
  return items.flatMap((item, i) => {
    if (item.is !== 'parting') return [];
    const before = items.slice(0, i);
    // 'knit to last 6 sts, place these on a holder'
    const last = before.at(-1);
    const left =
      last?.is === 'stitches to' && 'left' in last.goal && last.goal.left !== 'what follows'
        ? last.goal.left
        : 0;
    const counted = takenBy(before);
    const taken = counted ?? (left > 0 ? live - left : undefined);
    const settled =
      taken === undefined ? undefined : settle(before, { stitches: counted ?? live, markers: [] });
    if (taken === undefined || taken < 1 || !settled?.ok) return [];
    const made = expandRow(settled.value.steps, counted ?? live).reduce(
      (sum, work) => sum + stitches[work].makes,
      0,
    );
    const { of = made } = item;
    return of < made ? [made - of, made] : [made];
  });
}

/** Whether a gap can lie in a row: only what is bound off or held makes one. */
const mayPart = (item: Item): boolean =>
  item.is === 'parting' ||
  ('work' in item ? item.work === 'bo' || item.work === 'hold' : 'items' in item && item.items.some(mayPart));

/** The row up to a turn after which only these stitches are worked; undefined for a whole row or a short row. */
function partsHere(
  items: readonly Item[],
  ahead: readonly Said[],
  build: Build,
  part: PartBuild,
): readonly Item[] | undefined {
  const last = items.at(-1);
  if (isHeld(last) && !items.slice(0, -1).some((item) => item.is === 'turn')) return items.slice(0, -1);
  const turn = items.findIndex((item) => item.is === 'turn');
  if (turn < 0) return undefined;
  const held = items[turn + 1];
  if (isHeld(held)) return items.slice(0, turn);
  // 'k to last 4 sts, w&t': a stitch is wrapped where the row is short, and nothing is left behind
  if (items.slice(0, turn).some(wraps)) return undefined;
  const next = ofThisTurn(ahead.slice(0, 4)).some(({ statement }) => {
    return (
      statement.is === 'hold' ||
      statement.is === 'work on' ||
      statement.is === 'rejoin' ||
      statement.is === 'other side' ||
      (statement.is === 'shape' && statement.edge === 'neck')
    );
  });
  // 'k18, turn. Knit 3 rows.': a short row is worked back in a row that is spelled out
  const goesOn =
    turn === items.length - 1 && worksOn(ahead.find(({ statement }) => !PASSED.has(statement.is)));
  // a side that was parted already is not parted again: its turns are short rows
  const divides = build.heading?.divides && part.parent === undefined && !comesBack(ahead);
  return next || divides || goesOn ? items.slice(0, turn) : undefined;
}

const PASSED: ReadonlySet<Statement['is']> = new Set(['note', 'needle', 'stated', 'yarn', 'next side']);

/** More than the row that comes back from a turn: rows and rows, shapings, what is bound off. */
function worksOn(next: Said | undefined): boolean {
  if (next === undefined) return false;
  const { statement: s } = next;
  const rows = s.is === 'rows' ? s.n : s.is === 'even' && s.until?.is === 'rows' ? s.until.n : undefined;
  return rows === undefined ? WORKS_ON.has(s.is) : rows > 1;
}

const WORKS_ON: ReadonlySet<Statement['is']> = new Set(['even', 'shape', 'groups', 'bind off']);

/** '1st row: k 9, turn. 2nd row: k to end. 3rd row: k across all sts' and the like at the other end: nothing was left behind. */
function comesBack(ahead: readonly Said[]): boolean {
  const [back, ...later] = ahead.flatMap(({ statement: s }) =>
    s.is === 'row' && (s.label?.rows[0] ?? 0) > 1 ? [s] : [],
  );
  return (
    back !== undefined &&
    !back.items.some(turns) &&
    later.some((one) => one.all || (parity(one) === parity(back) && one.items.some(turns)))
  );
}

const parity = ({ label }: { readonly label?: Label }): number => (label?.rows[0] ?? 0) % 2;

const turns = ({ is }: Item): boolean => is === 'turn';

/** What is said behind the next numbered row, or of sides that are counted out ('work on first 51 sts only'), parts no stitches at this turn. */
function ofThisTurn(ahead: readonly Said[]): readonly Said[] {
  const end = ahead.findIndex(
    ({ statement: s }) =>
      (s.is === 'row' && (s.label?.rows.length ?? 0) > 0) ||
      (s.is === 'work on' && s.which !== 'these' && s.stitches !== undefined),
  );
  return end < 0 ? ahead : ahead.slice(0, end);
}

const wraps = (item: Item): boolean => item.is === 'stitches' && item.work === 'wrap next st';

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
