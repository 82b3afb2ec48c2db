import fc from 'fast-check';
import { bodyTableNames, bodyTables } from '../../src/knit/garment/bodies.ts';
import { resized } from '../../src/knit/garment/grade.ts';
import { englishWritten } from '../../src/knit/written/english.ts';
import { draftSize } from '../../src/knit/written/work-size.ts';
import { someDesign } from './design.ts';

const rest = {
  name: 'Fen',
  credits: 'A. Knitter',
  licence: 'CC BY 4.0',
  yarns: [{ name: 'Hollin', fibre: 'wool', grams: 50, metres: 120 }],
  swatches: [{ fabric: 'stocking', stitches: 21, widthMm: 100, rows: 28, heightMm: 100, needle: 4 } as const],
};

/** The designs of a law in up to five sizes of a table, and in whose words; those that can be knitted. */
export const inSizes = () =>
  fc
    .record({
      design: someDesign(),
      table: fc.constantFrom(...bodyTableNames),
      from: fc.nat(4),
      count: fc.integer({ min: 1, max: 5 }),
      words: fc.constantFrom(englishWritten('US'), englishWritten('UK')),
      units: fc.constantFrom('cm' as const, 'in' as const, 'both' as const),
    })
    .map(({ design, table, from, count, ...said }) => ({
      ...said,
      sizes: bodyTables[table].slice(from, from + count).flatMap(({ size, body }) => {
        const made = draftSize(size, resized(design, body), rest);
        return made.ok ? [made.value] : [];
      }),
    }));
