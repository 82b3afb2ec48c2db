import { describe, expect, it } from 'vitest';
import { type Gap, withGaps } from '../../../src/knit/piece/gaps.ts';
import type { TurnWay } from '../../../src/knit/piece/turn-way.ts';
import type { Run } from '../../../src/knit/row/shorten.ts';
import type { Side } from '../../../src/knit/row/step.ts';

/*
 * Short rows over 14 stitches, worked on paper. How a turn is made and closed: Purl Soho, 'Short Rows: Wrap + Turn';
 * Shibui Knits, 'German Short Rows'. Which rows go over a gap follows from where it lies.
 */

type Row = readonly [side: Side, runs: readonly Run[], turned?: TurnWay];
const run = (work: Run['work'], times: number): Run => ({ work, times });
const said = (runs: readonly Run[]) => runs.map(({ work, times }) => `${work} ${times}`).join(', ');

/** What each row says, and where gaps are open after it. */
function worked(rows: readonly Row[]): (readonly [says: string, open: string])[] {
  let open: readonly Gap[] = [];
  return rows.map(([side, runs, turned]) => {
    const made = withGaps(runs, side, open, turned);
    open = made.gaps;
    return [said(made.runs), open.map(({ edge, stitches }) => `${edge} ${stitches}`).join(', ')];
  });
}

describe('short rows at the left edge, wrapped', () => {
  it('leave more unworked each time, and the row over all stitches picks up each wrap, said once', () => {
    expect(
      worked([
        ['RS', [run('k', 10), run('unworked', 4)], 'wrapped'],
        ['WS', [run('unworked', 4), run('p', 10)]],
        ['RS', [run('k', 6), run('unworked', 8)], 'wrapped'],
        ['WS', [run('unworked', 8), run('p', 6)]],
        ['RS', [run('k', 14)]],
        ['WS', [run('p', 14)]],
      ]),
    ).toEqual([
      ['k 10, wrap next st 1, unworked 4', 'left 4'],
      ['unworked 4, p 10', 'left 4'],
      ['k 6, wrap next st 1, unworked 8', 'left 4, left 8'],
      ['unworked 8, p 6', 'left 4, left 8'],
      ['k 14, picking up each wrap 1', ''],
      ['p 14', ''],
    ]);
  });

  it('that leave fewer unworked each time close the gap before as they go over it', () => {
    expect(
      worked([
        ['RS', [run('k', 6), run('unworked', 8)], 'wrapped'],
        ['WS', [run('unworked', 8), run('p', 6)]],
        ['RS', [run('k', 10), run('unworked', 4)], 'wrapped'],
        ['WS', [run('unworked', 4), run('p', 10)]],
        ['RS', [run('bo', 14)]],
      ]),
    ).toEqual([
      ['k 6, wrap next st 1, unworked 8', 'left 8'],
      ['unworked 8, p 6', 'left 8'],
      ['k 10, picking up each wrap 1, wrap next st 1, unworked 4', 'left 4'],
      ['unworked 4, p 10', 'left 4'],
      ['bo 14, picking up each wrap 1', ''],
    ]);
  });
});

describe('short rows at the right edge, double stitch', () => {
  it('pull the first stitch after the turn up to two legs, which the row over it works as one', () => {
    expect(
      worked([
        ['WS', [run('p', 9), run('unworked', 5)], 'double stitch'],
        ['RS', [run('unworked', 5), run('k', 9)]],
        ['WS', [run('p', 14)]],
        ['RS', [run('k', 14)]],
      ]),
    ).toEqual([
      ['p 9, unworked 5', 'right 5'],
      ['unworked 5, ds 1, k 8', 'right 5'],
      ['p 14, working each ds as one st 1', ''],
      ['k 14', ''],
    ]);
  });

  it('with one stitch left to work make that one double, and a decrease after the turn stays a decrease', () => {
    const open: Gap = { edge: 'right', stitches: 5, way: 'double stitch' };
    expect(said(withGaps([run('unworked', 5), run('k', 1), run('p', 3)], 'RS', [open], undefined).runs)).toBe(
      'unworked 5, ds 1, p 3',
    );
    expect(
      said(withGaps([run('unworked', 5), run('k2tog', 1), run('k', 7)], 'RS', [open], undefined).runs),
    ).toBe('unworked 5, k2tog 1, k 7');
  });
});

describe('short rows at both edges', () => {
  it('turn on each side in turn: a row begins at the gap behind it and closes none but those it goes over', () => {
    expect(
      worked([
        ['RS', [run('k', 12), run('unworked', 2)], 'double stitch'],
        ['WS', [run('unworked', 2), run('p', 10), run('unworked', 2)], 'double stitch'],
        ['RS', [run('unworked', 2), run('k', 8), run('unworked', 4)], 'double stitch'],
        ['WS', [run('unworked', 4), run('p', 6), run('unworked', 4)], 'double stitch'],
        ['RS', [run('unworked', 4), run('k', 10)]],
        ['WS', [run('p', 14)]],
      ]),
    ).toEqual([
      ['k 12, unworked 2', 'left 2'],
      ['unworked 2, ds 1, p 9, unworked 2', 'left 2, right 2'],
      ['unworked 2, ds 1, k 7, unworked 4', 'left 2, right 2, left 4'],
      ['unworked 4, ds 1, p 5, unworked 4', 'left 2, right 2, left 4, right 4'],
      ['unworked 4, ds 1, k 9, working each ds as one st 1', 'right 2, right 4'],
      ['p 14, working each ds as one st 1', ''],
    ]);
  });

  it('of two ways each say their own', () => {
    const gaps: readonly Gap[] = [
      { edge: 'left', stitches: 3, way: 'wrapped' },
      { edge: 'left', stitches: 5, way: 'double stitch' },
    ];
    expect(said(withGaps([run('k', 14)], 'RS', gaps, undefined).runs)).toBe(
      'k 14, picking up each wrap 1, working each ds as one st 1',
    );
  });

  it('a row that works no stitch leaves all as it is, the gap that lies behind it too', () => {
    const open: Gap = { edge: 'right', stitches: 4, way: 'wrapped' };
    const { runs, gaps } = withGaps([run('unworked', 14)], 'RS', [open], undefined);
    expect([said(runs), gaps]).toEqual(['unworked 14', [open]]);
  });

  it('say nothing where no row was turned, and open none where a turn leaves nothing', () => {
    const plain = [run('k', 14)];
    expect(withGaps(plain, 'RS', [], undefined)).toEqual({ runs: plain, gaps: [] });
    expect(withGaps(plain, 'RS', [], 'wrapped').gaps).toEqual([]);
  });
});
