import { describe, expect, it } from 'vitest';
import {
  beginsCable,
  goesOnAsRow,
  goesOnBehindStop,
  rowsBelow,
} from '../../../../src/knit/pattern/text/broken-rows.ts';
import { table } from '../table.ts';

/** Rows that a page broke in two: common practice, no published source. ' ¶ ' is the end of a line, ' / ' of a sentence on it. */
const asked = {
  'goes on': goesOnAsRow,
  'rows below': rowsBelow,
  'goes on behind a stop': (above: string, below: string) => goesOnBehindStop(above.split(' / '), below),
  cable: (line: string) => beginsCable(line),
};

describe('two lines of a page', () => {
  it.each<[keyof typeof asked, boolean, string]>([
    [
      'goes on',
      true,
      `
        {1st row:|Row 1:|Next row:|1st row (RS):|Row 1 [WS]:|Next row (WS):} ¶ {K2, p2|P to end|*K2|Work 4 sts|Sl 1, k2|Cast off|(K2)}
        {Cast|Bind} {on|off} ¶ 2 sts, knit to end
        {Knit|K|Purl|Work} ¶ {3 rows|1 row|3 more rows}
      `,
    ],
    [
      'goes on',
      false,
      `
        {1st row|Row 1|1st row (RS)|Row:|Row 1: K2|1st row (here):|1st size:|Next:|Rows 1:} ¶ K2, p2
        1st row: ¶ {Sew up|Materials|Make one|3 balls|Back}
        {Cast|Bind} {on|off} ¶ sts
        {Cast|Bind} ¶ 2 sts
        {Pick|Work} {up|off} ¶ 2 sts
        {Knit|Purl|Work} ¶ {3 sts|3 times|rows|3 more sts}
        {Rib|Sl|Cont|Knit and} ¶ 3 rows
      `,
    ],
    [
      'rows below',
      true,
      '{K2 to last st, k1|K to last st, p1|P2|K to end|K2, p2 to end} ¶ {7 rows|1 row|7 more rows} in rib',
    ],
    [
      'rows below',
      false,
      `
        {K2 to last st, sl 1|K to last st|Work 4} ¶ 7 rows in rib
        K to end ¶ {7 sts|7 more sts|rows|7 times more|more rows}
      `,
    ],
    [
      'goes on behind a stop',
      true,
      `
        {1st row: (RS). K4.|1st row: K4.|Row 1 (RS): K4.|Row 2. K4.|Next row: P4.|Next row [WS]: K4.} *C6B. K4. ¶ {K4. P2.|*P2|(K4|C6B. K2|Cr3L|T4F|Tw3R|P2|(C4B}
        1st row: K4. {K4|P2|C6B|*K2|(K2|Rep from * to end} ¶ K4
        1st row: {K4|P4}. {Rep|*|(|K2} ¶ K4
        {Next row (RS): Work 22 sts.|Next row: K22.|Row 3: P 22 sts.|1st row: Patt 22 st.} ¶ {Place|Put|Sl|Leave|Transfer} {rem|remaining|the rem} sts on holder
        Next row: Work 22 {(24, 26) sts.|[24] sts} ¶ Place rem sts on holder
        Next row: K2 / work 22 sts ¶ Place rem sts on holder
      `,
    ],
    [
      'goes on behind a stop',
      false,
      `
        1st row: K4. {K 4|Work 2|Sl 2|Knit} ¶ K4
        1st row: {K4 rows|Work 4|C6B}. K2 ¶ K4
        1st row: K4. K2 ¶ {**|Rep from|Work 2|K to end|(P to end|* *|Sl 2|X4B|C 6 B|C6|T4K}
        {K4|Row: K4|Rows 1: K4|1st size: K4|Next: K4|Row 1 K4|1st row, K4|1st row (RS, K4|1st row (here): K4}. K4. ¶ K4
        Next row: {Work 22 rows|Rib 22|Work all sts|Dec 2 sts|Work (22) rows|Work (22, 24)|22 sts} ¶ Place rem sts on holder
        Next row: Work 22 sts ¶ {Place these sts|Place the first sts|Keep rem sts|Bind off rem sts|Place sts rem}
        {Work 22 sts|1st size: Work 22 sts} ¶ Place rem sts on holder
        Next row: K2 / work to end ¶ Place rem sts on holder
      `,
    ],
    ['cable', true, '{C6B. K4|(C6B|Cr3L|T4F|Tw3R|C4L|( C6B}'],
    ['cable', false, '{*C6B|K6B|C 6 B|C6K|C6|(K6B|((C6B}'],
  ])('%s: %s', (what, wanted, lines) => {
    for (const { texts } of table(lines))
      for (const text of texts) {
        const [above = '', below = ''] = text.split(' ¶ ');
        expect(asked[what](above, below), text).toBe(wanted);
      }
  });
});
