import { describe, expect, it } from 'vitest';
import type { Design } from '../../../src/knit/garment/design.ts';
import { draft } from '../../../src/knit/garment/draft.ts';
import { possibleOpenings } from '../../../src/knit/garment/which-opening.ts';
import { finished } from '../../../src/knit/making-up/finished.ts';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import { asPlanned } from '../../../src/knit/piece/as-planned.ts';
import { saysStep } from '../../../src/screens/making-up/says-step.ts';
import { loadWords } from '../../../src/words/say.ts';
import { told } from '../../told.ts';
import { even, recipeSaid } from './spelled.ts';

const { frontBand } = even;

function made(opening: 'placket' | 'none', more: Partial<Design> = {}, openingMm = 120) {
  const design: Design = {
    ...even,
    frontBand: { ...frontBand, heightMm: 20 },
    ...more,
    neck: { ...even.neck, ...more.neck, opening, openingMm },
  };
  const drafted = draft(design);
  if (!drafted.ok) throw new Error(told(drafted.faults));
  const planned = asPlanned({ name: 'any', pieces: drafted.value.recipes });
  if (!planned.ok) throw new Error(told(planned.faults));
  const up = makingUpOf({ ...planned.value, joints: drafted.value.joints });
  return {
    ...drafted.value,
    ...up,
    measures: finished(up.worked, planned.value),
    said: drafted.value.recipes.flatMap(recipeSaid),
  };
}

/*
 * From the even design: 5 mm a stitch, 4 mm a row. A henley's placket is 3 to 5 in deep, with 2 to 4 buttons
 * (lowlandkids.com, sewing index, 'Henley'). That its bands are as wide as what is bound off below them is common
 * practice, no published source.
 */
describe('a placket of 120 mm at the front', () => {
  const { said, recipes, steps, troubles, joints } = made('placket');
  const along = (name: string) => {
    const from = recipes.find((one) => one.name === name)?.parts[0]?.from;
    return from && 'pickUp' in from ? from.pickUp : [];
  };

  it('parts the front 30 rows below its neck, with four stitches bound off, as wide as a band of 20 mm', () => {
    expect(said).toContain('neck = 4 of Front middle; bind off');
    const whole = (list: readonly string[]) => list.find((line) => line.startsWith('Front ='));
    expect(whole(said)).toMatch(/armhole 6 stocking 4/);
    expect(whole(made('none').said)).toMatch(/armhole 36 stocking 4/);
  });

  it('has half of what lies level bound off at either neck edge, once the placket is 30 rows deep', () => {
    // 14 in the middle of the neck less the four of the placket
    expect(said).toContainEqual(
      expect.stringMatching(/^left shoulder = 34 of Front right;.*bind off L 32:5/),
    );
  });

  it('has two bands, from its lower end over the edge of the neckband: 24 stitches and 5', () => {
    expect(along('Neckband').map((one) => one.along)).toEqual([
      'right front neck',
      'back neck',
      'left front neck',
    ]);
    expect(along('Button band')).toEqual([{ along: 'left front edge', stitches: expect.any(Number) }]);
    for (const band of ['Button band', 'Buttonhole band'])
      expect(Math.abs((along(band)[0]?.stitches ?? 0) - 29)).toBeLessThanOrEqual(1);
  });

  it('has the band with the holes sewn to what is bound off, the other behind it; nothing is left over', () => {
    expect(troubles).toEqual([]);
    const laps = joints.filter((one) => one.kind === 'seam' && one.of === 'lap');
    expect(laps).toMatchObject([
      {
        a: [{ piece: 'Buttonhole band', edge: 'right' }],
        b: [{ piece: 'Front', part: 'neck', edge: 'top' }],
      },
    ]);
    const order = steps.map(({ id }) => id);
    expect(order.indexOf('pick up Buttonhole band')).toBeGreaterThan(order.indexOf('pick up Neckband'));
    expect(order.indexOf('lap')).toBeGreaterThan(order.indexOf('pick up Buttonhole band'));
    expect(order).not.toContain('close Neckband');
    expect(steps.find(({ kind }) => kind === 'shoulders')).toMatchObject({ seams: 2 });
  });

  it('has two to four buttons, told where', () => {
    const buttons = steps.find(({ kind }) => kind === 'buttons');
    const places = buttons?.kind === 'buttons' ? buttons.stitches : [];
    expect(places.length).toBeGreaterThanOrEqual(2);
    expect(places.length).toBeLessThanOrEqual(4);
    expect(buttons).toMatchObject({ band: 'Buttonhole band', on: 'Button band' });
  });

  it('is told as a step of its own', async () => {
    await loadWords('makingUp', 'craft');
    const lap = steps.find(({ kind }) => kind === 'lap');
    expect(lap && saysStep(lap).lines[0]).toMatch(
      /^Lay the band with the holes over the other: each is \d rows wide/,
    );
  });

  it('opens the neck by twice its depth, less the stitches between its bands', () => {
    const [opened, closed] = [made('placket'), made('none')];
    expect(opened.head?.neckMm).toBeCloseTo((closed.head?.neckMm ?? 0) - 20, 6);
    expect(opened.measures.neck).toBeCloseTo((closed.measures.neck ?? 0) - 20, 6);
    expect(opened.measures.chest).toBe(closed.measures.chest);
  });
});

describe('a placket', () => {
  it('lies left over right where the holes are in the left one', () => {
    const { joints, troubles } = made('placket', { frontBand: { ...frontBand, holesIn: 'left front' } });
    expect(troubles).toEqual([]);
    expect(joints).toContainEqual(
      expect.objectContaining({
        of: 'lap',
        a: [expect.objectContaining({ piece: 'Buttonhole band', edge: 'left' })],
      }),
    );
  });

  it.each(['drop', 'indented', 'set-in', 'raglan'] as const)(
    'can be made up beside a %s armhole',
    (armhole) => {
      expect(made('placket', { armhole }).troubles).toEqual([]);
      expect(made('placket', { armhole, neckband: { ...even.neckband, heightMm: 0 } }).troubles).toEqual([]);
    },
  );

  it('is offered of a closed front with a round or a boat neck', () => {
    const offers = (design: Partial<Design>) => possibleOpenings({ ...even, ...design }).includes('placket');
    expect(offers({})).toBe(true);
    expect(offers({ neck: { ...even.neck, shape: 'boat' } })).toBe(true);
    expect(offers({ neck: { ...even.neck, shape: 'V' } })).toBe(false);
    expect(offers({ neck: { ...even.neck, shape: 'square' } })).toBe(false);
    expect(offers({ neck: { ...even.neck, depthMm: 0 } })).toBe(false);
    expect(offers({ kind: 'cardigan' })).toBe(false);
  });

  it('that would reach below the hem is refused', () => {
    const design = { ...even, neck: { ...even.neck, opening: 'placket', openingMm: 600 } } as const;
    const drafted = draft(design);
    expect(drafted.ok ? [] : drafted.faults.map(({ code }) => code)).toEqual(['neck too deep']);
  });
});
