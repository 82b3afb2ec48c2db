import type { FabricName } from '../fabric.ts';
import { type Fault, fault, ok, placed, type Result, refuse } from '../fault.ts';
import { heightOf, widthOf } from '../gauge.ts';
import { shorten } from '../row/shorten.ts';
import { otherSide, type Side, type Step } from '../row/step.ts';
import { checkRecipe } from './check-recipe.ts';
import { withGaps } from './gaps.ts';
import { gaugeOf } from './gauges.ts';
import { mirrorRecipe } from './mirror.ts';
import { type Columns, freshColumns } from './needle.ts';
import { type Needle, type SpelledOut, spellOut } from './part-rows.ts';
import { partWidths, rightEdgeShift } from './part-shape.ts';
import type { Plan, PlannedPart, PlannedRow, PlannedSection, ProvenPart } from './planned.ts';
import { provePart, proveYarn } from './prove.ts';
import type { PartRecipe, Recipe } from './recipe.ts';
import { allWorked } from './row-setting.ts';
import { type WorkBudget, workBudget } from './work-budget.ts';
import { withJoins } from './yarn-end.ts';

/**
 * Spells a recipe out row by row and works every row over its stitches.
 * @param budget how much may be worked, where several pieces share it
 * @returns the plan, or every fault found, each with the piece, part, section and row that it speaks of
 */
export function plan(recipe: Recipe, budget: WorkBudget = workBudget()): Result<Plan> {
  const parts = planParts(recipe, budget);
  if (!parts.ok) return parts;
  const { name, makes } = recipe;
  if (!recipe.mirrored || makes < 2) return ok({ name, makes, mirrored: false, parts: parts.value });
  const mirror = planParts(mirrorRecipe(recipe), budget);
  if (!mirror.ok) return mirror;
  return ok({ name, makes, mirrored: true, parts: parts.value, mirrorParts: mirror.value });
}

/** What a part leaves for those that go on from it. */
interface Rested {
  readonly part: ProvenPart;
  readonly needle: Needle;
  /** mm from the piece's right cast-on edge to its right edge now */
  readonly right: number;
  taken: { right: number; middle: number; left: number };
}

function planParts(recipe: Recipe, budget: WorkBudget): Result<ProvenPart[]> {
  const faults = checkRecipe(recipe);
  if (faults.length > 0) return refuse(...faults);
  const rested = new Map<string, Rested>();
  const out: ProvenPart[] = [];
  for (const part of recipe.parts) {
    const start = startOf(part, recipe, rested);
    if (!start.ok)
      return refuse(...start.faults.map((f) => placed(f, { piece: recipe.name, part: part.name })));
    const made = planPart(recipe, part, start.value, budget);
    if (!made.ok)
      return refuse(...made.faults.map((f) => placed(f, { piece: recipe.name, part: part.name })));
    out.push(made.value.part);
    rested.set(part.name, made.value);
  }
  const unshared = [...rested.values()].flatMap((r) => notShared(recipe, r));
  return unshared.length > 0 ? refuse(...unshared) : ok(out);
}

interface PartInHand {
  readonly needle: Needle;
  readonly setUp: readonly Step[];
  readonly right: number;
  readonly parent?: string;
  /** a stitch and a row of what it rests on, mm, and its fabric */
  readonly cell?: Cell | undefined;
  readonly fabric?: FabricName | undefined;
}

function startOf(part: PartRecipe, recipe: Recipe, rested: ReadonlyMap<string, Rested>): Result<PartInHand> {
  const { from } = part;
  if ('part' in from) return takeFrom(part, from, recipe, rested);
  const picked = 'pickUp' in from;
  const counts = picked ? from.pickUp.map((p) => p.stitches) : [from.castOn];
  const count = counts.reduce((sum, n) => sum + n, 0);
  const side = part.firstSide ?? (picked ? 'WS' : 'RS');
  const setUp = counts.map(
    (times, i): Step => ({ work: picked ? (from.pickUp[i]?.held ? 'take' : 'pu') : 'co', times }),
  );
  return ok({ needle: freshNeedle(count, side), setUp, right: 0 });
}

const freshNeedle = (count: number, side: Side): Needle => ({
  columns: freshColumns(count),
  side,
  phase: side === 'RS' ? 0 : 1,
  height: 0,
  fabric: undefined,
  mm: undefined,
  unworked: allWorked,
  turned: 0,
  turnedBefore: 0,
  gaps: [],
});

