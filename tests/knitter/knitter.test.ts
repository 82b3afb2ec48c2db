import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draft } from '../../src/knit/garment/draft.ts';
import { readPattern } from '../../src/knit/pattern/read-pattern.ts';
import { plan } from '../../src/knit/piece/plan.ts';
import type { PlannedPart } from '../../src/knit/piece/planned.ts';
import { expandRow } from '../../src/knit/row/expand.ts';
import { printRow } from '../../src/knit/row/print.ts';
import type { Step } from '../../src/knit/row/step.ts';
import { workRow } from '../../src/knit/row/work.ts';
import { type StitchName, stitches, stitchNames } from '../../src/knit/stitch.ts';
import { someDesign } from '../arbitraries/design.ts';
import { knittableRecipe } from '../arbitraries/knittable-recipe.ts';
import { rowSteps, workableRow } from '../arbitraries/row-steps.ts';
import { shapedPanel } from '../arbitraries/shaped-panel.ts';
import { share } from '../by-turns.ts';
import * as bulkies from '../outside/patterns/bulkies-006.ts';
import * as fashion from '../outside/patterns/fashion-189.ts';
import * as patons from '../outside/patterns/patons-45632.ts';
import * as redCross from '../outside/patterns/red-cross.ts';
import * as star201 from '../outside/patterns/star-201.ts';
import * as star223 from '../outside/patterns/star-223-220.ts';
import type { WorkedPattern } from '../outside/patterns/worked-pattern.ts';
import { alike, same } from '../same.ts';
import { told } from '../told.ts';
import { knitRow } from './knit-row.ts';
import { meaningOf } from './meaning.ts';

const needle = (count: number) => Array.from({ length: count }, () => ({ face: 'k' as const }));

/** The knitter with the printed words in her hand and the program, side by side. */
function sideBySide(steps: readonly Step[], before: number, side: 'RS' | 'WS' = 'RS'): boolean {
  const worked = workRow(steps, before);
  let knitted: ReturnType<typeof knitRow> | undefined;
  try {
    knitted = knitRow(printRow(steps), side, needle(before));
  } catch {
    knitted = undefined;
  }
  same(knitted !== undefined, worked.ok, () => `${printRow(steps)} over ${before}`);
  if (!knitted || !worked.ok) return false;
  const { loops, worked: words } = knitted;
  const { boundOff, castOn, held, after } = worked.value;
  same(loops.length, after);
  alike(
    { boundOff: knitted.boundOff, castOn: knitted.castOn, held: knitted.held },
    { boundOff, castOn, held },
  );
  alike(words, expandRow(steps, before));
  // the loops lie over those below them in their order, from edge to edge
  const order = loops.flatMap(({ from }) => from.slice(0, 1));
  if (!words.some((word) => meaningOf(word).is === 'crossed'))
    same(
      order.every((from, i) => from >= (order[i - 1] ?? from)),
      true,
    );
  return true;
}

function partSideBySide(part: PlannedPart): void {
  for (const row of part.rows) {
    same(sideBySide(row.steps, row.before, row.side), true, () => printRow(row.steps));
    const worked = workRow(row.steps, row.before);
    same(worked.ok && worked.value.after, row.after);
  }
}

describe('a knitter who has only the printed words works what the program works', () => {
  it('every stitch that a row can ask for takes and makes for her what it takes and makes for the program', () => {
    for (const name of stitchNames) {
      const { takes, makes } = stitches[name];
      const words = printRow([{ work: name, times: 1 }]);
      expect({ words, ...count(words, takes) }).toEqual({ words, takes, makes });
    }
  });

  it('every stitch looks to her, from the side on which it is worked, as the program says', () => {
    for (const name of stitchNames) {
      const { looks } = meaningOf(name as StitchName);
      if (looks) expect({ name, looks: stitches[name].looks }).toEqual({ name, looks });
      else expect(['other', 'knit'], name).toContain(stitches[name].looks);
    }
  });

  it('rows that come out', () => {
    fc.assert(
      fc.property(workableRow, ({ steps, onNeedle }) => {
        sideBySide(steps, onNeedle);
      }),
      { numRuns: share(1500) },
    );
  });

  it('rows of any kind: she cannot work those that the program refuses', () => {
    const seen = { worked: 0, refused: 0 };
    fc.assert(
      fc.property(rowSteps(1), fc.integer({ min: 0, max: 40 }), fc.boolean(), (some, before, ends) => {
        const steps: readonly Step[] = ends ? [...some, { work: 'k', until: { left: 0 } }] : some;
        seen[sideBySide(steps, before) ? 'worked' : 'refused'] += 1;
      }),
      { numRuns: share(3000) },
    );
    expect(Math.min(seen.worked, seen.refused)).toBeGreaterThan(30);
  });

  it('every row of any plan, with fabrics, edges, groups, splits and slipped selvedges', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          knittableRecipe().map(({ recipe }) => recipe),
          shapedPanel(),
        ),
        (recipe) => {
          const made = plan(recipe);
          if (made.ok) made.value.parts.forEach(partSideBySide);
          else throw new Error(told(made.faults));
        },
      ),
      { numRuns: share(60), endOnFailure: true },
    );
  });

  it('every row of drafted garments', () => {
    fc.assert(
      fc.property(someDesign(), (design) => {
        const made = draft(design);
        for (const recipe of made.ok ? made.value.recipes : []) {
          const planned = plan(recipe);
          if (planned.ok)
            [...planned.value.parts, ...(planned.value.mirrorParts ?? [])].forEach(partSideBySide);
        }
      }),
      { numRuns: share(10), endOnFailure: true },
    );
  });

  const books = [bulkies, star201, star223, fashion, patons, redCross].flatMap((book) => Object.values(book));
  it.each(books as WorkedPattern[])('every row of $source', ({ text }) => {
    const read = readPattern(text, { size: 0 });
    const parts = read.pieces.flatMap(({ plan: made }) => (made.ok ? made.value.parts : []));
    expect(parts.length).toBeGreaterThan(0);
    parts.forEach(partSideBySide);
  });
});

/** What one stitch takes of a needle that has just enough for it, and makes. */
function count(words: string, takes: number): { takes: number; makes: number } {
  const { loops, worked } = knitRow(words, 'RS', needle(takes));
  return { takes: worked.reduce((sum, word) => sum + meaningOf(word).takes, 0), makes: loops.length };
}
