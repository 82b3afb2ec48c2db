import { type Fault, fault } from '../../../fault.ts';
import { behindTurn } from '../../../piece/yarn-end.ts';
import { expandRow } from '../../../row/expand.ts';
import { asCounted } from '../../../row/read/as-counted.ts';
import type { Item } from '../../../row/read/notation.ts';
import { settle } from '../../../row/read/settle.ts';
import { addRun, type Run, shorten } from '../../../row/shorten.ts';
import type { Side, Step } from '../../../row/step.ts';
import { stitchesNamed } from '../../../row/stitches-of-steps.ts';
import { spread } from '../../../shape/spread.ts';
import { type StitchName, stitches } from '../../../stitch.ts';
import { spellPart } from './borders.ts';
import { type Build, nextSide, type PartBuild } from './build.ts';
import type { Edit } from './edit.ts';
import { inFabrics } from './in-fabrics.ts';
import { mergeEdits } from './merge-edits.ts';
import { overGap } from './over-gap.ts';
import { type Kind, pushRow } from './push-row.ts';
import { looksOf } from './spell.ts';

/** A row written out in the text. */
export function makeWrittenRow(
  build: Build,
  part: PartBuild,
  items: readonly Item[],
  kind: Kind = 'row',
  beside: readonly Edit[] = [],
  counts: typeof asCounted = asCounted,
): Fault | undefined {
  const unread = build.unread.get(items);
  if (unread) return makeOwnRow(build, part, unread.words, Math.max(0, part.live + unread.change), items);
  const side = nextSide(part);
  const front = part.unworked;
  const count = part.live - front;
  const markers = side === 'RS' ? part.markers : part.markers.map((m) => part.live - m).reverse();
  const over = overGap(items, part);
  if (over === undefined) return fault('place not known');
  const main = part.fabric.is === 'face' ? part.fabric.name : undefined;
  const works = inFabrics(afterTurn(over, front), side, count, main, looksInOrder(part, side));
  const settled = settle(counts(withSide(works, part, side), count), {
    stitches: count,
    markers,
    ...leftAtTurn(part),
  });
  if (!settled.ok) return settled.faults[0];
  // a rib that is only spelled out goes on as its stitches look
  const ribbed = items.some(saysRib) && part.fabric.label !== 'rib';
  const appear =
    items.some((item) => item.is === 'stitches to' && item.appear) ||
    (ribbed && isRib(spellAsItLooks(part, side)));
  const panel = items.some(isPanel) || (ribbed && !appear);
  // what the panel's stitches are is said elsewhere; the row asks for them by name
  let steps = panel
    ? [...settled.value.steps]
    : spellPattern(settled.value.steps, part, side, count, appear, items.some(isOpposite));
  const turned = settled.value.turned ? takenBefore(steps, count) : undefined;
  if (turned !== undefined && turned < count) steps = [...steps, { work: 'unworked', until: { left: 0 } }];
  if (beside.length > 0) steps = mergeEdits(steps, count, beside, side);
  if (front > 0) steps = [{ work: 'unworked', times: front }, ...steps];
  const before = part.live;
  const usesPattern =
    items.some((item) => 'work' in item && item.work === 'patt') || part.fabric.is === 'face';
  const own = build.yarnWords.get(items);
  const words = own === undefined ? {} : { own };
  const wrong = pushRow(build, part, steps, { kind, items, advance: usesPattern, ...words });
  if (wrong) return wrong;
  part.unworked = behindTurn(steps, before);
  part.markers =
    side === 'RS' ? settled.value.markers : settled.value.markers.map((m) => part.live - m).reverse();
  return panel ? goesOnIn(build, part, items) : undefined;
}

/** Behind a panel nobody knows the fabric; of which it is one the text has to say. */
function goesOnIn(build: Build, part: PartBuild, items: readonly Item[]): Fault | undefined {
  if (part.fabric.is === 'patt') return undefined;
  const known = build.patterns.size > 0 || !items.some(isPanel);
  part.fabric = { is: 'patt', label: 'pattern', ...(known ? {} : { line: build.line }) };
  return known ? undefined : fault('fabric not known', { name: 'pattern' });
}

const isPanel = (item: Item): boolean => item.is === 'stitches' && item.panel === true;

/** Stitches left unworked where the row of this side before was turned. */
function leftAtTurn({ rows }: PartBuild): { behindTurn?: number } {
  const row = rows.at(-2);
  const works = row === undefined ? [] : expandRow(row.steps, row.before);
  let n = 0;
  while (works.at(-1 - n) === 'unworked') n += 1;
  return n === 0 ? {} : { behindTurn: n };
}

const isOpposite = (item: Item): boolean => item.is === 'stitches to' && item.opposite === true;

const turned = (works: StitchName[] | undefined, opposite: boolean): StitchName[] | undefined =>
  opposite ? works?.map((work) => (work === 'k' ? 'p' : 'k')) : works;

const isRib = (works: readonly StitchName[] | undefined): boolean => new Set(works).size === 2;

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
  opposite: boolean,
): Step[] {
  if (!stitchesNamed(steps).includes('patt')) return [...steps];
  const plain = appear ? turned(spellAsItLooks(part, side), opposite) : spellPart(part, side, count);
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

/** The same in the order in which this side meets them. */
const looksInOrder = (part: PartBuild, side: Side): StitchName[] | undefined => {
  const looks = part.unworked > 0 ? undefined : spellAsItLooks(part, side);
  return side === 'WS' ? looks?.reverse() : looks;
};

/** The stitches as the last row left them; undefined where that row was more than knit and purl. */
function spellAsItLooks(part: PartBuild, side: Side): StitchName[] | undefined {
  const last = part.rows.at(-1);
  const looks =
    last &&
    looksOf(
      expandRow(last.steps, last.before).filter((work) => work !== 'bo'),
      last.side,
    );
  if (looks === undefined || looks.length !== part.live) return undefined;
  return [...looks].map((look): StitchName => ((look === 'k') === (side === 'RS') ? 'k' : 'p'));
}

/** Increases or decreases spread over the whole row, or over its middle; `work` where it is known what it is otherwise. */
export function makeSpreadRow(
  build: Build,
  part: PartBuild,
  change: number,
  over: number | undefined,
  work?: StitchName | readonly StitchName[],
): Fault | undefined {
  const side = nextSide(part);
  const count = part.live;
  const width = over !== undefined && over <= count ? over : count;
  const laid = spread(width, change);
  const plain = plainStitches(part, side, count, work);
  // where there are no plain stitches between, each of the stitches is increased in
  const inEach = change > 0 && change <= width;
  if (!laid.ok && !inEach) return laid.faults[0];
  const before = Math.floor((count - width) / 2);
  const runs: Run[] = [];
  let at = 0;
  const take = (n: number) => {
    for (let i = 0; i < n && at < count; i += 1, at += 1) addRun(runs, plain[at] ?? 'k', 1);
  };
  take(before);
  if (laid.ok) {
    const { groups } = laid.value;
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

/** The row without its changes, in the order worked. */
function plainStitches(
  part: PartBuild,
  side: Side,
  count: number,
  work: StitchName | readonly StitchName[] | undefined,
): readonly StitchName[] {
  if (typeof work === 'string') return new Array<StitchName>(count).fill(work);
  if (work?.length === count && work.every((one) => stitches[one].takes === 1 && stitches[one].makes === 1))
    return work;
  const spelled = spellPart(part, side, count) ?? new Array<StitchName>(count).fill('k');
  return side === 'WS' ? spelled.reverse() : spelled;
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
