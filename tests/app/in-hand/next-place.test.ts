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
  it('is what was knitted last of all that is not done', () => {
    const sleeve = place(62, 104, 7);
    expect(nextOf([{ places: [place(9, 9, 9)] }, { places: [sleeve] }, { places: [place(3, 9, 5)] }])).toBe(
      sleeve,
    );
  });

  it('is the first that is not begun when nothing is in hand', () => {
    const front = place(0, 20, 0);
    expect(nextOf([{ places: [place(9, 9, 9)] }, { places: [front] }, { places: [place(0, 5, 0)] }])).toBe(
      front,
    );
  });

  it('is nowhere when all is knitted', () => {
    expect(nextOf([{ places: [place(9, 9, 9)] }, { places: [] }])).toBeUndefined();
  });
});
