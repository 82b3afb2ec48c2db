import fc from 'fast-check';

/** What people type into the fields of a garment, and what is measured: as far as the fields take it. */

/** Any of Unicode. (A unit of the library's own is looked up in a table of all of them, which takes a second to lay.) */
export const letter = fc
  .integer({ min: 0, max: 0x10ffff - 0x800 })
  .map((n) => String.fromCodePoint(n < 0xd800 ? n : n + 0x800));

/** a name: any letters, signs and emoji of the world, not only blanks */
export const someName = (maxLength = 14): fc.Arbitrary<string> =>
  fc.string({ minLength: 1, maxLength, unit: letter }).filter((text) => text.trim() !== '');

export const someText = (maxLength = 60): fc.Arbitrary<string> =>
  fc.oneof(
    fc.string({
      maxLength,
      unit: fc.oneof({ weight: 5, arbitrary: letter }, fc.constantFrom('e\u0301', '\u{1f9f6}', 'A\u030a')),
    }),
    fc.constantFrom('', ' ', 'Zeile 1\nrow 2', '½ " \\ </'),
  );

/** above 0, often with a long tail: 20 stitches over 97 mm are 20.618556701030927 to 10 cm */
export const someMeasure = (most = 9000): fc.Arbitrary<number> =>
  fc
    .tuple(fc.integer({ min: 1, max: most }), fc.constantFrom(1, 2, 4, 7, 97, 254))
    .map(([over, under]) => over / under);

/** stitches or rows to 10 cm, from the thickest roving to the finest sock yarn, reckoned from a counted swatch */
export const someTension = (): fc.Arbitrary<number> =>
  fc
    .tuple(fc.integer({ min: 4, max: 90 }), fc.constantFrom(97, 98, 100, 101.6, 103))
    .map(([stitches, mm]) => (stitches * 100) / mm);

export const someCount = (min = 0, max = 200): fc.Arbitrary<number> => fc.integer({ min, max });
