import { fault, ok, type Result, refuse } from '../../fault.ts';
import { spread } from '../../shape/spread.ts';
import { type StitchName, stitches } from '../../stitch.ts';
import type { Step, Until } from '../step.ts';
import { runOf, takenAndMade } from '../stitches-of-steps.ts';
import { endingOnce, ribAcross } from './ending-once.ts';
import { normalForm } from './normal-form.ts';
import { type Goal, type Item, takenBy } from './notation.ts';

/** What is on the needle when a written row is worked; a row read on its own has none. */
export interface Needle {
  readonly stitches: number;
  /** stitches that lie before each marker, in the order in which the row meets them */
  readonly markers: readonly number[];
  /** stitches that the row of this side before left unworked at its turn */
  readonly behindTurn?: number;
}

export interface Settled {
  readonly steps: readonly Step[];
  /** markers on the needle after the row, in the order in which this row met them */
  readonly markers: readonly number[];
  /** the row was turned before its end */
  readonly turned: boolean;
}

interface Run {
  readonly needle: Needle | undefined;
  /** stitches taken so far; undefined once that hangs on a count nobody knows */
  taken: number | undefined;
  made: number | undefined;
  turned: boolean;
  nextMarker: number;
  readonly markers: number[];
}

/** A written row as steps. Markers, 'evenly' and turns need the stitches on the needle. */
export function settle(items: readonly Item[], needle?: Needle): Result<Settled> {
  const run: Run = { needle, taken: 0, made: 0, turned: false, nextMarker: 0, markers: [] };
  const steps = settleItems(
    needle ? endingOnce(ribAcross(items, needle.stitches), needle.stitches) : items,
    run,
  );
  if (!steps.ok) return steps;
  passMarkers(run, needle?.stitches ?? 0);
  return ok({ steps: normalForm(steps.value), markers: run.markers, turned: run.turned });
}

function settleItems(items: readonly Item[], run: Run): Result<readonly Step[]> {
  const steps: Step[] = [];
  const after = takenAfter(items);
  for (let i = 0; i < items.length; i += 1) {
    const made = settleOne(items[i] as Item, run, after[i] ?? 0);
    if (!made.ok) return made;
    for (const step of made.value) steps.push(step);
    if (!run.turned) continue;
    // what is worked after a turn is a row of its own: never dropped without a word
    if (items.slice(i + 1).some(isWork)) return refuse(fault('work after a turn'));
    break;
  }
  return ok(steps);
}

const isWork = ({ is }: Item): boolean => is !== 'turn' && is !== 'marker' && is !== 'parting';

/** For each item the stitches that those after it take; 0 where that hangs on the count. */
function takenAfter(items: readonly Item[]): number[] {
  const after: number[] = new Array(items.length).fill(0);
  let sum: number | undefined = 0;
  for (let i = items.length - 1; i >= 0; i -= 1) {
    after[i] = sum ?? 0;
    const one: number | undefined = takenBy([items[i] as Item]);
    sum = sum === undefined || one === undefined ? undefined : sum + one;
  }
  return after;
}

function settleOne(item: Item, run: Run, following: number): Result<readonly Step[]> {
  switch (item.is) {
    case 'stitches':
      move(run, stitches[item.work].takes * item.times, stitches[item.work].makes * item.times);
      return ok(item.times === 0 ? [] : [{ work: item.work, times: item.times }]);
    case 'stitches to':
      return settleTo(item.work, item.goal, run, following);
    case 'group':
      return settleGroup(item, run);
    case 'group to': {
      const goal = goalOf(item.goal, run, following);
      if (!goal.ok) return goal;
      const inner = settleInner(item.items, run);
      if (!inner.ok) return inner;
      moveTo(run, goal.value.left, rateOf(inner.value));
      return ok([{ repeat: inner.value, until: goal.value }]);
    }
    case 'group over':
      return settleOver(item, run);
    case 'marker':
      marker(item.does, run);
      return ok([]);
    case 'parting':
      return ok([]);
    case 'evenly':
      return settleEvenly(item, run);
    case 'turn':
      // on a needle the row ends here; by itself it says that the rest, however much, stays unworked
      if (run.needle === undefined) return ok([{ work: 'unworked', until: { left: 0 } }]);
      run.turned = true;
      return ok([]);
  }
}

function settleTo(work: StitchName, goal: Goal, run: Run, following: number): Result<readonly Step[]> {
  const until = goalOf(goal, run, following);
  if (!until.ok) return until;
  moveTo(run, until.value.left, stitches[work].makes / Math.max(1, stitches[work].takes));
  return ok([{ work, until: until.value }]);
}

function settleGroup(item: Extract<Item, { is: 'group' }>, run: Run): Result<readonly Step[]> {
  if (item.items.some(meetsMarker) && item.times <= 50) {
    const steps: Step[] = [];
    for (let i = 0; i < item.times; i += 1) {
      const once = settleItems(item.items, run);
      if (!once.ok) return once;
      steps.push(...once.value);
    }
    return ok(steps);
  }
  const inner = settleInner(item.items, run);
  if (!inner.ok) return inner;
  const takes = takenBy(item.items);
  const makes = takenAndMade(inner.value)?.makes;
  move(
    run,
    takes === undefined ? undefined : takes * item.times,
    makes === undefined ? undefined : makes * item.times,
  );
  return ok(item.times === 0 ? [] : [{ repeat: inner.value, times: item.times }]);
}

