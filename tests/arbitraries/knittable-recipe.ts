import fc from 'fast-check';
import { type FabricName, fabricNames, fits } from '../../src/knit/fabric.ts';
import type { PartRecipe, Recipe, Section, Shaping } from '../../src/knit/piece/recipe.ts';

/** A recipe that can be knitted, with the counts that its shaping must lead to, summed apart from the planner. */
export interface KnittableRecipe {
  readonly recipe: Recipe;
  /** stitches that each part leaves before it is bound off or held */
  readonly ends: Readonly<Record<string, number>>;
}

type Draw = <T>(arb: fc.Arbitrary<T>) => T;

/** Pieces with ribs, shaped edges, groups, spread rows, splits and bands, of every fabric. */
export const knittableRecipe = (): fc.Arbitrary<KnittableRecipe> =>
  fc.gen().map((g) => {
    const draw: Draw = (arb) => g(() => arb);
    return makeRecipe(draw);
  });

function makeRecipe(draw: Draw): KnittableRecipe {
  const castOn = draw(fc.integer({ min: 30, max: 140 }));
  const ends: Record<string, number> = {};
  const splits = draw(fc.boolean());
  const body = makePart(
    draw,
    'body',
    { castOn },
    castOn,
    0,
    splits ? 'split' : draw(fc.constantFrom('bind off', 'hold')),
  );
  ends.body = body.end;
  const parts: PartRecipe[] = [body.part];
  if (splits) {
    const middle = draw(fc.integer({ min: 0, max: Math.floor(body.end / 3) }));
    const right = Math.floor((body.end - middle) / 2);
    const left = body.end - middle - right;
    const share = (name: string, stitches: number, edge: 'right' | 'left' | 'middle') => {
      const made = makePart(
        draw,
        name,
        { part: 'body', stitches, edge },
        stitches,
        body.rows,
        draw(fc.constantFrom('bind off', 'hold')),
      );
      parts.push(made.part);
      ends[name] = made.end;
    };
    share('left shoulder', right, 'right');
    if (middle > 0) {
      parts.push({
        name: 'centre',
        from: { part: 'body', stitches: middle, edge: 'middle' },
        sections: [],
        end: 'bind off',
      });
      ends.centre = middle;
    }
    share('right shoulder', left, 'left');
  }
  const recipe: Recipe = { name: 'Panel', makes: 1, gauge: { stitches: 20, rows: 28 }, parts };
  return { recipe, ends };
}

function makePart(
  draw: Draw,
  name: string,
  from: PartRecipe['from'],
  start: number,
  before: number,
  end: PartRecipe['end'],
): { part: PartRecipe; end: number; rows: number } {
  const sections: Section[] = [];
  let count = start;
  let rows = before;
  const many = draw(fc.integer({ min: 1, max: 3 }));
  for (let i = 0; i < many; i += 1) {
    const fabric = draw(fc.constantFrom(...fabricNames.filter((f) => fits(f, count).fits)));
    const length = draw(fc.integer({ min: 2, max: 30 }));
    const { shaping, after } = draw(fc.boolean())
      ? makeShaping(draw, count, length, rows)
      : { shaping: [], after: count };
    sections.push({
      name: `section ${i + 1}`,
      rows: length,
      fabric: fabric as FabricName,
      needle: 4,
      shaping,
    });
    count = after;
    rows += length;
  }
  const selvedge = draw(fc.constantFrom('plain' as const, 'slipped' as const));
  return { part: { name, from, selvedge, sections, end }, end: count, rows };
}

/** One way of shaping; `rowsBefore` says on which side the section starts. */
function makeShaping(
  draw: Draw,
  count: number,
  rows: number,
  rowsBefore: number,
): { shaping: Shaping[]; after: number } {
  const room = Math.max(0, Math.floor((count - 10) / 2));
  const kind = draw(fc.constantFrom('both', 'one edge', 'across', 'groups'));
  if (kind === 'across') {
    const by = draw(fc.integer({ min: -Math.floor(count / 3), max: Math.floor(count / 2) }));
    return { shaping: [{ kind: 'across', row: rows, by }], after: count + by };
  }
  if (kind === 'groups') {
    const stitches = draw(fc.integer({ min: 1, max: Math.max(1, Math.floor(room / 3)) }));
    const startsRs = rowsBefore % 2 === 0;
    const right = {
      kind: 'bind off' as const,
      edge: 'right' as const,
      groups: [{ row: startsRs ? 1 : 2, stitches }],
    };
    const left = {
      kind: 'cast on' as const,
      edge: 'left' as const,
      groups: [{ row: startsRs ? 2 : 1, stitches: stitches + 1 }],
    };
    return { shaping: [right, left], after: count + 1 };
  }
  const most = Math.min(rows, room);
  const chosen = draw(fc.uniqueArray(fc.integer({ min: 1, max: rows }), { maxLength: most })).sort(
    (a, b) => a - b,
  );
  const by = draw(fc.constantFrom(-1, 1));
  const inset = draw(fc.integer({ min: 0, max: 2 }));
  const lean = draw(fc.constantFrom('mirrored' as const, 'plain' as const));
  const edge = kind === 'both' ? 'both' : draw(fc.constantFrom('right' as const, 'left' as const));
  const edges = edge === 'both' ? 2 : 1;
  return {
    shaping: [{ kind: 'edge', edge, by, rows: chosen, inset, lean }],
    after: count + by * edges * chosen.length,
  };
}
