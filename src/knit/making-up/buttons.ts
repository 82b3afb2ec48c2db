import type { PlannedPart } from '../piece/planned.ts';
import type { StandingGarment } from '../piece/standing.ts';
import { expandRow } from '../row/expand.ts';
import type { Joint } from './joint.ts';
import { roleOf } from './role.ts';
import type { MakingUpStep } from './step.ts';

/**
 * Buttons are sewn on opposite the holes, as many stitches above the lower end of the band (common practice, no published
 * source). Undefined where no band of the fronts has holes.
 */
export function buttonsStep(
  { pieces }: Pick<StandingGarment, 'pieces'>,
  joints: readonly Joint[],
): MakingUpStep | undefined {
  const bands = pieces.filter(({ recipe }) => roleOf(recipe) === 'front band');
  for (const { recipe, makes } of bands) {
    const part = makes[0]?.parts.find(({ from }) => 'pickUp' in from);
    const holes = part ? holesIn(part) : [];
    if (!part || holes.length === 0) continue;
    const on = bands.find((other) => other.recipe.name !== recipe.name)?.recipe.name;
    const stitches = fromBelow(holes, part.start, joints, recipe.name);
    return { id: 'buttons', kind: 'buttons', band: recipe.name, stitches, ...(on !== undefined && { on }) };
  }
  return undefined;
}

/** How many holes the band has that lies over a shoulder; 0 where none does. */
export function shoulderButtons(
  { pieces }: Pick<StandingGarment, 'pieces'>,
  joints: readonly Joint[],
): number {
  const lap = joints.find((joint) => joint.kind === 'seam' && joint.of === 'lap');
  const names = lap?.kind === 'seam' ? [...lap.a, ...lap.b].map(({ piece }) => piece) : [];
  const parts = pieces
    .filter(({ recipe }) => names.includes(recipe.name) && roleOf(recipe) !== 'front band')
    .flatMap(({ makes }) => makes[0]?.parts ?? []);
  return Math.max(0, ...parts.filter(({ from }) => 'pickUp' in from).map((part) => holesIn(part).length));
}

/** Stitches from the right edge to the middle of each hole: bound off in an RS row, cast on again in the next. */
function holesIn({ rows }: PlannedPart): readonly number[] {
  const row = rows.find(
    ({ side, before, after }, i) => side === 'RS' && after < before && rows[i + 1]?.after === before,
  );
  const works = row ? expandRow(row.steps, row.before) : [];
  return works.flatMap((work, i) => {
    if (work !== 'bo' || works[i - 1] === 'bo') return [];
    const end = works.findIndex((other, j) => j > i && other !== 'bo');
    return [Math.round((i + (end < 0 ? works.length : end)) / 2)];
  });
}

/**
 * Bands are picked up from the lower end of the right front up, and down the left one: which end of the band lies below is
 * seen from the edges that it grows from. Of a band round both fronts it is the end nearer to the holes.
 */
function fromBelow(
  holes: readonly number[],
  all: number,
  joints: readonly Joint[],
  band: string,
): readonly number[] {
  const lines = joints.flatMap((joint) =>
    joint.kind === 'pick up' && joint.piece === band ? joint.along.map(({ line }) => line) : [],
  );
  const isUp = lines[0]?.[0]?.reversed !== true;
  const isDown = lines.at(-1)?.at(-1)?.reversed === true;
  const isNearer = (holes[0] ?? 0) <= all - (holes.at(-1) ?? 0);
  return (isUp && isDown ? isNearer : isUp) ? holes : holes.map((n) => all - n).reverse();
}
