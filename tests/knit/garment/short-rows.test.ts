import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoGarment } from '../../../src/knit/garment/demo.ts';
import { draft } from '../../../src/knit/garment/draft.ts';
import type { ShoulderEnd } from '../../../src/knit/garment/kinds/shoulders.ts';
import { makingUp } from '../../../src/knit/making-up/making-up.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { PlannedPart, PlannedRow } from '../../../src/knit/piece/planned.ts';
import type { Edge, Group, PartRecipe, Recipe } from '../../../src/knit/piece/recipe.ts';
import { expandRow } from '../../../src/knit/row/expand.ts';
import { sayRow } from '../../../src/knit/row/print.ts';
import { told } from '../../told.ts';

/** RIDGELINE_DRAFTS=60 for the whole of it; a part of it in every run. */
const DRAFTS = Number(process.env.RIDGELINE_DRAFTS ?? 8);

const design = (() => {
  const demo = demoGarment('cardigan');
  if (!demo.ok) throw new Error(told(demo.faults));
  return demo.value.design;
})();

const recipesOf = (
  shoulder: 'steps' | 'short rows',
  kind: 'pullover' | 'cardigan' | 'vest',
  gauge: number,
): readonly Recipe[] => {
  const made = draft({
    ...design,
    kind,
    shoulder,
    gauges: { stocking: { stitches: gauge, rows: gauge * 1.38 } },
  });
  if (!made.ok) throw new Error(told(made.faults));
  return made.value.recipes;
};

const choice = fc.tuple(
  fc.constantFrom('pullover' as const, 'cardigan' as const, 'vest' as const),
  fc.double({ min: 16, max: 30, noNaN: true }),
);

/** Both shoulders of a back, and the fronts, of a cardigan with long slopes. */
function shouldersOf(shoulderEnd: ShoulderEnd): readonly PlannedPart[] {
  const made = draft({ ...design, shoulder: 'short rows', shoulderEnd, shoulderDropMm: 40 });
  if (!made.ok) throw new Error(told(made.faults));
  return made.value.recipes.slice(0, 2).flatMap((recipe) => {
    const planned = plan(recipe);
    if (!planned.ok) throw new Error(told(planned.faults));
    const parts = [...planned.value.parts, ...(planned.value.mirrorParts ?? [])];
    return parts.filter(
      (p) => p.rows.some((r) => r.shaping.some((m) => m.kind === 'turn')) && p.end !== 'split',
    );
  });
}

/** Turns at an edge through the parts that have it, by their row above the cast-on. */
function turnsAt({ parts }: Recipe, edge: Edge): readonly Group[] {
  const turns: Group[] = [];
  const rowsOf = ({ sections }: PartRecipe): number => sections.reduce((sum, { rows }) => sum + rows, 0);
  for (const part of parts) {
    const { from } = part;
    if ('part' in from && from.edge !== edge) continue;
    const below = 'part' in from ? parts.find(({ name }) => name === from.part) : undefined;
    let at = below ? rowsOf(below) : 0;
    for (const { rows, shaping } of part.sections) {
      for (const one of shaping)
        if (one.kind === 'turn' && one.edge === edge)
          turns.push(...one.groups.map(({ row, stitches }) => ({ row: at + row, stitches })));
      at += rows;
    }
  }
  return turns;
}

/** Stitches that a row leaves on the needle at its end. */
function unworkedAtEnd({ steps, before }: PlannedRow): number {
  const worked = expandRow(steps, before);
  return worked.length - 1 - worked.findLastIndex((stitch) => stitch !== 'unworked');
}

