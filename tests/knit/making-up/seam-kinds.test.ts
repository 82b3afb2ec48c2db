import { expect, it } from 'vitest';
import { bodyOfSize } from '../../../src/knit/garment/bodies.ts';
import { draft } from '../../../src/knit/garment/draft.ts';
import { armholeKinds } from '../../../src/knit/garment/kinds/armholes.ts';
import { startingDesign } from '../../../src/knit/garment/start.ts';
import { freeEdges, type Joint, seamKinds, seamWays } from '../../../src/knit/making-up/joint.ts';
import { told } from '../../told.ts';

const body = bodyOfSize('women', 'M');
if (!body) throw new Error('women have a size M');

const joints: readonly Joint[] = armholeKinds.flatMap((armhole) =>
  (['pullover', 'cardigan', 'vest'] as const).flatMap((kind) => {
    // a raglan has no sleeveless kind
    if (armhole === 'raglan' && kind === 'vest') return [];
    const choices = { kind, armhole, neck: 'round', fit: 'standard' } as const;
    const made = draft(startingDesign(choices, body, 'stocking', { stitches: 21, rows: 28 }));
    if (!made.ok) throw new Error(told(made.faults));
    return made.value.joints;
  }),
);
const seams = joints.flatMap((joint) => (joint.kind === 'seam' ? [joint] : []));

it('every seam that a draft states is of a kind that can be kept, the underarms of a raglan and of a set-in sleeve too', () => {
  expect(seams.map((seam) => seam.of)).toEqual(
    expect.arrayContaining(['armhole', 'raglan', 'shoulder', 'side', 'sleeve', 'underarm']),
  );
  expect(seams.filter((seam) => !seamKinds.includes(seam.of))).toEqual([]);
});

it('and is sewn in a way that can be kept: a side by mattress stitch', () => {
  expect(seams.filter((seam) => seam.of === 'side').every((seam) => seam.how === 'mattress')).toBe(true);
  expect(seams.filter((seam) => !seamWays.includes(seam.how))).toEqual([]);
});

it('every edge that it leaves free is called what can be kept: hem, cuff, front, neck, armhole', () => {
  const free = joints.flatMap((joint) => (joint.kind === 'left free' ? [joint.as] : []));
  expect(free).toEqual(expect.arrayContaining(['hem', 'cuff', 'front', 'neck', 'armhole']));
  expect(free.filter((as) => !freeEdges.includes(as))).toEqual([]);
});
