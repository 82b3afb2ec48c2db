import { describe, expect, it } from 'vitest';
import { designOf, newForm } from '../../../src/app/drafts/design/form.ts';
import { inSizes } from '../../../src/app/garments/in-sizes.ts';
import { bodiesOf, type SizeSet, sizeName, usualSet } from '../../../src/app/garments/size-set.ts';
import { adjustablePaths, adjusted, figureAt } from '../../../src/knit/garment/adjust.ts';
import { bodyTables } from '../../../src/knit/garment/bodies.ts';
import { told } from '../../told.ts';

const form = newForm();
const design = designOf(form);
const set: SizeSet = {
  ...usualSet(form),
  adjusted: [
    { path: 'lengthMm', mm: 600 },
    { path: 'lengthMm', mm: 700, size: 'L' },
    { path: 'neck.depthMm', mm: 90, size: 'S' },
  ],
};

const lengths = async (one: SizeSet) =>
  (await inSizes(design, { name: 'Fen' }, bodiesOf(one), () => {}, one.adjusted)).map(({ size, worked }) => {
    if (!worked.ok) throw new Error(told(worked.faults));
    return { size, length: worked.value.finished.length ?? 0, depth: worked.value.design?.neck.depthMm };
  });

describe('a set of sizes', () => {
  it('begins with her own size and two to either side', () => {
    expect(usualSet(form)).toMatchObject({
      table: 'women',
      sizes: ['XS', 'S', 'M', 'L', 'XL'],
      adjusted: [],
    });
  });

  it('at the end of a table is the last five; without a size of hers the first five', () => {
    const of = (person: object) => usualSet({ ...form, person }).sizes;
    expect(of({ table: 'women', size: '5X' })).toEqual(
      ['X', '2X', '3X', '4X', '5X'].map((n) => (n === 'X' ? 'XL' : n)),
    );
    expect(of({ table: 'children' })).toEqual(['2', '4', '6', '8', '10']);
  });

  it('has own measures beside the table, by a name that fits into a list', () => {
    const body = bodyTables.women[2]?.body ?? design.body;
    const bodies = bodiesOf({ ...set, sizes: ['S'], people: [{ name: 'Ida (my aunt), 2025', body }] });
    expect(bodies.map(({ size }) => size)).toEqual(['S', 'Ida my aunt 2025']);
    expect(sizeName('(Ö)')).toBe('Ö');
  });

  it('takes a figure set for all sizes, one size’s own before it, and gives it back', async () => {
    const [by, rules] = [await lengths(set), await lengths({ ...set, adjusted: [] })];
    for (const { size, length } of by)
      expect(Math.abs(length - (size === 'L' ? 700 : 600)), size).toBeLessThan(10);
    expect(by.find(({ size }) => size === 'S')?.depth).toBe(90);
    for (const { size, depth } of by)
      if (size !== 'S') expect(depth, size).toBe(rules.find((one) => one.size === size)?.depth);
    expect(new Set(rules.map(({ length }) => Math.round(length / 10))).size).toBeGreaterThan(1);
  });

  it.each(adjustablePaths)('sets %s and nothing else', (path) => {
    const made = adjusted(design, [{ path, mm: 77 }], 'M');
    expect(figureAt(made, path)).toBe(77);
    const was = figureAt(design, path);
    if (was === undefined) return;
    expect(adjusted(made, [{ path, mm: was }], 'M')).toEqual(design);
  });
});
