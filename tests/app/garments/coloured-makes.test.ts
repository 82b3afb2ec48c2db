import { describe, expect, it } from 'vitest';
import { inColours } from '../../../src/app/garments/coloured-makes.ts';
import { sampleGarment } from '../../../src/knit/garment/sample.ts';
import { readPattern } from '../../../src/knit/pattern/read-pattern.ts';
import { workSize } from '../../../src/knit/written/work-size.ts';
import { writeSizes } from '../../../src/knit/written/write-sizes.ts';
import type { GarmentRecord } from '../../../src/store/records.ts';

const worked = workSize('', sampleGarment);
if (!worked.ok) throw new Error('the sample is not planned');

const plain = {
  ...sampleGarment,
  id: 'sample',
  createdAt: 0,
  changedAt: 0,
  pieces: sampleGarment.pieces.map((recipe, i) => ({ id: `p${i}`, recipe })),
} as unknown as GarmentRecord;
const at = sampleGarment.pieces.findIndex(({ name }) => name === 'Sleeve');
const stripes = [
  { colour: 'woad', rows: 2 },
  { colour: 'sand', rows: 3 },
];

const written = (garment: GarmentRecord): string => {
  const text = writeSizes([inColours(garment, worked.value)]);
  if (!text.ok) throw new Error('not written');
  return text.value;
};

const rowsRead = (text: string) => readPattern(text).pieces.map(({ recipe }) => JSON.stringify(recipe));

describe('a written pattern', () => {
  it('of a garment without stripes says none', () => {
    expect(written(plain)).not.toContain('Stripes');
  });

  it('says which rows are in which colours, those that were changed from a row on too, copy by copy', () => {
    const restriped = [{ piece: `p${at}`, make: 2, part: 0, row: 41, at: 1, stripes }];
    const text = written({ ...plain, restriped });
    const lines = text.split('\n').filter((line) => / in woad|in sand/.test(line));
    // 139 rows, of which the last binds off
    expect(lines).toEqual([
      'Stripes, Sleeve, no. 2: rows 41 to 138: 2 rows in woad, 3 rows in sand, in turn; bind off in sand.',
    ]);
  });

  it('tells a whole last stripe as the others, which the bind-off makes one row longer', () => {
    // rows 44 to 138 are nineteen turns of five rows; row 139 binds off
    const restriped = [{ piece: `p${at}`, make: 2, part: 0, row: 44, at: 1, stripes }];
    const text = written({ ...plain, restriped });
    expect(text).toContain(
      'Stripes, Sleeve, no. 2: rows 44 to 138: 2 rows in woad, 3 rows in sand, in turn; bind off in sand.',
    );
  });

  it('is read back to the same rows', () => {
    const striped = Object.fromEntries(plain.pieces.map(({ id }) => [id, { first: 1, at: 1 }]));
    const text = written({ ...plain, stripes, striped } as GarmentRecord);
    expect(text).toContain('Stripes, Back: rows 1 to ');
    expect(rowsRead(text)).toEqual(rowsRead(written(plain)));
  });
});
