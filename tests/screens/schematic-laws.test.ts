import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { saysLengthIn } from '../../src/knit/written/says-length.ts';
import { schematicOf } from '../../src/screens/pass-on/schematic-lines.ts';
import { inSizes } from '../arbitraries/in-sizes.ts';
import { taped } from './taped.ts';

/** RIDGELINE_DRAFTS=1000 for the whole sweep; a part of it in every run. */
const DRAFTS = Number(process.env.RIDGELINE_DRAFTS ?? 15);

/** Half of the step to which a length is said, and what a figure is of a mm. */
const units = { cm: { mm: 10, near: 2.51 }, in: { mm: 25.4, near: 3.18 } } as const;

/** Every figure of a list in its unit, size by size: '58 (62, –) cm / 23 (24.5, –) in'; behind names that of those sizes. */
function figuresOf(list: string, names: readonly string[]) {
  return list.split('; ').flatMap((segment) => {
    const only = /^Sizes? (.+) only: (.*)$/.exec(segment);
    const there = only ? names.filter((name) => only[1]?.split(/, | and /).includes(name)) : names;
    return [...(only?.[2] ?? segment).matchAll(/([\d.–]+)(?: \(([^)]*)\))? (cm|in)/g)].flatMap(
      ([, first = '', rest, unit]) => {
        const all = [first, ...(rest === undefined ? [] : rest.split(', '))];
        const wide = all.length === names.length ? names : there;
        return wide.map((name, i) => ({
          name,
          unit: unit as keyof typeof units,
          figure: Number(all.length === 1 ? first : all[i]?.replace('–', 'NaN')),
        }));
      },
    );
  });
}

/** Nobody draws a line for less, mm. */
const LEAST_MM = 15;

describe(`the schematics of a pattern in up to seven sizes (${DRAFTS} random designs; RIDGELINE_DRAFTS for more)`, () => {
  it('have every figure that is measured on the plan, in each size', { timeout: 3_000_000 }, () => {
    const found: string[] = [];
    let figures = 0;
    fc.assert(
      fc.property(inSizes(), ({ sizes, words, units: said }) => {
        const names = sizes.map(({ size }) => size);
        if (new Set(names).size < names.length) return;
        for (const { recipe } of sizes[0]?.garment.pieces ?? []) {
          const drawing = schematicOf(recipe.name, sizes, words, saysLengthIn(said));
          if (!drawing) continue;
          const all = sizes.map(({ garment }) =>
            taped(garment.pieces.find((one) => one.recipe.name === recipe.name)?.makes[0]?.parts ?? []),
          );
          for (const { name: what, list } of drawing.lines) {
            for (const { name, unit, figure } of figuresOf(list, names)) {
              if (Number.isNaN(figure)) continue;
              figures += 1;
              const mm = all[names.indexOf(name)]?.get(what);
              const { mm: of, near } = units[unit];
              if (mm === undefined || Math.abs(figure * of - mm) > near)
                found.push(
                  `${recipe.name} ${name}: ${what} ${figure} ${unit}, taped ${mm?.toFixed(1)} mm of ${list}`,
                );
            }
          }
          const told = new Set(drawing.lines.map((line) => line.name));
          for (const what of [
            'Height in all',
            'Width where it begins',
            'Width of the neck',
            'Depth of the neck',
          ])
            if (all.some((tape) => (tape.get(what) ?? 0) > LEAST_MM) && !told.has(what))
              found.push(`${recipe.name}: ${what} is missing`);
        }
      }),
      { numRuns: DRAFTS, endOnFailure: true },
    );
    expect(`${found.length} of ${figures}\n${found.slice(0, 25).join('\n')}`).toBe(`0 of ${figures}\n`);
    expect(figures).toBeGreaterThan(20 * DRAFTS);
  });
});
