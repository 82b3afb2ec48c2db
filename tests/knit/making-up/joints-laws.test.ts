import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { draft } from '../../../src/knit/garment/draft.ts';
import { armholes } from '../../../src/knit/garment/kinds/armholes.ts';
import { garmentKinds } from '../../../src/knit/garment/kinds/garments.ts';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import { asPlanned } from '../../../src/knit/piece/as-planned.ts';
import { YarnEnd } from '../../../src/knit/piece/yarn-end.ts';
import { someDesign } from '../../arbitraries/design.ts';
import { told } from '../../told.ts';
import {
  asWideAsAsked,
  brokenBy,
  endsAtWrist,
  gaugeOf,
  goesOverHead,
  type MadeUp,
  madeUp,
} from './made-up.ts';

/** RIDGELINE_DRAFTS=5000 for the whole sweep; a part of it in every run. */
const DRAFTS = Number(process.env.RIDGELINE_DRAFTS ?? 120);

const laws = new Map<string, (one: MadeUp) => void>();
const broken = new Map<string, string[]>();
const tally = { drafted: 0 };

function law(sentence: string, check: (one: MadeUp) => void): void {
  laws.set(sentence, check);
  it(sentence, () => {
    const found = broken.get(sentence) ?? [];
    expect(tally.drafted).toBeGreaterThan(DRAFTS / 2);
    expect(found.length, brokenBy(found, tally.drafted)).toBe(0);
  });
}

const PLANS = 'every piece of what is drafted plans';

function sweep(): void {
  for (const design of fc.sample(someDesign(), { numRuns: DRAFTS })) {
    const made = draft(design);
    if (!made.ok) continue;
    const garment = asPlanned({ name: 'any', pieces: made.value.recipes });
    tally.drafted += 1;
    if (!garment.ok) {
      const list = broken.get(PLANS) ?? [];
      broken.set(PLANS, [...list, `${told(garment.faults)}\ndesign ${JSON.stringify(design)}`]);
      continue;
    }
    const one = madeUp(design, made.value, garment.value);
    for (const [sentence, check] of laws) {
      try {
        check(one);
      } catch (error) {
        const list = broken.get(sentence) ?? [];
        broken.set(sentence, [...list, `${String(error)}\ndesign ${JSON.stringify(design)}`]);
      }
    }
  }
}

describe(`the making up of drafts (${DRAFTS} random bodies, gauges and shapes; RIDGELINE_DRAFTS for more)`, () => {
  beforeAll(sweep, 60_000 + DRAFTS * 400);

  law(PLANS, () => undefined);

  law(
    'every joint of a drafted garment can be made: its edges are there, used once, and meet',
    ({ made }) => {
      expect(made.troubles.filter(({ kind }) => kind !== 'forgotten')).toEqual([]);
    },
  );

  law('every joint that is sewn or picked up is in one of its steps', ({ draft: { joints }, garment }) => {
    const { steps, joined, worked } = makingUpOf({ ...garment, joints });
    const stepped = new Set(steps.flatMap(({ id }) => (joined.get(id) ?? []).map(({ joint }) => joint)));
    const all = worked.map(({ joint }) => joint).filter(({ kind }) => kind !== 'left free');
    expect(all.length).toBeGreaterThan(0);
    expect(all.filter((joint) => !stepped.has(joint))).toEqual([]);
  });

  law('every stretch of every edge is used, or left free on purpose', ({ made }) => {
    expect(made.troubles.filter(({ kind }) => kind === 'forgotten')).toEqual([]);
  });

  law(
    'round the body it measures what was asked, less four seam stitches where none were added, to half a stitch for each of its edges',
    asWideAsAsked,
  );

  law('it is as long as was asked, to a row for each end', (one) => {
    expect(
      Math.abs((one.finished.length ?? 0) - one.design.lengthMm) * gaugeOf(one).rows,
    ).toBeLessThanOrEqual(200 + 1e-6);
  });

  law(
    'a drop or indented sleeve ends at the wrist: from the nape to its cuff what the body measures, less the seam stitch where none was added, to two rows and a stitch',
    endsAtWrist,
  );

  law(
    'the neck goes over the head as far as its band stretches and it opens, or the draft warns of it',
    goesOverHead,
  );

  law('a raglan’s four lines are sewn row to row', ({ design, made: { worked } }) => {
    const lines = worked.flatMap(({ joint, lines: [a, b] }) =>
      joint.kind === 'seam' && joint.of === 'raglan' && a && b ? [[a.rows, b.rows]] : [],
    );
    expect(lines.length).toBe(armholes[design.armhole].toNeck ? 4 : 0);
    for (const [sleeve, body] of lines) expect(sleeve).toBe(body);
  });

  law('the yarn hangs where the next row begins, or the row says that it is joined there', ({ garment }) => {
    for (const { makes } of garment.pieces) {
      for (const part of makes.flatMap(({ parts }) => parts)) {
        const yarn = new YarnEnd();
        const elsewhere = part.rows.filter((row) => !yarn.goesOn(row)).map(({ n }) => `${part.name} ${n}`);
        expect(elsewhere).toEqual([]);
      }
    }
  });

  law('upper arm, wrist and armhole are told of every garment with sleeves, the neck of every one', (one) => {
    const { upperArm, wrist, armhole, neck, neckWithBand } = one.finished;
    const all = garmentKinds[one.design.kind].sleeves ? [upperArm, wrist, armhole, neck] : [neck];
    for (const measure of [...all, neckWithBand, armhole]) expect(measure).toBeGreaterThan(0);
  });
});