/** Each round of such a group lies elsewhere on the needle, so each is spelled out. */
const meetsMarker = (item: Item): boolean =>
  item.is === 'marker' ||
  ('goal' in item && 'marker' in item.goal) ||
  ('items' in item && item.items.some(meetsMarker));

/** The inside of a repeat, without moving along the needle. */
function settleInner(items: readonly Item[], run: Run): Result<readonly Step[]> {
  const { taken, made } = run;
  const inner = settleItems(
    items.filter((item) => item.is !== 'marker'),
    run,
  );
  run.taken = taken;
  run.made = made;
  return inner;
}

function settleOver(item: Extract<Item, { is: 'group over' }>, run: Run): Result<readonly Step[]> {
  const takes = takenBy(item.items);
  if (takes === 0) return refuse(fault('endless repeat'));
  if (takes === undefined || item.stitches % takes !== 0) {
    return refuse(fault('repeat does not come out', { byStitches: takes ?? 0, spanStitches: item.stitches }));
  }
  const inner = settleInner(item.items, run);
  if (!inner.ok) return inner;
  const times = item.stitches / takes;
  const makes = takenAndMade(inner.value)?.makes;
  move(run, item.stitches, makes === undefined ? undefined : makes * times);
  return ok([{ repeat: inner.value, times }]);
}

function settleEvenly(item: Extract<Item, { is: 'evenly' }>, run: Run): Result<readonly Step[]> {
  const left = run.needle && run.taken !== undefined ? run.needle.stitches - run.taken : undefined;
  const over = item.over ?? left;
  if (over === undefined) {
    return refuse(fault('count not known', { changeStitches: Math.abs(item.change) }));
  }
  const change = item.to === undefined || !run.needle ? item.change : item.to - run.needle.stitches;
  const laid = spread(over, change);
  if (!laid.ok) return laid;
  move(run, over, over + change);
  return ok(spreadSteps(laid.value.groups, change, item.work ?? 'k'));
}

/** Plain groups with a make-1 or a decrease between each two of them; most of them folded into a repeat. */
export function spreadSteps(groups: readonly number[], change: number, work: StitchName): Step[] {
  const shaped: StitchName = change > 0 ? (work === 'p' ? 'm1p' : 'm1') : work === 'p' ? 'p2tog' : 'k2tog';
  const steps: Step[] = [];
  groups.forEach((n, i) => {
    steps.push({ work, times: n });
    if (i < groups.length - 1) steps.push({ work: shaped, times: 1 });
  });
  return steps;
}

function goalOf(goal: Goal, run: Run, following: number): Result<Until> {
  if ('left' in goal) return ok({ left: goal.left === 'what follows' ? following : goal.left });
  if ('turn' in goal) {
    const left = run.needle?.behindTurn;
    return left === undefined ? refuse(fault('no marker')) : ok({ left: left + goal.turn });
  }
  const at = run.needle?.markers[run.nextMarker];
  if (run.needle === undefined || at === undefined) {
    return refuse(fault('no marker'));
  }
  const left = run.needle.stitches - at + goal.marker;
  return ok({ left });
}

function moveTo(run: Run, left: number, rate: number | undefined): void {
  if (run.needle === undefined || run.taken === undefined) {
    move(run, undefined, undefined);
    return;
  }
  const span = run.needle.stitches - left - run.taken;
  move(run, span, rate === undefined ? undefined : Math.round(span * rate));
}

function move(run: Run, takes: number | undefined, makes: number | undefined): void {
  run.taken = run.taken === undefined || takes === undefined ? undefined : run.taken + takes;
  run.made = run.made === undefined || makes === undefined ? undefined : run.made + makes;
}

function marker(does: 'place' | 'slip' | 'remove', run: Run): void {
  if (does !== 'place') {
    if (does === 'slip' && run.made !== undefined) run.markers.push(run.made);
    run.nextMarker += 1;
    return;
  }
  passMarkers(run, (run.taken ?? 0) - 1);
  if (run.made !== undefined) run.markers.push(run.made);
}

/** Markers that the row went past without a word stay where they are, as far as counts tell. */
function passMarkers(run: Run, upTo: number): void {
  const known = run.needle?.markers ?? [];
  while (run.nextMarker < known.length && (known[run.nextMarker] as number) <= upTo) {
    const shift = run.made !== undefined && run.taken !== undefined ? run.made - run.taken : 0;
    run.markers.push((known[run.nextMarker] as number) + shift);
    run.nextMarker += 1;
  }
}

/** Stitches made for each one taken; undefined where a repeat lies within, or it hangs on the count. */
function rateOf(steps: readonly Step[]): number | undefined {
  if (!steps.every((step) => runOf(step))) return undefined;
  const { takes = 0, makes = 0 } = takenAndMade(steps) ?? {};
  return takes === 0 ? undefined : makes / takes;
}
