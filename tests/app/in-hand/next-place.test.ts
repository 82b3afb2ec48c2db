import { describe, expect, it } from 'vitest';
import { latestKnitted, nextOf, nextPlace } from '../../../src/app/in-hand/next-place.ts';
import type { PlaceRecord } from '../../../src/store/records.ts';

let part = 0;
const place = (rows: number, total: number, touched: number): PlaceRecord => ({
  id: `g/p/${part}/1` as const,
  garment: 'g',
  piece: 'p',
  part: part++,
  make: 1,
  plan: 'g/p/0/s/1',
  rows,
  total,
  seq: rows,
  at: 0,
  touched,
});

describe('where a make goes on', () => {
  it('is the part knitted last, while rows are left in it', () => {
    const [body, left, right] = [place(10, 10, 1), place(2, 8, 3), place(4, 8, 2)];
    expect(nextPlace([body, left, right])).toBe(left);
  });

  it('is else the first part with rows left', () => {
    const [body, left, right] = [place(10, 10, 3), place(8, 8, 5), place(0, 8, 0)];
    expect(nextPlace([body, left, right])).toBe(right);
    expect(nextPlace([place(0, 3, 0), place(0, 8, 0)])?.total).toBe(3);
  });

  it('is the last part of one that is done, and nothing without parts', () => {
    const last = place(8, 8, 1);
    expect(nextPlace([place(10, 10, 2), last])).toBe(last);
    expect(nextPlace([])).toBeUndefined();
  });
});

it('what was knitted last is the place touched last, at any time after the beginning of time', () => {
  const [never, once] = [place(0, 9, 0), place(1, 9, 1)];
  expect(latestKnitted([never, once])).toBe(once);
  expect(latestKnitted([never])).toBeUndefined();
  const [one, other] = [place(2, 9, 8), place(2, 9, 8)];
  expect(latestKnitted([one, other])).toBe(one);
});

describe('where a garment goes on', () => {
  const of = (id: string, rows: number, total: number, touched: number) => {
    const [piece, make] = id.split(' ');
    return { ...place(rows, total, touched), piece, make: Number(make), id };
  };
  /** Back, front and two sleeves. */
  const garment = (...places: readonly ReturnType<typeof of>[]) => {
    const pieces = [...new Set(places.map(({ piece }) => piece))].map((id) => ({
      id,
      name: id,
      recipe: { makes: 1 },
      makes: places
        .filter(({ piece }) => piece === id)
        .map((one) => ({ make: one.make, parts: [{ name: id }], places: [one] })),
    }));
    return nextOf({ garment: { id: 'g' }, pieces } as never)?.id;
  };

  it('is what was knitted last, while rows are left in it', () => {
    expect(garment(of('back 1', 9, 9, 9), of('sleeve 1', 62, 104, 10), of('front 1', 3, 9, 5))).toBe(
      'sleeve 1',
    );
  });

  it('is what comes after a piece that is done, as the workbasket says: her second sleeve, not the back she laid aside', () => {
    expect(garment(of('back 1', 35, 233, 5), of('sleeve 1', 9, 9, 9), of('sleeve 2', 0, 9, 0))).toBe(
      'sleeve 2',
    );
    expect(garment(of('back 1', 35, 233, 5), of('sleeve 1', 9, 9, 9), of('sleeve 2', 9, 9, 8))).toBe(
      'back 1',
    );
  });

  it('is the first that is not begun when nothing is in hand', () => {
    expect(garment(of('back 1', 9, 9, 9), of('front 1', 0, 20, 0), of('sleeve 1', 0, 5, 0))).toBe('front 1');
    expect(garment(of('back 1', 0, 9, 0), of('front 1', 0, 20, 0))).toBe('back 1');
  });

  it('is nowhere when all is knitted', () => {
    expect(garment(of('back 1', 9, 9, 9))).toBeUndefined();
  });
});
