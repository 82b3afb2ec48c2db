/**
 * Needle sizes: mm, US, old UK (imperial). Conversion table of Sarah Bradberry, knitting-and.com (1996–2002).
 * A table and no formula: US 4 has no UK number, US 3 breaks the sum of 14, 3 mm has no US number.
 */
const table = [
  [2, '0', '14'],
  [2.25, '1', '13'],
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
] as const satisfies readonly (readonly [mm: number, us: string | undefined, uk: string | undefined])[];

/** mm, from thin to thick */
export const needleSizes: readonly number[] = table.map(([mm]) => mm);

export function needleNumber(mm: number, system: 'US' | 'UK'): string | undefined {
  const size = table.find(([metric]) => Math.abs(metric - mm) < 0.01);
  return size && (system === 'US' ? size[1] : size[2]);
}
