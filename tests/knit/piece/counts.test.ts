import { describe, expect, it } from 'vitest';
import { fault } from '../../../src/knit/fault.ts';
import { sampleGarment } from '../../../src/knit/garment/sample.ts';
import { counts } from '../../../src/knit/piece/counts.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { PartRecipe, Recipe, Section, Shaping } from '../../../src/knit/piece/recipe.ts';

const section = (name: string, rows: number, shaping: readonly Shaping[] = []): Section => ({
  name,
  rows,
  fabric: 'stocking',
  needle: 4,
  shaping,
});

const part = (castOn: number, ...sections: readonly Section[]): PartRecipe => ({
  name: 'Body',
  from: { castOn },
  sections,
  end: 'bind off',
});

const recipe = (...parts: readonly PartRecipe[]): Recipe => ({ name: 'Front', makes: 1, parts });

const every = (step: number, first: number, times: number): number[] =>
  Array.from({ length: times }, (_, i) => first + i * step);

describe('counts by sums', () => {
  it('agree with the plan, section by section, for every piece of the sample', () => {
    for (const piece of sampleGarment.pieces) {
      const planned = plan(piece);
      expect(planned.ok).toBe(true);
      if (!planned.ok) return;
      counts(piece).forEach((sums, i) => {
        const rows = planned.value.parts[i]?.rows ?? [];
        expect(sums.start).toBe(planned.value.parts[i]?.start);
        for (const { first, last, side, before, after } of sums.sections) {
          expect([side, before]).toEqual([rows[first - 1]?.side, rows[first - 1]?.before]);
          expect(after).toBe(rows[last - 1]?.after);
        }
      });
    }
  });

  it('a V of one decrease every second row over 47 rows takes 24 and leaves 26 of 50', () => {
    // common practice, no published source
    const neck: Shaping = {
      kind: 'edge',
      edge: 'left',
      by: -1,
      rows: every(2, 1, 24),
      inset: 2,
      lean: 'mirrored',
    };
    expect(counts(recipe(part(50, section('neck', 47, [neck]))))[0]?.left).toBe(26);
  });

  it('more decreases than stitches: the row that would leave none is named, and no count after it', () => {
    const down: Shaping = {
      kind: 'edge',
      edge: 'both',
      by: -1,
      rows: every(2, 1, 10),
      inset: 1,
      lean: 'mirrored',
    };
    const [sums] = counts(
      recipe(part(12, section('plain', 4), section('neck', 20, [down]), section('top', 2))),
    );
    expect(sums?.sections.map(({ before, after, emptyAt }) => [before, after, emptyAt])).toEqual([
      [12, 12, undefined],
      [12, undefined, 11],
      [undefined, undefined, undefined],
    ]);
    expect(sums?.left).toBeUndefined();
  });

  it('the last row of a section may use up every stitch', () => {
    const off: Shaping = {
      kind: 'bind off',
      edge: 'right',
      groups: every(2, 1, 3).map((row) => ({ row, stitches: 4 })),
    };
    expect(counts(recipe(part(12, section('shoulder', 5, [off]))))[0]?.left).toBe(0);
  });

  it('the count before a field that cannot be read is still given', () => {
    const unread = [fault('blank', {}, { part: 'Body', sectionIndex: 1, field: 'rows' })];
    const [sums] = counts(recipe(part(12, section('rib', 4), section('body', 0), section('top', 2))), unread);
    expect(sums?.sections.map(({ before, after }) => [before, after])).toEqual([
      [12, 12],
      [12, undefined],
      [undefined, undefined],
    ]);
  });

  it('a start that cannot be read gives no count at all, a name that is missing gives all', () => {
    const at = { part: 'Body' };
    const one = recipe(part(12, section('rib', 4)));
    expect(counts(one, [fault('blank', {}, { ...at, field: 'cast on' })])[0]?.start).toBeUndefined();
    expect(counts(one, [fault('no name', {}, { ...at, field: 'name' })])[0]?.left).toBe(12);
  });
});
