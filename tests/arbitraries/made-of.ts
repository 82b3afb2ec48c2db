import fc from 'fast-check';

/**
 * What makes each field of T: a field that T learns and that is forgotten here does not compile, nor does one that
 * may be missing and is always made, or the other way round.
 */
export type Fields<T> = {
  readonly [K in keyof T]-?: object extends Pick<T, K> ? Maybe<Exclude<T[K], undefined>> : fc.Arbitrary<T[K]>;
};

interface Maybe<T> {
  readonly maybe: fc.Arbitrary<T> | undefined;
}

/** For a field that may be missing: there as often as not. */
export const maybe = <T>(arbitrary: fc.Arbitrary<T>): Maybe<T> => ({ maybe: arbitrary });

/** For a field that may be missing and would not go with the others here. */
export const missing: Maybe<never> = { maybe: undefined };

export function madeOf<T>(fields: Fields<T>): fc.Arbitrary<T> {
  const arbitraries: Record<string, fc.Arbitrary<unknown>> = {};
  const requiredKeys: string[] = [];
  for (const [name, field] of Object.entries<fc.Arbitrary<unknown> | Maybe<unknown>>(fields)) {
    if (!('maybe' in field)) requiredKeys.push(name);
    const arbitrary = 'maybe' in field ? field.maybe : field;
    if (arbitrary !== undefined) arbitraries[name] = arbitrary;
  }
  const made: fc.Arbitrary<unknown> = fc.record(arbitraries, { requiredKeys, noNullPrototype: true });
  return made as fc.Arbitrary<T>;
}

/** Each member of a union told apart by `kind`, with all its fields: a kind that is forgotten does not compile. */
export type Kinds<T extends { readonly kind: string }> = {
  readonly [K in T['kind']]: Fields<Omit<Extract<T, { readonly kind: K }>, 'kind'>>;
};

export function anyKind<T extends { readonly kind: string }>(kinds: Kinds<T>): fc.Arbitrary<T> {
  const made = Object.entries<Fields<object>>(kinds).map(([kind, fields]) =>
    madeOf<object>(fields).map((rest): unknown => ({ kind, ...rest })),
  );
  return fc.oneof(...made) as fc.Arbitrary<T>;
}
