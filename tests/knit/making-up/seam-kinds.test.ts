import { expect, it } from 'vitest';
import { bodyOfSize } from '../../../src/knit/garment/bodies.ts';
import { draft } from '../../../src/knit/garment/draft.ts';
import { armholeKinds } from '../../../src/knit/garment/kinds/armholes.ts';
import { startingDesign } from '../../../src/knit/garment/start.ts';
import { seamKinds } from '../../../src/knit/making-up/joint.ts';
import { told } from '../../told.ts';

const body = bodyOfSize('women', 'M');
if (!body) throw new Error('women have a size M');

it('every seam that a draft states is of a kind that can be kept, the underarms of a raglan and of a set-in sleeve too', () => {
  const stated = armholeKinds.flatMap((armhole) => {
    const choices = { kind: 'pullover', armhole, neck: 'round', fit: 'standard' } as const;
    const made = draft(startingDesign(choices, body, 'stocking', { stitches: 21, rows: 28 }));
    if (!made.ok) throw new Error(told(made.faults));
    return made.value.joints.flatMap((joint) => (joint.kind === 'seam' ? [joint.of] : []));
  });
  expect([...new Set(stated)].sort()).toEqual(
    expect.arrayContaining(['armhole', 'raglan', 'shoulder', 'side', 'sleeve', 'underarm']),
  );
  expect(stated.filter((kind) => !seamKinds.includes(kind))).toEqual([]);
});
