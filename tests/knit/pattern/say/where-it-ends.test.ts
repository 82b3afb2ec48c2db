import { describe, expect, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading, reading } from './said.ts';

/** Ends of a stretch as patterns word them; common practice, no published source. */
describe('where it ends', () => {
  it.each(
    table(`
      Work even until armhole measures 10 cm from {first decreasing point|1st decreasing point|first dec|first decrease} → even: until {length, mm 100, from armhole}
      Continue until sleeve measures 17 cm along {seam|the seam|side edge|side seam} → even: until {length, mm 170, from start}
      Cont until work measures 17 cm from beg{,|} with RS facing for {next row|the next row} → even: until {length, mm 170, from start, end WS}
      Work 5 rows{,|} so ending with RS facing → even: until {rows, n 5, end WS}
      Work without shaping until armhole measures 16 cm on the straight → even: until {length, mm 160, from armhole}
      Work straight until 4 rows fewer than on back to shoulder have been worked → even: until {same length, piece {words back, name back}, to shoulder, lessRows 4}
      Work straight until 40 rows from {beg of armhole shaping|start of armhole} have been worked → even: until {rows in all, n 40, from armhole}
      Cont in st st until work measures 20 cm at {centre|centre back|the center} → even: fabric {named, name stocking}, until {length, mm 200, from start}
      Work even until piece is 2 cm less than desired length → even: until {open}
      Work {straight |}to desired length → even: until {open}
      When work measures 12 cm from start shape armholes: cast off 5 sts at beg of next 2 rows → even: until {length, mm 120, from start} | @61 groups: work bo, edge beginning, groups [{stitches 5, rows 2, every 1}]
      When armhole measures 12 cm{,|} {begin|start} {neck shaping|to shape neck} → even: until {length, mm 120, from armhole} | note: about aside
      At 12 cm from {beg,|beg|start:} bind off 5 sts at beg of next 2 rows → even: until {length, mm 120, from start} | groups: work bo, edge beginning, groups [{stitches 5, rows 2, every 1}]
    `),
  )('is read: $line', ({ texts, reading: wanted }) => {
    for (const text of texts) expectAlike(text, wanted);
  });

  it.each(
    table(`
      Work even with RS facing → even | @11 note: about facing
      At 12 cm from beg → ✗ stitch or repeat expected @1
      At 5 sts from end, bind off 3 sts → ✗ stitch or repeat expected @1
    `),
  )('is not read for more than it says: $line', expectReading);
});

/** Where it begins in the line is no matter here. */
function expectAlike(text: string, wanted: string): void {
  const bare = (said: string) => said.replace(/@\d+ (?=\w+[:|]|note)/g, '');
  expect(bare(reading(text)), text).toBe(bare(wanted));
}
