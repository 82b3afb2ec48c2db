import { factsOf } from '../../../fabric-facts.ts';
import type { Fault } from '../../../fault.ts';
import { expandRow } from '../../../row/expand.ts';
import { mirrorStitches, otherFaces } from '../../../row/mirror-stitches.ts';
import { shortenWorks } from '../../../row/shorten.ts';
import type { Step } from '../../../row/step.ts';
import { stitchesNamed, stitchOf } from '../../../row/stitches-of-steps.ts';
import { bindOffAll } from './bind-off.ts';
import {
  type Borders,
  type Build,
  type MadeRow,
  nextSide,
  otherEdge,
  type PartBuild,
  type PieceBuild,
  startEdge,
} from './build.ts';
import { isSpelled } from './cut-by-fabric.ts';
import type { Edit } from './edit.ts';
import { unknownFabric } from './fabric.ts';
import { makeFabricRow } from './fabric-row.ts';
import { gapOf } from './gap.ts';
import { makeOwnRow, makeSpreadRow, makeWrittenRow } from './make-row.ts';
import { neckOf } from './part.ts';
import { pushRow, tellRow } from './push-row.ts';
import { row } from './run-rows.ts';
import { plainWork } from './spell.ts';

/** How another part's rows are taken over. */
export interface Copying {
  /** as its mirror image */
  readonly mirrored: boolean;
  /** a half of it: only what lies at the armhole edge */
  readonly half: boolean;
}

/** Works the rows of another part from one to another (counted from 0, `to` not included) again in this one. */
export function copyRows(
  build: Build,
  piece: PieceBuild,
  from: PartBuild,
  part: PartBuild,
  first: number,
  to: number,
  how: Copying,
): Fault | undefined {
  let ahead = 0;
  for (let i = first; i < Math.min(to, from.rows.length); i += 1) {
    const made = from.rows[i] as MadeRow;
    const edits = editsFor(made.edits, piece, part, how);
    if (ahead > 0 && made.edits.length === 0 && made.items === undefined && made.before === made.after) {
      ahead -= 1;
      continue;
    }
    part.fabric = made.fabric;
    part.yarn = made.yarn;
    part.borders = bordersFor(made.borders, piece, part, how);
    part.fabricRow = made.fabricRow + ahead;
    const group = edits.find((edit) => edit.work === 'bo');
    const wrongEdge = group
      ? group.at !== startEdge(part)
      : how.mirrored && leadsWithGroup(made) && nextSide(part) === made.side;
    if (wrongEdge) {
      const even = makeFabricRow(build, part, [], 'even');
      if (even) return even;
      ahead += 1;
      part.fabricRow = made.fabricRow + ahead;
    }
    if (made.kind === 'stretch') part.closed = part.closed || from.rows[i - 1]?.kind !== 'stretch';
    const wrong = copyRow(build, part, made, edits, how);
    if (wrong) return wrong;
    if (made.slips) tellRow(part, { slips: made.slips });
    if (part.live === 0) return undefined;
  }
  forgetFabric(from, part, to);
  return undefined;
}

/** What goes on behind a row that was not understood nobody knew there; only rows that themselves go on are known. */
function forgetFabric(from: PartBuild, part: PartBuild, to: number): void {
  const last = from.rows[Math.min(to, from.rows.length) - 1];
  const then = from.rows[to]?.fabric ?? from.fabric;
  if (last?.own !== undefined && then !== last.fabric) part.fabric = unknownFabric;
}

function copyRow(
  build: Build,
  part: PartBuild,
  made: MadeRow,
  edits: readonly Edit[],
  how: Copying,
): Fault | undefined {
  if (
    build.omits &&
    (made.own !== undefined || stitchesNamed(made.steps).some((work) => work === 'yo' || work === 'co'))
  )
    build.omits.doubt = true;
  // stitches cast on within a row close a buttonhole that nobody called so
  if (build.omits && !made.hole && stitchesNamed(made.steps).slice(1, -1).includes('co'))
    build.omits.left = true;
  if (made.hole && (build.omits || made.items === undefined)) {
    if (build.omits) build.omits.met = true;
    const wrong = row(build, part, edits, made.kind === 'row' ? 'even' : made.kind);
    if (!wrong && !build.omits) tellRow(part, { own: made.own, hole: true });
    return wrong;
  }
  if (made.own !== undefined && !(made.items && build.yarnWords.has(made.items)))
    return makeOwnRow(build, part, made.own, Math.max(0, part.live + made.after - made.before));
  if (made.kind === 'bind off') return bindOffAll(build, part);
  if (made.kind === 'across')
    return makeSpreadRow(build, part, made.after - made.before, undefined, plainWork(made, nextSide(part)));
  if (made.items) {
    const wrong = how.mirrored
      ? mirroredRow(build, part, made)
      : makeWrittenRow(build, part, made.items, made.kind);
    if (!wrong) part.gap = gapOf(part);
    return wrong;
  }
  return row(build, part, edits, made.kind);
}

/**
 * A written row as its mirror image. On the other side of the work it keeps its order and shows its other face;
 * on the same side it is read from its other end. Garter stitch is knit on both sides.
 */
function mirroredRow(build: Build, part: PartBuild, row: MadeRow): Fault | undefined {
  const inRidges = row.fabric.is === 'face' && factsOf(row.fabric.name).ridges;
  const turned = inRidges ? row.steps : turnedSteps(row.steps, row.before);
  const steps = nextSide(part) === row.side ? mirrorSteps(row.steps, row.before) : turned;
  const wrong = pushRow(build, part, steps, { kind: row.kind, advance: true });
  if (wrong && row.items) return makeWrittenRow(build, part, row.items, row.kind);
  // what it is seen to be is asked of both alike
  if (!wrong) tellRow(part, { spelled: isSpelled(row) });
  return wrong;
}

/** A group bound off at the start of a written row stays at the start of a row. */
function leadsWithGroup(row: MadeRow): boolean {
  const first = row.items === undefined ? undefined : row.steps[0];
  return first !== undefined && stitchOf(first) === 'bo' && row.after > 0;
}

function turnedSteps(steps: readonly Step[], before: number): Step[] {
  return shortenWorks(otherFaces(expandRow(steps, before)));
}

/** The row read from its other end, decreases leaning the other way. */
const mirrorSteps = (steps: readonly Step[], before: number): Step[] =>
  shortenWorks(mirrorStitches(expandRow(steps, before)));

/** What the row kept at its edges, at those that this part has. */
function bordersFor(borders: Borders, piece: PieceBuild, part: PartBuild, how: Copying): Borders {
  const { right, left } = how.mirrored ? { right: borders.left, left: borders.right } : borders;
  const neck = how.half ? neckOf(piece, part) : undefined;
  return {
    ...(right === undefined || neck === 'right' ? {} : { right }),
    ...(left === undefined || neck === 'left' ? {} : { left }),
  };
}

/** The edits at the edges where this part has them; a half keeps only those at its armhole. */
function editsFor(edits: readonly Edit[], piece: PieceBuild, part: PartBuild, how: Copying): Edit[] {
  const turned = how.mirrored ? edits.map((edit) => ({ ...edit, at: otherEdge(edit.at) })) : [...edits];
  if (!how.half) return turned;
  const neck = neckOf(piece, part);
  return turned.filter((edit) => edit.at !== neck);
}
