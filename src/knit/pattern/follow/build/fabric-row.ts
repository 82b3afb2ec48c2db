import { type Fault, fault, ok, type Result, refuse } from '../../../fault.ts';
import type { Edge } from '../../../piece/recipe.ts';
import type { Item } from '../../../row/read/notation.ts';
import { addRun, type Run, shorten } from '../../../row/shorten.ts';
import type { Side, Step } from '../../../row/step.ts';
import { runOf, stitchOf, takenAndMade } from '../../../row/stitches-of-steps.ts';
import { type StitchName, stitches } from '../../../stitch.ts';
import { hasBorders, makeBorderedRow, spellPart } from './borders.ts';
import { type Build, nextSide, otherEdge, type PartBuild } from './build.ts';
import type { Edit } from './edit.ts';
import { makeWrittenRow } from './make-row.ts';
import { type Kind, pushRow } from './push-row.ts';
import { takeToldFabric } from './told-section.ts';

/** A row of the fabric on the needle, with what happens at its edges. */
export function makeFabricRow(
  build: Build,
  part: PartBuild,
  edits: readonly Edit[],
  kind: Kind,
): Fault | undefined {
  takeToldFabric(part);
  const side = nextSide(part);
  const spelled = edits.length === 0 ? spelledRow(build, part, kind) : ok(false);
  if (!spelled.ok) return spelled.faults[0];
  if (spelled.value) return undefined;
  const key = wordedKey(part, side, edits);
  const known = key === undefined ? undefined : build.worded.get(key);
  const made = known ? ok(known) : fabricSteps(part, side, edits);
  if (!made.ok) return made.faults[0];
  const steps = made.value;
  if (known === undefined && key !== undefined) build.worded.set(key, steps);
  const column =
    part.column + edits.reduce((sum, edit) => sum + (edit.at === 'right' ? -changeOf(edit) : 0), 0);
  const shift = edits.reduce((sum, edit) => sum + (edit.at === 'right' ? changeOf(edit) : 0), 0);
  const wrong = pushRow(build, part, steps, { kind, edits, advance: true, column });
  if (wrong) return wrong;
  part.unworked = 0;
  part.markers = part.markers.map((m) => Math.max(0, Math.min(part.live, m + shift)));
  return undefined;
}

/** The row of the fabric with its edges shaped, in its shortest wording. */
function fabricSteps(part: PartBuild, side: Side, edits: readonly Edit[]): Result<readonly Step[]> {
  const live = part.live - part.unworked;
  const base = spellPart(part, side, live) ?? new Array<StitchName>(live).fill('patt');
  if (side === 'WS') base.reverse();
  const begin = side === 'RS' ? 'right' : 'left';
  const runs: Run[] = [];
  if (part.unworked > 0) addRun(runs, 'unworked', part.unworked);
  const atBegin = edits.filter((edit) => edit.at === begin);
  const atEnd = edits.filter((edit) => edit.at !== begin);
  // what is kept at an edge is shaped inside
  const kept = keptBefore(part, atBegin, begin);
  for (let i = 0; i < kept; i += 1) addRun(runs, base[i] ?? 'k', 1);
  const from = kept + editRuns(atBegin, runs);
  const tail: Run[] = [];
  const keptLast = keptBefore(part, atEnd, otherEdge(begin));
  for (let i = 1; i <= keptLast; i += 1) addRun(tail, base[live - i] ?? 'k', 1);
  const cut = keptLast + editRuns(atEnd, tail);
  if (from + cut > live) {
    return refuse(fault('not enough stitches', { needStitches: from + cut, haveStitches: live }));
  }
  for (let i = from; i < live - cut; i += 1) addRun(runs, base[i] ?? 'k', 1);
  for (const run of tail.reverse()) addRun(runs, run.work, run.times);
  return ok(openPattern(shorten(runs)));
}

/** Stitches that are kept between an edge and what shapes it; stitches bound off or cast on lie at the very edge. */
const keptBefore = (part: PartBuild, edits: readonly Edit[], edge: Edge): number =>
  edits.length > 0 && edits.every(({ work }) => work === undefined) ? (part.borders[edge]?.stitches ?? 0) : 0;

/** 'work in pattern to last 2 sts' instead of a number that nobody wants to count. */
function openPattern(steps: readonly Step[]): Step[] {
  return steps.map((step, i): Step => {
    const after = steps.slice(i + 1);
    if (stitchOf(step) !== 'patt' || !after.every((one) => runOf(one))) return step;
    return { work: 'patt', until: { left: takenAndMade(after)?.takes ?? 0 } };
  });
}

/** Rows of a face on the same stitches and columns, shaped alike, are worded alike. */
function wordedKey(part: PartBuild, side: Side, edits: readonly Edit[]): string | undefined {
  const { fabric } = part;
  if (fabric.is !== 'face' || part.unworked > 0 || hasBorders(part)) return undefined;
  const row = fabric.rows[part.fabricRow % fabric.rows.length] ?? 'k';
  const column = ((part.column % row.length) + row.length) % row.length;
  return `${row}/${side}/${column}/${part.live}/${JSON.stringify(edits)}`;
}

export const changeOf = (edit: Edit): number =>
  edit.work === undefined ? edit.change : edit.work === 'bo' ? -edit.stitches : edit.stitches;

/** The stitches of the edits at one edge; returns how many of the needle they take. */
function editRuns(edits: readonly Edit[], runs: Run[]): number {
  let taken = 0;
  for (const edit of edits) {
    if (edit.work) {
      addRun(runs, edit.work, edit.stitches);
      if (edit.work === 'bo') taken += edit.stitches;
      continue;
    }
    const work = workOfChange(edit.change);
    addRun(runs, work.name, work.times);
    taken += stitches[work.name].takes * work.times;
  }
  return taken;
}

function workOfChange(change: number): { name: StitchName; times: number } {
  if (change < 0) return change === -2 ? { name: 'dec 2', times: 1 } : { name: 'dec', times: -change };
  return change === 2 ? { name: 'inc 2', times: 1 } : { name: 'inc', times: change };
}

const asIs = (items: readonly Item[]): readonly Item[] => items;

/** Works the row that the text spelled, when it comes out on the stitches that are there now; says whether it did. */
function spelledRow(build: Build, part: PartBuild, kind: Kind): Result<boolean> {
  const { fabric } = part;
  if (fabric.is !== 'rows' || fabric.rows.length === 0) return ok(false);
  const items = fabric.rows[part.fabricRow % fabric.rows.length] ?? [];
  const before = part.rows.length;
  const wrong = hasBorders(part)
    ? makeBorderedRow(build, part, items, kind)
    : // what was worked before goes on by its columns where its words do not come out
      makeWrittenRow(build, part, items, kind, [], fabric.faces.length > 0 ? asIs : undefined);
  if (wrong === undefined) {
    if (!hasBorders(part) && !items.some((item) => 'work' in item && item.work === 'patt'))
      part.fabricRow += 1;
    return ok(true);
  }
  const isBound = part.fabricRow < fabric.rows.length && fabric.faces.length === 0;
  return isBound || part.rows.length !== before ? refuse(wrong) : ok(false);
}
