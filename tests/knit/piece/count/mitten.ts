import { plan } from '../../../../src/knit/piece/plan.ts';
import type { PlannedPart } from '../../../../src/knit/piece/planned.ts';
import type { Section } from '../../../../src/knit/piece/recipe.ts';
import { told } from '../../../told.ts';

export const section = (over: Partial<Section>): Section => ({
  name: 'plain',
  rows: 4,
  fabric: 'stocking',
  needle: 4,
  shaping: [],
  ...over,
});

/** A part of so many stitches; every row is 2.5 mm high. */
export function partOf(
  castOn: number,
  end: 'hold' | 'bind off',
  ...sections: readonly Section[]
): PlannedPart {
  const gauge = { stitches: 20, rows: 40 };
  const made = plan({
    name: 'Mitten',
    makes: 1,
    gauge: { ...gauge, fabric: 'stocking' },
    gauges: { 'rib 1x1': gauge, garter: gauge },
    parts: [{ name: 'hand', from: { castOn }, end, sections }],
  });
  if (!made.ok) throw new Error(told(made.faults));
  return made.value.parts[0] as PlannedPart;
}

/**
 * 16 rows, odd ones on the right side: 4 of rib over 20 stitches; 4 more stitches in row 5; one fewer at either edge in
 * rows 9 and 13 and at the right one in row 14; 3 bound off at the right in row 15 and at the left in row 16.
 * Stitches: 20 up to row 4, 24 up to row 8, 22 up to row 12, then 20, 19, 16, 13.
 */
export const mitten = partOf(
  20,
  'hold',
  section({ name: 'rib', fabric: 'rib 1x1' }),
  section({
    name: 'hand',
    rows: 12,
    shaping: [
      { kind: 'across', row: 1, by: 4 },
      { kind: 'edge', edge: 'both', by: -1, rows: [5, 9], inset: 1, lean: 'mirrored' },
      { kind: 'edge', edge: 'right', by: -1, rows: [10], inset: 1, lean: 'mirrored' },
      { kind: 'bind off', edge: 'right', groups: [{ row: 11, stitches: 3 }] },
      { kind: 'bind off', edge: 'left', groups: [{ row: 12, stitches: 3 }] },
    ],
  }),
);
