import { describe, expect, it } from 'vitest';
import { nextMake } from '../../../src/app/in-hand/next-make.ts';
import type { GarmentView } from '../../../src/app/state.ts';

/** Back in two parts, two sleeves in two parts each: so many rows worked of ten in each. */
function view(worked: Readonly<Record<string, number>> = {}): GarmentView {
  const make = (piece: string, n: number) => ({
    make: n,
    parts: ['lower', 'upper'].map((name) => ({ name })),
    places: [0, 1].map((part) => {
      const id = `${piece} ${n} ${part}`;
      return { id, piece, make: n, part, rows: worked[id] ?? 0, total: 10 };
    }),
  });
  const pieces = [
    { id: 'back', name: 'Back', recipe: { makes: 1 }, makes: [make('back', 1)] },
    { id: 'sleeve', name: 'Sleeve', recipe: { makes: 2 }, makes: [make('sleeve', 1), make('sleeve', 2)] },
  ];
  return { garment: { id: 'g' }, pieces } as unknown as GarmentView;
}

const after = (id: string, worked: Readonly<Record<string, number>> = {}) => {
  const [piece = '', make] = id.split(' ');
  const next = nextMake(view(worked), { id, piece, make: Number(make) } as never);
  return next && `${next.place.id}: ${next.piece}, ${next.part}, one of ${next.recipe.makes}`;
};

describe('what to knit after a part', () => {
  it('is the rest of the same copy, then the other copy, then the other pieces', () => {
    expect(after('sleeve 2 0')).toBe('sleeve 2 1: Sleeve, upper, one of 2');
    expect(after('sleeve 2 0', { 'sleeve 2 1': 10 })).toBe('sleeve 1 0: Sleeve, lower, one of 2');
    expect(after('sleeve 2 0', { 'sleeve 2 1': 10, 'sleeve 1 0': 10 })).toBe(
      'sleeve 1 1: Sleeve, upper, one of 2',
    );
    const sleeves = { 'sleeve 2 1': 10, 'sleeve 1 0': 10, 'sleeve 1 1': 10 };
    expect(after('sleeve 2 0', sleeves)).toBe('back 1 0: Back, lower, one of 1');
  });

  it('may be begun, but not finished; where all is knitted there is nothing', () => {
    expect(after('back 1 0', { 'back 1 1': 9 })).toBe('back 1 1: Back, upper, one of 1');
    expect(after('back 1 0', { 'back 1 1': 10 })).toBe('sleeve 1 0: Sleeve, lower, one of 2');
    const all = Object.fromEntries(
      ['back 1 0', 'back 1 1', 'sleeve 1 0', 'sleeve 1 1', 'sleeve 2 0', 'sleeve 2 1'].map((id) => [id, 10]),
    );
    expect(after('back 1 0', all)).toBeUndefined();
  });
});
