import { describe, expect, it } from 'vitest';
import { plan } from '../../../src/knit/piece/plan.ts';
import { partsOfMake } from '../../../src/knit/piece/planned.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { told } from '../../told.ts';

const fronts: Recipe = {
  name: 'Front',
  makes: 2,
  mirrored: true,
  parts: [
    {
      name: 'body',
      from: { castOn: 40 },
      end: 'bind off',
      sections: [
        {
          name: 'armhole and neck',
          rows: 20,
          fabric: 'stocking',
          needle: 4,
          shaping: [
            { kind: 'bind off', edge: 'left', groups: [{ row: 2, stitches: 4 }] },
            { kind: 'edge', edge: 'right', by: -1, rows: [3, 7, 11], inset: 1, lean: 'mirrored' },
          ],
        },
      ],
    },
  ],
};

describe('the second of two mirrored makes', () => {
  const made = plan(fronts);
  if (!made.ok) throw new Error(told(made.faults));
  const [first] = partsOfMake(made.value, 1);
  const [second] = partsOfMake(made.value, 2);

  it('is shaped at the other edge on the same rows', () => {
    const edges = (rows: typeof first) =>
      rows?.rows.flatMap((r) => r.shaping.filter((m) => m.kind === 'edge').map((m) => `${r.n} ${m.edge}`));
    expect(edges(first)).toEqual(['3 right', '7 right', '11 right']);
    expect(edges(second)).toEqual(['3 left', '7 left', '11 left']);
  });

  it('binds its groups off one row earlier or later, where a row begins at that edge', () => {
    const group = second?.rows.find((r) =>
      r.shaping.some((m) => m.kind === 'bind off' && m.edge === 'right'),
    );
    expect(group).toMatchObject({ n: 1, side: 'RS', after: 36 });
  });

  it('ends with the same count, and the third make is as the first', () => {
    expect(second?.rows.at(-1)?.before).toBe(first?.rows.at(-1)?.before);
    expect(partsOfMake(made.value, 3)[0]).toBe(first);
  });
});
