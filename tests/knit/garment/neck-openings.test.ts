import { describe, expect, it } from 'vitest';
import { bodyOfSize } from '../../../src/knit/garment/bodies.ts';
import type { Design } from '../../../src/knit/garment/design.ts';
import { draft } from '../../../src/knit/garment/draft.ts';
import { armholeKinds } from '../../../src/knit/garment/kinds/armholes.ts';
import { type NeckOpening, neckOpenings, opensMore } from '../../../src/knit/garment/kinds/neck-openings.ts';
import { type NeckMiddle, neckMiddleFacts } from '../../../src/knit/garment/kinds/necks.ts';
import { openingOf, possibleOpenings } from '../../../src/knit/garment/which-opening.ts';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import type { MakingUpStep } from '../../../src/knit/making-up/step.ts';
import { asPlanned } from '../../../src/knit/piece/as-planned.ts';
import { saysStep } from '../../../src/screens/making-up/says-step.ts';
import { loadWords } from '../../../src/words/say.ts';
import { told } from '../../told.ts';
import { even, recipeSaid } from './spelled.ts';

const opened = (opening: NeckOpening, more: Partial<Design> = {}): Design => {
  const design = { ...even, ...more };
  return { ...design, neck: { ...design.neck, opening, openingMm: 80 } };
};

function madeUp(design: Design) {
  const made = draft(design);
  if (!made.ok) throw new Error(told(made.faults));
  const planned = asPlanned({ name: 'any', pieces: made.value.recipes });
  if (!planned.ok) throw new Error(told(planned.faults));
  const up = makingUpOf({ ...planned.value, joints: made.value.joints });
  return { ...made.value, ...up, said: made.value.recipes.flatMap(recipeSaid) };
}

/* From the even design of `spelled.ts`: 5 mm a stitch, 4 mm a row; a shoulder of 18 stitches (90 mm) rises 24 mm. */
describe('a left shoulder that is buttoned', () => {
  const { said, steps, troubles, joints } = madeUp(opened('left shoulder'));

  it('has a band with holes from the arm to the edge of the neckband: 93 mm of slope and 24 of the neckband', () => {
    expect(said).toContainEqual(expect.stringMatching(/^Shoulder band: other, 1$/));
    expect(said).toContainEqual(
      expect.stringMatching(/^Shoulder band WS = 2\d left front shoulder; .*button holes 2 .* in words/),
    );
  });

  it('leaves the neckband as it was, picked up along the same edges', () => {
    const band = (design: Design) => madeUp(design).said.find((line) => line.startsWith('Neckband WS'));
    expect(band(opened('left shoulder'))).toBe(band(opened('none')));
  });

  it('is laid on the back before the sleeves are sewn in; the right shoulder alone is sewn', () => {
    expect(troubles).toEqual([]);
    const order = steps.map(({ id }) => id);
    expect(order.indexOf('pick up Shoulder band')).toBeGreaterThan(order.indexOf('pick up Neckband'));
    expect(order.indexOf('lap')).toBeGreaterThan(order.indexOf('pick up Shoulder band'));
    expect(order.indexOf('lap')).toBeLessThan(order.indexOf('set in sleeves'));
    expect(order).not.toContain('close Neckband');
    expect(steps.find(({ kind }) => kind === 'shoulders')).toMatchObject({ seams: 1, isOtherButtoned: true });
    expect(joints.filter((one) => one.kind === 'seam' && one.of === 'shoulder')).toHaveLength(1);
  });
});

describe('the steps of a left shoulder that is buttoned', () => {
  const { steps } = madeUp(opened('left shoulder'));
  const said = (kind: MakingUpStep['kind']) => steps.filter((step) => step.kind === kind).map(saysStep)[0];

  it('say that the left one is never sewn, and how many buttons', async () => {
    await loadWords('makingUp', 'craft');
    expect(said('shoulders')?.lines.at(-1)).toBe('The left shoulder is not sewn: it is buttoned.');
    // 117 mm for buttons that are 35 apart
    expect(said('lap')?.lines).toContain('Sew 3 buttons to the back, one below each hole.');
  });

  it('of one that is only open until its band is done say that, as before', async () => {
    await loadWords('makingUp', 'craft');
    const plain = madeUp(opened('none')).steps.find(({ kind }) => kind === 'shoulders');
    expect(plain && saysStep(plain).lines.at(-1)).toMatch(/^The left shoulder stays open until the band/);
  });
});

