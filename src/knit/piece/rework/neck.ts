import { fault, ok, type Result, refuse } from '../../fault.ts';
import type { PartRecipe } from '../recipe.ts';
import { withRows } from './lay-anew.ts';
import { put } from './put.ts';
import type { Job } from './replan.ts';
import { splitAt } from './split-at.ts';

/**
 * A neck that begins `rows` rows earlier (below zero: later): the part in hand ends so much sooner and the parts that
 * go on from it are so much longer, with the shaping of the neck laid anew over them. Shoulders stay where they are.
 */
export function deeperNeck(
  { recipe, index, part, worked, base }: Job,
  rows: number,
): Result<ReadonlyMap<number, PartRecipe>> {
  if (base.end !== 'split' || rows === 0 || rows % 2 !== 0) {
    return refuse(fault('no neck ahead'));
  }
  const { done, rest } = splitAt(base, part, worked);
  const last = rest[rest.length - 1];
  if (!last || last.rows - rows < 0) {
    return refuse(fault('too few rows before the neck', { leftRows: last?.rows ?? 0 }));
  }
  const shorter = withRows(last, last.rows - rows, 'what fits');
  if (!shorter.ok) return shorter;
  const changed = new Map<number, PartRecipe>([
    [index, { ...base, sections: [...done, ...rest.slice(0, -1), shorter.value] }],
  ]);
  for (const [i, child] of recipe.parts.entries()) {
    if (!('part' in child.from) || child.from.part !== base.name || child.from.edge === 'middle') continue;
    const longer = longerChild(child, rows);
    if (!longer.ok) return longer;
    changed.set(i, longer.value);
  }
  return ok(changed);
}

function longerChild(child: PartRecipe, rows: number): Result<PartRecipe> {
  const at = Math.max(
    0,
    child.sections.findIndex((section) => section.shaping.some((s) => s.kind === 'edge')),
  );
  const neck = child.sections[at];
  if (!neck) return ok(child);
  const made = withRows(neck, neck.rows + rows);
  return made.ok ? ok({ ...child, sections: put(child.sections, at, made.value) }) : made;
}
