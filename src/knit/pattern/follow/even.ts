import { type Fault, fault } from '../../fault.ts';
import { expandRow } from '../../row/expand.ts';
import { END, type Item } from '../../row/read/notation.ts';
import type { Side } from '../../row/step.ts';
import type { Statement } from '../say/statement.ts';
import { dropBorders } from './build/borders.ts';
import { type Build, nextSide, type PartBuild, type PieceBuild } from './build/build.ts';
import { countDiffers } from './build/compare.ts';
import { useCycle } from './build/cycle.ts';
import {
  fabricOf,
  isRibbed,
  knownFabric,
  onlyPattern,
  patternOfOthers,
  sameFabric,
  unknownFabric,
  unsaidFabric,
} from './build/fabric.ts';
import { setMark } from './build/part.ts';
import { plainWork, spellFabric } from './build/spell.ts';
import { turnRib, wantSide } from './build/want-side.ts';
import { workUntil } from './build/work-until.ts';

type Even = Extract<Statement, { is: 'even' }>;

/** 'work in moss st until piece measures 38 cm, ending with a WS row'. */
export function doEven(build: Build, piece: PieceBuild, part: PartBuild, said: Even): Fault | undefined {
  const unknown = takeFabric(build, piece, part, said);
  if (unknown && unknown.code !== UNKNOWN) return unknown;
  if (said.firstLooks) beginWith(build, part, said.firstLooks);
  if (said.firstStitches && !shiftTo(part, said.firstStitches)) return fault('place not known');
  if (said.fromRow !== undefined && !beginAt(part, said.fromRow)) return unknown ?? fault('place not known');
  const differs =
    said.over === undefined || said.over === part.live ? undefined : countDiffers(said.over, part.live);
  return (said.until && workUntil(build, piece, part, said.until)) ?? differs ?? unknown;
}

const UNKNOWN = 'fabric not known';

/** 'Work in blackberry stitch': its rows are hers to know, and she is told so. */
function takeUnknown(build: Build, part: PartBuild, label: string, rib: boolean): Fault {
  if (rib) part.unreadRib = part.rows.length;
  Object.assign(part, { fabric: { is: 'patt', label, line: build.line }, fabricRow: 0 });
  return fault(UNKNOWN, { name: label });
}

function takeFabric(build: Build, piece: PieceBuild, part: PartBuild, said: Even): Fault | undefined {
  const named = said.fabric;
  if (named === undefined && part.cycle && endsInStocking(part)) {
    part.cycle = undefined;
    part.fabric = knownFabric('stocking');
    part.fabricRow = 0;
  }
  if (named === undefined || named.is === 'established') {
    useCycle(part);
    if (
      named !== undefined &&
      part.parent === undefined &&
      part.rows.length === 0 &&
      part.fabric === unsaidFabric
    ) {
      const told = onlyPattern(build) ?? patternOfOthers(build);
      if (told === undefined) return takeUnknown(build, part, 'pattern', false);
      part.fabric = told;
    }
    // 'change to larger needles and work in pattern' behind a rib: the text's own pattern begins
    edgedInGarter(part);
    if (named === undefined) leaveUnsaid(part);
    const only = part.fabric.label === 'rib' && changedNeedle(build) ? onlyPattern(build) : undefined;
    if (named === undefined || only === undefined) return undefined;
    setMark(piece, 'rib', part);
    Object.assign(part, { fabric: only, fabricRow: 0, column: 0, closed: true });
    return misfits(only, build, part);
  }
  if (named.is === 'pattern' && named.else === 'rib') useCycle(part);
  const fabric = fabricOf(named, build, part);
  // 'work 4 cm in rib' behind two rows of knit and purl stitches that nobody called so
  if (fabric === undefined && named.is === 'pattern' && named.else === 'rib' && looksRibbed(part)) {
    part.fabric = { ...part.fabric, label: 'rib' };
    return undefined;
  }
  if (fabric === unknownFabric && part.fabric !== fabric && named.is === 'pattern' && named.else !== 'rib')
    return takeUnknown(build, part, 'pattern', false);
  if (fabric === undefined) {
    const { words, name } = named as Extract<typeof named, { is: 'pattern' }>;
    return takeUnknown(build, part, words, name.endsWith('rib'));
  }
  // named again on one side of what was parted, it goes on by its columns
  const begun = part.rows.length > 0 || part.parent !== undefined;
  if (begun && sameFabric(fabric, part.fabric)) {
    // behind rows in their own words it begins anew
    if (fabric.is === 'face' && part.rows.at(-1)?.own !== undefined)
      part.fabricRow = nextSide(part) === 'WS' ? 1 : 0;
    if (part.told) part.told.was = undefined;
    return misfits(fabric, build, part);
  }
  if (part.fabric.label === 'rib' && fabric.label !== 'rib') setMark(piece, 'rib', part);
  if (part.rows.length > 0) setMark(piece, 'section', part);
  dropBorders(part);
  part.told = undefined;
  part.fabric = fabric;
  part.fabricRow = fabric.is === 'face' && nextSide(part) === 'WS' ? 1 : 0;
  part.column = 0;
  part.closed = true;
  part.cycle = undefined;
  return misfits(fabric, build, part) ?? onItsSide(build, part, fabric.label);
}

