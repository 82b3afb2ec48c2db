import { type Fault, fault, ok, type Result, refuse } from '../fault.ts';
import { spread } from '../shape/spread.ts';
import { type StitchName, stitches } from '../stitch.ts';
import { normalForm } from './normal-form.ts';
import { type Goal, type Item, takenBy } from './notation.ts';
import type { Step } from './step.ts';

/** What is on the needle when a written row is worked; a row read on its own has none. */
export interface Needle {
  readonly stitches: number;
  /** stitches that lie before each marker, in the order in which the row meets them */
  readonly markers: readonly number[];
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
  const steps = settleItems(items, run);
  if (!Array.isArray(steps)) return refuse(steps);
  passMarkers(run, needle?.stitches ?? 0);
  return ok({ steps: normalForm(steps), markers: run.markers, turned: run.turned });
}

function settleItems(items: readonly Item[], run: Run): Step[] | Fault {
  const steps: Step[] = [];
  const after = takenAfter(items);
  for (let i = 0; i < items.length; i += 1) {
    const made = settleOne(items[i] as Item, run, after[i] ?? 0);
    if (!Array.isArray(made)) return made;
    for (const step of made) steps.push(step);
    if (run.turned) break;
  }
  return steps;
}

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

function settleOne(item: Item, run: Run, following: number): Step[] | Fault {
  switch (item.is) {
    case 'stitches':
      move(run, stitches[item.work].takes * item.times, stitches[item.work].makes * item.times);
      return item.times === 0 ? [] : [{ work: item.work, times: item.times }];
    case 'stitches to':
      return settleTo(item.work, item.goal, run, following);
    case 'group':
      return settleGroup(item, run);
    case 'group to': {
      const goal = goalOf(item.goal, run, following);
      if ('code' in goal) return goal;
      const inner = settleInner(item.items, run);
      if (!Array.isArray(inner)) return inner;
      moveTo(run, goal.left, rateOf(inner));
      return [{ repeat: inner, until: goal }];
    }
    case 'group over':
      return settleOver(item, run);
    case 'marker':
      marker(item.does, run);
      return [];
    case 'evenly':
      return settleEvenly(item, run);
    case 'turn':
      run.turned = true;
      return [];
  }
}

function settleTo(work: StitchName, goal: Goal, run: Run, following: number): Step[] | Fault {
  const until = goalOf(goal, run, following);
  if ('code' in until) return until;
  moveTo(run, until.left, stitches[work].makes / Math.max(1, stitches[work].takes));
  return [{ work, until }];
}

function settleGroup(item: Extract<Item, { is: 'group' }>, run: Run): Step[] | Fault {
  if (item.items.some(meetsMarker) && item.times <= 50) {
    const steps: Step[] = [];
    for (let i = 0; i < item.times; i += 1) {
      const once = settleItems(item.items, run);
      if (!Array.isArray(once)) return once;
      steps.push(...once);
    }
    return steps;
  }
  const inner = settleInner(item.items, run);
  if (!Array.isArray(inner)) return inner;
  const takes = takenBy(item.items);
  const makes = madeBy(inner);
  move(
    run,
    takes === undefined ? undefined : takes * item.times,
    makes === undefined ? undefined : makes * item.times,
  );
  return item.times === 0 ? [] : [{ repeat: inner, times: item.times }];
}

/** Each round of such a group lies elsewhere on the needle, so each is spelled out. */
const meetsMarker = (item: Item): boolean =>
  item.is === 'marker' ||
  ('goal' in item && 'marker' in item.goal) ||
  ('items' in item && item.items.some(meetsMarker));

/** The inside of a repeat, without moving along the needle. */
function settleInner(items: readonly Item[], run: Run): Step[] | Fault {
  const { taken, made } = run;
  const inner = settleItems(
    items.filter((item) => item.is !== 'marker'),
    run,
  );
  run.taken = taken;
  run.made = made;
  return inner;
}

function settleOver(item: Extract<Item, { is: 'group over' }>, run: Run): Step[] | Fault {
  const takes = takenBy(item.items);
  if (takes === undefined || takes === 0 || item.stitches % takes !== 0) {
    return fault('repeat does not come out', { byStitches: takes ?? 0, spanStitches: item.stitches });
  }
  const inner = settleInner(item.items, run);
  if (!Array.isArray(inner)) return inner;
  const times = item.stitches / takes;
  const makes = madeBy(inner);
  move(run, item.stitches, makes === undefined ? undefined : makes * times);
  return [{ repeat: inner, times }];
}

function settleEvenly(item: Extract<Item, { is: 'evenly' }>, run: Run): Step[] | Fault {
  const left = run.needle && run.taken !== undefined ? run.needle.stitches - run.taken : undefined;
  const over = item.over ?? left;
  if (over === undefined) {
    return fault('count not known', { changeStitches: Math.abs(item.change) });
  }
  const laid = spread(over, item.change);
  if (!laid.ok) return laid.faults[0] as Fault;
  move(run, over, over + item.change);
  return spreadSteps(laid.value.groups, item.change, item.work ?? 'k');
}

/** Plain groups with a make-1 or a decrease between each two of them; most of them folded into a repeat. */
export function spreadSteps(groups: readonly number[], change: number, work: StitchName): Step[] {
  const shaped: StitchName = change > 0 ? (work === 'p' ? 'm1p' : 'm1') : work === 'p' ? 'p2tog' : 'k2tog';
  const steps: Step[] = [];
  groups.forEach((n, i) => {
    if (n > 0) steps.push({ work, times: n });
    if (i < groups.length - 1) steps.push({ work: shaped, times: 1 });
  });
  return steps;
}

function goalOf(goal: Goal, run: Run, following: number): { left: number } | Fault {
  if ('left' in goal) return { left: goal.left === 'what follows' ? following : goal.left };
  const at = run.needle?.markers[run.nextMarker];
  if (run.needle === undefined || at === undefined) {
    return fault('no marker');
  }
  const left = run.needle.stitches - at + goal.marker;
  return { left };
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

function madeBy(steps: readonly Step[]): number | undefined {
  let sum = 0;
  for (const step of steps) {
    if (!('times' in step)) return undefined;
    const one = 'work' in step ? stitches[step.work].makes : madeBy(step.repeat);
    if (one === undefined) return undefined;
    sum += one * step.times;
  }
  return sum;
}

function rateOf(steps: readonly Step[]): number | undefined {
  const makes = madeBy(steps);
  let takes = 0;
  for (const step of steps) {
    if (!('times' in step)) return undefined;
    takes += 'work' in step ? stitches[step.work].takes * step.times : 0;
    if ('repeat' in step) return undefined;
  }
  return makes === undefined || takes === 0 ? undefined : makes / takes;
}
