import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readPattern } from '../../../src/knit/pattern/read-pattern.ts';
import { toMend } from '../../../src/knit/written/look-through.ts';
import type { WorkedSize } from '../../../src/knit/written/work-size.ts';
import { writeSizes } from '../../../src/knit/written/write-sizes.ts';
import { inSizes } from '../../arbitraries/in-sizes.ts';
import { told } from '../../told.ts';

/** RIDGELINE_DRAFTS=1000 for the whole sweep; a part of it in every run. */
const DRAFTS = Number(process.env.RIDGELINE_DRAFTS ?? 6);

const rowsOf = (parts: WorkedSize['garment']['pieces'][number]['makes'][number]['parts']) =>
  parts
    .filter((part) => part.rows.length > 0)
    .map((part) =>
      part.rows.map(({ n, side, needle, steps, after: count }) => ({ n, side, needle, steps, count })),
    );

describe(`a design written in up to five sizes (${DRAFTS} random designs; RIDGELINE_DRAFTS for more)`, () => {
  it('is read back to the same rows, every size, and a technical editor has nothing to mend', {
    timeout: 900_000,
  }, () => {
    let several = 0;
    fc.assert(
      fc.property(inSizes(), ({ sizes, ...options }) => {
        if (sizes.length === 0) return;
        const text = writeSizes(sizes, options);
        if (!text.ok) throw new Error(told(text.faults));
        if (sizes.length > 2) several += 1;
        expect(toMend(text.value, sizes, options.words), text.value).toEqual([]);
        for (const [i, { size, garment }] of sizes.entries()) {
          const read = readPattern(text.value, { size: i });
          const complaints = read.lines.flatMap((line) =>
            line.faults.map((f) => `${line.text}: ${told([f])}`),
          );
          expect(complaints, `${size}\n${text.value}`).toEqual([]);
          expect(read.pieces).toHaveLength(garment.pieces.length);
          garment.pieces.forEach(({ recipe, makes }, at) => {
            const after = read.pieces[at]?.plan;
            if (!after?.ok) throw new Error(`${recipe.name} ${size} was not read back\n${text.value}`);
            const [found, wanted] = [rowsOf(after.value.parts), rowsOf(makes[0]?.parts ?? [])];
            if (!isDeepStrictEqual(found, wanted))
              expect(found, `${recipe.name} ${size}\n${text.value}`).toEqual(wanted);
          });
        }
      }),
      { numRuns: DRAFTS, endOnFailure: true },
    );
    expect(several).toBeGreaterThan(0);
  });
});
