import { type Fault, fault } from '../../fault.ts';
import type { Side } from '../../row/step.ts';
import type { Statement, Until } from '../say/statement.ts';
import { type Build, nextSide, type PartBuild, type PieceBuild } from './build/build.ts';
import { useCycle } from './build/cycle.ts';
import { fabricOf, knownFabric, sameFabric } from './build/fabric.ts';
import { makeFabricRow } from './build/fabric-row.ts';
import { setMark } from './build/part.ts';
import { evenRows, finishBackground } from './build/run-rows.ts';
import { targetOf } from './build/target.ts';

type Even = Extract<Statement, { is: 'even' }>;

/** 'work in moss st until piece measures 38 cm, ending with a WS row'. */
export function doEven(build: Build, piece: PieceBuild, part: PartBuild, said: Even): Fault | undefined {
  const unknown = takeFabric(build, piece, part, said);
  if (unknown) return unknown;
  if (said.firstLooks) beginWith(build, part, said.firstLooks);
  if (said.until === undefined) return undefined;
  return workUntil(build, piece, part, said.until);
}

function takeFabric(build: Build, piece: PieceBuild, part: PartBuild, said: Even): Fault | undefined {
  const named = said.fabric;
  if (named === undefined || named.is === 'established') {
    useCycle(part);
    return undefined;
  }
  if (named.is === 'pattern' && /^(|pattern|rib)$/.test(named.words)) useCycle(part);
  const fabric = fabricOf(named, build, part);
  if (fabric === undefined) {
    part.fabric = { is: 'patt', label: named.is === 'pattern' ? named.words : 'pattern' };
    part.fabricRow = 0;
    return undefined;
  }
  if (sameFabric(fabric, part.fabric) && part.rows.length > 0) return misfits(fabric, build, part);
  if (part.fabric.label === 'rib' && fabric.label !== 'rib') setMark(piece, 'rib', part);
  if (part.rows.length > 0) setMark(piece, 'section', part);
  part.fabric = fabric;
  part.fabricRow = fabric.is === 'face' && fabric.rows.length > 1 && nextSide(part) === 'WS' ? 1 : 0;
  part.column = 0;
  part.closed = true;
  part.cycle = undefined;
  return misfits(fabric, build, part);
}

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

/** 'beg with a k row' says which side comes next where the text counts otherwise. */
function beginWith(build: Build, part: PartBuild, looks: 'k' | 'p'): void {
  if (part.fabric.is !== 'face' || part.fabric.rows.join('|') !== 'k') {
    if (part.fabric.is === 'face' && part.fabric.name === 'reverse stocking') return;
    if (part.fabric.is !== 'face' || part.fabric.name !== 'stocking') return;
  }
  const wanted: Side = looks === 'k' ? 'RS' : 'WS';
  if (wantSide(build, part, wanted)) return;
  part.fabric = knownFabric('reverse stocking');
}

/**
 * Brings the next row to the side that the text names: the first row of a part may lie on either side, and a
 * stretch whose end the text leaves open takes one row more.
 */
export function wantSide(build: Build, part: PartBuild, side: Side): boolean {
  if (nextSide(part) === side) return true;
  if (part.rows.length === 0) {
    part.firstSide = side;
    part.fabricRow += 1;
    return true;
  }
  const section = part.sections.at(-1);
  const last = part.rows.at(-1);
  if (
    last?.kind === 'stretch' &&
    section?.stretch &&
    section.stretch.endSide === undefined &&
    build.stretches[section.stretch.id] === undefined
  ) {
    const { closed, fabric, fabricRow } = part;
    part.fabric = last.fabric;
    part.fabricRow = last.fabricRow + 1;
    part.closed = false;
    const line = build.line;
    build.line = last.line;
    const wrong = makeFabricRow(build, part, [], 'stretch');
    build.line = line;
    part.closed = closed;
    if (fabric !== last.fabric) {
      part.fabric = fabric;
      part.fabricRow = fabricRow;
    }
    return wrong === undefined;
  }
  return false;
}

export function workUntil(build: Build, piece: PieceBuild, part: PartBuild, until: Until): Fault | undefined {
  if (until.is === 'count')
    return part.live === until.stitches || build.meanwhile.length === 0
      ? undefined
      : finishBackground(build, part);
  const target = targetOf(build, piece, part, until);
  if (target === undefined) return noSuchPlace();
  if (target.stretch === undefined) return evenRows(build, part, target.rows, 'even');
  part.closed = true;
  const wrong = evenRows(build, part, target.rows, 'stretch');
  const section = part.sections.at(-1);
  if (section && target.rows > 0 && section.first >= part.rows.length - target.rows)
    section.stretch = target.stretch;
  else if (section && target.rows === 0)
    part.sections.push({
      name: part.fabric.label,
      fabric: section.fabric,
      needle: build.needle,
      first: part.rows.length,
      stretch: target.stretch,
    });
  part.closed = true;
  if (wrong === undefined && target.overMm !== undefined && until.is === 'length') {
    const figures = { wantedMm: Math.round(until.mm), overMm: Math.round(target.overMm) };
    return fault('longer already', figures);
  }
  return wrong;
}

const noSuchPlace = (): Fault => fault('place not known');
