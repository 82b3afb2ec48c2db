import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draft } from '../../src/knit/garment/draft.ts';
import { readPattern } from '../../src/knit/pattern/read-pattern.ts';
import { plan } from '../../src/knit/piece/plan.ts';
import { type PlannedPart, partsOfMake } from '../../src/knit/piece/planned.ts';
import type { Recipe, Section, Shaping } from '../../src/knit/piece/recipe.ts';
import { printRow, sayRow } from '../../src/knit/row/print.ts';
import { parseRow } from '../../src/knit/row/read/parse.ts';
import { someDesign } from '../arbitraries/design.ts';
import { knittableRecipe } from '../arbitraries/knittable-recipe.ts';
import { told } from '../told.ts';
import { notAtTheYarn } from './yarn.ts';

/** RIDGELINE_DRAFTS=5000 for the whole sweep; a part of it in every run. */
const DRAFTS = Number(process.env.RIDGELINE_DRAFTS ?? 18);

describe('the yarn', () => {
  it(`of every drafted garment hangs where the next row begins: no row of a part joins it, none works from elsewhere (${DRAFTS} designs)`, () => {
    const broken: string[] = [];
    let drafted = 0;
    for (const design of fc.sample(someDesign(), { numRuns: DRAFTS })) {
      const made = draft(design);
      if (!made.ok) continue;
      drafted += 1;
      const wrong = made.value.recipes.flatMap((recipe) => {
        const planned = plan(recipe);
        if (!planned.ok) throw new Error(told(planned.faults));
        const makes = Array.from({ length: recipe.makes }, (_, i) => partsOfMake(planned.value, i + 1));
        return makes
          .flat()
          .flatMap((part) =>
            notAtTheYarn(part).map(
              ({ row, why }) =>
                `${part.piece}, ${part.name}, row ${row.n} (${row.side}): ${why}: ${printRow(row.steps)}`,
            ),
          );
      });
      if (wrong[0]) broken.push(wrong[0]);
    }
    expect(drafted).toBeGreaterThan(DRAFTS / 2);
    expect(broken.length, `${broken.length} of ${drafted} designs: ${broken.slice(0, 3).join('; ')}`).toBe(0);
  }, 120_000);

  it('of any plan that the editor can make hangs where the next row begins, or the row says that it is joined', () => {
    let turned = 0;
    fc.assert(
      fc.property(
        fc.oneof(
          turningRecipe,
          knittableRecipe().map(({ recipe }) => recipe),
        ),
        (recipe) => {
          const planned = plan(recipe);
          if (!planned.ok) throw new Error(told(planned.faults));
          for (const part of planned.value.parts) {
            expect(notAtTheYarn(part).filter(({ why }) => why === 'the yarn hangs elsewhere')).toEqual([]);
            turned += part.rows.filter((row) => row.shaping.some(({ kind }) => kind === 'turn')).length;
          }
        },
      ),
      { numRuns: 300 },
    );
    expect(turned).toBeGreaterThan(300);
  }, 60_000);

  it('is joined, and the row says so, where all is bound off right after a turn', () => {
    const rows = rowsOf({ kind: 'turn', edge: 'right', groups: [{ row: 2, stitches: 5 }] }, 2);
    expect(rows).toEqual(['knit', 'purl to last 5 sts, turn', 'join yarn, bind off to end']);
  });

  it('is where the row after a turn begins, in the next section too, and in rows that were typed', () => {
    const typed = typedRows(['k to end', 'p10, turn', 'k10', 'p to end']);
    expect(typed).toEqual(['knit', 'p10, turn', 'k10', 'purl']);
  });

  it('of a text that turns is followed through: back over what was turned, then over all', () => {
    const text = `Back\nCast on 20 sts.\nRow 1 (RS): Knit.\nRow 2: P15, turn.\nRow 3: Knit.\nRow 4: Purl.\nRow 5: K to last 4 sts, leave 4 sts unworked.\nRow 6: P to end.\nBind off.`;
    const read = readPattern(text);
    const part = read.pieces[0]?.plan;
    if (!part?.ok) throw new Error('not read');
    const [body] = part.value.parts;
    expect(body?.rows.map((row) => sayRow(row.steps))).toEqual([
      'knit',
      'p15, turn',
      'knit to end',
      'purl',
      'knit to last 4 sts, leave 4 sts unworked',
      'purl to end',
      'bind off all sts in pattern',
    ]);
    expect(notAtTheYarn(body as PlannedPart)).toEqual([]);
  });
});

/** Sections with turns at one edge or both, wherever the editor lets them be, and plain ones between; some end anywhere. */
const turningRecipe: fc.Arbitrary<Recipe> = fc
  .array(
    fc.record({
      rows: fc.integer({ min: 1, max: 9 }),
      right: fc.array(fc.integer({ min: 1, max: 4 }), { maxLength: 3 }),
      left: fc.array(fc.integer({ min: 1, max: 4 }), { maxLength: 3 }),
      decreases: fc.boolean(),
    }),
    { minLength: 1, maxLength: 4 },
  )
  .chain((made) =>
    fc.record({ made: fc.constant(made), end: fc.constantFrom('bind off' as const, 'hold' as const) }),
  )
  .map(({ made, end }): Recipe => {
    let before = 0;
    const sections = made.map(({ rows, right, left, decreases }): Section => {
      const groups = (list: readonly number[], first: number) =>
        list.map((stitches, i) => ({ row: first + 2 * i, stitches })).filter(({ row }) => row <= rows);
      // an RS row turns at the left edge; the section's row 1 is one where an even number lies before it
      const rs = before % 2 === 0 ? 1 : 2;
      before += rows;
      const turns = [
        { kind: 'turn' as const, edge: 'left' as const, groups: groups(left, rs) },
        { kind: 'turn' as const, edge: 'right' as const, groups: groups(right, 3 - rs) },
      ].filter((turn) => turn.groups.length > 0);
      const edge = { kind: 'edge', edge: 'both', by: -1, rows: [1], inset: 1, lean: 'mirrored' } as const;
      return { ...plain, rows, shaping: turns.length === 0 && decreases ? [edge] : turns };
    });
    return { name: 'Back', makes: 1, parts: [{ name: 'Back', from: { castOn: 60 }, sections, end }] };
  });

const plain: Section = { name: 'body', rows: 2, fabric: 'stocking', needle: 4, shaping: [] };

function saidRows(sections: readonly Section[]): string[] {
  const made = plan({
    name: 'Back',
    makes: 1,
    parts: [{ name: 'Back', from: { castOn: 20 }, sections, end: 'bind off' }],
  });
  if (!made.ok) throw new Error(told(made.faults));
  return made.value.parts.flatMap((part) => part.rows.map((row) => sayRow(row.steps)));
}

const rowsOf = (shaping: Shaping, rows: number): string[] =>
  saidRows([{ ...plain, rows, shaping: [shaping] }]);

function typedRows(texts: readonly string[]): string[] {
  const words = texts.map((text) => {
    const read = parseRow(text);
    if (!read.ok) throw new Error(told(read.faults));
    return read.value;
  });
  return saidRows([{ ...plain, rows: words.length, words }]).slice(0, -1);
}
