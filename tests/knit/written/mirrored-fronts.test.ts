import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draft } from '../../../src/knit/garment/draft.ts';
import { garmentKinds } from '../../../src/knit/garment/kinds/garments.ts';
import { readPattern } from '../../../src/knit/pattern/read-pattern.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { PlannedPart, PlannedRow } from '../../../src/knit/piece/planned.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { expandRow } from '../../../src/knit/row/expand.ts';
import { stitches } from '../../../src/knit/stitch.ts';
import { writePattern } from '../../../src/knit/written/write-pattern.ts';
import { someDesign } from '../../arbitraries/design.ts';
import { told } from '../../told.ts';

/** RIDGELINE_DRAFTS=1000 for a whole sweep; a part of it in every run. */
const DRAFTS = Math.min(Number(process.env.RIDGELINE_DRAFTS ?? 10), 5000);

const readBack = (recipe: Recipe): Recipe | undefined => {
  const text = writePattern({ name: 'Any', pieces: [recipe] });
  if (!text.ok) throw new Error(told(text.faults));
  return readPattern(text.value).pieces[0]?.recipe;
};

/** A row without the faces of its plain stitches: half a front in rib is drafted from its first stitch on either side. */
const worked = ({ steps, before }: PlannedRow): string =>
  expandRow(steps, before)
    .map((work) =>
      work === 'k' || work === 'p' ? '-' : stitches[work].makes > stitches[work].takes ? '+' : work,
    )
    .join(' ')
    .replace(/-( -)+/g, (plain) => `${(plain.length + 1) / 2}`);

/** Each row of the second make with the count after it; of what is spread over a row only that. */
function second(recipe: Recipe | undefined): readonly string[] {
  const made = recipe && plan(recipe);
  if (!made?.ok) return [made ? told(made.faults) : 'no front'];
  return (made.value.mirrorParts ?? []).flatMap(({ rows }: PlannedPart) =>
    rows.map((row) => {
      const isSpread =
        Math.abs(row.after - row.before) > 0 && row.shaping.some(({ kind }) => kind === 'across');
      return `${row.n} ${row.side} ${isSpread ? 'spread' : worked(row)} (${row.after})`;
    }),
  );
}

describe('a cardigan written down and read back', () => {
  it(`has a left front and a right one, each row the mirror image that it was drafted as (${DRAFTS} random designs; RIDGELINE_DRAFTS for more)`, () => {
    let fronts = 0;
    const off: string[] = [];
    for (const any of fc.sample(someDesign(), { numRuns: 2 * DRAFTS })) {
      const kind = garmentKinds[any.kind].open ? any.kind : 'cardigan';
      const made = draft({ ...any, kind, neck: { ...any.neck, shape: 'V' } });
      const own = made.ok ? made.value.recipes.find(({ mirrored }) => mirrored) : undefined;
      if (!made.ok || own === undefined) continue;
      fronts += 1;
      const was = second(own);
      const is = second(readBack(own));
      const at = was.findIndex((row, i) => row !== is[i]);
      if (at >= 0)
        off.push(`${any.armhole} ${any.shoulder} ${any.turns ?? ''}: ${was[at]} | ${is[at]} | ${is.length}`);
    }
    expect(fronts).toBeGreaterThan(DRAFTS / 3);
    expect(`${off.length} of ${fronts}\n${off.slice(0, 12).join('\n')}`).toBe(`0 of ${fronts}\n`);
  }, 300_000);
});
