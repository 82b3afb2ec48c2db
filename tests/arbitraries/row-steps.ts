import fc from 'fast-check';
import type { Step } from '../../src/knit/row/step.ts';
import { type StitchName, stitches, stitchNames } from '../../src/knit/stitch.ts';

const stitch = fc.constantFrom<StitchName>(...stitchNames);
const plain = fc.constantFrom<StitchName>('k', 'p', 'k', 'p', 'k2tog', 'ssk', 'yo', 'sl', 'patt', 'bo');
const times = fc.integer({ min: 1, max: 40 });
const left = fc.record({ left: fc.integer({ min: 0, max: 30 }) });

const worked: fc.Arbitrary<Step> = fc.oneof(
  fc.record({ work: fc.oneof(plain, stitch), times }),
  fc.record({ work: fc.oneof(plain, stitch), until: left }),
);

/** Any steps that the row language can say, workable or not. */
export function rowSteps(depth = 2): fc.Arbitrary<readonly Step[]> {
  const inner = depth > 0 ? rowSteps(depth - 1) : fc.array(worked, { minLength: 1, maxLength: 3 });
  const repeat: fc.Arbitrary<Step> = fc.oneof(
    fc.record({ repeat: inner, times }),
    fc.record({ repeat: inner, until: left }),
  );
  return fc.array(fc.oneof({ weight: 4, arbitrary: worked }, { weight: 1, arbitrary: repeat }), {
    minLength: 1,
    maxLength: 6,
  });
}

/** A row that comes out on the stitches that go with it. */
export const workableRow: fc.Arbitrary<{ steps: readonly Step[]; onNeedle: number }> = fc
  .tuple(
    fc.array(
      fc.record({
        work: fc.constantFrom<StitchName>('k', 'p', 'k2tog', 'ssk', 'm1', 'yo', 'kfb', 'bo', 'p2tog', 'sl'),
        times: fc.integer({ min: 1, max: 9 }),
      }),
      { maxLength: 5 },
    ),
    fc.constantFrom<StitchName>('k', 'p'),
    fc.integer({ min: 1, max: 60 }),
    fc.array(
      fc.record({
        work: fc.constantFrom<StitchName>('k', 'p', 'k2tog', 'm1', 'ssk'),
        times: fc.integer({ min: 1, max: 9 }),
      }),
      { maxLength: 4 },
    ),
  )
  .map(([before, work, width, after]) => {
    const taken = (list: readonly { work: StitchName; times: number }[]) =>
      list.reduce((sum, one) => sum + stitches[one.work].takes * one.times, 0);
    const tail = taken(after);
    return {
      steps: [...before, { work, until: { left: tail } }, ...after],
      onNeedle: taken(before) + width + tail,
    };
  });
