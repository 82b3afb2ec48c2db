import { plan } from '../../../src/knit/piece/plan.ts';
import type { PlannedPart } from '../../../src/knit/piece/planned.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { told } from '../../told.ts';

/*
 * A shoulder as short rows were once drafted: bound off over all stitches in the row after the last turn. Published is
 * a way back and one row over all stitches first (Berroco Design Studio, 'Shaping Shoulders with Short Rows', 2016).
 */
export const turnedShoulder: Recipe = {
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
export function oldShoulder(): PlannedPart {
  const short: Recipe = {
    ...turnedShoulder,
    parts: turnedShoulder.parts.map((part) => ({
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
