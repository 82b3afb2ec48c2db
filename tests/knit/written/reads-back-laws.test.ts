import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readPattern } from '../../../src/knit/pattern/read-pattern.ts';
import { toMend } from '../../../src/knit/written/look-through.ts';
import { writeSizes } from '../../../src/knit/written/write-sizes.ts';
import { inSizes } from '../../arbitraries/in-sizes.ts';
import { given } from '../../store/scenario.ts';
import { hasOtherGauges, unequal } from './unequal.ts';

/** RIDGELINE_DRAFTS=1000 for the whole sweep; a part of it in every run. */
const DRAFTS = Number(process.env.RIDGELINE_DRAFTS ?? 6);

describe(`a design written in up to five sizes (${DRAFTS} random designs; RIDGELINE_DRAFTS for more)`, () => {
  it('is read back to the same plan and making up in every size, and a technical editor has nothing to mend', {
    timeout: 3_000_000,
  }, () => {
    const found: string[] = [];
    let [read, several] = [0, 0];
    fc.assert(
      fc.property(inSizes(), ({ sizes, missing, ...options }) => {
        if (sizes.length === 0) return;
        if (sizes.length > 2) several += 1;
        const text = given(writeSizes(sizes, options));
        const mend = toMend(text, sizes, options.words).filter((point) => !missing.includes(point));
        found.push(...mend.map((point) => `to mend: ${point}\n${text}`));
        for (const [i, size] of sizes.entries()) {
          read += 1;
          // a written gauge is rounded to a tenth: she measures her own
          const gauge = hasOtherGauges(size) ? undefined : size.garment.pieces[0]?.recipe.gauge;
          const differences = unequal(readPattern(text, { size: i, ...(gauge && { gauge }) }), size);
          found.push(...differences.map(({ kind, where }) => `${size.size}, ${kind}: ${where}`));
        }
      }),
      { numRuns: DRAFTS, endOnFailure: true },
    );
    expect(`${found.length} in ${read} sizes\n${found.slice(0, 20).join('\n')}`).toBe(`0 in ${read} sizes\n`);
    expect(read).toBeGreaterThan(DRAFTS / 2);
    expect(several).toBeGreaterThan(0);
  });
});
