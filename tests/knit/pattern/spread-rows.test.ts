import { describe, expect, it } from 'vitest';
import { readPattern } from '../../../src/knit/pattern/read-pattern.ts';
import { printRow } from '../../../src/knit/row/print.ts';
import { type Knitted, knitRow } from '../../knitter/knit-row.ts';

/** The last row of a piece over 40 stitches that ends with the line, as a knitter works it who has only its words. */
function lastRow(line: string): Knitted & { side: 'RS' | 'WS' } {
  const { pieces, lines } = readPattern(`BACK\nCO 40 sts.\n${line}`);
  expect(lines.flatMap(({ faults }) => faults)).toEqual([]);
  const plan = pieces[0]?.plan;
  if (!plan?.ok) throw new Error('not planned');
  const row = plan.value.parts[0]?.rows.at(-1);
  if (!row) throw new Error('no row');
  const needle = Array.from({ length: row.before }, () => ({ face: undefined }));
  return { ...knitRow(printRow(row.steps), row.side, needle), side: row.side };
}

/** Words used, with the plain stitches before the first shaping: half a group, as for any row spread evenly. */
const told = (line: string) => {
  const { worked, loops, side } = lastRow(line);
  return {
    side,
    after: loops.length,
    words: [...new Set(worked)].sort(),
    first: worked.findIndex((w) => w.length > 1),
  };
};

describe('a row that is knitted or purled and changes its count', () => {
  it.each([
    ['Row 1 (RS): Purl, dec 4 sts evenly across row.', 'RS', 36, ['p', 'p2tog'], 4],
    ['Row 1 (RS): Purl across, decreasing 4 sts evenly spaced.', 'RS', 36, ['p', 'p2tog'], 4],
    ['Row 1 (RS): Purl, inc 4 evenly.', 'RS', 44, ['m1p', 'p'], 5],
    ['Row 1: P, inc 4 sts evenly.', 'RS', 44, ['m1p', 'p'], 5],
    ['Purl 1 row, dec 4 sts evenly.', 'RS', 36, ['p', 'p2tog'], 4],
    ['Next row (WS): Purl, inc 4 evenly.', 'WS', 44, ['m1p', 'p'], 5],
    ['Next row (WS): Knit, inc 4 sts evenly across.', 'WS', 44, ['k', 'm1'], 5],
    ['Row 1 (RS): Knit, dec 4 sts evenly across row.', 'RS', 36, ['k', 'k2tog'], 4],
    ['Next row (RS): K, inc 4 evenly.', 'RS', 44, ['k', 'm1'], 5],
  ] as const)('%s: all of it is worked as it says', (line, side, after, words, first) => {
    expect(told(line)).toEqual({ side, after, words, first });
  });

  it('in stocking stitch, a row said to be knitted on the wrong side is knitted, and the fabric goes on', () => {
    const line = 'Work 3 rows in st st.\nNext row (WS): Knit, inc 4 sts evenly across.';
    expect(told(line)).toMatchObject({ side: 'WS', after: 44, words: ['k', 'm1'] });
    expect(told(`${line}\nWork 1 row in st st.`)).toMatchObject({ side: 'RS', words: ['k'] });
    expect(told(`${line}\nWork 2 rows in st st.`)).toMatchObject({ side: 'WS', words: ['p'] });
  });

  it('a number behind the stitch is that many of it before the rest', () => {
    expect(told('Next row (RS): K3, inc 4 evenly.')).toMatchObject({ after: 44, words: ['k', 'm1'] });
    expect(lastRow('Next row (RS): P3, inc 4 evenly.').worked.slice(0, 5)).toEqual(['p', 'p', 'p', 'k', 'k']);
  });
});
