import { describe, expect, it } from 'vitest';
import { kindsIn, saidIn } from './said.ts';

describe('gauge, said in a pattern,', () => {
  it('is read per 100 mm, with the fabric it was counted in', () => {
    expect(saidIn('Gauge: 20 sts and 28 rows = 10 cm in st st')).toEqual([
      { is: 'gauge', stitches: 20, rows: 28, fabric: { is: 'named', name: 'stocking' } },
    ]);
    expect(saidIn('Tension: 20 stitches and 28 rows to 10 centimetres in stockinette stitch')).toEqual([
      { is: 'gauge', stitches: 20, rows: 28, fabric: { is: 'named', name: 'stocking' } },
    ]);
  });

  it('is not read where a number of stitches has no measure', () => {
    expect(kindsIn('Cast on 20 sts')).toEqual(['cast on']);
    expect(kindsIn('K 5 sts')).toEqual(['row']);
  });
});
