import { type Fault, fault } from '../../../fault.ts';
import { heightOf } from '../../../gauge.ts';
import { gaugeOf } from '../../../piece/gauges.ts';
import { expandRow } from '../../../row/expand.ts';
import type { Item } from '../../../row/read/notation.ts';
import type { Side, Step } from '../../../row/step.ts';
import { workRow } from '../../../row/work.ts';
import { stitches } from '../../../stitch.ts';
import { type Build, type MadeRow, nextSide, type PartBuild } from './build.ts';
import type { Edit } from './edit.ts';
import { nominal, sameFabric } from './fabric.ts';
import { holeDue, rememberHole } from './holes.ts';
import { looksOf } from './spell.ts';
import { yarnOf } from './striped.ts';
import { fabricNamed } from './told-section.ts';

/** More than any piece has; keeps a mistyped number from filling the memory. */
export const MOST_STITCHES = 2000;

export const MOST_ROWS = 4000;

const MOST_CELLS = 6_000_000;

export type Kind = MadeRow['kind'];

/** Height of one row of the fabric on the needle, mm; 0 without a gauge. */
export function rowHeight(build: Build, part: PartBuild): number {
  const { gauge, gauges } = build;
  if (!gauge) return 0;
  if (build.gaugeInPattern) return heightOf(1, gauge);
  return heightOf(
    1,
    gaugeOf({ gauge, ...(gauges && { gauges }) }, nominal(part.told?.fabric ?? part.fabric)),
  );
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
  part.yarn = yarnOf(part, how.kind === 'stretch');
  build.cells += part.live + 20;
  // a buttonhole that nobody spelled is said in the row's own words
  const hole =
    how.own === undefined && isPlain(how.items) && after === part.live
      ? holeDue(part, build.line, how.kind === 'stretch')
      : undefined;
  const plain =
    how.items && how.own === undefined && after === part.live ? keepLooks(part, steps, side) : undefined;
  part.rows.push({
    side,
    steps,
    before: part.live,
    after,
    line: build.line,
    edits: how.edits ?? [],
    fabric: part.fabric,
    borders: part.borders,
    yarn: part.yarn,
    fabricRow: was.fabricRow,
    was,
    kind: how.kind,
    ...(how.items === undefined ? {} : { items: how.items }),
    ...(how.own === undefined ? {} : { own: how.own }),
    ...(hole === undefined ? {} : { own: hole, hole: true }),
    ...slipsOf(build),
  });
  if (rememberHole(build, part, how.items)) tellRow(part, { hole: true });
  openSection(build, part);
  if (part.told) part.told.begun = true;
  part.column = how.column ?? (after === part.live || plain ? part.column : shifted(part, steps, side));
  part.live = after;
  part.height += rowHeight(build, part);
  part.gap = undefined;
  if (how.advance) part.fabricRow += 1;
  return undefined;
}

/** What is found out of the row made last, once it is made. */
export const tellRow = (
  part: PartBuild,
  told: { readonly [K in keyof MadeRow]?: MadeRow[K] | undefined },
): void => {
  Object.assign(part.rows.at(-1) as MadeRow, told);
};

const slipsOf = ({ slips, piece }: Build): Pick<MadeRow, 'slips'> =>
  slips !== undefined && (slips.piece === undefined || slips.piece === piece) ? { slips: slips.said } : {};

/** A row of the fabric, 'knit' to its end, or knit and purl in turn: it has no hole of its own. */
const isPlain = (items: readonly Item[] = []): boolean =>
  (items.length === 1 && items[0]?.is === 'stitches to') || items.every(isKnitOrPurl);

const isKnitOrPurl = (item: Item): boolean =>
  item.is === 'group' || item.is === 'group to'
    ? item.items.every(isKnitOrPurl)
    : (item.is === 'stitches' || item.is === 'stitches to') &&
      (item.work === 'k' || item.work === 'p' || item.work === 'patt');

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
  const sameYarn = part.rows[first - 1]?.yarn === part.yarn;
  const goesOn =
    last !== undefined &&
    !part.closed &&
    last.told === part.told &&
    last.needle === build.needle &&
    before !== undefined &&
    sameYarn &&
    (part.told !== undefined || sameFabric(before, part.fabric));
  if (goesOn) return;
  part.closed = false;
  const { told } = part;
  part.sections.push({
    name: inYarn(told?.name ?? (build.heading?.words || part.fabric.label), part.yarn),
    fabric: told ? fabricNamed(told.fabric, part.live) : nominal(part.fabric),
    needle: build.needle,
    first,
    told,
  });
}

export const inYarn = (name: string, yarn: string | undefined): string =>
  yarn === undefined ? name : `${name}, ${yarn}`;

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
