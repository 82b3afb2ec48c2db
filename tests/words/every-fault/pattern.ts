import type { PatternFaults } from '../../../src/knit/faults/pattern-faults.ts';
import { readPattern } from '../../../src/knit/pattern/read-pattern.ts';
import { restretch } from '../../../src/knit/pattern/stretch.ts';
import { stretchAt } from '../../../src/knit/pattern/stretch-at.ts';
import { writeSizes } from '../../../src/knit/written/write-sizes.ts';
import type { Drivers } from './drivers.ts';

/** What is told of a text's lines. */
const read = (...lines: readonly string[]) =>
  readPattern(lines.join('\n'), { gauge: { stitches: 20, rows: 28 } }).lines.flatMap(({ faults }) => faults);

const back = ['BACK', 'Cast on 40 sts.', 'Work 10 rows in st st.', 'Bind off.'];
const repeated = (times: number, of: (i: number) => string): string[] =>
  Array.from({ length: times }, (_, i) => of(i + 1));

const open = [
  'BACK',
  'Cast on 40 sts.',
  'Work in k2, p2 rib for 4 rows.',
  'Work in st st until piece measures 30 cm, ending with a WS row.',
  'BO.',
].join('\n');

/** The open stretch of that text with so many rows, as the text stands now. */
function stretched(rows: number, text = open) {
  const [piece] = readPattern(open).pieces;
  const part = piece?.plan.ok ? piece.plan.value.parts[0] : undefined;
  const stretch = part && stretchAt(part, 6);
  if (!part || !stretch) throw new Error('the text has no stretch');
  return restretch({ text, options: {}, piece: 0, part: 0, stretch, parts: [part], worked: 6, rows });
}

export const patternDrivers: Drivers<keyof PatternFaults> = {
  'pattern does not return': () =>
    read('Lace (multiple of 4 sts)', 'Row 1: *k2, k2tog; rep from *.', 'Row 2: *k3; rep from *.'),
  'pattern row does not come out': () =>
    read('Lace (multiple of 7 sts plus 2)', 'Row 1: *k5, k2tog, k1; rep from * to end.', 'Row 2: purl.'),
  'fabric not known': () => read('BACK', 'Cast on 40 sts.', 'Work in blackberry st for 6 rows.'),
  'not a multiple': () =>
    read(
      'Broken rib (multiple of 4 plus 1)',
      'Row 1: *K2, p2; rep from * to last st, k1.',
      '',
      'BACK',
      'CO 79 sts. Work in broken rib for 10 rows.',
    ),
  'longer already': () => read('Cast on 20 sts.', 'Knit 60 rows.', 'Work even until piece measures 10 cm.'),
  'place not known': () => read(...back, 'FRONT', 'Work as for back to armhole.'),
  'piece not known': () => read('FRONT', 'Work as for back.'),
  'no rows to repeat': () => read('BACK', 'Cast on 40 sts.', 'Repeat rows 1 to 4 three times.'),
  'row not known': () => read('BACK', 'Cast on 40 sts.', 'Row 1: knit.', 'Row 2: as row 8.'),
  'count contradicts': () => read('BACK', 'Cast on 40 sts.', 'BO 5 sts at beg of next 2 rows. (32 sts)'),
  'bound off too many': () => read('BACK', 'Cast on 10 sts.', 'BO 12 sts at beg of next 2 rows.'),
  'centre not in the middle': () =>
    read('BACK', 'Cast on 41 sts.', 'Knit 4 rows.', 'Place centre 10 sts on a holder.'),
  'nothing rests': () => read(...back, 'Rejoin yarn to rem sts.'),
  'stitches wait': () =>
    read(
      'FRONT',
      'Cast on 40 sts.',
      'Knit 4 rows.',
      'Next row: K18, turn.',
      'On these 18 sts only knit 3 rows.',
      'Bind off.',
    ),
  'worked in rounds': () => read('Cast on 40 sts.', 'Rnd 1: knit.'),
  'nothing to match': () =>
    read(
      'BACK',
      'Cast on 40 sts.',
      'Knit 4 rows.',
      'Place last 20 sts on a holder.',
      'Complete other side to match, reversing shaping.',
    ),
  'nothing on the needle': () => read(...back, 'Work 10 rows in st st.'),
  'too many stitches': () => read('BACK', 'Cast on 2500 sts.'),
  'side differs': () => read('BACK', 'Cast on 40 sts.', 'Work 3 rows in st st.', 'Row 4 (RS): knit.'),
  'too many parts begun': () =>
    read('BACK', ...repeated(120, () => 'Pick up and knit 40 sts.\nKnit 2 rows.\nBind off.')),
  'too many pieces read': () =>
    read(...repeated(60, (i) => `Piece ${i}\nCast on 40 sts.\nKnit 2 rows.\nBind off.\n`)),
  'too long': () => read('BACK', 'Cast on 4 sts.', 'Knit 4999 rows.', 'Knit 4999 rows.'),
  'sizes differ': () => read('Sizes: S (M, L)', 'Cast on 80 (88, 96) sts.', 'K10 (12, 14, 16), k to end.'),
  'no sizes': () => writeSizes([]),
  'rows already worked': () => stretched(0),
  'side of the last row': () => stretched(5),
  'text reads otherwise': () => stretched(8, open.replace('k2, p2 rib', 'k1, p1 rib')),
};
