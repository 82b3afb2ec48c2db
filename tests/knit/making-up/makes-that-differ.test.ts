import { expect, it } from 'vitest';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import type { StandingGarment } from '../../../src/knit/piece/standing.ts';
import { standing, stepSaid } from './by-hand.ts';
import { back, front, neckband, sleeve } from './pullover.ts';

const longer = (recipe: Recipe, section: string, by: number): Recipe => ({
  ...recipe,
  parts: recipe.parts.map((part) => ({
    ...part,
    sections: part.sections.map((own) => (own.name === section ? { ...own, rows: own.rows + by } : own)),
  })),
});

/** The garment of which one make of a piece was knitted otherwise, as a rework leaves it. */
function reworked(garment: StandingGarment, name: string, make: number, otherwise: Recipe): StandingGarment {
  const [other] = standing(otherwise).pieces;
  return {
    ...garment,
    pieces: garment.pieces.map((piece) =>
      piece.recipe.name === name
        ? {
            ...piece,
            makes: piece.makes.map((one) => {
              const parts = other?.makes[one.make - 1]?.parts ?? [];
              return one.make === make
                ? {
                    ...one,
                    recipe: otherwise,
                    parts: parts.map((part, i) => ({
                      ...part,
                      recipe: otherwise.parts[i] as Recipe['parts'][number],
                    })),
                  }
                : one;
            }),
          }
        : piece,
    ),
  };
}

const about = (garment: StandingGarment, word: string): string[] =>
  makingUpOf(garment)
    .steps.map(stepSaid)
    .filter((step) => step.includes(word));

it('a sleeve that came out longer than the other has steps of its own, each with the makes that it is for', () => {
  const made = reworked(standing(back, front, sleeve, neckband), 'Sleeve', 2, longer(sleeve, 'sleeve', 4));
  // ten rows of seam and 52 mm, fourteen and 64 mm; sewn in alike
  const setIn = 'kind set in sleeves sleeve Sleeve topMm 88.8 armholeMm 76.8 markerRows 8 markerMm 24 on';
  expect(about(made, 'Sleeve')).toEqual([
    'block Sleeve: kind block piece Sleeve makes 1 nos [1] widthMm 64 heightMm 52',
    'block Sleeve 2: kind block piece Sleeve makes 1 nos [2] widthMm 64 heightMm 64',
    `set in sleeves: ${setIn} Back marksMm [38 44 50 56] quarters [2 4 6] underarm {stitches 3 rows 0} nos [1]`,
    `set in sleeves 2: ${setIn} Front marksMm [38 44 50 56] quarters [2 4 6] underarm {stitches 3 rows 0} nos [2]`,
    'sleeve seams: kind sleeve seams sleeve Sleeve rows 10 nos [1]',
    'sleeve seams 2: kind sleeve seams sleeve Sleeve rows 14 nos [2]',
  ]);
});

it('the first one that differs keeps the ids without a mark, so that ticks stay where they were', () => {
  const made = reworked(standing(back, front, sleeve), 'Sleeve', 1, longer(sleeve, 'sleeve', 4));
  expect(about(made, 'sleeve seams')).toEqual([
    'sleeve seams: kind sleeve seams sleeve Sleeve rows 14 nos [1]',
    'sleeve seams 2: kind sleeve seams sleeve Sleeve rows 10 nos [2]',
  ]);
});

it('two that came out alike are one step still', () => {
  const longest = longer(sleeve, 'sleeve', 4);
  const one = reworked(standing(back, front, sleeve), 'Sleeve', 1, longest);
  expect(about(reworked(one, 'Sleeve', 2, longest), 'sleeve seams')).toEqual([
    'sleeve seams: kind sleeve seams sleeve Sleeve rows 14',
  ]);
});
