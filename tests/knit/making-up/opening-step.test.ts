import { describe, expect, it } from 'vitest';
import { bodyOfSize } from '../../../src/knit/garment/bodies.ts';
import { draft } from '../../../src/knit/garment/draft.ts';
import { startingDesign } from '../../../src/knit/garment/start.ts';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import { asPlanned } from '../../../src/knit/piece/as-planned.ts';
import { told } from '../../told.ts';

/** A pullover for a two-year-old, 20 stitches and 28 rows to 100 mm, with an opening behind or without. */
function madeUp(opening: 'back' | 'none' | 'raglan seam', isStated = true) {
  const child = bodyOfSize('children', '2');
  if (!child) throw new Error('children have a size 2');
  const begun = startingDesign(
    {
      kind: 'pullover',
      armhole: opening === 'raglan seam' ? 'raglan' : 'drop',
      neck: 'round',
      fit: 'standard',
    },
    child,
    'stocking',
    { stitches: 20, rows: 28 },
  );
  const { opening: _was, openingMm: _deep, ...neck } = begun.neck;
  const design = {
    ...begun,
    neck: opening === 'none' ? neck : { ...neck, opening, openingMm: opening === 'back' ? 100 : 50 },
  };
  const made = draft(design);
  if (!made.ok) throw new Error(told(made.faults));
  const planned = asPlanned({ name: 'any', pieces: made.value.recipes });
  if (!planned.ok) throw new Error(told(planned.faults));
  const joints = made.value.joints.filter(
    (joint) => isStated || joint.kind !== 'left free' || joint.as !== 'opening',
  );
  return makingUpOf({ ...planned.value, joints });
}

describe('a back that is parted below its neck', () => {
  it('is fastened before the ends are woven in, with the rows of one side told', () => {
    const { steps, joined } = madeUp('back');
    expect(steps.slice(-2)).toEqual([
      // 100 mm of 28 rows to 100 mm
      { id: 'opening', kind: 'opening', of: 'back', rows: 28 },
      { id: 'ends', kind: 'ends' },
    ]);
    expect(joined.get('opening')?.map(({ joint }) => joint.kind)).toEqual(['left free']);
  });

  it('is not asked about where the neck is whole', () => {
    const { steps, joined } = madeUp('none');
    expect(steps.some(({ kind }) => kind === 'opening')).toBe(false);
    expect(joined.has('opening')).toBe(false);
  });
});

describe('a raglan line that opens', () => {
  const lines = (isStated: boolean) => {
    const found = madeUp('raglan seam', isStated).steps.find(({ kind }) => kind === 'raglan');
    if (found?.kind !== 'raglan') throw new Error('no raglan');
    return found;
  };

  it('is told by the joint that leaves it open, not by a line that is shorter than the others', () => {
    const { rows, asFarAsOpening } = lines(true);
    expect(asFarAsOpening?.first).toBeLessThan(rows.first);
    // 50 mm of 28 rows to 100 mm
    expect(rows.first - (asFarAsOpening?.first ?? 0)).toBe(14);
    expect(lines(false).asFarAsOpening).toBeUndefined();
    expect(lines(false).rows).toEqual(rows);
  });
});