describe('an envelope neck', () => {
  const { recipes, steps, troubles } = madeUp(opened('envelope'));
  const along = (name: string) => {
    const from = recipes.find((one) => one.name === name)?.parts[0]?.from;
    return from && 'pickUp' in from ? from.pickUp.map((one) => one.along) : [];
  };

  it('has two bands, each from arm to arm', () => {
    expect(along('Front neckband')).toEqual([
      'left front shoulder',
      'left front neck',
      'middle of the front neck',
      'right front neck',
      'right front shoulder',
    ]);
    expect(along('Back neckband')).toEqual(['right back shoulder', 'back neck', 'left back shoulder']);
    expect(along('Neckband')).toEqual([]);
  });

  it('lies over itself at both shoulders, which are not sewn', () => {
    expect(troubles).toEqual([]);
    expect(steps.map(({ kind }) => kind)).not.toContain('shoulders');
    expect(steps.find(({ kind }) => kind === 'lap')).toEqual({
      id: 'lap',
      kind: 'lap',
      of: 'both shoulders',
      // 24 mm of 4 mm rows
      rows: 6,
    });
  });
});

describe('a raglan that opens', () => {
  const design = opened('raglan seam', { armhole: 'raglan' });
  const { steps, troubles, worked } = madeUp(design);

  it('has 80 mm of its left back line left open, 20 rows of the sleeve and of the back', () => {
    expect(troubles).toEqual([]);
    expect(steps.find(({ kind }) => kind === 'opening')).toEqual({
      id: 'opening',
      kind: 'opening',
      of: 'raglan',
      rows: 20,
    });
    const raglans = worked.flatMap(({ joint, lines }) =>
      joint.kind === 'seam' && joint.of === 'raglan' ? [lines.map(({ rows }) => rows)] : [],
    );
    expect(raglans).toEqual([
      [56, 56],
      [56, 56],
      [56, 56],
      [36, 36],
    ]);
    const sewn = steps.find(({ kind }) => kind === 'raglan');
    expect(sewn).toMatchObject({ seams: 4, rows: { first: 56 }, asFarAsOpening: { first: 36, second: 36 } });
  });

  it('does so from the top down too', () => {
    const { sleeve } = even;
    const down = madeUp({ ...design, sleeve: { ...sleeve, direction: 'top down' } });
    expect(down.troubles).toEqual([]);
  });
});

describe('the drawings of a draft', () => {
  const openings = (opening: NeckOpening, more: Partial<Design> = {}) =>
    Object.fromEntries(
      madeUp(opened(opening, more)).outlines.flatMap(({ piece, openings: lines }) =>
        lines ? [[piece, lines.map((line) => [line[0], line.at(-1)])]] : [],
      ),
    );

  it('show where it opens: a slit of 80 mm below a back neck that begins 24 mm below the top', () => {
    expect(openings('none')).toEqual({});
    const [[foot, top] = []] = openings('back').Back ?? [];
    expect(foot?.[0]).toBe(0);
    expect((top?.[1] ?? 0) - (foot?.[1] ?? 0)).toBe(80);
    expect(top?.[1]).toBe(560 - 24);
    expect(Object.keys(openings('back'))).toEqual(['Back']);
  });

  it('show the wearer’s left shoulder, from its arm to the neck: at the left of a back, at the right of a front', () => {
    const shoulder = [
      [170, 560 - 24],
      [80, 560],
    ];
    const left = openings('left shoulder');
    expect(left.Front).toEqual([shoulder]);
    expect(left.Back).toEqual([shoulder.map(([x = 0, y]) => [-x, y])]);
    expect(openings('envelope').Front).toHaveLength(2);
  });

  it('show the top of a raglan’s left back line', () => {
    const { Back = [], ...others } = openings('raglan seam', { armhole: 'raglan' });
    expect(Back).toHaveLength(1);
    expect(Back[0]?.[1]?.[0]).toBeLessThan(0);
    expect(others).toEqual({});
  });
});

