import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fits } from '../../../src/knit/fabric.ts';
import { draft } from '../../../src/knit/garment/draft.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { Edge, Recipe, Shaping } from '../../../src/knit/piece/recipe.ts';
import { someDesign } from '../../arbitraries/design.ts';
import { edgeShaped, waisted } from '../../arbitraries/edge-shaped.ts';
import { knittableRecipe } from '../../arbitraries/knittable-recipe.ts';
import { shapedPanel } from '../../arbitraries/shaped-panel.ts';
import { share } from '../../by-turns.ts';
import { type KnittedRow, knitPiece } from '../../knitter/cloth.ts';
import type { Loop } from '../../knitter/knit-row.ts';
import { meaningOf } from '../../knitter/meaning.ts';
import { told } from '../../told.ts';

function knitted(recipe: Recipe): KnittedRow[] {
  const made = plan(recipe);
  if (!made.ok) throw new Error(told(made.faults));
  return knitPiece(recipe, made.value.parts);
}

/** A garment takes longer to make smaller than to read: what fails is shown as it was found. */
const asFound = { endOnFailure: true };

const amissIn = (recipe: Recipe): string[] => knitted(recipe).flatMap(({ amiss }) => amiss);

const recipes: fc.Arbitrary<Recipe> = fc.oneof(
  knittableRecipe().map(({ recipe }) => recipe),
  shapedPanel(),
  edgeShaped(),
  waisted(),
);

type EdgeShaping = Extract<Shaping, { kind: 'edge' }>;

/** What the recipe asks for at an edge on this row. */
function edgeWork({ recipe, row, inSection }: KnittedRow, edge: Edge): EdgeShaping | undefined {
  return recipe.sections[row.section]?.shaping.find(
    (s): s is EdgeShaping =>
      s.kind === 'edge' && (s.edge === edge || s.edge === 'both') && s.rows.includes(inSection),
  );
}

const edges = ['right', 'left'] as const;

/** The loop so many stitches in from an edge, the piece seen from the right side. */
const loopAt = (loops: readonly Loop[], edge: Edge, inset: number): Loop | undefined =>
  edge === 'right' ? loops[inset] : loops[loops.length - 1 - inset];

/** Whether the row begins at this edge: at the right one on the right side, at the left one on the wrong side. */
const begins = (edge: Edge, side: 'RS' | 'WS'): boolean => (edge === 'right') === (side === 'RS');

/**
 * A decrease that lies along its edge: knit ones lean left where a row begins and right where it ends (k2, ssk, …
 * k2tog, k2: Bulky baby raglan at issuhub.com/view/index/4587, step 8; knitty.com, ISSUEspring03, Duo); purl ones lean
 * left at the right edge and right at the left one as seen from the right side, where ssp shows as ssk and p2tog as
 * k2tog (espacetricot.com, From all angles – decreases, part 2, 30 April 2012). The same row for either side in garter
 * stitch: common practice, no published source.
 */
const leanOf = (edge: Edge, side: 'RS' | 'WS', looks: 'knit' | 'purl'): 'left' | 'right' =>
  (looks === 'knit' ? begins(edge, side) : edge === 'right') ? 'left' : 'right';

/** Every edge at which a recipe asks for something, with the loop that stands there afterwards. */
function eachEdge(
  recipe: Recipe,
  look: (at: { edge: Edge; work: EdgeShaping; row: KnittedRow }) => void,
): void {
  for (const row of knitted(recipe)) {
    for (const edge of edges) {
      const work = edgeWork(row, edge);
      if (work) look({ edge, work, row });
    }
  }
}

describe('seen from the right side', () => {
  it('every plain stitch shows what its fabric shows there, edge to edge, after every shaping, split and increase', () => {
    fc.assert(
      fc.property(recipes, (recipe) => {
        expect(amissIn(recipe)).toEqual([]);
      }),
      { numRuns: share(100), ...asFound },
    );
  });

  it('so does every plain stitch of drafted garments', () => {
    let drafted = 0;
    fc.assert(
      fc.property(someDesign(), (design) => {
        const made = draft(design);
        if (!made.ok) return;
        drafted += 1;
        for (const recipe of made.value.recipes) expect(amissIn(recipe)).toEqual([]);
      }),
      { numRuns: 8, ...asFound },
    );
    expect(drafted).toBeGreaterThan(2);
  });

  it('a fabric over which nobody shapes is that fabric: ribs stand in line, moss alternates, garter has its ridges', () => {
    const rows = (fabric: 'rib 2x2' | 'moss' | 'garter' | 'rib 1x1', castOn: number) =>
      knitted({
        name: 'Swatch',
        makes: 1,
        parts: [
          {
            name: 'body',
            from: { castOn },
            end: 'hold',
            sections: [{ name: 'all', rows: 4, fabric, needle: 4, shaping: [] }],
          },
        ],
      }).map((row) =>
        [...row.knitted.loops]
          .reverse()
          .map(({ face }) => face)
          .join(''),
      );
    // as charts have them: the left edge at the left
    expect(rows('rib 2x2', 10)).toEqual(Array(4).fill('kkppkkppkk'));
    expect(rows('rib 1x1', 6)).toEqual(Array(4).fill('pkpkpk'));
    expect(rows('moss', 5)).toEqual(['kpkpk', 'pkpkp', 'kpkpk', 'pkpkp']);
    expect(rows('garter', 3)).toEqual(['kkk', 'ppp', 'kkk', 'ppp']);
  });
});

