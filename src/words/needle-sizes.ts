/**
 * Needle sizes: mm, US, old UK (imperial), from 2 to 10 mm by the conversion table of Sarah Bradberry,
 * knitting-and.com (1996–2002), where 3 mm has no US number. 2.5 mm is US 1½ and 12, 15, 19 and 25 mm are US 17, 19,
 * 35 and 50 in the chart at fineleaffibres.com ('Knitting needle size conversion US to mm'). Below 2 mm charts differ:
 * 1.5 mm is 000 as the Craft Yarn Council has it (lace, 1.5 to 2.25 mm: 000 to 1), and the others as charts have them
 * that agree with that (sizechartly.com, knowsize.com); so many noughts are written 3/0.
 * A table and no formula: US 4 has no UK number, US 3 breaks the sum of 14.
 */
const table = [
  [1, '5/0', undefined],
  [1.25, '4/0', undefined],
  [1.5, '3/0', undefined],
  [1.75, '2/0', undefined],
  [2, '0', '14'],
  [2.25, '1', '13'],
  [2.5, '1½', undefined],
  [2.75, '2', '12'],
  [3, undefined, '11'],
  [3.25, '3', '10'],
  [3.5, '4', undefined],
  [3.75, '5', '9'],
  [4, '6', '8'],
  [4.5, '7', '7'],
  [5, '8', '6'],
  [5.5, '9', '5'],
  [6, '10', '4'],
  [6.5, '10½', '3'],
  [7, undefined, '2'],
  [7.5, undefined, '1'],
  [8, '11', '0'],
  [9, '13', '00'],
  [10, '15', '000'],
  [12, '17', undefined],
  [15, '19', undefined],
  [19, '35', undefined],
  [25, '50', undefined],
] as const satisfies readonly (readonly [mm: number, us: string | undefined, uk: string | undefined])[];

/** mm, from thin to thick. */
export const needleSizes: readonly number[] = table.map(([mm]) => mm);

/** The Japanese numbers 0 to 15: 2.1 to 6.6 mm, 0.3 mm apart, in Sarah Bradberry's table. */
export const japanese = Array.from({ length: 16 }, (_, number) => (21 + 3 * number) / 10);

/** The systems that have numbers of their own beside millimetres. */
export type NeedleSystem = 'US' | 'UK' | 'JP';

const near = (one: number, other: number) => Math.abs(one - other) < 0.01;

/** The number of a size of so many mm; undefined where the system has none for it. */
export function needleNumber(mm: number, system: NeedleSystem): string | undefined {
  if (system === 'JP') {
    const number = japanese.findIndex((size) => near(size, mm));
    return number < 0 ? undefined : String(number);
  }
  const size = table.find(([metric]) => near(metric, mm));
  return size && (system === 'US' ? size[1] : size[2]);
}
