import { describe, expect, it } from 'vitest';
import type { Joint, Stretch } from '../../../src/knit/making-up/joint.ts';
import { jointsInGauge } from '../../../src/knit/making-up/joints-in-gauge.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';

/** Sections of so many rows, on so many stitches at so many to 100 mm. */
const back = (castOn: number, stitches: number, ...rows: readonly number[]): Recipe => ({
  name: 'Back',
  makes: 1,
  gauge: { stitches, rows: 30 },
  parts: [
    {
      name: 'Back',
      from: { castOn },
      end: 'bind off',
      sections: rows.map((n, i) => ({
        name: `section ${i}`,
        rows: n,
        fabric: 'stocking',
        needle: 4,
        shaping: [],
      })),
    },
  ],
});
const before = [back(40, 20, 10, 20, 30)];
const after = [back(50, 24, 12, 26, 38)];

const stretch = (more: Partial<Stretch>): Stretch => ({
  piece: 'Back',
  make: 1,
  part: 'Back',
  edge: 'left',
  ...more,
});
const moved = (more: Partial<Stretch>): Stretch | undefined => {
  const joints: readonly Joint[] = [{ kind: 'left free', as: 'hem', line: [stretch(more)] }];
  const [found] = jointsInGauge(joints, before, after);
  return found?.kind === 'left free' ? found.line[0] : undefined;
};
const rows = (first: number, last: number) => moved({ rows: { first, last } })?.rows;
const stitches = (from: number, to: number) => moved({ edge: 'top', stitches: { from, to } })?.stitches;

describe('joints in another gauge', () => {
  it('begin and end with the sections that their rows lie in', () => {
    expect(rows(1, 10)).toEqual({ first: 1, last: 12 });
    expect(rows(11, 30)).toEqual({ first: 13, last: 38 });
    expect(rows(1, 60)).toEqual({ first: 1, last: 76 });
  });

  it('within a section at the same share of it, on the same side', () => {
    // ten of 20 rows are 13 of 26: 12 or 14 on their side
    expect([12, 14]).toContain((rows(1, 20)?.last ?? 0) - 12);
    // five of ten rows are six of twelve: 5 or 7
    expect([5, 7]).toContain(rows(1, 5)?.last);
  });

  it('count stitches from the nearer end by the gauge; what rounding leaves over lies in the middle', () => {
    // 12 at 20 to 100 mm are 14.4 at 24
    expect(stitches(0, 12)).toEqual({ from: 0, to: 14 });
    expect(stitches(28, 40)).toEqual({ from: 36, to: 50 });
    expect(stitches(12, 28)).toEqual({ from: 14, to: 36 });
  });

  it('stay as they are where nothing is counted, or the edge is not there', () => {
    expect(moved({})).toEqual(stretch({}));
    expect(moved({ part: 'Front', rows: { first: 1, last: 4 } })).toEqual(
      stretch({ part: 'Front', rows: { first: 1, last: 4 } }),
    );
  });
});
