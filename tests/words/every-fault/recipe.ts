import { inGauge } from '../../../src/app/garments/in-gauge.ts';
import type { RecipeFaults } from '../../../src/knit/faults/recipe-faults.ts';
import { sampleGarment } from '../../../src/knit/garment/sample.ts';
import { checkRecipe } from '../../../src/knit/piece/check-recipe.ts';
import type { PieceForm } from '../../../src/knit/piece/form/form.ts';
import { formToRecipe } from '../../../src/knit/piece/form/read-piece.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import { provePart } from '../../../src/knit/piece/prove.ts';
import type { PartRecipe, Recipe, Section, Shaping } from '../../../src/knit/piece/recipe.ts';
import { regauge } from '../../../src/knit/piece/regauge/regauge.ts';
import { workBudget } from '../../../src/knit/piece/work-budget.ts';
import { yarnFor } from '../../../src/knit/yarn/need.ts';
import type { Drivers } from './drivers.ts';

const section = (change: Partial<Section> = {}): Section => ({
  name: 'body',
  rows: 10,
  fabric: 'stocking',
  needle: 4,
  shaping: [],
  ...change,
});
const part = (change: Partial<PartRecipe> = {}): PartRecipe => ({
  name: 'Body',
  from: { castOn: 40 },
  sections: [section()],
  end: 'hold',
  ...change,
});
const piece = (...parts: readonly PartRecipe[]): Recipe => ({ name: 'Front', makes: 1, parts });
const shaped = (castOn: number, ...shaping: readonly Shaping[]) =>
  plan(piece(part({ from: { castOn }, sections: [section({ shaping })] })));

const form = (change: Partial<PieceForm> = {}, rows = '10', needle = '4'): PieceForm => ({
  name: 'Front',
  makes: '1',
  parts: [
    {
      name: 'Body',
      start: { kind: 'cast on', stitches: '40' },
      sections: [{ name: 'body', rows, fabric: 'stocking', needle, shaping: [] }],
      end: 'hold',
    },
  ],
  ...change,
});

/** Two shares of one part's stitches, at its two edges. */
const divided = (right: number, left: number) =>
  plan(
    piece(
      part({ end: 'split' }),
      part({ name: 'Right', from: { part: 'Body', stitches: right, edge: 'right' } }),
      part({ name: 'Left', from: { part: 'Body', stitches: left, edge: 'left' } }),
    ),
  );

const disproved = () => {
  const made = plan(piece(part()));
  const planned = made.ok ? made.value.parts[0] : undefined;
  const proven = planned && provePart({ ...planned, left: 39 });
  return proven && !proven.ok ? proven.faults : undefined;
};

const gauged = { ...piece(part()), gauge: { stitches: 20, rows: 28 } };
const finer = { stitches: 24, rows: 34 };

export const recipeDrivers: Drivers<keyof RecipeFaults> = {
  'bad makes': () => checkRecipe({ ...piece(part()), makes: 21 }),
  'too many parts': () => checkRecipe(piece(...Array.from({ length: 41 }, (_, i) => part({ name: `${i}` })))),
  'part name twice': () => checkRecipe(piece(part(), part())),
  'nothing picked up': () => checkRecipe(piece(part({ from: { pickUp: [] } }))),
  'no parts': () => checkRecipe(piece()),
  'no such part': () => checkRecipe(piece(part({ from: { part: 'Yoke', stitches: 20, edge: 'right' } }))),
  'bound off': () =>
    checkRecipe(
      piece(
        part({ end: 'bind off' }),
        part({ name: 'Top', from: { part: 'Body', stitches: 20, edge: 'right' } }),
      ),
    ),
  'bad stitches': () => checkRecipe(piece(part({ from: { castOn: 2001 } }))),
  'bad rows': () => checkRecipe(piece(part({ sections: [section({ rows: 5001 })] }))),
  'bad needle': () => checkRecipe(piece(part({ sections: [section({ needle: 51 })] }))),
  'too many sections': () =>
    checkRecipe(piece(part({ sections: Array.from({ length: 201 }, () => section({ rows: 1 })) }))),
  'part too long': () =>
    checkRecipe(piece(part({ sections: [section({ rows: 3000 }), section({ rows: 2001 })] }))),
  blank: () => formToRecipe(form({}, '')),
  'no name': () => formToRecipe(form({ name: ' ' })),
  'not a whole number': () => formToRecipe(form({}, '1o')),
  'not a measure': () => formToRecipe(form({}, '10', 'thick')),
  'number too small': () => formToRecipe(form({ makes: '0' })),
  'fabric multiple': () =>
    plan(piece(part({ from: { castOn: 41 }, sections: [section({ fabric: 'rib 2x2' })] }))),
  'split too wide': () => divided(30, 50),
  'split does not share': () => divided(15, 15),
  'plan disproved': disproved,
  'no gauge': () => regauge(piece(part()), finer),
  'not as asked': () => {
    const { pieces } = sampleGarment;
    const { gauge } = gauged;
    return inGauge({ name: 'Any', pieces }, gauge, { ...gauge, rows: gauge.rows / 8 });
  },
  'bad gauge': () => regauge(gauged, { stitches: 2400, rows: 34 }),
  'rows in words': () =>
    regauge(
      { ...gauged, parts: [part({ sections: [section({ words: [[{ work: 'k', until: { left: 0 } }]] })] })] },
      finer,
    ),
  'mixed shaping': () =>
    shaped(
      40,
      { kind: 'across', row: 3, by: 4 },
      { kind: 'edge', edge: 'both', by: -1, rows: [3], inset: 1, lean: 'mirrored' },
    ),
  'no centre stitch': () => shaped(5, { kind: 'middle', from: 0, rows: [3] }),
  'shaping outside the section': () => shaped(40, { kind: 'across', row: 11, by: 4 }),
  'edge step too large': () =>
    shaped(40, { kind: 'edge', edge: 'both', by: -3, rows: [3], inset: 1, lean: 'mirrored' }),
  'shaped twice': () => shaped(40, { kind: 'across', row: 3, by: 4 }, { kind: 'across', row: 3, by: 2 }),
  'group on the wrong side': () =>
    shaped(40, { kind: 'bind off', edge: 'left', groups: [{ row: 1, stitches: 4 }] }),
  'turn on the wrong side': () =>
    shaped(40, { kind: 'turn', edge: 'right', groups: [{ row: 1, stitches: 4 }] }),
  'too much to plan': () => plan(piece(part()), workBudget(1000)),
  'bad weight': () => yarnFor(sampleGarment, [{ piece: 'Sleeve', make: 1, grams: -2 }]),
  'shaping needs more stitches': () =>
    shaped(4, { kind: 'edge', edge: 'both', by: -1, rows: [1, 3, 5], inset: 1, lean: 'mirrored' }),
};
