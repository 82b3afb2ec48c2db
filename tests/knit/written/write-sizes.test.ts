import { describe, expect, it } from 'vitest';
import { readPattern } from '../../../src/knit/pattern/read-pattern.ts';
import type { Garment } from '../../../src/knit/piece/garment.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { writeSizes } from '../../../src/knit/written/write-sizes.ts';
import { told } from '../../told.ts';

/** A back of our own in three sizes, shaped in the same rhythm. */
const back = (castOn: number, rows: number, off: number): Recipe => ({
  name: 'Back',
  makes: 1,
  gauge: { stitches: 20, rows: 28 },
  parts: [
    {
      name: 'body',
      from: { castOn },
      end: 'bind off',
      sections: [
        { name: 'rib', rows: 8, fabric: 'rib 2x2', needle: 3.5, shaping: [] },
        { name: 'body', rows, fabric: 'stocking', needle: 4, shaping: [] },
        {
          name: 'armholes',
          rows: 40,
          fabric: 'stocking',
          needle: 4,
          shaping: [
            { kind: 'bind off', edge: 'right', groups: [{ row: 1, stitches: off }] },
            { kind: 'bind off', edge: 'left', groups: [{ row: 2, stitches: off }] },
          ],
        },
      ],
    },
  ],
});

const sized = (size: string, recipe: Recipe) => ({
  size,
  garment: { name: 'Fen vest', pieces: [recipe] } satisfies Garment,
});
const sizes = [sized('S', back(92, 80, 4)), sized('M', back(100, 84, 5)), sized('L', back(108, 90, 6))];

describe('a garment in all sizes', () => {
  const written = writeSizes(sizes);
  const text = written.ok ? written.value : '';

  it('has the smallest size first and the others in parentheses', () => {
    expect(text).toContain('Sizes S (M, L)');
    expect(text).toContain('cast on 92 (100, 108) sts.');
    expect(text).toContain('bind off 4 (5, 6) sts, knit to end. (88 (95, 102) sts)');
  });

  it.each([0, 1, 2])('is read back to the plan of size %i', (size) => {
    const read = readPattern(text, { size });
    expect(read.lines.flatMap((line) => line.faults.map((f) => `${line.text}: ${told([f])}`))).toEqual([]);
    const before = plan(sizes[size]?.garment.pieces[0] as Recipe);
    const after = read.pieces[0]?.plan;
    if (!before.ok || !after?.ok) throw new Error('not read');
    const rows = (made: typeof before.value) =>
      made.parts[0]?.rows.map((r) => [r.side, r.steps, r.before, r.after]);
    expect(rows(after.value)).toEqual(rows(before.value));
  });

  it('says where sizes are not worked alike', () => {
    const other = {
      ...back(108, 90, 6),
      parts: back(108, 90, 6).parts.map((p) => ({ ...p, sections: p.sections.slice(1) })),
    };
    expect(writeSizes([sizes[0] as (typeof sizes)[number], sized('L', other)])).toMatchObject({
      ok: false,
      faults: [{ code: 'sizes worked differently' }],
    });
  });
});
