import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draft } from '../../../src/knit/garment/draft.ts';
import { readPattern } from '../../../src/knit/pattern/read-pattern.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import { writePattern } from '../../../src/knit/written/write-pattern.ts';
import { someDesign } from '../../arbitraries/design.ts';
import { told } from '../../told.ts';

/** RIDGELINE_DRAFTS=1500 for the whole sweep; a part of it in every run. */
const DRAFTS = Number(process.env.RIDGELINE_DRAFTS ?? 60);

describe(`a draft written as a pattern (${DRAFTS} random designs; RIDGELINE_DRAFTS for more)`, () => {
  it('is read back to the same rows', { timeout: 600_000 }, () => {
    let written = 0;
    fc.assert(
      fc.property(someDesign(), fc.constantFrom('US' as const, 'UK' as const), (design, terms) => {
        const made = draft(design);
        if (!made.ok) return;
        const pieces = made.value.recipes;
        const text = writePattern({ name: 'Any', pieces }, { terms });
        if (!text.ok) throw new Error(told(text.faults));
        written += 1;
        const read = readPattern(text.value);
        const complaints = read.lines.flatMap((line) => line.faults.map((f) => `${line.text}: ${told([f])}`));
        expect(complaints, text.value).toEqual([]);
        pieces.forEach((recipe, i) => {
          const before = plan(recipe);
          const after = read.pieces[i]?.plan;
          if (!before.ok || !after?.ok) throw new Error(`${recipe.name} was not read back\n${text.value}`);
          const rows = (parts: typeof before.value.parts) =>
            parts
              .filter((part) => part.rows.length > 0)
              .map((part) =>
                part.rows.map(({ n, side, needle, steps, after: count }) => ({
                  n,
                  side,
                  needle,
                  steps,
                  count,
                })),
              );
          const [found, wanted] = [rows(after.value.parts), rows(before.value.parts)];
          if (!isDeepStrictEqual(found, wanted)) expect(found, text.value).toEqual(wanted);
        });
      }),
      { numRuns: DRAFTS, endOnFailure: true },
    );
    expect(written).toBeGreaterThan(DRAFTS / 3);
  });
});
