import { expect, it } from 'vitest';
import { englishWritten } from '../../../src/knit/written/english.ts';
import { gaugeLine } from '../../../src/knit/written/write-pattern.ts';

/** Four inches are 101.6 mm (the inch of 1959): 20 stitches over 10 cm are 20.32 over them. */
it.each([
  ['cm', 'Gauge: 20 sts and 28 rows = 10 cm.'],
  ['in', 'Gauge: 20.3 sts and 28.4 rows = 4 in.'],
  ['both', 'Gauge: 20 sts and 28 rows = 10 cm / 4 in.'],
] as const)('a tension in %s', (units, wanted) => {
  expect(gaugeLine({ stitches: 20, rows: 28 }, englishWritten('US'), units)).toBe(wanted);
});
