import { describe, expect, it } from 'vitest';
import { marksOfSteps } from '../../../src/knit/piece/worded-marks.ts';
import type { Step } from '../../../src/knit/row/step.ts';

describe('marks of a row in words', () => {
  const marks = (steps: readonly Step[], before: number, side: 'RS' | 'WS' = 'RS') =>
    marksOfSteps(steps, before, side).map(({ kind, edge: at, by }) => `${kind} ${at} ${by}`);
  const k = (times: number): Step => ({ work: 'k', times });
  const dec: Step = { work: 'k2tog', times: 1 };

  it('lie at an edge within five stitches of it, and no further in than a quarter; across else', () => {
    expect(marks([k(1), dec, k(17)], 20)).toEqual(['edge right -1']);
    expect(marks([k(5), dec, k(13)], 20)).toEqual(['edge right -1']);
    expect(marks([k(6), dec, k(12)], 20)).toEqual(['across across -1']);
    expect(marks([k(13), dec, k(5)], 20)).toEqual(['edge left -1']);
    expect(marks([k(12), dec, k(6)], 20)).toEqual(['across across -1']);
    expect(marks([k(3), dec, k(7)], 12)).toEqual(['edge right -1']);
    expect(marks([k(4), dec, k(6)], 12)).toEqual(['across across -1']);
    expect(marks([k(1), dec, k(17)], 20, 'WS')).toEqual(['edge left -1']);
    expect(marks([k(1), dec, k(14), dec, k(1)], 20, 'WS')).toEqual(['edge left -1', 'edge right -1']);
    expect(marks([k(1), dec, k(6), dec, k(6), dec, k(1)], 20)).toEqual(['across across -3']);
    expect(marks([k(20)], 20)).toEqual([]);
  });

  it('that make good for each other are none', () => {
    expect(marks([k(9), dec, { work: 'yo', times: 1 }, k(9)], 20)).toEqual([]);
    expect(marks([dec, { work: 'yo', times: 1 }, k(18)], 20)).toEqual([]);
  });

  it('of a group are of the group, however many stitches it takes', () => {
    expect(marks([{ work: 'bo', times: 8 }, k(12)], 20)).toEqual(['bind off right -8']);
    expect(marks([{ work: 'co', times: 4 }, k(20)], 20)).toEqual(['cast on right 4']);
    expect(marks([k(12), { work: 'bo', times: 8 }], 20)).toEqual(['bind off left -8']);
  });
});
