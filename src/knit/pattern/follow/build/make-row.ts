import { assumedGauge } from '../../../fabric.ts';
import { type Fault, fault } from '../../../fault.ts';
import { heightOf } from '../../../gauge.ts';
import { fabricOfGauge } from '../../../measured-gauge.ts';
import { behindTurn } from '../../../piece/yarn-end.ts';
import { expandRow } from '../../../row/expand.ts';
import type { Item } from '../../../row/read/notation.ts';
import { settle } from '../../../row/read/settle.ts';
import { addRun, type Run, shorten } from '../../../row/shorten.ts';
import type { Side, Step } from '../../../row/step.ts';
import { stitchesNamed } from '../../../row/stitches-of-steps.ts';
import { workRow } from '../../../row/work.ts';
import { spread } from '../../../shape/spread.ts';
import { type StitchName, stitches } from '../../../stitch.ts';
import { type Build, type Edit, type MadeRow, nextSide, type PartBuild } from './build.ts';
import { nominal, sameFabric } from './fabric.ts';
import { mergeEdits } from './merge-edits.ts';
import { looksOf, spellFabric } from './spell.ts';

/** More than any piece has; keeps a mistyped number from filling the memory. */
export const MOST_STITCHES = 2000;

export const MOST_ROWS = 4000;

const MOST_CELLS = 6_000_000;

export type Kind = MadeRow['kind'];

/** Height of one row of the fabric on the needle, mm; 0 without a gauge. */
export function rowHeight(build: Build, part: PartBuild): number {
  const { gauge } = build;
  if (!gauge) return 0;
  if (build.gaugeInPattern) return heightOf(1, gauge);
  return heightOf(1, assumedGauge(nominal(part.fabric), gauge, fabricOfGauge(gauge)));
}

/** A row written out in the text. */
export function makeWrittenRow(
  build: Build,
  part: PartBuild,
  items: readonly Item[],
  kind: Kind = 'row',
  beside: readonly Edit[] = [],
): Fault | undefined {
  const unread = build.unread.get(items);
  if (unread) return makeOwnRow(build, part, unread.words, Math.max(0, part.live + unread.change), items);
  const side = nextSide(part);
  const front = part.unworked;
  const count = part.live - front;
  const markers = side === 'RS' ? part.markers : part.markers.map((m) => part.live - m).reverse();
  const settled = settle(withSide(afterTurn(items, front), part, side), { stitches: count, markers });
  if (!settled.ok) return settled.faults[0];
  const appear = items.some((item) => item.is === 'stitches to' && item.appear);
  const panel =
    items.some((item) => item.is === 'stitches' && item.panel) ||
    (items.some(saysRib) && part.fabric.label !== 'rib');
  // what the panel's stitches are is said elsewhere; the row asks for them by name
  let steps = panel ? [...settled.value.steps] : spellPattern(settled.value.steps, part, side, count, appear);
  const turned = settled.value.turned ? takenBefore(steps, count) : undefined;
  if (turned !== undefined && turned < count) steps = [...steps, { work: 'unworked', until: { left: 0 } }];
  if (beside.length > 0) steps = mergeEdits(steps, count, beside, side);
  if (front > 0) steps = [{ work: 'unworked', times: front }, ...steps];
  const before = part.live;
  const usesPattern =
    items.some((item) => 'work' in item && item.work === 'patt') || part.fabric.is === 'face';
  const wrong = pushRow(build, part, steps, { kind, items, advance: usesPattern });
  if (wrong) return wrong;
  if (panel) part.fabric = { is: 'patt', label: 'pattern' };
  part.unworked = behindTurn(steps, before);
  part.markers =
    side === 'RS' ? settled.value.markers : settled.value.markers.map((m) => part.live - m).reverse();
  return undefined;
}

const saysRib = (item: Item): boolean =>
  'rib' in item ? item.rib === true : 'items' in item && item.items.some(saysRib);

/** What lies before the yarn after a turn need not be said again; where it is ('leave 5 sts unworked'), it is once. */
const afterTurn = (items: readonly Item[], front: number): readonly Item[] =>
  front > 0 && items[0]?.is === 'stitches' && items[0].work === 'unworked' ? items.slice(1) : items;

