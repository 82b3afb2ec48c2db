import { describe, expect, it } from 'vitest';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { PlannedPart } from '../../../src/knit/piece/planned.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { rowOutOfReach } from '../../../src/knit/piece/rework/shoulder-anew.ts';
import { rework } from '../../../src/knit/piece/rework.ts';
import { YarnEnd } from '../../../src/knit/piece/yarn-end.ts';
import { stitchesNamed } from '../../../src/knit/row/stitches-of-steps.ts';
import { told } from '../../told.ts';

/*
 * A shoulder as short rows were once drafted: bound off over all stitches in the row after the last turn. Published is
 * a way back and one row over all stitches first (Berroco Design Studio, 'Shaping Shoulders with Short Rows', 2016).
 */
const recipe: Recipe = {
  name: 'Back',
  makes: 1,
  parts: [
    {
      name: 'Back',
      from: { castOn: 24 },
      sections: [
        { name: 'body', rows: 8, fabric: 'stocking', needle: 4, shaping: [] },
        {
          name: 'shoulder',
          rows: 6,
          fabric: 'stocking',
          needle: 4,
          shaping: [{ kind: 'turn', edge: 'left', groups: [1, 3, 5].map((row) => ({ row, stitches: 4 })) }],
        },
      ],
      end: 'bind off',
    },
  ],
};

/** As it was planned then: no row says that the yarn is joined, and none closes the turns. */
function oldPlan(): PlannedPart {
  const short: Recipe = {
    ...recipe,
    parts: recipe.parts.map((part) => ({
      ...part,
      sections: part.sections.map((one) => (one.name === 'shoulder' ? { ...one, rows: 5 } : one)),
    })),
  };
  const made = plan(short);
  if (!made.ok) throw new Error(told(made.faults));
  const [part] = made.value.parts;
  if (!part) throw new Error('no part');
  const rows = part.rows.map((row) => ({
    ...row,
    steps: row.steps.filter((step) => !('work' in step && step.work === 'join yarn')),
  }));
  return { ...part, rows, recipe: short.parts[0] as NonNullable<PlannedPart['recipe']> };
}

describe('a shoulder that cannot be finished as it was planned', () => {
  it('is known by the row that begins where the yarn does not hang, as long as that is still to come', () => {
    const old = oldPlan();
    expect(rowOutOfReach(old, 4)?.n).toBe(14);
    expect(rowOutOfReach(old, 13)?.n).toBe(14);
    expect(rowOutOfReach(old, 14)).toBeUndefined();
  });

  it('one that is planned today is not', () => {
    const made = plan(recipe);
    const [part] = made.ok ? made.value.parts : [];
    expect(part && rowOutOfReach(part, 0)).toBeUndefined();
  });

  for (const worked of [0, 8, 10, 12]) {
    it(`is closed by a way back and a row over all stitches; ${worked} rows stay as they were knitted`, () => {
      const old = oldPlan();
      const made = rework({ ...recipe, parts: old.recipe ? [old.recipe] : [] }, 0, old, worked, {
        kind: 'shoulder',
      });
      if (!made.ok) throw new Error(told(made.faults));
      const part = made.value.parts[0]?.part;
      if (!part) throw new Error('no part');
      expect(part.rows.slice(0, worked)).toEqual(old.rows.slice(0, worked));
      expect(part.rows).toHaveLength(old.rows.length + 2);
      expect(part.rows.at(-1)).toMatchObject({ before: 24, after: 0 });
      const yarn = new YarnEnd();
      for (const row of part.rows) expect(yarn.goesOn(row), String(row.n)).toBe(true);
      expect(part.rows.some(({ steps }) => stitchesNamed(steps).includes('join yarn'))).toBe(false);
      // the row before the bind-off goes over all stitches
      expect(stitchesNamed(part.rows.at(-2)?.steps ?? [])).not.toContain('unworked');
      expect(rowOutOfReach(part, worked)).toBeUndefined();
    });
  }
});
