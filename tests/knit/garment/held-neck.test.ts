import { describe, expect, it } from 'vitest';
import type { Design } from '../../../src/knit/garment/design.ts';
import { draft } from '../../../src/knit/garment/draft.ts';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import { readPattern } from '../../../src/knit/pattern/read-pattern.ts';
import { asPlanned } from '../../../src/knit/piece/as-planned.ts';
import { writePattern } from '../../../src/knit/written/write-pattern.ts';
import { told } from '../../told.ts';
import { even, recipeSaid } from './spelled.ts';

const held = (more: Partial<Design> = {}, neck: Partial<Design['neck']> = {}): Design => {
  const design = { ...even, ...more };
  return { ...design, neck: { ...design.neck, ...neck, middle: 'hold' } };
};

function madeUp(design: Design) {
  const made = draft(design);
  if (!made.ok) throw new Error(told(made.faults));
  const planned = asPlanned({ name: 'any', pieces: made.value.recipes });
  if (!planned.ok) throw new Error(told(planned.faults));
  const up = makingUpOf({ ...planned.value, joints: made.value.joints });
  const band = made.value.recipes.find(({ role }) => role === 'neckband');
  const from = band?.parts[0]?.from;
  const along = from && 'pickUp' in from ? from.pickUp : [];
  return { ...made.value, ...up, along, said: made.value.recipes.flatMap(recipeSaid) };
}

/**
 * The stitches in the middle of a neck rest on a holder and are knitted on from there: Plymouth Yarn (plymouthyarn.com,
 * node 580992881) picks up 13 along a side of the neck, knits 24 across from the back's holder, and picks up 13; StudioKnits,
 * 'How to Become an Expert Knitter', ch. 23, has them stitch for stitch at the back.
 */
describe('a neck whose middle rests for its band', () => {
  const { along, said, steps, troubles } = madeUp(held());

  it('has as many stitches on its holders as would have been bound off', () => {
    const plain = { ...even, neck: { ...even.neck } };
    expect(madeUp(plain).said).toContainEqual(
      expect.stringMatching(/^left shoulder = 47 of Back left;.*R 1:26/),
    );
    expect(said).toContain('neck = 26 of Back middle; hold');
    expect(said).toContainEqual(
      expect.stringMatching(
        /^left shoulder = 21 of Back left; shoulder 7 stocking 4, bind off L 2:5 4:5 6:4, bind off R 3:2/,
      ),
    );
    expect(said).toContain('neck = 14 of Front middle; hold');
  });

  it('has the band take them up as they are, and pick up along what lies beside them', () => {
    expect(along).toEqual([
      { along: 'left front neck', stitches: 20 },
      { along: 'middle of the front neck', stitches: 14, held: true },
      { along: 'right front neck', stitches: 20 },
      { along: 'right back neck', stitches: 7 },
      { along: 'middle of the back neck', stitches: 26, held: true },
      { along: 'left back neck', stitches: 7 },
    ]);
    expect(troubles).toEqual([]);
    expect(steps.find(({ id }) => id === 'pick up Neckband')).toMatchObject({ total: 94 });
  });

  it('is written so, and read back as it was', () => {
    const text = writePattern({ name: 'Any', pieces: madeUp(held()).recipes }, { terms: 'US' });
    if (!text.ok) throw new Error(told(text.faults));
    expect(text.value).toContain('knit 26 sts from holder along middle of the back neck');
    const band = readPattern(text.value).pieces.find(({ recipe }) => recipe.name === 'Neckband');
    const from = band?.recipe.parts[0]?.from;
    expect(from && 'pickUp' in from && from.pickUp.map((one) => [one.stitches, one.held ?? false])).toEqual(
      along.map((one) => [one.stitches, one.held ?? false]),
    );
  });
});

describe('what cannot rest', () => {
  const parts = (design: Design) => madeUp(design).said.filter((line) => line.startsWith('neck = '));

  it('is the middle of a neck that no band goes on from', () => {
    expect(parts(held({ neckband: { ...even.neckband, heightMm: 0 } }))).toEqual([]);
  });

  it('is what an opening parts, and a front whose band is mitred at corners', () => {
    expect(parts(held({}, { opening: 'back', openingMm: 80 }))).toEqual(['neck = 14 of Front middle; hold']);
    expect(parts(held({}, { shape: 'square' }))).toEqual(['neck = 26 of Back middle; hold']);
  });
});

/** freevintageknitting.com, pattern 1732, a raglan: the back's last 27 sts are slipped to a holder and go into the band from there. */
describe('a raglan', () => {
  it('leaves the top of its back and of its sleeves on holders', () => {
    const { said, along, troubles } = madeUp(held({ armhole: 'raglan' }));
    expect(said.filter((line) => /^(Back|Sleeve) = .*; hold$/.test(line))).toHaveLength(2);
    expect(along.filter((one) => one.held).map((one) => one.along)).toEqual([
      'left sleeve top',
      'middle of the front neck',
      'right sleeve top',
      'back neck',
    ]);
    expect(troubles).toEqual([]);
  });

  it('from the top down has its sleeves cast on', () => {
    const { along } = madeUp(held({ armhole: 'raglan', sleeve: { ...even.sleeve, direction: 'top down' } }));
    expect(along.filter((one) => one.held).map((one) => one.along)).toEqual([
      'middle of the front neck',
      'back neck',
    ]);
  });
});

describe('a band that takes up what rests', () => {
  it.each([
    ['an open front', { kind: 'cardigan' }],
    ['an open front with a V', { kind: 'cardigan', neck: { ...even.neck, shape: 'V', depthMm: 160 } }],
    ['an envelope', { neck: { ...even.neck, opening: 'envelope' } }],
    ['a button on the shoulder', { neck: { ...even.neck, opening: 'left shoulder' } }],
  ] as const)('is that of %s too', (_, more) => {
    const design = held(more as Partial<Design>);
    const { recipes, troubles } = madeUp(design);
    expect(troubles).toEqual([]);
    const all = recipes.flatMap(({ parts: [part] }) =>
      part && 'pickUp' in part.from ? part.from.pickUp : [],
    );
    expect(all.find((one) => one.along === 'middle of the back neck')).toMatchObject({
      stitches: 26,
      held: true,
    });
  });
});