/** 'evenly' says k or p as the side has it, where the text does not say it. */
function withSide(items: readonly Item[], part: PartBuild, side: Side): readonly Item[] {
  if (side === 'RS' || part.fabric.is !== 'face' || part.fabric.name !== 'stocking') return items;
  return items.map((item) => (item.is === 'evenly' && !item.work ? { ...item, work: 'p' } : item));
}

function takenBefore(steps: readonly Step[], count: number): number {
  return expandRow(steps, count).reduce((sum, work) => sum + stitches[work].takes, 0);
}

/** 'work in pattern' within a row, spelled where the fabric is known. */
function spellPattern(
  steps: readonly Step[],
  part: PartBuild,
  side: Side,
  count: number,
  appear: boolean,
): Step[] {
  if (!stitchesNamed(steps).includes('patt')) return [...steps];
  const plain = appear
    ? spellAsItLooks(part, side)
    : spellFabric(part.fabric, part.fabricRow, side, part.column, count);
  if (plain === undefined) return [...steps];
  if (side === 'WS') plain.reverse();
  const runs: Run[] = [];
  let at = 0;
  for (const work of expandRow(steps, count)) {
    addRun(runs, work === 'patt' ? (plain[at] ?? 'k') : work, 1);
    at += stitches[work].takes;
  }
  return at === count ? shorten(runs) : [...steps];
}

/** The stitches as the last row left them; undefined where that row was more than knit and purl. */
function spellAsItLooks(part: PartBuild, side: Side): StitchName[] | undefined {
  const last = part.rows.at(-1);
  const looks = last && looksOf(expandRow(last.steps, last.before), last.side);
  if (looks === undefined || looks.length !== part.live) return undefined;
  return [...looks].map((look): StitchName => ((look === 'k') === (side === 'RS') ? 'k' : 'p'));
}

/** Increases or decreases spread over the whole row, or over its middle; `work` where all of it is knitted or purled. */
export function makeSpreadRow(
  build: Build,
  part: PartBuild,
  change: number,
  over: number | undefined,
  work?: StitchName,
): Fault | undefined {
  const side = nextSide(part);
  const count = part.live;
  const width = over !== undefined && over <= count ? over : count;
  const laid = spread(width, change);
  const plain =
    (work ? undefined : spellFabric(part.fabric, part.fabricRow, side, part.column, count)) ??
    new Array<StitchName>(count).fill(work ?? 'k');
  if (side === 'WS') plain.reverse();
  const groups = laid.ok
    ? laid.value.groups
    : change > 0 && change <= width
      ? new Array<number>(change + 1).fill(1)
      : undefined;
  if (groups === undefined) return laid.ok ? undefined : laid.faults[0];
  const before = Math.floor((count - width) / 2);
  const runs: Run[] = [];
  let at = 0;
  const take = (n: number) => {
    for (let i = 0; i < n && at < count; i += 1, at += 1) addRun(runs, plain[at] ?? 'k', 1);
  };
  take(before);
  if (laid.ok) {
    groups.forEach((n, i) => {
      take(n);
      if (i === groups.length - 1) return;
      const purl = plain[at] === 'p';
      addRun(runs, change > 0 ? (purl ? 'm1p' : 'm1') : purl ? 'p2tog' : 'k2tog', 1);
      if (change < 0) at += 2;
    });
  } else {
    for (let i = 0; i < change; i += 1) {
      addRun(runs, plain[at] === 'p' ? 'pfb' : 'kfb', 1);
      at += 1;
    }
  }
  take(count - at);
  return pushRow(build, part, shorten(runs), { kind: 'across', advance: true, column: 0 });
}

/** A row in the knitter's own words, from the count before it to the count after. */
export function makeOwnRow(
  build: Build,
  part: PartBuild,
  own: string,
  after: number,
  items?: readonly Item[],
): Fault | undefined {
  const before = part.live;
  const change = after - before;
  const steps: Step[] = [];
  if (change > 0)
    steps.push({ work: 'patt', until: { left: 0 } }, { work: before === 0 ? 'co' : 'm1', times: change });
  else if (change === 0) steps.push({ work: 'patt', until: { left: 0 } });
  else if (after === 0) steps.push({ work: 'bo', until: { left: 0 } });
  else if (-change * 2 <= before)
    steps.push({ work: 'dec', times: -change }, { work: 'patt', until: { left: 0 } });
  else steps.push({ work: 'bo', times: -change }, { work: 'patt', until: { left: 0 } });
  return pushRow(build, part, steps, {
    kind: 'row',
    own,
    advance: true,
    ...(items === undefined ? {} : { items }),
  });
}

