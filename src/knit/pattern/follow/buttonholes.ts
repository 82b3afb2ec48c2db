import { type Fault, fault } from '../../fault.ts';
import type { Side } from '../../row/step.ts';
import type { Beat } from '../say/how-far.ts';
import type { Said as AnySaid, Statement } from '../say/statement.ts';
import { type Build, nextSide, type PartBuild, type PieceBuild } from './build/build.ts';
import { holesEnd } from './build/holes.ts';
import { isDone } from './build/part.ts';
import { MOST_ROWS, rowHeight } from './build/push-row.ts';
import { firstDue } from './build/track.ts';
import { isByLengths } from './by-lengths.ts';
import { inRows } from './shape.ts';

type Said = Extract<Statement, { is: 'buttonholes' }>;

/** 'a buttonhole every 16th row': from the next row on, as often as it is said, or up to the neck. */
export function doButtonholes(build: Build, said: Said, ahead: readonly AnySaid[]): Fault | undefined {
  const next = ahead[0]?.statement.is;
  if (said.omitted && next !== 'as for' && next !== 'other side') return noHole();
  if (said.omitted) {
    build.omits = { met: false, doubt: false };
    return undefined;
  }
  const part = isDone(build.part) ? undefined : build.part;
  // for the piece that is begun behind it: 'work as for left front, making buttonholes every 12th row'
  if (part === undefined && said.beats.length > 0) build.holesNext = said;
  if (part === undefined && said.beats.length === 0) return fault('place not known');
  return part && build.piece && layHoles(build, build.piece, part, said);
}

export function layHoles(build: Build, piece: PieceBuild, part: PartBuild, said: Said): Fault | undefined {
  const { items, words = '' } = said;
  const beats = fromHere(said.beats, part);
  if (beats.length === 0) return fault('place not known');
  const measured = isByLengths(build, part, beats);
  if (items) build.hole = { rows: [items], side: 'RS', fabric: part.fabric };
  const first = part.rows.length;
  const height = rowHeight(build, part);
  const last = part.rows.map(({ hole, before, after }) => hole === true && before >= after).lastIndexOf(true);
  const since = last < 0 ? undefined : first - last;
  const inTurn = beats.map((beat, i) => {
    const turn = inRows(beat, height);
    // 'after the first 2 cm': the row behind them, on the right side
    const after = i === 0 && beat.everyMm !== undefined && beat.times === 1 && beats.length > 1;
    return after ? { ...turn, first: turn.every + (nextSide(part) === 'RS' ? 1 : 0) } : turn;
  });
  const at = measured ? [] : offsets(inTurn, nextSide(part), since).map((i) => first + i);
  const counted = beats.at(-1)?.times !== undefined;
  part.holes = { at, first, words, line: build.line, counted, measured, part, piece, note: undefined };
  build.holes.push(part.holes);
  return undefined;
}

/** 'when piece measures 6 cm': so much further than where the row in hand, or the hole before it, is. */
function fromHere(beats: readonly Beat[], part: PartBuild): Beat[] {
  let at = part.baseHeight + part.height;
  return beats.map((beat) => {
    const mm = beat.everyMm !== undefined && beat.whole ? beat.everyMm - at : beat.everyMm;
    at += mm ?? 0;
    return mm === undefined ? beat : { ...beat, everyMm: mm };
  });
}

/** What was left out has to have been there, where any row looks as if it might be one. */
export function doneOmitting(build: Build): Fault | undefined {
  const { omits } = build;
  build.omits = undefined;
  return omits?.left || (omits?.met === false && omits.doubt) ? noHole() : undefined;
}

export const noHole = (): Fault => fault('row not known', { rowName: 'buttonhole' });

/** Rows from the next one on, that one being 0; `since`: rows since the last buttonhole, from which a bare rhythm counts. */
function offsets(beats: readonly Beat[], side: Side, since: number | undefined): number[] {
  const out: number[] = [];
  const goesOn = since !== undefined && beats[0]?.first === undefined && beats[0]?.side === undefined;
  let at = goesOn ? -since : -1;
  beats.forEach((beat, i) => {
    const every = Math.max(1, beat.every);
    const times = Math.min(beat.times ?? MOST_ROWS, MOST_ROWS);
    for (let n = 0; n < times && at < MOST_ROWS; n += 1) {
      do at += n > 0 || goesOn ? every : firstDue(beat, i === 0, side);
      while (at < 0);
      out.push(at);
    }
  });
  return out;
}

/** What was asked for and lies in no row: told where it was said. */
export function tellHoles({ holes }: Build): void {
  for (const one of holes) {
    const { at, counted, measured, words, part, line, note } = one;
    const end = Math.min(part.rows.length, holesEnd(one));
    // the row that binds all off has none
    const missed = at.some((i) => (counted || (i < end && part.rows[i]?.after !== 0)) && !part.rows[i]?.hole);
    const none = measured ? !part.rows.some(({ own }) => own === words) : !at.some((i) => part.rows[i]?.hole);
    if (missed || none) note?.faults.push({ ...fault('place not known'), at: { line } });
  }
}
