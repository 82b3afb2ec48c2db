import { describe, expect, it } from 'vitest';
import { rested, type Sitting, sat, wantsRest } from '../../../src/app/device/rest.ts';
import { buzzOf } from '../../../src/app/device/touch.ts';

const MINUTE = 60_000;
const sit = (minutes: readonly number[]): Sitting =>
  minutes.reduce<Sitting | undefined>((sitting, at) => sat(sitting, at * MINUTE), undefined) as Sitting;

describe('the caution to rest hands', () => {
  it('comes after 45 minutes of rows with no pause of five', () => {
    const every3 = Array.from({ length: 16 }, (_, i) => i * 3);
    expect(wantsRest(sit(every3.slice(0, 15)))).toBe(false);
    expect(wantsRest(sit(every3))).toBe(true);
  });

  it('knows a pause of just five minutes from a row that takes as long but for a moment', () => {
    const begun = { since: 0, last: 0 };
    expect(sat(begun, 5 * MINUTE)).toEqual({ since: 5 * MINUTE, last: 5 * MINUTE });
    expect(sat(begun, 5 * MINUTE - 1)).toEqual({ since: 0, last: 5 * MINUTE - 1 });
  });

  it('counts anew after a pause, and after it was seen', () => {
    const long = sit(Array.from({ length: 16 }, (_, i) => i * 3));
    expect(wantsRest(sat(long, 51 * MINUTE))).toBe(false);
    expect(wantsRest(rested(long))).toBe(false);
  });
});

describe('the vibration', () => {
  it('differs for a plain row, a shaping row, the end of a section and of a part', () => {
    const all = (['plain', 'shaping', 'section end', 'part end'] as const).map((feel) =>
      buzzOf([feel]).join(),
    );
    expect(new Set(all).size).toBe(4);
  });

  it('of two things to tell is one after the other with a silence between', () => {
    expect(buzzOf(['section end', 'shaping'])).toEqual([
      ...buzzOf(['section end']),
      150,
      ...buzzOf(['shaping']),
    ]);
  });
});
