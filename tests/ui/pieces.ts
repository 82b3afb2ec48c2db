import { plan } from '../../src/knit/piece/plan.ts';
import type { PlannedPart } from '../../src/knit/piece/planned.ts';
import type { Recipe } from '../../src/knit/piece/recipe.ts';
import { told } from '../told.ts';

/** The parts of a recipe that can be knitted. */
export function partsOf(recipe: Recipe): readonly PlannedPart[] {
  const made = plan(recipe);
  if (!made.ok) throw new Error(told(made.faults));
  return made.value.parts;
}

/** 20 stitches and 25 rows to 100 mm: a stitch is 5 mm wide and a row 4 mm high. */
export const roundGauge = { stitches: 20, rows: 25 } as const;

/** A plain strip of so many stitches and rows, left on the needle. */
export const strip = (stitches: number, rows: number): Recipe => ({
  name: 'Strip',
  makes: 1,
  gauge: roundGauge,
  parts: [
    {
      name: 'Strip',
      from: { castOn: stitches },
      sections: [{ name: 'plain', rows, fabric: 'stocking', needle: 4, shaping: [] }],
      end: 'hold',
    },
  ],
});

/** 40 stitches for 10 rows, then split into 15, 10 in the middle and 15; the shoulders lose a stitch at the neck. */
export const neck: Recipe = {
  name: 'Front',
  makes: 1,
  gauge: roundGauge,
  parts: [
    {
      name: 'Body',
      from: { castOn: 40 },
      sections: [{ name: 'body', rows: 10, fabric: 'stocking', needle: 4, shaping: [] }],
      end: 'split',
    },
    {
      name: 'Right edge',
      from: { part: 'Body', stitches: 15, edge: 'right' },
      sections: [
        {
          name: 'neck',
          rows: 10,
          fabric: 'stocking',
          needle: 4,
          shaping: [{ kind: 'edge', edge: 'left', by: -1, rows: [1, 3, 5], inset: 1, lean: 'mirrored' }],
        },
      ],
      end: 'hold',
    },
    { name: 'Centre', from: { part: 'Body', stitches: 10, edge: 'middle' }, sections: [], end: 'bind off' },
    {
      name: 'Left edge',
      from: { part: 'Body', stitches: 15, edge: 'left' },
      sections: [{ name: 'neck', rows: 10, fabric: 'stocking', needle: 4, shaping: [] }],
      end: 'hold',
    },
  ],
};
