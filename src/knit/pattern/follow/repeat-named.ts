import { type Fault, fault } from '../../fault.ts';
import { END } from '../../row/read/notation.ts';
import { settle } from '../../row/read/settle.ts';
import { workRow } from '../../row/work.ts';
import type { Beat } from '../say/how-far.ts';
import type { Statement } from '../say/statement.ts';
import { type Build, type MadeRow, nextSide, type PartBuild, type PieceBuild } from './build/build.ts';
import { rowsBetween } from './build/cycle.ts';
import { makeWrittenRow } from './build/make-row.ts';
import { backgroundEdits, row, settleBackground } from './build/run-rows.ts';
import { plainWork } from './build/spell.ts';
import { nextEdits, settleTrack } from './build/track.ts';
import { isByLengths, workByLengths } from './by-lengths.ts';
import { trackOf } from './shape.ts';

/** 'Work dec row every other row a total of 6 times': the dec row that was spelled out is the first of them. */
function withoutFirst(beats: readonly Beat[], worked: boolean): readonly Beat[] {
  const [first, ...more] = beats;
  if (!worked || !first?.total || first.times === undefined) return beats;
  return [{ ...first, times: Math.max(0, first.times - 1) }, ...more];
}

/** 'Dec row. Work 3 rows. Rep dec row every 4th row': the first of them is counted from the row that was worked last. */
function fromLast(
  beats: readonly Beat[],
  { rows }: PartBuild,
  isLast: (row: MadeRow) => boolean,
): readonly Beat[] {
  const [first, ...more] = beats;
  if (first === undefined || first.first !== undefined || first.side !== undefined || first.everyMm)
    return beats;
  const since = [...rows].reverse().findIndex(isLast);
  return since > 0 && since < first.every ? [{ ...first, first: first.every - since }, ...more] : beats;
}

/** 'rep dec row every other row 3 times more': the named row where it is due, the fabric between. */
export function doRepeatNamed(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  said: Extract<Statement, { is: 'repeat named' }>,
  stated: number | undefined,
): Fault | undefined {
  const n = said.number;
  const last = said.name === '' ? lastShaped(part, said.change) : undefined;
  if (said.name === '' && (last === undefined || last.own !== undefined)) return fault('no rows to repeat');
  if (last && last.items === undefined) return repeatEdits(build, piece, part, said, last, stated);
  const items = last?.items ?? (n === undefined ? part.named.get(said.name) : rowsBetween(part, n, n)[0]);
  if (items === undefined) return fault('row not known', { rowName: said.name });
  const settled = settle(items, { stitches: part.live, markers: [] });
  const worked = settled.ok ? workRow(settled.value.steps, part.live) : settled;
  const change = worked.ok && 'after' in worked.value ? worked.value.after - part.live : 0;
  const beats = withoutFirst(said.beats, part.rows.at(-1)?.items === items);
  if (isByLengths(build, part, beats))
    return workByLengths(build, piece, part, beats, change, () => makeWrittenRow(build, part, items, 'row'));
  const track = trackOf(
    build,
    piece,
    part,
    {
      is: 'shape',
      change: change || -1,
      edge: 'right',
      beats: fromLast(beats, part, (row) => row.items === items),
    },
    stated,
  );
  while (!track.ended && part.live > 0) {
    const due = nextEdits(track, part).length > 0;
    const wrong = due
      ? makeWrittenRow(build, part, items, 'row', backgroundEdits(build, part))
      : between(build, part, n !== undefined);
    if (wrong) return wrong;
    if (due) settleBackground(build, part);
    settleTrack(track, part);
  }
  return undefined;
}

function lastShaped({ rows }: PartBuild, sign: number | undefined): MadeRow | undefined {
  for (let i = rows.length - 1; i >= 0; i -= 1) {
    const row = rows[i] as MadeRow;
    const change = row.after - row.before;
    if (change !== 0 && change * (sign ?? change) > 0) return row;
  }
  return undefined;
}

/** A row of the fabric whose edges were shaped: they are shaped alike where it is due. */
function repeatEdits(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  said: Extract<Statement, { is: 'repeat named' }>,
  last: MadeRow,
  stated: number | undefined,
): Fault | undefined {
  const change = last.after - last.before;
  if (isByLengths(build, part, said.beats))
    return workByLengths(build, piece, part, withoutFirst(said.beats, true), change, () =>
      row(build, part, last.edits, 'shape'),
    );
  const track = trackOf(
    build,
    piece,
    part,
    {
      is: 'shape',
      change,
      edge: 'right',
      beats: fromLast(withoutFirst(said.beats, true), part, (row) => row === last),
    },
    stated,
  );
  while (!track.ended && part.live > 0) {
    const due = nextEdits(track, part).length > 0;
    const wrong = row(build, part, due ? last.edits : [], due ? 'shape' : 'even');
    if (wrong) return wrong;
    settleTrack(track, part);
  }
  return undefined;
}

/** A row between: as the last one of its side was, where the text tells of numbered rows; else the fabric on the needle. */
function between(build: Build, part: PartBuild, asBefore: boolean): Fault | undefined {
  const side = nextSide(part);
  const last = asBefore ? part.rows.slice(-2).find((one) => one.side === side) : undefined;
  const work = last && plainWork(last, side);
  return work
    ? makeWrittenRow(build, part, [{ is: 'stitches to', work, goal: END }], 'even')
    : row(build, part, [], 'even');
}
