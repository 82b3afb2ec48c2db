import { beforeAll, describe, expect, it } from 'vitest';
import { startingDesign } from '../../src/knit/garment/start.ts';
import type { Recipe } from '../../src/knit/piece/recipe.ts';
import { saysMake } from '../../src/screens/says-make.ts';
import { loadWords } from '../../src/words/say.ts';
import { bodyOf, drafted, perInch } from '../outside/drafted.ts';

beforeAll(() => loadWords('craft'));

describe('the copies of a piece', () => {
  const { recipes, joints } = drafted(
    startingDesign(
      { kind: 'cardigan', armhole: 'set-in', neck: 'round', fit: 'standard' },
      bodyOf('women', 'M'),
      'stocking',
      perInch(5, 7),
    ),
  );
  const called = (name: string, make: number): string => {
    const recipe = recipes.find((one) => one.name === name) as Recipe;
    return saysMake(name, '', make, recipe);
  };

  it('of a front are its sides as worn, the same that the bands are picked up along', () => {
    expect([called('Front', 1), called('Front', 2)]).toEqual(['Front, left as worn', 'Front, right as worn']);
    // the band along the left front edge is picked up on the first copy
    const left = joints.find((joint) => joint.kind === 'pick up' && joint.piece === 'Button band');
    const lines = left?.kind === 'pick up' ? left.along.flatMap(({ line }) => line) : [];
    expect(lines.filter(({ piece }) => piece === 'Front').map(({ make }) => make)).toEqual([1]);
  });

  it('of a sleeve are counted, since either fits; a single piece needs no number', () => {
    expect([called('Sleeve', 2), called('Back', 1)]).toEqual(['Sleeve no.\u00a02', 'Back']);
    expect(saysMake('Back', 'left shoulder', 1, 1)).toBe('Back: left shoulder');
  });
});
