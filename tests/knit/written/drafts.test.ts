import { readFileSync } from 'node:fs';
import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Design } from '../../../src/knit/garment/design.ts';
import { draft } from '../../../src/knit/garment/draft.ts';
import { readPattern } from '../../../src/knit/pattern/read-pattern.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { PlannedPart } from '../../../src/knit/piece/planned.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { writePattern } from '../../../src/knit/written/write-pattern.ts';
import { someDesign } from '../../arbitraries/design.ts';
import { byTurns } from '../../by-turns.ts';
import { seed } from '../../seed.ts';
import { told } from '../../told.ts';

/** RIDGELINE_DRAFTS=1500 for the whole sweep; a part of it in every run. */
const DRAFTS = Number(process.env.RIDGELINE_DRAFTS ?? 6);

/** What is written of a drafted design is read back without a complaint, to the same rows. */
function readsBack(pieces: readonly Recipe[], terms: 'US' | 'UK'): void {
  const text = writePattern({ name: 'Any', pieces }, { terms });
  if (!text.ok) throw new Error(told(text.faults));
  const read = readPattern(text.value);
  const complaints = read.lines.flatMap((line) => line.faults.map((f) => `${line.text}: ${told([f])}`));
  expect(complaints, text.value).toEqual([]);
  pieces.forEach((recipe, i) => {
    const before = plan(recipe);
    const after = read.pieces[i]?.plan;
    if (!before.ok || !after?.ok) throw new Error(`${recipe.name} was not read back\n${text.value}`);
    const [found, wanted] = [rowsOf(after.value.parts), rowsOf(before.value.parts)];
    if (!isDeepStrictEqual(found, wanted)) expect(found, text.value).toEqual(wanted);
  });
}

const rowsOf = (parts: readonly PlannedPart[]) =>
  parts
    .filter((part) => part.rows.length > 0)
    .map((part) =>
      part.rows.map(({ n, side, needle, steps, after: count }) => ({ n, side, needle, steps, count })),
    );

describe(`a draft written as a pattern (${DRAFTS} random designs; RIDGELINE_DRAFTS for more)`, () => {
  it('is read back to the same rows', { timeout: 600_000 }, () => {
    let written = 0;
    fc.assert(
      fc.property(someDesign(), fc.constantFrom('US' as const, 'UK' as const), (design, terms) => {
        const made = draft(design);
        if (!made.ok) return;
        written += 1;
        readsBack(made.value.recipes, terms);
      }),
      { numRuns: DRAFTS, endOnFailure: true },
    );
    expect(written).toBeGreaterThan(DRAFTS / 3);
  });
});

/** Designs that a long sweep broke once: `tests/knit/making-up/once-broken.test.ts` tries how they are made up. */
const onceBroken = JSON.parse(
  readFileSync(new URL('../making-up/once-broken.json', import.meta.url), 'utf8'),
) as readonly { readonly what: string; readonly design: Design }[];

describe('a design that once broke a law', () => {
  it.each(byTurns(onceBroken, seed))('is written and read back: $what', ({ design }) => {
    const made = draft(design);
    if (!made.ok) throw new Error(told(made.faults));
    readsBack(made.value.recipes, 'US');
  });
});
