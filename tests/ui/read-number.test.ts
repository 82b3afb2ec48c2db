import { describe, expect, it } from 'vitest';
import { isWithin, readNumber, stepped } from '../../src/ui/field/read-number.ts';

describe('a number as it is typed', () => {
  it('may have a point or a comma, and blanks around it', () => {
    expect(['4', ' 4.5 ', '4,5', '4.', '.5', '0'].map((text) => readNumber(text))).toEqual([
      4, 4.5, 4.5, 4, 0.5, 0,
    ]);
  });

  it('may have a quarter, a half or three quarters, as tapes and patterns print them', () => {
    expect(['16½', '16 ½', '½', '2¾', '16 1/2', '3 3/4'].map((text) => readNumber(text))).toEqual([
      16.5, 16.5, 0.5, 2.75, 16.5, 3.75,
    ]);
  });

  it('may have eighths, and a fraction alone or tied by a hyphen', () => {
    expect(['4⅛', '4 3/8', '4-5/8', '7/8', '1⁄4', '⅜', '4 1/10'].map((text) => readNumber(text))).toEqual([
      4.125, 4.375, 4.625, 0.875, 0.25, 0.375, 4.1,
    ]);
    expect(['4 1/0', '1/', '/8', '4.5 1/4'].map((text) => readNumber(text))).toEqual(
      Array(4).fill(undefined),
    );
    expect(['−1 1/2', '-¼'].map((text) => readNumber(text, true))).toEqual([-1.5, -0.25]);
  });

  it('has a sign only where one is asked for, a typed minus or a printed one', () => {
    expect(readNumber('-3')).toBeUndefined();
    expect(['-3', '−3', '–3'].map((text) => readNumber(text, true))).toEqual([-3, -3, -3]);
  });

  it('is no number when it is empty or anything else', () => {
    expect(['', ' ', 'abc', '4 4', '4.5.6', '1e3', '.', '½½'].map((text) => readNumber(text))).toEqual(
      Array(8).fill(undefined),
    );
  });

  it('goes up and down by a step within its bounds, without the dust of binary fractions', () => {
    expect(stepped(118, 1, {})).toBe(119);
    expect(stepped(0.2, 1, { step: 0.1 })).toBe(0.3);
    expect(stepped(3.75, -1, { step: 0.25 })).toBe(3.5);
    expect(stepped(1, -1, { min: 1 })).toBe(1);
    expect(stepped(undefined, 1, { min: 1 })).toBe(1);
    expect(stepped(9, 1, { max: 9 })).toBe(9);
  });
});

it('a number is within its bounds, both of them included, and none is not', () => {
  const bounds = { min: 1, max: 40 };
  expect([undefined, 0, 1, 40, 41, Number.NaN].map((value) => isWithin(value, bounds))).toEqual([
    false,
    false,
    true,
    true,
    false,
    false,
  ]);
  expect(isWithin(-3, {})).toBe(true);
});
