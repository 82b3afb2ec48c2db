import type * as v from 'valibot';

/**
 * A shape under the name of its type: `shapeOf<Yarn>()(v.strictObject({ … }))`. Compiles only where type and shape
 * say the same all the way down and both ways, so that neither can learn or lose a field alone: else a garment
 * would be made that no backup or link brings back, or something let in that the craft does not know.
 */
export const shapeOf =
  <T>() =>
  <Shape extends v.GenericSchema>(shape: Shape & Agreed<T, Shape>): v.GenericSchema<unknown, T> =>
    shape as v.GenericSchema<unknown, T>;

/** The shape of a text, as that of an id of its kind: it says no more of it than the text's own. */
export type Id<Kind extends string> = v.GenericSchema<string, Kind>;

/** Lets a shape pass that agrees; of another it shows both sides. */
type Agreed<T, Shape extends v.GenericSchema> =
  Same<AsJson<T>, AsJson<v.InferOutput<Shape>>> extends true
    ? unknown
    : { readonly type: AsJson<T>; readonly shape: AsJson<v.InferOutput<Shape>> };

/** Neither side could stand for anything that the other could not: a field that may be missing is not one that must be there. */
type Same<A, B> = (<X>() => X extends A ? 1 : 2) extends <X>() => X extends B ? 1 : 2 ? true : false;

/** As it is when it has been to JSON and back: nothing is read-only there, and every key is text. */
type AsJson<T> = T extends string
  ? T
  : T extends readonly (infer Item)[]
    ? AsJson<Item>[]
    : T extends object
      ? { -readonly [K in keyof T as number extends K ? string : K]: AsJson<T[K]> }
      : T;