/** 'Row 1 (WS): …' of the pattern that begins: it lies on that side. */
function onItsSide(build: Build, part: PartBuild, label: string): Fault | undefined {
  const side = build.patterns.get(label)?.side;
  if (side === undefined || part.parent !== undefined) return undefined;
  const there = wantSide(build, part, side);
  part.fabricRow = 0;
  if (there) return undefined;
  return fault('side differs', { saidSide: side, foundSide: nextSide(part) });
}

/** 'K4, p to last 4 sts, k4', and then straight: knit rows come between, and the edges go on. */
function edgedInGarter(part: PartBuild): void {
  const { fabric, rows, borders } = part;
  if (fabric.is !== 'face' || Object.keys(borders).length > 0) return;
  const last = rows.at(-1);
  const between = last && plainWork(last, last.side) === 'k' ? last : undefined;
  const edged = between ? rows.at(-2) : last;
  if (!edged?.items || edged.kind !== 'row' || edged.before !== edged.after || edged.own !== undefined)
    return;
  if (!/^(k+)p+\1$/.test(expandRow(edged.steps, edged.before).join(''))) return;
  const plain: Item = { is: 'stitches to', work: 'k', goal: END };
  part.fabric = { is: 'rows', rows: [[plain], edged.items], label: 'pattern', faces: [] };
  part.fabricRow = between ? 1 : 0;
}

/** 'K1, p1 across row. Work 5 cm', '… Dec 1 st at each end': no stocking stitch, where nobody says one. */
export function leaveUnsaid(part: PartBuild): void {
  const last = part.rows.at(-1);
  if (part.fabric !== unsaidFabric || last === undefined || last.own !== undefined) return;
  const works = expandRow(last.steps, last.before);
  const some = (wanted: string): number => works.filter((work) => work === wanted).length;
  if (works.length > 3 && 4 * Math.min(some('k'), some('p')) >= works.length) part.fabric = unknownFabric;
}

const looksRibbed = ({ fabric, rows }: PartBuild): boolean =>
  fabric.is === 'rows' &&
  fabric.rows.length === 2 &&
  rows.length > 0 &&
  fabric.rows.every((items) => isRibbed(items));

/** 'K 1 row, p 1 row' behind a border of numbered rows: stocking stitch has begun. */
function endsInStocking({ rows, cycle }: PartBuild): boolean {
  const [k, p] = rows.slice(-2);
  if (!k || !p || !cycle || rows.length - cycle.first < cycle.rows.size + 2) return false;
  return k.side === 'RS' && plainWork(k, 'RS') === 'k' && plainWork(p, 'WS') === 'p';
}

const changedNeedle = ({ recent }: Build): boolean => recent.at(-1)?.statement.is === 'needle';

/** A stitch pattern of a multiple of n plus m on a count that is none. */
function misfits(fabric: PartBuild['fabric'], build: Build, part: PartBuild): Fault | undefined {
  if (fabric.is !== 'rows') return undefined;
  const pattern = build.patterns.get(fabric.label);
  if (
    !pattern ||
    pattern.of <= 1 ||
    part.live < pattern.plus ||
    (part.live - pattern.plus) % pattern.of === 0
  )
    return undefined;
  return notAMultiple(pattern.name, pattern.of, pattern.plus, part.live);
}

export const notAMultiple = (name: string, of: number, plus: number, count: number): Fault =>
  fault('not a multiple', { name, ofStitches: of, plusStitches: plus, stitches: count });

/** Shifts a rib so that its next row begins with so many knit or purl stitches; whether it can. */
function shiftTo(part: PartBuild, first: NonNullable<Even['firstStitches']>): boolean {
  const { fabric } = part;
  if (fabric.is !== 'face') return false;
  const side = nextSide(part);
  for (let column = 0; column < (fabric.rows[0]?.length ?? 0); column += 1) {
    const works = spellFabric(fabric, part.fabricRow, side, column, part.live) ?? [];
    if (side === 'WS') works.reverse();
    const begun = works.findIndex((work) => work !== first.work);
    if (begun === first.n || (begun < 0 && works.length === first.n)) {
      part.column = column;
      return true;
    }
  }
  return false;
}

/** Whether the pattern of rows on the needle has such a row, with which it goes on. */
function beginAt(part: PartBuild, n: number): boolean {
  const { fabric } = part;
  if (fabric.is !== 'rows' || n < 1 || n > fabric.rows.length) return false;
  part.fabricRow = n - 1;
  return true;
}

/** 'beg with a k row' says which side comes next where the text counts otherwise. */
function beginWith(build: Build, part: PartBuild, looks: 'k' | 'p'): void {
  const wanted: Side = looks === 'k' ? 'RS' : 'WS';
  // 'beg with a WS row, 3 rows in garter st' looks alike on both sides and only says where it begins
  if (part.rows.length === 0 && part.fabric.is === 'face' && part.fabric.name === 'garter')
    wantSide(build, part, wanted);
  if (part.fabric.is !== 'face' || part.fabric.name !== 'stocking') return;
  const turns = wanted === 'RS' && nextSide(part) === 'WS' && turnRib(part);
  if (wantSide(build, part, wanted) || turns) return;
  part.fabric = knownFabric('reverse stocking');
}
