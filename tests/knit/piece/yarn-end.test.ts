import { describe, expect, it } from 'vitest';
import type { PlannedRow } from '../../../src/knit/piece/planned.ts';
import { withJoins } from '../../../src/knit/piece/yarn-end.ts';
import { printRow } from '../../../src/knit/row/print.ts';
import { parseRow } from '../../../src/knit/row/read/parse.ts';
import type { Side } from '../../../src/knit/row/step.ts';
import { told } from '../../told.ts';

const row = (side: Side, text: string): PlannedRow => {
  const steps = parseRow(text);
  if (!steps.ok) throw new Error(told(steps.faults));
  return {
    n: 1,
    side,
    section: 0,
    needle: 4,
    steps: steps.value,
    before: 20,
    after: 20,
    shaping: [],
    height: 0,
  };
};

const said = (...rows: readonly PlannedRow[]): string[] =>
  withJoins(rows).map(({ steps }) => printRow(steps));

describe('the yarn hangs where a row ended', () => {
  it('and goes on from there, back and forth', () => {
    expect(said(row('RS', 'knit'), row('WS', 'purl'), row('RS', 'knit'))).toEqual(['knit', 'purl', 'knit']);
  });

  it('two rows of one side: it is joined anew', () => {
    expect(said(row('RS', 'knit'), row('RS', 'k2, p to end'))).toEqual([
      'knit',
      'join yarn, k2, purl to end',
    ]);
  });

  it('behind the stitches that wait: they are passed, then it is joined, then they are worked', () => {
    expect(said(row('RS', 'knit'), row('WS', 'leave 5 sts unworked, p to end'))).toEqual([
      'knit',
      'leave 5 sts unworked, join yarn, purl to end',
    ]);
  });

  it('at a turn it goes on before the stitches that were left', () => {
    expect(said(row('RS', 'k15, turn'), row('WS', 'leave 5 sts unworked, p to end'))).toEqual([
      'k15, turn',
      'leave 5 sts unworked, purl to end',
    ]);
  });
});
