import fc from 'fast-check';

/** What she does on one of her devices, each without the others until files are read in. */
export type DeviceDeed = { readonly device: number } & (
  | { readonly do: 'knit'; readonly make: number; readonly rows: number }
  | { readonly do: 'undo' | 'note' | 'check'; readonly make: number }
  | { readonly do: 'go'; readonly make: number; readonly row: number; readonly kind: 'place' | 'rip back' }
  | { readonly do: 'rework'; readonly make: number; readonly rows: number }
  | {
      readonly do: 'edit';
      readonly piece: number;
      readonly rows: number;
      readonly parts: number;
      readonly makes: number;
    }
  | { readonly do: 'add'; readonly rows: number }
  | { readonly do: 'delete'; readonly piece: number }
  | { readonly do: 'write note' | 'tick' | 'untick' | 'weigh' | 'yarn' | 'rename' }
  | { readonly do: 'set clock'; readonly days: number }
  | { readonly do: 'make file' }
  | { readonly do: 'unite'; readonly file: number }
);

export const DEVICES = 3;

const what = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.record({
      do: fc.constant('knit' as const),
      make: fc.nat(11),
      rows: fc.integer({ min: 1, max: 4 }),
    }),
  },
  {
    weight: 2,
    arbitrary: fc.record({
      do: fc.constantFrom('undo' as const, 'note' as const, 'check' as const),
      make: fc.nat(11),
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({
      do: fc.constant('go' as const),
      make: fc.nat(11),
      row: fc.nat(9),
      kind: fc.constantFrom('place' as const, 'rip back' as const),
    }),
  },
  {
    weight: 3,
    arbitrary: fc.record({
      do: fc.constant('rework' as const),
      make: fc.nat(11),
      rows: fc.integer({ min: 8, max: 14 }),
    }),
  },
  {
    weight: 3,
    arbitrary: fc.record({
      do: fc.constant('edit' as const),
      piece: fc.nat(5),
      rows: fc.integer({ min: 8, max: 14 }),
      parts: fc.constantFrom(1, 1, 2),
      makes: fc.constantFrom(1, 2, 4),
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({ do: fc.constant('add' as const), rows: fc.integer({ min: 8, max: 14 }) }),
  },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('delete' as const), piece: fc.nat(5) }) },
  {
    weight: 4,
    arbitrary: fc.record({
      do: fc.constantFrom(
        'write note' as const,
        'tick' as const,
        'untick' as const,
        'weigh' as const,
        'yarn' as const,
        'rename' as const,
      ),
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({
      do: fc.constant('set clock' as const),
      days: fc.constantFrom(-365, -1, 0, 1, 365),
    }),
  },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('make file' as const) }) },
  { weight: 3, arbitrary: fc.record({ do: fc.constant('unite' as const), file: fc.nat(20) }) },
);

/** A while with several devices, and the orders in which all of them are united at its end. */
export const deviceDeeds = (): fc.Arbitrary<readonly DeviceDeed[]> =>
  fc.array(
    fc.tuple(fc.nat(DEVICES - 1), what).map(([device, it]) => ({ device, ...it })),
    { minLength: 4, maxLength: 36 },
  );