describe('at the edges', () => {
  it('a decrease closes two stitches, or three, so many stitches in from the edge that the recipe names', () => {
    fc.assert(
      fc.property(edgeShaped(), (recipe) => {
        eachEdge(recipe, ({ edge, work, row }) => {
          if (work.by > 0) return;
          expect(loopAt(row.knitted.loops, edge, work.inset)?.from).toHaveLength(1 - work.by);
        });
      }),
      { numRuns: share(80), ...asFound },
    );
  });

  it('an increase is made so many stitches in from the edge that the recipe names', () => {
    fc.assert(
      fc.property(edgeShaped(), (recipe) => {
        eachEdge(recipe, ({ edge, work, row }) => {
          if (work.by < 0) return;
          const loop = loopAt(row.knitted.loops, edge, work.inset);
          const { takes, makes } = meaningOf(loop?.by ?? '');
          expect(makes - takes).toBe(work.inset === 0 ? work.by : 1);
        });
      }),
      { numRuns: share(80), ...asFound },
    );
  });

  it('nothing else in the row takes or makes stitches', () => {
    fc.assert(
      fc.property(edgeShaped(), (recipe) => {
        for (const row of knitted(recipe)) {
          const asked = edges.reduce((sum, edge) => sum + Math.abs(edgeWork(row, edge)?.by ?? 0), 0);
          const made = row.knitted.worked.reduce((sum, word) => {
            const { takes, makes } = meaningOf(word);
            return sum + Math.abs(makes - takes);
          }, 0);
          expect(made).toBe(asked);
        }
      }),
      { numRuns: share(100), ...asFound },
    );
  });

  it('mirrored decreases lean along the edge that they lie on; plain ones lean right', () => {
    fc.assert(
      fc.property(edgeShaped(), (recipe) => {
        eachEdge(recipe, ({ edge, work, row }) => {
          if (work.by > 0) return;
          const { by = '' } = loopAt(row.knitted.loops, edge, work.inset) ?? {};
          const { leans, looks = 'knit' } = meaningOf(by);
          const asked = work.lean === 'mirrored' ? leanOf(edge, row.row.side, looks) : 'right';
          const at = { edge, side: row.row.side, by };
          expect({ ...at, leans }).toEqual({ ...at, leans: asked });
        });
      }),
      { numRuns: share(100), ...asFound },
    );
  });

  it('mirrored increases lean toward the edge that they lie on, from whichever side they are knitted', () => {
    fc.assert(
      fc.property(edgeShaped(), (recipe) => {
        eachEdge(recipe, ({ edge, work, row }) => {
          if (work.by < 0 || work.inset === 0 || work.lean === 'plain') return;
          const { by = '' } = loopAt(row.knitted.loops, edge, work.inset) ?? {};
          const { leans, looks } = meaningOf(by);
          if (looks === 'purl') return;
          const asked = begins(edge, row.row.side) ? 'right' : 'left';
          const at = { edge, side: row.row.side, by };
          expect({ ...at, leans }).toEqual({ ...at, leans: asked });
        });
      }),
      { numRuns: share(100), ...asFound },
    );
  });

  it('the first stitch is slipped where the selvedge is, and nowhere else', () => {
    fc.assert(
      fc.property(knittableRecipe(), ({ recipe }) => {
        for (const { recipe: part, knitted: made } of knitted(recipe)) {
          const { worked } = made;
          const [first = ''] = worked;
          const slips =
            part.selvedge === 'slipped' &&
            meaningOf(first).takes === 1 &&
            first !== 'bo' &&
            !/^[kp]fb/.test(first);
          expect(worked.map((word) => word === 'sl')).toEqual(worked.map((_, i) => i === 0 && slips));
        }
      }),
      { numRuns: share(40), ...asFound },
    );
  });
});

const mirrored: Readonly<Record<string, string>> = {
  ssk: 'k2tog',
  k2tog: 'ssk',
  ssp: 'p2tog',
  p2tog: 'ssp',
  sk2p: 'k3tog',
  k3tog: 'sk2p',
  sssp: 'p3tog',
  p3tog: 'sssp',
  m1l: 'm1r',
  m1r: 'm1l',
};

describe('a mirrored piece', () => {
  /** Counts over which each fabric is its own mirror image. */
  const own = (count: number): number => 2 * Math.floor(count / 2) + 1;

  it('is the mirror image of the first, stitch by stitch', () => {
    const even = edgeShaped(['rib 2x2'], (count) => 4 * Math.floor(count / 4) + 2);
    const others = edgeShaped(['stocking', 'garter', 'reverse stocking', 'moss', 'rib 1x1 matched'], own);
    fc.assert(
      fc.property(fc.oneof(others, even), (recipe) => {
        const shaped = recipe.parts[0]?.sections[1]?.shaping[0];
        fc.pre(shaped?.kind === 'edge' && shaped.lean === 'mirrored');
        const made = plan({ ...recipe, makes: 2, mirrored: true });
        if (!made.ok || !made.value.mirrorParts) throw new Error('not planned');
        const first = knitPiece(recipe, made.value.parts);
        const second = knitPiece(recipe, made.value.mirrorParts);
        expect(second.map(({ knitted: { worked } }) => worked)).toEqual(
          first.map(({ knitted: { worked } }) => [...worked].reverse().map((word) => mirrored[word] ?? word)),
        );
      }),
      { numRuns: share(80), ...asFound },
    );
  });

  it('has counts over which its fabric is its own mirror image', () => {
    expect(fits('rib 1x1 matched', own(44)).fits).toBe(true);
  });
});
