import * as v from 'valibot';
import { expect, it } from 'vitest';
import { shapeOf } from '../../../src/store/shapes/shape-of.ts';

interface Kept {
  readonly id: string;
  readonly within?: { readonly rows: readonly { readonly n: number; readonly held?: boolean }[] };
  readonly own?: Readonly<Record<number, string>>;
}

const row = { n: v.number(), held: v.exactOptional(v.boolean()) };
const shape = <T extends v.StrictObjectSchema<v.ObjectEntries, undefined>>(of: T) =>
  v.strictObject({
    id: v.string(),
    within: v.exactOptional(v.strictObject({ rows: v.array(of) })),
    own: v.exactOptional(v.record(v.string(), v.string())),
  });

it('a shape that differs from its type anywhere does not compile', () => {
  const agreed = shapeOf<Kept>()(shape(v.strictObject(row)));
  // @ts-expect-error a field of the type, three levels down, that the shape would refuse
  shapeOf<Kept>()(shape(v.strictObject({ n: v.number() })));
  // @ts-expect-error a field of the shape that the type does not know
  shapeOf<Kept>()(shape(v.strictObject({ ...row, more: v.exactOptional(v.string()) })));
  // @ts-expect-error what may be missing in the type must not be asked for
  shapeOf<Kept>()(shape(v.strictObject({ n: v.number(), held: v.boolean() })));
  // @ts-expect-error another value
  shapeOf<Kept>()(shape(v.strictObject({ ...row, n: v.union([v.number(), v.string()]) })));
  expect(v.is(agreed, { id: 'a', within: { rows: [{ n: 1, held: true }] }, own: { 1: 'k' } })).toBe(true);
});
