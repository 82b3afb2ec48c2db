import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitsSeamed } from '../../../src/knit/fabric.ts';
import { bodyTables } from '../../../src/knit/garment/bodies.ts';
import { isSince } from '../../../src/knit/garment/design.ts';
import { draft } from '../../../src/knit/garment/draft.ts';
import { startingDesign } from '../../../src/knit/garment/start.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { someDesign } from '../../arbitraries/design.ts';

/** Every tension for each size with RIDGELINE_DRAFTS, by turns in every run. */
const STEP = process.env.RIDGELINE_DRAFTS === undefined ? 6 : 1;
const DRAFTS = Number(process.env.RIDGELINE_DRAFTS ?? 40);

/** What is taken out of (below 0) or put into the row above a cuff, and whether the sleeve widens after it. */
function aboveCuff(recipe: Recipe | undefined): { by: number; widens: boolean; cuff: number } | undefined {
  const all = recipe?.parts.flatMap(({ sections }) => sections).flatMap(({ shaping }) => shaping) ?? [];
  const across = all.find((one) => one.kind === 'across');
  const from = recipe?.parts[0]?.from;
  if (!recipe || across?.kind !== 'across' || !from || !('castOn' in from)) return undefined;
  const widens = all.some((one) => one.kind === 'edge' && one.edge === 'both' && one.by > 0);
  return { by: across.by, widens, cuff: from.castOn };
}

/* That no stitch is taken out above a cuff that the next rows put in again is common practice, no published source. */
describe('a sleeve from its cuff up', () => {
  it('loses no single stitch above the cuff that its increases win again, in any size of the tables', () => {
    let seen = 0;
    for (const [at, { body }] of Object.values(bodyTables).flat().entries())
      for (let stitches = 10 + 2 * (at % STEP); stitches <= 30; stitches += 2 * STEP)
        for (const armhole of ['set-in', 'drop', 'raglan', 'indented'] as const) {
          const design = startingDesign(
            { kind: 'pullover', armhole, neck: 'round', fit: 'standard' },
            body,
            'stocking',
            {
              stitches,
              rows: 1.4 * stitches,
            },
          );
          const made = draft(design);
          const found = made.ok
            ? aboveCuff(made.value.recipes.find(({ role }) => role === 'sleeve'))
            : undefined;
          if (!found?.widens) continue;
          seen += 1;
          expect(found.by, JSON.stringify([body.chest, stitches, armhole])).not.toBe(-1);
        }
    expect(seen).toBeGreaterThan(300 / STEP);
  });

  it('nor in any design, unless a cuff of one repeat less would be too narrow', () => {
    let sleeves = 0;
    fc.assert(
      fc.property(someDesign(), (design) => {
        const made = draft(design);
        const sleeve = made.ok ? made.value.recipes.find(({ role }) => role === 'sleeve') : undefined;
        const found = design.sleeve.direction === 'cuff up' ? aboveCuff(sleeve) : undefined;
        if (!found?.widens || found.by !== -1) {
          sleeves += sleeve ? 1 : 0;
          return;
        }
        const { below } = fitsSeamed(design.cuff.fabric, found.cuff - 1);
        expect(below, `${found.cuff}`).toBeLessThan((isSince(2, design) ? 0.75 : 0.85) * found.cuff);
      }),
      { numRuns: DRAFTS, endOnFailure: true },
    );
    expect(sleeves).toBeGreaterThan(DRAFTS / 3);
  });
});
