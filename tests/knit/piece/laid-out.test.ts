import { describe, expect, it } from 'vitest';
import { laidOut } from '../../../src/knit/piece/lay-out.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { PlannedPart } from '../../../src/knit/piece/planned.ts';
import type { PartRecipe, Recipe } from '../../../src/knit/piece/recipe.ts';
import { told } from '../../told.ts';
import { section } from './count/mitten.ts';
import { part } from './parts-by-hand.ts';

describe('plans laid on top of each other', () => {
  it('have their rows as high as the tension now says, and begin where the part below ends', () => {
    const gauge = { stitches: 20, rows: 40, fabric: 'stocking' as const };
    const half = { stitches: 10, rows: 20, fabric: 'stocking' as const };
    const side = (name: string, at: 'right' | 'left') =>
      part(
        name,
        { part: 'body', edge: at, stitches: 10 },
        { sections: [section({ rows: 2 })], end: 'bind off' },
      );
    const recipe: Recipe = {
      name: 'P',
      makes: 1,
      gauge,
      parts: [
        part('body', { castOn: 20 }, { end: 'split', sections: [section({ rows: 4 })] }),
        side('right', 'right'),
        side('left', 'left'),
      ],
    };
    const made = plan(recipe);
    if (!made.ok) throw new Error(told(made.faults));
    const said = (of: readonly PlannedPart[]) =>
      of.map(
        ({ name, base, offset, rows }) =>
          `${name} ${offset}, ${base}: ${rows.map(({ height }) => height).join(' ')}`,
      );
    // 5 mm by 2.5 mm; the bound-off row takes no height
    const before = ['body 0, 0: 2.5 5 7.5 10', 'right 0, 10: 12.5 15 15', 'left 50, 10: 12.5 15 15'];
    expect(said(made.value.parts)).toEqual(before);
    expect(said(laidOut(made.value.parts, recipe))).toEqual(before);
    expect(said(laidOut(made.value.parts, { ...recipe, gauge: half }))).toEqual([
      'body 0, 0: 5 10 15 20',
      'right 0, 20: 25 30 30',
      'left 100, 20: 25 30 30',
    ]);
    const { fabric: _unnamed, ...unnamed } = half;
    expect(said(laidOut(made.value.parts, { ...recipe, gauge: unnamed }))).toEqual(before);
    // what was measured on the piece itself goes before the tension
    const [body, ...others] = recipe.parts as [PartRecipe, ...PartRecipe[]];
    const measured = { ...body, sections: [section({ rows: 4, measured: { rowMm: 3, atMm: 1 } })] };
    expect(said(laidOut(made.value.parts, { ...recipe, parts: [measured, ...others] }))).toEqual([
      'body 0, 0: 4 7 10 13',
      'right 0, 13: 15.5 18 18',
      'left 50, 13: 15.5 18 18',
    ]);
    // a part that the recipe has not, or with other sections, lies as it was planned
    expect(said(laidOut(made.value.parts, { ...recipe, gauge: half, parts: [] }))).toEqual(before);
  });
});
