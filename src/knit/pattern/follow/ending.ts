import { type Fault, fault } from '../../fault.ts';
import type { Statement } from '../say/statement.ts';
import type { Build, PartBuild, PieceBuild } from './build/build.ts';
import { endDiffers } from './build/end-differs.ts';
import { makeWrittenRow } from './build/make-row.ts';
import { evenRows } from './build/run-rows.ts';
import { lastSide } from './build/target.ts';
import { wantSide } from './build/want-side.ts';

/**
 * ', ending with a WS row': a shaping takes one row more to get there, and so does a stretch given as a length; rows that
 * are counted cannot, and the contradiction is told.
 */
export function doEnding(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  said: Extract<Statement, { is: 'ending' }>,
): Fault | undefined {
  const differs = endDiffers(piece, part, said);
  if (differs === undefined) return toRow(build, part, said.endRow);
  const before = build.recent.at(-1)?.statement.is;
  if (part.rows.at(-1)?.kind === 'stretch' && wantSide(build, part, lastSide(part))) return undefined;
  // 'rep these 2 rows until 24 sts remain, ending with a purl row': the other one of them once more
  const other = part.rows.at(-2);
  if (before === 'repeat rows' && other?.items && other.before === other.after)
    return makeWrittenRow(build, part, other.items);
  return before === 'shape' || before === 'repeat named' ? evenRows(build, part, 1, 'even') : differs;
}

/** '…, ending with row 2' behind rows that are worked again by their numbers: the one that comes next, or told. */
function toRow(build: Build, part: PartBuild, endRow = 0): Fault | undefined {
  const rows = part.cycle?.rows;
  const wanted = rows?.get(endRow);
  const last = part.rows.at(-1)?.items;
  if (rows === undefined || wanted === undefined || last === wanted) return undefined;
  const made = part.rows.find(({ items }) => items === wanted);
  return rows.get(endRow - 1) === last && made?.before === made?.after
    ? makeWrittenRow(build, part, wanted)
    : fault('place not known');
}