describe('shoulders in short rows', () => {
  it('can be knitted, and end with every stitch of the shoulder on the needle', () => {
    fc.assert(
      fc.property(choice, ([kind, gauge]) => {
        const steps = recipesOf('steps', kind, gauge);
        const turns = recipesOf('short rows', kind, gauge);
        const made = turns.map((recipe) => plan(recipe));
        expect(made.flatMap((p) => (p.ok ? [] : p.faults))).toEqual([]);
        const shoulders = (recipes: readonly Recipe[]) => {
          const steps = makingUp({ name: 'x', pieces: recipes });
          const found = steps.ok ? steps.value.find((s) => s.kind === 'shoulders') : undefined;
          return found?.kind === 'shoulders' ? found.stitches : undefined;
        };
        expect(shoulders(turns)).toEqual(shoulders(steps));
      }),
      { numRuns: DRAFTS },
    );
  }, 120_000);

  it('leave more stitches unworked each time, and work every stitch of the row but those', () => {
    const back = plan(recipesOf('short rows', 'pullover', 22)[0] as Recipe);
    if (!back.ok) throw new Error(told(back.faults));
    const rows = back.value.parts
      .flatMap((p) => p.rows)
      .filter((r) => r.shaping.some((m) => m.kind === 'turn'));
    expect(rows.length).toBeGreaterThan(4);
    for (const side of ['RS', 'WS'] as const) {
      const left = rows.filter((r) => r.side === side).map((r) => unworkedAtEnd(r));
      expect(left[0]).toBeGreaterThan(0);
      for (const [i, count] of left.slice(1).entries()) expect(count).toBeGreaterThan(left[i] ?? 0);
    }
    for (const row of rows) {
      const worked = expandRow(row.steps, row.before);
      // what was left before rests at the row's beginning, what this row leaves at its end
      const begins = worked.findIndex((stitch) => stitch !== 'unworked');
      const middle = worked.slice(begins, worked.length - unworkedAtEnd(row));
      expect(middle).not.toContain('unworked');
    }
  });

  /** Berroco Design Studio, 'Shaping Shoulders with Short Rows', 2016; forum.knittinghelp.com, 'Short-Row Shoulders Question' */
  it('are closed by a row over all stitches after the last turn and the way back, and only then bound off or held', () => {
    for (const end of ['bind off', 'three-needle', 'grafted'] as const) {
      for (const part of shouldersOf(end)) {
        const rows = part.rows.filter((r) => r.after > 0);
        const last = rows.findLastIndex((r) => unworkedAtEnd(r) > 0);
        expect(last, part.name).toBeGreaterThan(0);
        const after = rows.slice(last + 1).map((r) => expandRow(r.steps, r.before));
        expect(after.length).toBeGreaterThanOrEqual(2);
        // the way back begins at the yarn; after it no stitch is left out
        for (const row of after.slice(1)) expect(row).not.toContain('unworked');
        expect(part.end).toBe(end === 'bind off' ? 'bind off' : 'hold');
        expect(part.left === 0).toBe(end === 'bind off');
      }
    }
  });

  /** Each turn at a new stitch, steps that do not come out even with the larger ones first: common practice, no published source. */
  it('of the second edition turn at a new stitch each time, in steps that differ by one at the most, over widths and rows', () => {
    let turned = 0;
    let most = 0;
    const figures = fc.record({
      gauge: fc.double({ min: 10, max: 34, noNaN: true }),
      rows: fc.double({ min: 1.2, max: 1.6, noNaN: true }),
      drop: fc.integer({ min: 12, max: 60 }),
    });
    fc.assert(
      fc.property(figures, fc.constantFrom('pullover', 'cardigan'), ({ gauge, rows, drop }, kind) => {
        const made = draft({
          ...design,
          kind,
          edition: 2,
          shoulder: 'short rows',
          shoulderDropMm: drop,
          gauges: { stocking: { stitches: gauge, rows: gauge * rows } },
        });
        if (!made.ok) return;
        for (const recipe of made.value.recipes.slice(0, 2)) {
          for (const edge of ['right', 'left'] as const) {
            const steps = turnsAt(recipe, edge);
            if (steps.length < 2) continue;
            turned += 1;
            most = Math.max(most, steps.length);
            const [stitches, at] = [steps.map((one) => one.stitches), steps.map(({ row }) => row)];
            // no pair of rows is turned where the one before was
            for (const [i, row] of at.slice(1).entries()) expect(row - (at[i] ?? 0)).toBe(2);
            expect(Math.max(...stitches) - Math.min(...stitches)).toBeLessThanOrEqual(1);
            expect(stitches).toEqual([...stitches].sort((a, b) => b - a));
          }
        }
      }),
      {
        numRuns: DRAFTS,
        endOnFailure: true,
        // slopes of many pairs of rows, which a few drafts at random may all lack
        examples: [
          [{ gauge: 30, rows: 1.4, drop: 60 }, 'pullover'],
          [{ gauge: 26, rows: 1.3, drop: 52 }, 'cardigan'],
        ],
      },
    );
    expect(turned).toBeGreaterThan(DRAFTS);
    expect(most).toBeGreaterThan(8);
  }, 120_000);

  it('say where to turn in the row’s own words, and never begin with what was left before', () => {
    const said = shouldersOf('bind off').flatMap((part) => part.rows.map((row) => sayRow(row.steps)));
    expect(said.filter((words) => words.endsWith(', turn')).length).toBeGreaterThan(3);
    for (const words of said) expect(words).not.toMatch(/^leave|unworked/);
  });
});
