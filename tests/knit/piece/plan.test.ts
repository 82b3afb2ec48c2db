import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { Plan, PlannedPart } from '../../../src/knit/piece/planned.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { workBudget } from '../../../src/knit/piece/work-budget.ts';
import { expandRow } from '../../../src/knit/row/expand.ts';
import { printRow } from '../../../src/knit/row/print.ts';
import { otherSide, type Step } from '../../../src/knit/row/step.ts';
import { workRow } from '../../../src/knit/row/work.ts';
import { stitches } from '../../../src/knit/stitch.ts';
import { knittableRecipe } from '../../arbitraries/knittable-recipe.ts';
import { share } from '../../by-turns.ts';
import { same } from '../../same.ts';
import { told } from '../../told.ts';

const planned = (recipe: Recipe): Plan => {
  const made = plan(recipe);
  if (!made.ok) throw new Error(told(made.faults));
  return made.value;
};

const law = (name: string, holds: (part: PlannedPart, plan: Plan) => void) =>
  it(name, () => {
    fc.assert(
      fc.property(knittableRecipe(), ({ recipe }) => {
        const whole = planned(recipe);
        for (const part of whole.parts) holds(part, whole);
      }),
      { numRuns: share(300) },
    );
  });

describe('a recipe beyond all garments', () => {
  const section = { name: '', rows: 10, fabric: 'garter', needle: 4, shaping: [] } as const;
  const part = { name: 'body', from: { castOn: 20 }, sections: [section], end: 'bind off' } as const;
  const codes = (recipe: Recipe) => {
    const made = plan(recipe);
    return made.ok ? [] : made.faults.map((fault) => fault.code);
  };
  const sections = (n: number, rows: number) => Array.from({ length: n }, () => ({ ...section, rows }));

  it('is told what it may have at most: parts, sections, and the rows of a part with the one that binds it off', () => {
    const parts = Array.from({ length: 41 }, (_, i) => ({ ...part, name: `p${i}` }));
    expect(codes({ name: 'x', makes: 1, parts })).toEqual(['too many parts']);
    expect(codes({ name: 'x', makes: 1, parts: parts.slice(1) })).toEqual([]);
    expect(codes({ name: 'x', makes: 1, parts: [{ ...part, sections: sections(201, 1) }] })).toEqual([
      'too many sections',
    ]);
    expect(codes({ name: 'x', makes: 1, parts: [{ ...part, sections: sections(2, 2500) }] })).toEqual([
      'part too long',
    ]);
    expect(
      codes({ name: 'x', makes: 1, parts: [{ ...part, sections: sections(2, 2500), end: 'hold' }] }),
    ).toEqual([]);
  });

  it('a row in words costs its steps where it has more of them than stitches, its stitches where it has fewer', () => {
    const costs = (steps: readonly Step[]) => {
      const budget = workBudget();
      const section = {
        name: 's',
        rows: 1,
        fabric: 'stocking',
        needle: 4,
        shaping: [],
        words: [steps],
      } as const;
      const made = plan(
        {
          name: 'Strip',
          makes: 1,
          gauge: { stitches: 20, rows: 25, fabric: 'stocking', needle: 4 },
          parts: [{ name: 'Strip', from: { castOn: 20 }, sections: [section], end: 'hold' }],
        },
        budget,
      );
      expect(made.ok).toBe(true);
      return budget.most - budget.left;
    };
    const k = (times: number): Step => ({ work: 'k', times });
    // a hundred for the row; each round of a repeat is a step, and each run in it
    expect(costs([k(20)])).toBe(120);
    expect(costs([{ repeat: [k(2)], times: 10 }])).toBe(120);
    expect(costs([{ repeat: [k(1), k(1)], times: 10 }])).toBe(130);
  });

  it('is planned as far as a budget of stitches goes, which several pieces can share', () => {
    const budget = workBudget(2500);
    const recipe: Recipe = { name: 'x', makes: 1, parts: [part] };
    expect(plan(recipe, budget).ok).toBe(true);
    expect(plan(recipe, budget).ok).toBe(true);
    const third = plan(recipe, budget);
    expect(third.ok ? [] : third.faults.map((fault) => fault.code)).toEqual(['too much to plan']);
    expect(plan(recipe).ok).toBe(true);
  });
});

