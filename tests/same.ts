import { isDeepStrictEqual } from 'node:util';
import { expect } from 'vitest';

/*
 * For laws that ask the same of every row of hundreds of plans: there `expect` itself, which keeps a record of each call,
 * and the sentence that would go with it were a quarter of the work. What is not the same is told by `expect`.
 */

/** As `expect(got, what()).toBe(wanted)`. */
export function same<T>(got: T, wanted: T, what?: () => string): void {
  if (!Object.is(got, wanted)) expect(got, what?.()).toBe(wanted);
}

/** As `expect(got, what()).toEqual(wanted)`. */
export function alike<T>(got: T, wanted: T, what?: () => string): void {
  if (!isDeepStrictEqual(got, wanted)) expect(got, what?.()).toEqual(wanted);
}
