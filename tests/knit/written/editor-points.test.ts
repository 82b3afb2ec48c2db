import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Point, points } from '../../../src/knit/written/look-through.ts';

/**
 * What published lists have a technical editor look for (Snickerdoodle Knits, 'Knitting pattern editing checklist'; K. McGrath,
 * 'The value of being thorough'; The Wrinkled Thistle, 'Technical editing explained'; Snoop Tigger Crafts, 2019; Natalie in
 * Stitches, 2021), and by which point of the look through, and which law over drafts and sizes, each is checked here.
 */
const law = 'tests/knit/written/reads-back-laws.test.ts';
const schematic = 'tests/screens/schematic-laws.test.ts';

const table: readonly (readonly [looksFor: string, by: readonly Point[], laws: readonly string[]])[] = [
  ['title, credits, terms of use', ['title', 'licence'], [law]],
  ['yarn with weight, length and amount for each size', ['yarn'], [law]],
  ['needles and notions', ['needles'], [law]],
  ['gauge with its fabric and needle, and whether washed', ['gauge', 'washed'], [law]],
  ['sizes as body, ease and finished measurements', ['body and ease', 'measures'], [law]],
  [
    'abbreviations used, each explained, no others',
    ['abbreviations'],
    [law, 'tests/outside/abbreviations.test.ts'],
  ],
  ['rows and stitches for each size after each section', ['sections', 'counts', 'lists'], [law]],
  ['figures that agree between text and schematic', ['measures', 'lengths'], [law, schematic]],
  ['the same words for the same thing', ['same words'], [law]],
  ['sides named', ['sides'], [law]],
  ['increases and decreases add up in every size', ['sums', 'counts'], [law]],
  ['multiples fit', ['multiples'], [law]],
  ['lengths agree with rows by the gauge', ['lengths'], [law, schematic]],
  ['a schematic with every measure, in both units', [], [schematic]],
  ['making up, care and cautions', ['making up', 'care'], [law]],
];

describe('what a technical editor looks for', () => {
  it('is checked point by point, and nothing is looked at that no list asks for', () => {
    expect(new Set(table.flatMap(([, by]) => by))).toEqual(new Set(points));
  });

  it('each by a law that is there and holds the look through to every draft and size', () => {
    for (const file of new Set(table.flatMap(([, , laws]) => laws)))
      expect(existsSync(file), file).toBe(true);
    expect(readFileSync(law, 'utf8')).toContain('toMend(');
  });
});
