import fc from 'fast-check';
import {
  type Along,
  freeEdges,
  type HandSeam,
  type Joint,
  type Stretch,
  seamKinds,
  seamWays,
} from '../../src/knit/making-up/joint.ts';
import { anyKind, madeOf, maybe } from './made-of.ts';
import { someCount, someText } from './typed-fields.ts';

const stretch = madeOf<Stretch>({
  piece: someText(12),
  make: someCount(1, 4),
  part: someText(12),
  edge: fc.constantFrom('start', 'top', 'right', 'left'),
  sections: maybe(fc.array(someText(12), { maxLength: 3 })),
  rows: maybe(fc.record({ first: someCount(1, 90), last: someCount(1, 90) }, { noNullPrototype: true })),
  level: maybe(fc.constantFrom('only', 'without')),
  shaped: maybe(fc.constantFrom('before', 'after')),
  stitches: maybe(fc.record({ from: someCount(0, 90), to: someCount(0, 90) }, { noNullPrototype: true })),
  reversed: maybe(fc.constant(true)),
});
const line = fc.array(stretch, { maxLength: 3 });

/** A joint with any of its fields, whether it can be made or not. */
export const anyJoint = (): fc.Arbitrary<Joint> =>
  anyKind<Joint>({
    seam: {
      of: fc.constantFrom(...seamKinds),
      a: line,
      b: line,
      how: fc.constantFrom(...seamWays),
      ease: maybe(fc.integer({ min: -20, max: 50 })),
      byHand: maybe(someText(12)),
    },
    'pick up': {
      piece: someText(12),
      make: someCount(1, 4),
      along: fc.array(
        madeOf<Along>({
          line,
          stitches: someCount(0, 200),
          percent: maybe(fc.integer({ min: 50, max: 100 })),
        }),
        { maxLength: 3 },
      ),
    },
    'left free': { line, as: fc.constantFrom(...freeEdges) },
  });

export const anyHandSeam = (): fc.Arbitrary<HandSeam> =>
  madeOf<HandSeam>({ id: someText(12), a: line, b: line, how: fc.constantFrom(...seamWays) });
