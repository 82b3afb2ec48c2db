import fc from 'fast-check';
import { expect, it } from 'vitest';
import { plan } from '../../../src/knit/piece/plan.ts';
import { expandRow } from '../../../src/knit/row/expand.ts';

/** In the order worked. Seen from the right side each is a knit stitch, and leans along its edge. */
const pairs = {
  RS: { [-1]: ['ssk', 'k2tog'], [-2]: ['sk2p', 'k3tog'] },
  WS: { [-1]: ['p2tog', 'ssp'], [-2]: ['p3tog', 'sssp'] },
} as const;

it('moss decreased at both edges looks alike at both, in every row and at every count (common practice, no published source)', () => {
  const recipe = (castOn: number, rows: number[], by: -1 | -2, inset: number) => ({
    name: 'piece',
    makes: 1,
    parts: [
      {
        name: 'piece',
        from: { castOn },
        end: 'bind off' as const,
        sections: [
          {
            name: 'body',
            rows: 12,
            fabric: 'moss' as const,
            needle: 4,
            shaping: [
              { kind: 'edge' as const, edge: 'both' as const, by, rows, inset, lean: 'mirrored' as const },
            ],
          },
        ],
      },
    ],
  });
  const rows = fc.uniqueArray(fc.integer({ min: 1, max: 12 }), { minLength: 1, maxLength: 5 });
  fc.assert(
    fc.property(
      fc.integer({ min: 30, max: 61 }),
      rows,
      fc.constantFrom(-1 as const, -2 as const),
      fc.integer({ min: 0, max: 3 }),
      (castOn, at, by, inset) => {
        const made = plan(recipe(castOn, at, by, inset));
        if (!made.ok) throw new Error(JSON.stringify(made.faults));
        for (const row of made.value.parts[0]?.rows ?? []) {
          const shaped = expandRow(row.steps, row.before).filter((work) => /ss|tog|sk2p/.test(work));
          if (shaped.length === 0) continue;
          expect(shaped).toEqual(pairs[row.side][by]);
        }
      },
    ),
    { numRuns: 100, endOnFailure: true },
  );
});
