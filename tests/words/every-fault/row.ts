import type { RowFaults } from '../../../src/knit/faults/row-faults.ts';
import { cursorOver } from '../../../src/knit/row/read/cursor.ts';
import { lex } from '../../../src/knit/row/read/lex.ts';
import { parseRow } from '../../../src/knit/row/read/parse.ts';
import { readRow } from '../../../src/knit/row/read/row.ts';
import { settle } from '../../../src/knit/row/read/settle.ts';
import { workRow } from '../../../src/knit/row/work.ts';
import { spread } from '../../../src/knit/shape/spread.ts';
import { taper } from '../../../src/knit/shape/taper.ts';
import type { Drivers } from './drivers.ts';

const worked = (text: string, stitches: number) => {
  const row = parseRow(text);
  return row.ok ? workRow(row.value, stitches) : row;
};

export const rowDrivers: Drivers<keyof RowFaults> = {
  'bad count': () => taper({ rows: 10.5, times: 3 }),
  'stitches left over': () => worked('k7', 9),
  'not enough stitches': () => worked('k7', 5),
  'repeat does not come out': () => worked('*k2, p2; rep from * to last 3 sts, k3', 10),
  'endless repeat': () => worked('*yo; rep from * to end', 10),
  'count not known': () => parseRow('inc 6 sts evenly across row'),
  'no marker': () => parseRow('k to marker, k2tog'),
  'too many for one row': () => spread(10, -8),
  'shaping does not fit': () => taper({ rows: 10, times: 30 }),
  'stitch expected': () => parseRow(''),
  'stitch or repeat expected': () => parseRow('k2, hocus'),
  'bracket expected': () => parseRow('k1, (k2, p2'),
  'nothing before the repeat': () => parseRow('rep from * to end'),
  'work after a turn': () => {
    const items = readRow(cursorOver(lex('k5, turn, p3')));
    return items.ok ? settle(items.value, { stitches: 12, markers: [] }) : items;
  },
  'nested too deep': () => readRow(cursorOver(lex(`${'('.repeat(20)}k1${')'.repeat(20)}`))),
};
