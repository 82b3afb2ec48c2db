import { describe, expect, it } from 'vitest';
import { marksOfSteps, turnsOfSteps } from '../../../src/knit/piece/worded-marks.ts';
import { parseRow } from '../../../src/knit/row/read/parse.ts';

const marks = (text: string, before: number, side: 'RS' | 'WS') => {
  const row = parseRow(text);
  return row.ok ? marksOfSteps(row.value, before, side) : row.faults;
};

/** An RS row is worked from the right edge to the left. */
describe('a spelled-out row', () => {
  it('that decreases near both ends is shaped at both edges', () => {
    expect(marks('k1, ssk, k to last 3 sts, k2tog, k1', 40, 'RS')).toEqual([
      { kind: 'edge', edge: 'right', by: -1 },
      { kind: 'edge', edge: 'left', by: -1 },
    ]);
  });

  it('on the wrong side begins at the left edge', () => {
    expect(marks('p2tog, p to end', 40, 'WS')).toEqual([{ kind: 'edge', edge: 'left', by: -1 }]);
  });

  it('that begins with stitches bound off is a group at that edge', () => {
    expect(marks('bind off 12 sts, k to end', 40, 'RS')).toEqual([
      { kind: 'bind off', edge: 'right', by: -12 },
    ]);
  });

  it('with button holes is not shaped at its edges, however near to them they lie', () => {
    expect(marks('k2, p2, bind off 2 sts, k6, bind off 2 sts, p2, k2', 18, 'RS')).toEqual([
      { kind: 'across', edge: 'across', by: -4 },
    ]);
    expect(marks('p2, k2, cast on 2 sts, k6, cast on 2 sts, k2, p2', 14, 'WS')).toEqual([
      { kind: 'across', edge: 'across', by: 4 },
    ]);
  });

  it('with two decreases is spread while no more lies between them than thrice what lies before the first', () => {
    expect(marks('k2, k2tog, k6, k2tog, k2', 14, 'RS')).toEqual([{ kind: 'across', edge: 'across', by: -2 }]);
    expect(marks('k2, k2tog, k7, k2tog, k2', 15, 'RS')).toEqual([
      { kind: 'edge', edge: 'right', by: -1 },
      { kind: 'edge', edge: 'left', by: -1 },
    ]);
    expect(marks('k1, k2tog, k3, k2tog, k1', 9, 'RS')).toEqual([
      { kind: 'edge', edge: 'right', by: -1 },
      { kind: 'edge', edge: 'left', by: -1 },
    ]);
  });

  it('that casts on after its last stitch is wider at that edge', () => {
    expect(marks('k to end, cast on 5 sts', 18, 'RS')).toEqual([{ kind: 'cast on', edge: 'left', by: 5 }]);
  });

  it('that decreases all along is shaped across', () => {
    expect(marks('*k4, k2tog; rep from * to end', 168, 'RS')).toEqual([
      { kind: 'across', edge: 'across', by: -28 },
    ]);
  });

  it('of a few stitches is shaped at the edge that its decrease follows', () => {
    // as leaflets have it, a decrease that leans left lies at the right edge
    expect(marks('k1, ssk', 3, 'RS')).toEqual([{ kind: 'edge', edge: 'right', by: -1 }]);
    expect(marks('k2tog, k1', 3, 'RS')).toEqual([{ kind: 'edge', edge: 'left', by: -1 }]);
    expect(marks('p1, p2tog', 3, 'WS')).toEqual([{ kind: 'edge', edge: 'left', by: -1 }]);
  });

  it('of a few stitches that decreases twice alike between its edges is shaped across', () => {
    expect(marks('k3, k2tog, k5, k2tog, k3', 15, 'RS')).toEqual([{ kind: 'across', edge: 'across', by: -2 }]);
    // as far inside on many stitches it is shaped at both edges
    expect(marks('k3, k2tog, k to last 5 sts, k2tog, k3', 40, 'RS')).toEqual([
      { kind: 'edge', edge: 'right', by: -1 },
      { kind: 'edge', edge: 'left', by: -1 },
    ]);
    expect(marks('k3, ssk, k5, k2tog, k3', 15, 'RS')).toEqual([
      { kind: 'edge', edge: 'right', by: -1 },
      { kind: 'edge', edge: 'left', by: -1 },
    ]);
  });

  it('that decreases about one stitch is shaped in its middle', () => {
    expect(marks('k18, s2kp, k18', 39, 'RS')).toEqual([{ kind: 'middle', edge: 'middle', by: -2 }]);
  });

  it('that moves on from one edge to the other is shaped at both', () => {
    expect(marks('k1, ssk, k to last st, m1l, k1', 40, 'RS')).toEqual([
      { kind: 'edge', edge: 'right', by: -1 },
      { kind: 'edge', edge: 'left', by: 1 },
    ]);
  });

  it('of lace that keeps its count has no mark', () => {
    expect(marks('*k1, k2tog, yo, k1, yo, k2tog; rep from * to end', 12, 'RS')).toEqual([]);
  });
});

describe('a spelled-out row that turns', () => {
  const turns = (text: string, before: number, side: 'RS' | 'WS') => {
    const row = parseRow(text);
    return row.ok ? turnsOfSteps(row.value, before, side) : row.faults;
  };

  it('does so before the edge that it goes towards, as a turn that is planned', () => {
    expect(turns('k to last 6 sts, turn', 40, 'RS')).toEqual([{ kind: 'turn', edge: 'left', by: 0 }]);
    expect(turns('p30, turn', 40, 'WS')).toEqual([{ kind: 'turn', edge: 'right', by: 0 }]);
    expect(turns('k to end', 40, 'RS')).toEqual([]);
    expect(turns('k40, turn', 40, 'RS')).toEqual([]);
  });
});