function takeFrom(
  part: PartRecipe,
  from: Extract<PartRecipe['from'], { part: string }>,
  recipe: Recipe,
  rested: ReadonlyMap<string, Rested>,
): Result<PartInHand> {
  const parent = rested.get(from.part);
  if (!parent) return refuse(fault('no such part'));
  const { columns } = parent.needle;
  const { taken } = parent;
  const rightInAll = recipe.parts.reduce(
    (sum, { from: f }) => sum + ('part' in f && f.part === from.part && f.edge === 'right' ? f.stitches : 0),
    0,
  );
  const at =
    from.edge === 'right'
      ? taken.right
      : from.edge === 'middle'
        ? rightInAll + taken.middle
        : columns.length - taken.left - from.stitches;
  if (at < 0 || at + from.stitches > columns.length) {
    return refuse(
      fault('split too wide', { name: from.part, haveStitches: columns.length }, { field: 'stitches' }),
    );
  }
  taken[from.edge] += from.stitches;
  const cell = parent.part.cells[parent.part.cells.length - 1];
  const { unworked, turned, turnedBefore, gaps, side } = parent.needle;
  // the yarn comes along where the part has the edge at which it hangs
  const hangsHere = from.edge === (side === 'RS' ? 'right' : 'left');
  const needle = restart(
    {
      ...parent.needle,
      turned: hangsHere ? turned : 0,
      turnedBefore: hangsHere ? 0 : turnedBefore,
      gaps: gaps.filter((gap) => gap.edge === from.edge),
      columns: columns.slice(at, at + from.stitches),
      unworked: {
        right: from.edge === 'right' ? unworked.right : 0,
        left: from.edge === 'left' ? unworked.left : 0,
      },
    },
    part.firstSide,
  );
  const setUp: Step[] = [{ work: 'take', times: from.stitches }];
  const fabric = parent.part.sections.at(-1)?.fabric;
  return ok({
    needle,
    setUp,
    right: parent.right + at * (cell?.width ?? 0),
    parent: from.part,
    cell,
    fabric,
  });
}

/** A side asked for that is not the next one: the rows of the fabric shift by one. */
const restart = (needle: Needle, side: Side | undefined): Needle =>
  side === undefined || side === needle.side
    ? needle
    : { ...needle, side, phase: needle.phase + 1, turned: 0, turnedBefore: 0 };

type Cell = PlannedPart['cells'][number];

function planPart(recipe: Recipe, part: PartRecipe, start: PartInHand, budget: WorkBudget): Result<Rested> {
  const { needle, setUp, right, parent, cell, fabric: below } = start;
  const base = needle.height;
  const before: Columns = needle.columns;
  const cellOf = (fabric: FabricName): Cell => {
    const gauge = gaugeOf(recipe, fabric);
    return { width: widthOf(1, gauge), height: heightOf(1, gauge) };
  };
  const cells = part.sections.map(({ fabric, measured }): Cell => {
    const { width, height } = cellOf(fabric);
    return { width, height: measured?.rowMm ?? height };
  });
  // of a part without rows of its own: as the rows that it rests on, also where these are told in words
  const bare = cell ?? cellOf(needle.fabric ?? 'stocking');
  const spelled = spellOut(
    part,
    needle,
    cells.map((c) => c.height),
    budget,
  );
  if (!spelled.ok) return spelled;
  const { rows: worked, sections } =
    part.end === 'bind off' ? withBindOff(spelled.value, part, needle, below) : spelled.value;
  const rows = withJoins(worked);
  const planned: PlannedPart = {
    piece: recipe.name,
    name: part.name,
    from: part.from,
    end: part.end,
    setUp,
    sections,
    rows,
    start: before.length,
    left: rows[rows.length - 1]?.after ?? before.length,
    base,
    offset: right,
    cells:
      sections.length > cells.length ? [...cells, cells.at(-1) ?? bare] : cells.length > 0 ? cells : [bare],
    ...(parent === undefined ? {} : { parent }),
  };
  const proven = provePart(planned);
  const faults = [...(proven.ok ? [] : proven.faults), ...proveYarn(planned)];
  if (!proven.ok || faults.length > 0) return refuse(...faults);
  const shift = rightEdgeShift(planned, partWidths(planned));
  return ok({ part: proven.value, needle, right: right + shift, taken: { right: 0, middle: 0, left: 0 } });
}

/** For a part that is bound off at once and goes on from none: a usual needle for a medium yarn. */
const UNKNOWN_NEEDLE_MM = 4;

/** Name of the one-row section in which a part is bound off. */
export const BIND_OFF = 'bind off';

/** A part that is bound off ends with one row more, which takes no height of its own. */
function withBindOff(
  { rows, sections }: SpelledOut,
  part: PartRecipe,
  needle: Needle,
  below?: FabricName,
): SpelledOut {
  const count = needle.columns.length;
  if (count === 0) return { rows, sections };
  const last = part.sections[part.sections.length - 1];
  const n = rows.length + 1;
  const row: PlannedRow = {
    n,
    side: needle.side,
    section: sections.length,
    needle: last?.needle ?? needle.mm ?? UNKNOWN_NEEDLE_MM,
    steps: shorten(withGaps([{ work: 'bo', times: count }], needle.side, needle.gaps, undefined).runs),
    before: count,
    after: 0,
    shaping: [{ kind: 'bind off', edge: 'across', by: -count }],
    height: needle.height,
  };
  const section: PlannedSection = {
    name: BIND_OFF,
    fabric: last?.fabric ?? needle.fabric ?? below ?? 'stocking',
    needle: row.needle,
    first: n,
    last: n,
  };
  needle.side = otherSide(needle.side);
  needle.phase += 1;
  needle.columns = [];
  return { rows: [...rows, row], sections: [...sections, section] };
}

/** A split must hand on every stitch. */
function notShared(recipe: Recipe, { part, taken }: Rested): Fault[] {
  const sum = taken.right + taken.middle + taken.left;
  if (part.end !== 'split' && sum === 0) return [];
  if (sum === part.left) return [];
  return [
    fault(
      'split does not share',
      { name: part.name, leftStitches: part.left, sumStitches: sum },
      { piece: recipe.name, part: part.name, field: 'end' },
    ),
  ];
}
