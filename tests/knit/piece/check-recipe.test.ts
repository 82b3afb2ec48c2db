import { describe, expect, it } from 'vitest';
import { checkRecipe } from '../../../src/knit/piece/check-recipe.ts';
import type { PartRecipe, Recipe } from '../../../src/knit/piece/recipe.ts';
import { section } from './count/mitten.ts';
import { part } from './parts-by-hand.ts';

const faults = (over: Partial<Recipe>) =>
  checkRecipe({ name: 'Back', makes: 1, parts: [part('p', { castOn: 9 })], ...over }).map(
    ({ code, figures, at }) => ({ code, ...figures, ...at }),
  );
const ofPart = (from: PartRecipe['from'], over: Partial<PartRecipe> = {}) =>
  faults({ parts: [part('p', from, over)] });
const many = (count: number) => Array.from({ length: count }, (_, i) => part(`p${i}`, { castOn: 9 }));

/* The bounds are our own: beyond them a figure is a slip of the finger. */
describe('what can be said of a recipe without knitting it', () => {
  it('makes: 1 to 20, whole', () => {
    for (const makes of [0, 21, 1.5])
      expect(faults({ makes })).toEqual([{ code: 'bad makes', makes, piece: 'Back', field: 'makes' }]);
    for (const makes of [1, 20]) expect(faults({ makes })).toEqual([]);
  });

  it('parts: one at least and 40 at most; beyond that nothing else is said', () => {
    expect(faults({ parts: [] })).toEqual([{ code: 'no parts', piece: 'Back', field: 'parts' }]);
    expect(faults({ parts: many(40) })).toEqual([]);
    expect(faults({ makes: 0, parts: many(41) })).toEqual([
      { code: 'too many parts', parts: 41, mostParts: 40, piece: 'Back', field: 'parts' },
    ]);
  });

  it('stitches: 1 to 2000, whole, however a part begins', () => {
    const body = part('body', { castOn: 20 }, { end: 'split' });
    for (const stitches of [0, 2001, 1.5]) {
      const bad = { code: 'bad stitches', stitches, mostStitches: 2000, piece: 'Back', part: 'p' };
      expect(ofPart({ castOn: stitches })).toEqual([{ ...bad, field: 'cast on' }]);
      const pickUp = [9, stitches].map((count) => ({ along: 'neck', stitches: count }));
      expect(ofPart({ pickUp })).toEqual([{ ...bad, field: 'pick up' }]);
      const taken = part('p', { part: 'body', edge: 'right', stitches });
      expect(faults({ parts: [body, taken] })).toEqual([{ ...bad, field: 'stitches' }]);
      expect(ofPart({ castOn: 9 }, { sections: [section({}), section({ onNeedle: stitches })] })).toEqual([
        { ...bad, field: 'on the needle', sectionIndex: 1 },
      ]);
    }
    for (const castOn of [1, 2000]) expect(ofPart({ castOn })).toEqual([]);
  });

  it('something is picked up, or taken from a part that stands before it and is not bound off', () => {
    const at = { piece: 'Back', part: 'p' };
    expect(ofPart({ pickUp: [] })).toEqual([{ code: 'nothing picked up', ...at, field: 'pick up' }]);
    const taken = part('p', { part: 'body', edge: 'right', stitches: 9 });
    const body = part('body', { castOn: 20 }, { end: 'bind off' });
    expect(faults({ parts: [taken, body] })).toEqual([{ code: 'no such part', ...at, field: 'from' }]);
    expect(faults({ parts: [body, taken] })).toEqual([
      { code: 'bound off', name: 'body', ...at, field: 'from' },
    ]);
    expect(faults({ parts: [{ ...body, end: 'hold' }, taken] })).toEqual([]);
    expect(faults({ parts: [part('p', { castOn: 9 }), part('p', { castOn: 9 })] })).toEqual([
      { code: 'part name twice', name: 'p', ...at, field: 'name' },
    ]);
  });

  it('rows: none to 5000, whole; a needle above nothing and up to 50 mm', () => {
    const at = { piece: 'Back', part: 'p', sectionIndex: 1 };
    const of = (over: Parameters<typeof section>[0]) =>
      ofPart({ castOn: 9 }, { sections: [section({ rows: 0 }), section(over)] });
    for (const rows of [-1, 0.5])
      expect(of({ rows })).toEqual([{ code: 'bad rows', rows, mostRows: 5000, ...at, field: 'rows' }]);
    expect(of({ rows: 5001 }).map(({ code }) => code)).toEqual(['bad rows', 'part too long']);
    for (const needle of [0, -4, 50.5, Number.NaN])
      expect(of({ needle })).toEqual([{ code: 'bad needle', ...at, field: 'needle' }]);
    for (const needle of [0.5, 50]) expect(of({ needle })).toEqual([]);
    expect(of({ rows: 0 })).toEqual([]);
  });

  it('a part: 200 sections and 5000 rows at most, that in which it is bound off among them', () => {
    const at = { piece: 'Back', part: 'p' };
    const sections = (count: number) => Array.from({ length: count }, () => section({ rows: 1 }));
    expect(ofPart({ castOn: 9 }, { sections: sections(200) })).toEqual([]);
    expect(ofPart({ castOn: 9 }, { sections: sections(201) })).toEqual([
      { code: 'too many sections', sections: 201, mostSections: 200, ...at },
    ]);
    const long = { sections: [section({ rows: 2500 }), section({ rows: 2500 })] };
    expect(ofPart({ castOn: 9 }, { ...long, end: 'hold' })).toEqual([]);
    expect(ofPart({ castOn: 9 }, { ...long, end: 'bind off' })).toEqual([
      { code: 'part too long', rows: 5001, mostRows: 5000, ...at },
    ]);
  });
});