describe('a plan of a recipe that can be knitted', () => {
  law('never asks for a stitch that is not on the needle, and leaves what it states', (part) => {
    let onNeedle = part.start;
    for (const row of part.rows) {
      same(row.before, onNeedle);
      const worked = workRow(row.steps, onNeedle);
      same(worked.ok && worked.value.after, row.after);
      onNeedle = row.after;
    }
    same(onNeedle, part.left);
  });

  law('comes to the same count stitch by stitch', (part) => {
    for (const row of part.rows) {
      const all = expandRow(row.steps, row.before);
      same(
        all.reduce((sum, s) => sum + stitches[s].takes, 0),
        row.before,
      );
      same(
        all.reduce((sum, s) => sum + stitches[s].makes, 0),
        row.after,
      );
    }
  });

  law('marks every change of count, with the edge that it happens at', (part) => {
    for (const row of part.rows) {
      same(
        row.shaping.reduce((sum, mark) => sum + mark.by, 0),
        row.after - row.before,
      );
    }
  });

  law('numbers its rows from 1 and changes sides with every row', (part) => {
    part.rows.forEach((row, i) => {
      same(row.n, i + 1);
      const last = part.rows[i - 1];
      if (last) same(row.side, otherSide(last.side));
    });
  });

  law('puts made stitches between two stitches, never at an edge', (part) => {
    for (const row of part.rows) {
      const all = expandRow(row.steps, row.before);
      const made = (s: string | undefined) => s === 'm1' || s === 'm1l' || s === 'm1r' || s === 'm1p';
      same(made(all[0]), false);
      same(made(all[all.length - 1]), false);
      same(
        all.some((s, i) => made(s) && made(all[i + 1])),
        false,
      );
    }
  });

  it('reaches the count that its shaping adds up to', () => {
    fc.assert(
      fc.property(knittableRecipe(), ({ recipe, ends }) => {
        for (const part of planned(recipe).parts) {
          const last =
            part.end === 'bind off' ? (part.rows[part.rows.length - 1]?.before ?? part.start) : part.left;
          expect(last).toBe(ends[part.name]);
        }
      }),
      { numRuns: share(300) },
    );
  });

  it('is printed the same however often it is made', () => {
    fc.assert(
      fc.property(knittableRecipe(), ({ recipe }) => {
        const print = () => planned(recipe).parts.map((p) => p.rows.map((r) => printRow(r.steps)));
        expect(print()).toEqual(print());
      }),
      { numRuns: share(50) },
    );
  });
});

const panel = (over: Partial<Recipe['parts'][number]>): Recipe => ({
  name: 'Front',
  makes: 1,
  parts: [{ name: 'body', from: { castOn: 60 }, end: 'bind off', sections: [], ...over }],
});

const faultsOf = (recipe: Recipe) => {
  const made = plan(recipe);
  return made.ok ? [] : made.faults;
};

describe('what cannot be knitted is said with its place', () => {
  it('a rib over a count that it does not fit, with the nearest that it does', () => {
    const section = { name: 'rib', rows: 10, fabric: 'rib 2x2' as const, needle: 4, shaping: [] };
    expect(faultsOf(panel({ from: { castOn: 61 }, sections: [section] }))[0]).toMatchObject({
      code: 'fabric multiple',
      at: { piece: 'Front', part: 'body', sectionIndex: 0, field: 'fabric' },
      figures: { stitches: 61, belowStitches: 60, aboveStitches: 62 },
    });
  });

  it('more decreases than stitches', () => {
    const rows = Array.from({ length: 40 }, (_, i) => i + 1);
    const shaping = [
      { kind: 'edge' as const, edge: 'both' as const, by: -1, rows, inset: 2, lean: 'plain' as const },
    ];
    const section = { name: 'cap', rows: 40, fabric: 'stocking' as const, needle: 4, shaping };
    expect(faultsOf(panel({ sections: [section] }))[0]).toMatchObject({
      code: 'shaping needs more stitches',
      at: { piece: 'Front', part: 'body', sectionIndex: 0, row: 28 },
    });
  });

  it('shaping on a row that the section does not have', () => {
    const shaping = [{ kind: 'across' as const, row: 11, by: 4 }];
    const section = { name: 'cuff', rows: 10, fabric: 'stocking' as const, needle: 4, shaping };
    expect(faultsOf(panel({ sections: [section] }))[0]).toMatchObject({
      code: 'shaping outside the section',
      at: { sectionIndex: 0, field: 'shaping 1', row: 11 },
    });
  });

  it('a group at the edge where the row does not begin', () => {
    const shaping = [{ kind: 'bind off' as const, edge: 'left' as const, groups: [{ row: 1, stitches: 5 }] }];
    const section = { name: 'armhole', rows: 10, fabric: 'stocking' as const, needle: 4, shaping };
    expect(faultsOf(panel({ sections: [section] }))[0]?.code).toBe('group on the wrong side');
  });

  it('a split whose parts do not take every stitch', () => {
    const body = { name: 'body', from: { castOn: 60 }, end: 'split' as const, sections: [] };
    const right = {
      name: 'left shoulder',
      from: { part: 'body', stitches: 20, edge: 'right' as const },
      end: 'hold' as const,
      sections: [],
    };
    expect(faultsOf({ name: 'Front', makes: 1, parts: [body, right] })[0]).toMatchObject({
      code: 'split does not share',
      figures: { leftStitches: 60, sumStitches: 20 },
    });
  });

  it('a spread row that asks for more than the row can take, with the most it can', () => {
    const shaping = [{ kind: 'across' as const, row: 1, by: 60 }];
    const section = { name: 'cuff', rows: 10, fabric: 'stocking' as const, needle: 4, shaping };
    expect(faultsOf(panel({ sections: [section] }))[0]).toMatchObject({
      code: 'too many for one row',
      figures: { mostTimes: 59 },
    });
  });

  it('figures that are no figures', () => {
    for (const castOn of [0, -3, 2.5, Number.NaN, 1e9]) {
      expect(faultsOf(panel({ from: { castOn } }))[0]).toMatchObject({
        code: 'bad stitches',
        at: { field: 'cast on' },
      });
    }
  });
});