interface How {
  readonly kind: Kind;
  readonly items?: readonly Item[];
  readonly edits?: readonly Edit[];
  readonly own?: string;
  /** the fabric's rows move on */
  readonly advance: boolean;
  readonly column?: number;
}

/** Works the row over the stitches on the needle; only a row that comes out is taken into the part. */
export function pushRow(build: Build, part: PartBuild, steps: readonly Step[], how: How): Fault | undefined {
  if (part.rows.length >= MOST_ROWS || build.cells > MOST_CELLS) {
    return fault('too long', { mostRows: MOST_ROWS });
  }
  const worked = workRow(steps, part.live);
  if (!worked.ok) return worked.faults[0];
  const { after } = worked.value;
  if (after > MOST_STITCHES) return fault('too many stitches', { stitches: after });
  const side = nextSide(part);
  const was = {
    column: part.column,
    fabricRow: part.fabricRow,
    height: part.height,
    markers: part.markers,
    gap: part.gap,
    unworked: part.unworked,
  };
  build.cells += part.live + 20;
  const plain = how.items && after === part.live ? keepLooks(part, steps, side) : undefined;
  part.rows.push({
    side,
    steps,
    before: part.live,
    after,
    line: build.line,
    edits: how.edits ?? [],
    fabric: part.fabric,
    fabricRow: was.fabricRow,
    was,
    kind: how.kind,
    ...(how.items === undefined ? {} : { items: how.items }),
    ...(how.own === undefined ? {} : { own: how.own }),
  });
  openSection(build, part);
  part.column = how.column ?? (after === part.live || plain ? part.column : shifted(part, steps, side));
  part.live = after;
  part.height += rowHeight(build, part);
  part.gap = undefined;
  if (how.advance) part.fabricRow += 1;
  return undefined;
}

/** Remembers how a row of the fabric's own looked, for the rows in which its edges are shaped. */
function keepLooks(part: PartBuild, steps: readonly Step[], side: Side): boolean {
  const { fabric } = part;
  if (fabric.is !== 'rows' || fabric.rows.length === 0) return false;
  const at = part.fabricRow % fabric.rows.length;
  if (fabric.faces[at] === undefined) {
    const looks = looksOf(expandRow(steps, part.live), side);
    if (looks !== undefined) fabric.faces[at] = { column: part.column, looks };
  }
  return true;
}

/** The column at the right edge after a written row: what it adds or takes in the half next to that edge. */
function shifted(part: PartBuild, steps: readonly Step[], side: Side): number {
  let taken = 0;
  let change = 0;
  for (const work of expandRow(steps, part.live)) {
    const { takes, makes } = stitches[work];
    const inFirstHalf = taken + takes / 2 <= part.live / 2;
    if (inFirstHalf === (side === 'RS')) change += makes - takes;
    taken += takes;
  }
  return part.column - change;
}

function openSection(build: Build, part: PartBuild): void {
  const last = part.sections.at(-1);
  const first = part.rows.length - 1;
  if (last && last.first === first) {
    part.closed = false;
    return;
  }
  const before = part.rows[first - 1]?.fabric;
  const goesOn =
    last !== undefined &&
    !part.closed &&
    last.needle === build.needle &&
    before !== undefined &&
    sameFabric(before, part.fabric);
  if (goesOn) return;
  part.closed = false;
  part.sections.push({
    name: build.heading?.words || part.fabric.label,
    fabric: nominal(part.fabric),
    needle: build.needle,
    first,
  });
}

/** Takes the last row back, to work it anew with what the text adds to it. */
export function takeBack(build: Build, part: PartBuild): MadeRow | undefined {
  const row = part.rows.pop();
  if (!row) return undefined;
  Object.assign(part, row.was);
  part.live = row.before;
  build.cells -= row.before;
  const section = part.sections.at(-1);
  if (section && section.first >= part.rows.length && part.sections.length > 1) part.sections.pop();
  return row;
}