describe('the openings of a draft', () => {
  it('let a head through that the neck alone does not: by twice the slit, or by both edges of each open shoulder', () => {
    const { body } = even;
    const warned = (opening: NeckOpening, head: number, armhole: Design['armhole'] = 'set-in') => {
      const made = draft(opened(opening, { armhole, body: { ...body, head } }));
      return made.ok && made.value.warnings.some(({ code }) => code === 'head does not pass');
    };
    const most = (opening: NeckOpening, armhole?: Design['armhole'], from = 300) => {
      let head = from;
      while (!warned(opening, head, armhole)) head += 10;
      return head;
    };
    const plain = most('none');
    expect(most('back', undefined, plain) - plain).toBe(160);
    // 93 mm a shoulder, two edges of it, stretched by two fifths: 261
    expect(Math.abs(most('left shoulder', undefined, plain) - plain - 261)).toBeLessThanOrEqual(10);
    expect(Math.abs(most('envelope', undefined, plain) - plain - 522)).toBeLessThanOrEqual(10);
    const raglan = most('none', 'raglan');
    expect(most('raglan seam', 'raglan', raglan) - raglan).toBe(160);
  });

  it.each(armholeKinds)('a neck of a pullover (%s) can be opened in one way or more', (armhole) => {
    for (const opening of possibleOpenings({ ...even, armhole })) {
      const { troubles } = madeUp(opened(opening, { armhole }));
      expect(troubles, opening).toEqual([]);
    }
    expect(possibleOpenings({ ...even, armhole }).length).toBeGreaterThan(1);
  });

  it('is none where the design cannot have it, or nobody knows it', () => {
    const none = openingOf({ ...even, neck: { ...even.neck, opening: 'none' } });
    const of = (opening: string, more: Partial<Design>) =>
      openingOf({ ...even, ...more, neck: { ...even.neck, ...more.neck, opening: opening as NeckOpening } });
    expect(of('left shoulder', { armhole: 'raglan' })).toEqual(none);
    expect(of('raglan seam', {})).toEqual(none);
    expect(of('back', { neck: { ...even.neck, backDepthMm: 0 } })).toEqual(none);
    expect(of('trapdoor', {})).toEqual(none);
    for (const opening of neckOpenings) expect(of(opening, { kind: 'cardigan' })).toEqual(none);
  });

  /** S. Jalowiec, 'Neckbands for kids' sweaters', 2013: a head of 15 in, a neck of 4½ in: leave a shoulder open */
  it('an open shoulder lets the head of a baby of three months through a neck of 4½ in', () => {
    const baby = bodyOfSize('babies', '3 months');
    if (!baby) throw new Error('babies have three months');
    const body = { ...baby, head: 15 * 25.4 };
    // a band that hardly stretches
    const neckband = { ...even.neckband, fabric: 'garter' as const };
    const wide = { ...even.neck, widthMm: 4.5 * 25.4, depthMm: 35, backDepthMm: 10 };
    const codes = (opening: NeckOpening) =>
      madeUp(
        opened(opening, { body, neck: wide, neckband, lengthMm: 250, armhole: 'drop', shoulderDropMm: 0 }),
      ).warnings.map(({ code }) => code);
    expect(codes('none')).toContain('head does not pass');
    expect(codes('left shoulder')).not.toContain('head does not pass');
    expect(codes('envelope')).not.toContain('head does not pass');
  });
});

it('a back neck that is lower than a row is no neck to part: it is worked as one without an opening', () => {
  const low = (opening: NeckOpening) => {
    const design = opened(opening);
    return madeUp({ ...design, neck: { ...design.neck, backDepthMm: 1 } }).said;
  };
  expect(low('back')).toEqual(low('none'));
});

it('an opening of the back that is lower than a row is none: its neckband is picked up round the whole neck and sewn to a ring', () => {
  const design = (opening: NeckOpening) => {
    const asked = opened(opening);
    return madeUp({ ...asked, neck: { ...asked.neck, openingMm: 2 } });
  };
  expect(design('back').said).toEqual(design('none').said);
  expect(design('back').joints).toEqual(design('none').joints);
});

it('an opening of a raglan that is lower than a row is none either', () => {
  const design = (opening: NeckOpening) => {
    const asked = opened(opening, { armhole: 'raglan' });
    return madeUp({ ...asked, neck: { ...asked.neck, openingMm: 2 } });
  };
  expect(design('raglan seam').said).toEqual(design('none').said);
  expect(design('raglan seam').joints).toEqual(design('none').joints);
});

it('each opening opens, and none does not', () => {
  expect(neckOpenings.filter((name) => !opensMore(name))).toEqual(['none']);
});

it('what lies in the middle of a neck rests only where it is to', () => {
  expect(neckMiddleFacts('hold').rests).toBe(true);
  for (const name of [undefined, 'bind off', 'glue'] as (NeckMiddle | undefined)[])
    expect(neckMiddleFacts(name).rests, name).toBe(false);
});
