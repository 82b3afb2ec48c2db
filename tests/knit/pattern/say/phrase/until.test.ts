import { describe, it } from 'vitest';
import { table } from '../../table.ts';
import { expectReading } from '../said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('an end, in all its wordings,', () => {
  it.each(
    table(`
      Work even {for 6 rows|over 6 rows|on 6 rows|for the next 6 rows|for foll 6 rows|for the first 6 rows|for a further 6 rows|for another 6 rows|for 6 more rows|for 6 further rows|for 6 rows more|for 6 rows even|for 6 rows straight|for 3 ridges} → even: until {rows, n 6}
      Work even {for 10 cm|for 10 cm more|for a further 10 cm|for another 10 cm|for 10 cm deep} → even: until {length, mm 100, from here}
      Work even for 4 in → even: until {length, mm 101.6, from here}
      Work even for 10 cm in all → even: until {length, mm 100, from start}
      Work even {for 10 cm from beg|for 10 cm in total|for 10 cm altogether} → even: until {length, mm 100, from start}
      Work even for 10 cm, ending with a WS row → even: until {length, mm 100, from here, end WS}
      Work even {until|to|when|once|after} {there are 60 sts|60 sts remain|you have 60 sts} → even: until {count, stitches 60}
      Work even until {60 sts|only 60 sts remain|there is a total of 60 sts|there are only 60 sts|60 sts are left|60 sts is rem|60 sts left on needle|60 sts are on the needle|60 sts remain on the right needle|60 sts in all|60 sts rem for each shoulder|60 sts on needle|60 sts on the needle|a total of 60 sts} → even: until {count, stitches 60}
      Work even until 1 st remains → even: until {count, stitches 1}
      Work even until {30 rows|30 rows have been worked|30 rows have been completed|30 rows have been knitted|30 rows have been done|30 rows are worked|30 rows are completed|30 rows are done|30 rows in all|30 rows worked|30 rows completed|30 rows are made|30 rows have been made|30 more rows|15 ridges} → even: until {rows in all, n 30, from start}
      Work even until 1 row worked → even: until {rows in all, n 1, from start}
      Work even until 30 rows {worked from|from} armhole → even: until {rows in all, n 30, from armhole}
      Work even until {piece|work|it|back|front|fronts|sleeve|sleeves|side|edge|section|panel|garter st|knitting|length|body|skirt|bodice|scarf|square|pocket|shoulder|this|cap|tie|belt|strap|all|same|total|the left front|right side|entire piece|whole piece|depth of piece|st patt|straight edge|the work from} measures 10 cm → even: until {length, mm 100, from start}
      Work even until border strip measures 10 cm → even: until {length, mm 100, from section}
      Work even until {armhole|armholes|raglan|depth of armhole|edge of armhole} measures 10 cm → even: until {length, mm 100, from armhole}
      Work even until {rib|border|band|hem|cuff|neckband|collar} measures 10 cm → even: until {length, mm 100, from section}
      Work even until {neck|yoke} measures 10 cm → even: until {length, mm 100, from heading}
      Work even until hood measures 10 cm → even: until {length, mm 100, from start}
      Work even until piece {measures|measure|is|measuring|are|reaches|measured} 10 cm → even: until {length, mm 100, from start}
      Work even until piece is 10 cm {long|deep|in length|in all|total|high|wide} → even: until {length, mm 100, from start}
      Work even until piece measures 10 cm {or length desired|or length required|or desired length|or required length|or as long as desired|or to length desired} → even: until {length, mm 100, from start}
      Work even until piece measures 10 cm from beg, ending with a RS row → even: until {length, mm 100, from start, end RS}
      Work even until {desired length|required length|wanted length|correct length|length desired|length required|long enough|length is as desired} → even: until {open}
      Work even until desired length, ending with a WS row → even: until {open, end WS}
      Work even until 60 sts remain {on needle|on the needle|on the right needle} → even: until {count, stitches 60}
      Work even until 60 sts remain in all → even: until {count, stitches 60} | @31 row: items 'patt to {left 'what follows'}'
      Work even for 10 cm{, ending| - ending|; ending|, and ending|, then end} with a WS row → even: until {length, mm 100, from here, end WS}
      Work even until {straight edge|edge of piece} measures 10 cm → even: until {length, mm 100, from start}
      Work even {for 10 cm in all|for 10 cm in total} → even: until {length, mm 100, from start}
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Work even until it is nice → ✗ stitch or repeat expected @11
      Work even until 6 → ✗ stitch or repeat expected @11
      Work even for nice rows → ✗ stitch expected @24
      Work even until 30 rows less than back → even: until {same length, piece {words back, name back}, lessRows 30}
      Work even until 5 ridges {less|fewer} → ✗ stitch or repeat expected @11
      Continue on 4 mm needles → ✗ stitch or repeat expected @1
    `),
  )('is not read for more than it says: $line', expectReading);
});
