import type { Result } from '../../knit/fault.ts';
import type { Joint, Stretch } from '../../knit/making-up/joint.ts';
import { jointsInGauge } from '../../knit/making-up/joints-in-gauge.ts';
import { workJoints } from '../../knit/making-up/work-making-up.ts';
import { asPlanned } from '../../knit/piece/as-planned.ts';
import type { Edge, PartRecipe, Recipe } from '../../knit/piece/recipe.ts';
import type { Nudge } from '../../knit/piece/regauge/part-in-gauge.ts';

/** Nearest first: what is sewn in is made a little higher or lower, or a little wider or narrower. */
const ROWS = [2, -2, 4, -4, 6, -6, 8, -8];
const TIMES = [-1, 1, -2, 2];
const EDGES = ['left', 'right', undefined] as const;

interface Asked {
  readonly pieces: readonly Recipe[];
  /** as they are told of the pieces before */
  readonly joints: readonly Joint[];
  readonly before: readonly Recipe[];
  readonly again: (piece: Recipe, nudges: readonly Nudge[]) => Result<Recipe>;
}

/**
 * A sleeve's top that came out longer or shorter than its armhole is worked over a few rows more or fewer, or shaped once
 * more or less often below it, until it meets it; a shoulder that came out a stitch wider or narrower than the other is
 * left so many more or fewer by its neck. It stays as it was where nothing helps.
 */
export function meeting({ pieces, joints, before, again }: Asked): readonly Recipe[] {
  const off = (all: readonly Recipe[]): ReturnType<typeof lengthsOff> =>
    lengthsOff(all, jointsInGauge(joints, before, all), joints);
  let now = pieces;
  let left = off(now);
  // one piece may be changed for several seams
  const taken = new Map<Recipe, readonly Nudge[]>();
  for (const { lines, byRows } of left)
    for (const line of lines) {
      const [at] = line;
      const index = before.findIndex(({ name }) => name === at?.piece);
      const piece = before[index];
      if (!at || !piece || left.length === 0) continue;
      const helps = nudgesAt(piece, line, byRows).find((nudge) => {
        const isOther = (one: Nudge) => one.part !== nudge.part || one.section !== nudge.section;
        const nudges = [...(taken.get(piece)?.filter(isOther) ?? []), nudge];
        const made = again(piece, nudges);
        if (!made.ok) return false;
        const tried = now.map((one, i) => (i === index ? made.value : one));
        const still = off(tried);
        if (still.length >= left.length) return false;
        [now, left] = [tried, still];
        taken.set(piece, nudges);
        return true;
      });
      if (helps) break;
    }
  return now;
}

interface Off {
  /** as they were told before: what may be changed, the likelier first */
  readonly lines: readonly (readonly Stretch[])[];
  readonly byRows: boolean;
}

/** Seams that are measured and do not come out as long, and shoulders that have not as many stitches. */
function lengthsOff(
  pieces: readonly Recipe[],
  joints: readonly Joint[],
  told: readonly Joint[],
): readonly Off[] {
  const planned = asPlanned({ name: '', pieces });
  if (!planned.ok) return [];
  return workJoints(joints, planned.value).troubles.flatMap((one): Off[] => {
    if (one.kind !== 'do not meet') return [];
    const joint = told[one.joint];
    if (joint?.kind !== 'seam') return [];
    if (joint.of === 'shoulder') return [{ lines: [joint.a, joint.b], byRows: false }];
    return one.unit === 'mm' ? [{ lines: [joint.a], byRows: true }] : [];
  });
}

/** Of a cap the rows along its edge; of a straight top, how often the sleeve is shaped; of a shoulder, how often its neck is. */
function nudgesAt({ parts }: Recipe, line: readonly Stretch[], byRows: boolean): readonly Nudge[] {
  const side = line.find(({ edge }) => edge === 'left' || edge === 'right') ?? line[0];
  const part = parts.find(({ name }) => name === side?.part);
  if (!part || !side) return [];
  const cap = sectionOf(part, side);
  const shaped = part.sections.reduce(
    (found, { shaping }, i) => (shaping.some(({ kind }) => kind === 'edge') ? i : found),
    -1,
  );
  const at = (section: number, rows: number, times: number, edge?: Edge): Nudge => ({
    part: part.name,
    section,
    rows,
    times,
    ...(edge && { edge }),
  });
  if (byRows)
    return [
      ...(cap < 0 ? [] : ROWS.map((rows) => at(cap, rows, 0))),
      ...(shaped < 0 ? [] : TIMES.map((times) => at(shaped, 0, times))),
    ];
  // a neck's edge alone first: at the other one may be an armhole's
  return part.sections.flatMap(({ shaping }, i) => {
    if (!shaping.some(({ kind }) => kind === 'edge' || kind === 'bind off')) return [];
    return EDGES.flatMap((edge) => TIMES.map((times) => at(i, 0, times, edge)));
  });
}

/** The section that a stretch of a side lies along, if groups are bound off or cast on in it: a cap. */
function sectionOf({ sections }: PartRecipe, { sections: names, rows }: Stretch): number {
  let first = 1;
  const starts = sections.map((section) => {
    first += section.rows;
    return first - section.rows;
  });
  return sections.findIndex(
    ({ name, shaping, rows: own }, i) =>
      shaping.some(({ kind }) => kind === 'bind off' || kind === 'cast on') &&
      (names?.includes(name) ??
        (rows === undefined || ((starts[i] ?? 0) <= rows.last && (starts[i] ?? 0) + own > rows.first))),
  );
}
