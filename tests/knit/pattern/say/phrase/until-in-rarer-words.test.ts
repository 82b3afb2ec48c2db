import { describe, it } from 'vitest';
import { table } from '../../table.ts';
import { expectReading } from '../said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('an end, in rarer words,', () => {
  it.each(
    table(`
      Work even for 10 cm, or to length desired; k 2 rows → even: until {length, mm 100, from here} | @44 rows: n 2, items 'k to {left 'what follows'}'
      Work even for 10 cm, or as long as desired; k 2 rows → even: until {length, mm 100, from here} | @45 rows: n 2, items 'k to {left 'what follows'}'
      Work even for 10 cm, or as you wish; k 2 rows → even: until {length, mm 100, from here} | @38 rows: n 2, items 'k to {left 'what follows'}'
      Work even for 10 cm, or until you run out of yarn; k 2 rows → even: until {length, mm 100, from here} | @52 rows: n 2, items 'k to {left 'what follows'}'
      Work even until piece measures 10 cm {(or desired length)|or until you run out of yarn}, ending with a WS row → even: until {length, mm 100, from start, end WS}
      {Work even until strip goes round the neck|Work even until it fits|Work even until border is long enough to fit the edge|Work even until strip covers the one side|Work even until strip matches sample} → even: until {open}
      Work even until piece meets the other end → ✗ stitch or repeat expected @11
      Work even until it fits, ending with a WS row → even: until {open, end WS}
      Work even until strip is same {length|size|width} as the 30 sts that were bound off → even: until {open}
      Work even until piece measures 10 cm, {measuring straight up from the bound off sts|measured straight from the bound off sts|measuring along the side|measured at the side} → even: until {length, mm 100, from start}
      Work even until piece measures 10 cm (measured straight from the bound off sts), ending with a WS row → even: until {length, mm 100, from start, end WS}
      Work even until {piece|work} measures 55 rows → even: until {rows in all, n 55, from start}
      Work even until armhole measures 55 rows → even: until {rows in all, n 55, from armhole}
      Work even until cuff {measures|is} 55 rows → even: until {rows in all, n 55, from section}
      Work even until piece measures 55 rows from armhole → even: until {rows in all, n 55, from armhole}
      Work even until armhole from {the beg|beg|the start} measures 8 cm → even: until {length, mm 80, from armhole}
      Work even until armhole from first shaping measures 8 cm → even: until {length, mm 80, from heading}
      Work even until armhole measures 8 cm from {first|the first} decreasing {point|row} → even: until {length, mm 80, from armhole}
      Work even until piece measures 8 cm from first decreasing point → even: until {length, mm 80, from start}
      Work even until piece measures from first row of armhole shaping 7 cm → even: until {length, mm 70, from armhole}
      Work even until piece measures from {rib|cuff} 7 cm → even: until {length, mm 70, from rib}
      Work even until piece measures in all 7 cm → even: until {length, mm 70, from start}
      Work {even|} to {underarm, 7|the underarm, 7|armhole, about 7|underarm - 7|underarm (approx 7} cm → even: until {length, mm 70, from start}
      Work even to underarm (7 cm), ending with a WS row → even: until {length, mm 70, from start, end WS}
      Work even until piece is 2 cm {less|shorter} than {desired|the desired|required|the wanted} length → even: until {open}
      Work even until it measures 2 cm less than desired length, ending with a WS row → even: until {open, end WS}
      Work even until {you like the length|you like the size|the scarf is the size you want|the scarf is the size you want it to be|it is as long as you like|you have the length you want} → even: until {open}
      Work even until you like the length, ending with a RS row → even: until {open, end RS}
      Work even until {all sts are bound off|all sts bound off|no sts remain|no sts rem|all sts are cast off|all sts are worked off} → even: until {count, stitches 0}
      {Work even until 54 remain|Work even until 54 rem|Work even until there are 54|Work even until there are 54 left|Work even until 54 are left|Work even until you have 54|Work even until only 54 remain} → even: until {count, stitches 54}
      Work even until you have only 54 → ✗ stitch or repeat expected @11
      Work even until 54 remain, ending with a WS row → even: until {count, stitches 54} | @28 ending: end WS
      Work even until {30 rows are worked|30 rows} from armhole → even: until {rows in all, n 30, from armhole}
      Work even until {4 ridges have been made|4 ridges have been made on the right side|4 ridges are worked|4 ridges have been completed on right side} → even: until {rows, n 8}
      Work even until 4 ridges have been worked, ending with a WS row → even: until {rows, n 8, end WS}
      Work even until 4 ridges, ending with a WS row → even: until {rows in all, n 8, from start} | @27 ending: end WS
      Work even for 20 cm{, from| from} the first binding off → even: until {length, mm 200, from armhole}
      Work even as {high|long|deep} as back → even: until {same length, piece {words back, name back}}
      Work even for 4 ridges, ending with a WS row → even: until {rows, n 8, end WS}
      Work even until 54 sts {are left over|left over|remain for each shoulder|are left} → even: until {count, stitches 54}
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Work even for 10 cm or until 4 rows are desired → ✗ stitch or repeat expected @21
      Work even until piece measures 10 cm, or 12 cm as desired → ✗ stitch or repeat expected @51
      Work even until piece measures 10 cm (or 12 cm for a longer length) → ✗ stitch or repeat expected @39
      Work even for 10 cm, or until work is nice → even: until {length, mm 100, from here} | ✗ stitch or repeat expected @22
      Work even until strip reaches 30 sts → ✗ stitch or repeat expected @11
      Work even until strip goes 30 sts round the neck → ✗ stitch or repeat expected @11
      Work even until strip goes round (about 40 cm) → ✗ stitch or repeat expected @35
      Work even until strip {goes to end of row|fits the next row|reaches marker} → ✗ stitch or repeat expected @11
      Work even for strip goes round the neck → ✗ stitch expected @40
      Work even until armhole 55 rows → ✗ stitch or repeat expected @11
      Work even until piece measures 55 sts → ✗ stitch or repeat expected @11
      Work even until piece is 2 cm more than desired length → ✗ stitch or repeat expected @31
      Work even until piece is less than desired length → ✗ stitch or repeat expected @11
      Work even until piece is 2 cm less than back → even: until {same length, piece {words back, name back}, lessMm 20}
      Work even to {underarm|armhole} → ✗ stitch or repeat expected @14
      Work even until {6 sts have been decreased|6 sts are decreased|6 sts are increased|6 sts are added|6 sts has been increased} → ✗ stitch or repeat expected @11
      {Work even until there are 54 on the needle|Work even until 54 are left on needle|Work even until there are 54 rows less} → ✗ stitch or repeat expected @11
      Work even until 30 rows {less|fewer|shorter} than armhole → ✗ stitch or repeat expected @11
      Work even until {the scarf is nice as you said|you have size} → ✗ stitch or repeat expected @11
    `),
  )('is not read for more than it says: $line', expectReading);
});
