import fc from 'fast-check';
import { expect, it } from 'vitest';
import { inGauge } from '../../../src/app/garments/in-gauge.ts';
import { draft } from '../../../src/knit/garment/draft.ts';
import type { Joint } from '../../../src/knit/making-up/joint.ts';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import type { Trouble } from '../../../src/knit/making-up/work-making-up.ts';
import { asPlanned } from '../../../src/knit/piece/as-planned.ts';
import { someDesign } from '../../arbitraries/design.ts';
import { told } from '../../told.ts';

/** RIDGELINE_DRAFTS=1000 for a whole sweep; a part of it in every run. */
const DRAFTS = Number(process.env.RIDGELINE_DRAFTS ?? 10);

const TOO_FEW: readonly string[] = ['shaping needs more stitches', 'not enough stitches'];

/** What rests on a holder and is taken up by a band, and what is bound off at once at an underarm. */
const isByCount = (trouble: Trouble, joints: readonly Joint[]): boolean => {
  if (trouble.kind === 'pick up') return trouble.isExact === true;
  if (trouble.kind !== 'do not meet') return false;
  const joint = joints[trouble.joint];
  return joint?.kind === 'seam' && joint.of === 'underarm';
};

/**
 * A garment that comes without its design, as one that was typed, is scaled as it is. On the coarsest yarns a narrow part
 * may have too few stitches left for its shaping: that is still told.
 */
it(`all pieces of a garment are worked in another gauge: no two shapings meet in a row, each rib comes out, underarms and what rests meet stitch by stitch (${DRAFTS} random designs; RIDGELINE_DRAFTS for more)`, () => {
  let made = 0;
  for (const design of fc.sample(someDesign(), { numRuns: DRAFTS })) {
    const drafted = draft(design);
    if (!drafted.ok) continue;
    const [first] = drafted.value.recipes;
    if (!first?.gauge) throw new Error('a draft has a gauge');
    const { gauge } = first;
    const before = asPlanned({ name: 'any', pieces: drafted.value.recipes });
    if (!before.ok) throw new Error(told(before.faults));
    for (const by of [0.85, 1.2]) {
      const mine = { stitches: gauge.stitches * by, rows: gauge.rows * by };
      const found = inGauge({ name: 'any', pieces: drafted.value.recipes }, gauge, mine);
      if (!found.ok) {
        const codes = found.faults.map(({ code }) => code).filter((code) => !TOO_FEW.includes(code));
        expect(codes, `× ${by} ${told(found.faults)} ${JSON.stringify(design)}`).toEqual([]);
        continue;
      }
      const planned = asPlanned(found.value);
      if (!planned.ok) throw new Error(told(planned.faults));
      made += 1;
      const { joints, troubles } = makingUpOf(planned.value);
      const off = troubles.filter((one) => 'joint' in one && isByCount(one, joints));
      const was = makingUpOf(before.value).troubles.length;
      if (was === 0) expect(off, `× ${by} ${JSON.stringify(design)}`).toEqual([]);
    }
  }
  expect(made).toBeGreaterThan(DRAFTS);
}, 600_000);
