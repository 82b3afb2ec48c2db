import { expect, it } from 'vitest';
import { jsonTrouble } from '../../../src/store/shapes/json-guard.ts';

const limits = { depth: 5, values: 100, text: 100 };

/** The same list or object, and how often anything was read of it. */
function watched<T extends object>(value: T): { readonly value: T; readonly reads: () => number } {
  let reads = 0;
  const count = <A extends unknown[], R>(trap: (...args: A) => R) => {
    return (...args: A): R => {
      reads += 1;
      return trap(...args);
    };
  };
  const seen = new Proxy(value, {
    get: count(Reflect.get),
    getOwnPropertyDescriptor: count(Reflect.getOwnPropertyDescriptor),
  });
  return { value: seen, reads: () => reads };
}

it('a list longer than all that may be there is refused by its length, and none of it is read', () => {
  const { value, reads } = watched(new Array<number>(1_000_000).fill(0));
  expect(jsonTrouble({ zeros: value }, limits)).toEqual({ what: 'too many values', path: 'zeros' });
  expect(reads()).toBeLessThan(10);
});

it('lists that are too long together are refused at the one that is too much', () => {
  const { value, reads } = watched(new Array<number>(60).fill(0));
  expect(jsonTrouble([value, value], limits)?.what).toBe('too many values');
  expect(reads()).toBeLessThan(200);
});

it('as many values as may be there are let in, and one more is not', () => {
  // the list itself is a value too
  expect(jsonTrouble(new Array<number>(99).fill(0), limits)).toBeUndefined();
  expect(jsonTrouble(new Array<number>(100).fill(0), limits)?.what).toBe('too many values');
  expect(jsonTrouble([[[0]], { a: { b: 1 } }], { ...limits, values: 7 })).toBeUndefined();
  expect(jsonTrouble([[[0]], { a: { b: 1 } }], { ...limits, values: 6 })?.what).toBe('too many values');
});
