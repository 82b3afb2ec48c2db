import { describe, expect, it } from 'vitest';
import { phrasesOf } from '../../../src/knit/making-up/phrases.ts';
import { easeOf, type MakingUpStep } from '../../../src/knit/making-up/step.ts';

type Of<K extends MakingUpStep['kind']> = Extract<MakingUpStep, { kind: K }>;
const underarm = (stitches: number, rows: number) => ({ stitches, rows });
const says = (step: MakingUpStep) => phrasesOf(step).map(({ say }) => say);
const onlyOne = <T>(found: readonly T[]): T => {
  if (found.length !== 1) throw new Error(`${found.length} of them`);
  return found[0] as T;
};
const phrase = (step: MakingUpStep, say: string) => onlyOne(phrasesOf(step).filter((one) => one.say === say));

const line: Of<'raglan'> = {
  id: 'raglan',
  kind: 'raglan',
  sleeve: 'Sleeve',
  seams: 4,
  rows: easeOf(40, 40),
  underarm: underarm(0, 0),
};

describe('the lines of a raglan', () => {
  it.each([
    ['four', line],
    ['three', { ...line, seams: 3, waits: 'left back' }],
    ['of one sleeve', { ...line, nos: [2] }],
    ['of one sleeve', { ...line, seams: 3, nos: [2] }],
    ['one has an opening', { ...line, asFarAsOpening: easeOf(30, 30) }],
    ['one has an opening', { ...line, nos: [1], asFarAsOpening: easeOf(30, 30) }],
  ] as const)('are %s', (which, step) => {
    expect(phrase(step, 'raglan lines')).toEqual({ say: 'raglan lines', which });
  });

  it('say which waits, which goes as far as its opening, and what is sewn at the underarm, in this order', () => {
    expect(says(line)).toEqual(['raglan lines', 'edges', 'way']);
    expect(phrase({ ...line, seams: 3, waits: 'left back' }, 'a line waits')).toMatchObject({
      line: 'left back',
    });
    const opens = { ...line, asFarAsOpening: easeOf(30, 28), underarm: underarm(8, 0) };
    expect(says(opens)).toEqual([
      'raglan lines',
      'edges',
      'the left back line to its opening',
      'edges',
      'way',
      'underarm',
    ]);
    expect(phrasesOf(opens).filter((one) => one.say === 'edges')).toMatchObject([
      { unit: 'rows', both: { first: 40, second: 40 }, names: ['Sleeve', ''], seams: 1 },
      { unit: 'rows', both: { first: 30, second: 28 }, names: ['Sleeve', ''], seams: 1 },
    ]);
    expect(phrase(opens, 'way')).toEqual({ say: 'way', how: 'mattress' });
  });
});

describe('an underarm', () => {
  it('is the sleeve’s own where its stitches are bound off, its rows’ where it has none, and nothing where neither', () => {
    expect(phrase({ ...line, underarm: underarm(8, 0) }, 'underarm')).toMatchObject({ isOwn: true });
    expect(phrase({ ...line, underarm: underarm(8, 10) }, 'underarm')).toMatchObject({ isOwn: false });
    expect(says({ ...line, underarm: underarm(0, 10) })).not.toContain('underarm');
  });
});

describe('two edges that differ', () => {
  const sides = (first: number, second: number): MakingUpStep => ({
    id: 's',
    kind: 'side seams',
    back: 'Back',
    front: 'Front',
    rows: easeOf(first, second),
  });

  /** one more after every second one is no easing any more: common practice, no published source */
  it.each([
    [120, 120, false],
    [90, 120, false],
    [80, 120, true],
    [120, 80, true],
    [60, 120, true],
    [119, 120, false],
  ])('%i and %i are far off: %s', (first, second, isFarOff) => {
    expect(phrase(sides(first, second), 'edges')).toMatchObject({ isFarOff, names: ['Back', 'Front'] });
    expect(says(sides(first, second))).toEqual(['edges', 'way', 'one stitch in']);
  });

  it('a sleeve’s meet row by row, being one edge twice', () => {
    const step: MakingUpStep = { id: 's', kind: 'sleeve seams', sleeve: 'Sleeve', rows: 100 };
    expect(phrase(step, 'edges')).toMatchObject({
      both: { first: 100, second: 100, difference: 0 },
      names: ['Sleeve', 'Sleeve'],
      isFarOff: false,
    });
  });
});

describe('shoulders', () => {
  const both: Of<'shoulders'> = {
    id: 'shoulders',
    kind: 'shoulders',
    back: 'Back',
    front: 'Front',
    stitches: easeOf(30, 30),
    seams: 2,
    how: 'grafted',
  };

  it('both at once say their seam and its way, and that of one half no more', () => {
    expect(says(both)).toEqual(['edges', 'way']);
    expect(phrase(both, 'edges')).toMatchObject({ unit: 'stitches', seams: 2, names: ['Back', 'Front'] });
    expect(phrase(both, 'way')).toEqual({ say: 'way', how: 'grafted' });
    expect(says({ ...both, seams: 1, nos: [1], side: 'left' })).toEqual(['edges', 'way']);
  });

  it('one alone says which waits: the other one, unless that is buttoned', () => {
    const one = { ...both, seams: 1 } as const;
    expect(phrase({ ...one, side: 'left' }, 'a shoulder waits')).toMatchObject({ worn: 'right' });
    expect(phrase({ ...one, side: 'right' }, 'a shoulder waits')).toMatchObject({ worn: 'left' });
    expect(says({ ...one, side: 'right', isOtherButtoned: true })).toEqual([
      'edges',
      'way',
      'the left shoulder is buttoned',
    ]);
  });
});

describe('a band', () => {
  const ratio = (stitches: number, rows: number) => ({ stitches, rows });
  const picked = (of: Of<'pick up'>['ratio']): Of<'pick up'> => ({
    id: 'p',
    kind: 'pick up',
    band: 'Neckband',
    edges: [],
    ratio: of,
    total: 90,
  });

  it('says a ratio only where it is not one for one', () => {
    expect(says(picked(ratio(3, 4)))).toEqual(['picked up', 'ratio']);
    expect(says(picked(ratio(1, 1)))).toEqual(['picked up']);
    expect(phrase(picked(ratio(3, 4)), 'picked up')).toMatchObject({ total: 90 });
  });

  it('says what share of its edge is meant where it is not all of it', () => {
    const meant: MakingUpStep = { ...picked(ratio(1, 2)), percent: 88 };
    expect(says(meant)).toEqual(['picked up', 'ratio', 'share']);
    expect(phrase(meant, 'share')).toEqual({ say: 'share', percent: 88 });
  });

  const ends = { id: 'c', kind: 'close', band: 'Neckband', rows: 8 } as const;
  const seam = { both: easeOf(30, 30), line: 'left back' } as const;

  it('closed in one with the seam that waited for it says that first: a shoulder by its stitches, a raglan’s line by its rows', () => {
    expect(says({ ...ends, seam: undefined })).toEqual(['ends of the band']);
    const shoulder: MakingUpStep = { ...ends, seam: { ...seam, of: 'shoulder' } };
    expect(says(shoulder)).toEqual(['first the open shoulder', 'edges', 'way', 'ends of the band']);
    expect(phrase(shoulder, 'first the open shoulder')).toMatchObject({ worn: 'left' });
    expect(phrase(shoulder, 'edges')).toMatchObject({ unit: 'stitches' });
    expect(phrase(shoulder, 'way')).toMatchObject({ how: 'sewn' });
    expect(phrase({ ...ends, seam: { ...seam, of: 'shoulder', how: 'grafted' } }, 'way')).toMatchObject({
      how: 'grafted',
    });
    const right: MakingUpStep = { ...ends, seam: { ...seam, of: 'shoulder', line: 'right back' } };
    expect(phrase(right, 'first the open shoulder')).toMatchObject({ worn: 'right' });
    const raglan: MakingUpStep = { ...ends, seam: { ...seam, of: 'raglan' } };
    expect(says(raglan)).toEqual(['first the open line', 'edges', 'way', 'ends of the band']);
    expect(phrase(raglan, 'first the open line')).toMatchObject({ line: 'left back' });
    expect(phrase(raglan, 'edges')).toMatchObject({ unit: 'rows' });
    expect(phrase(raglan, 'way')).toMatchObject({ how: 'mattress' });
  });
});

describe('sleeves set in', () => {
  const sleeves = (topMm: number, armholeMm: number, stitches: number): MakingUpStep => ({
    id: 's',
    kind: 'set in sleeves',
    sleeve: 'Sleeve',
    topMm,
    armholeMm,
    markerRows: 50,
    markerMm: 180,
    on: 'Back',
    marksMm: [],
    quarters: [25],
    underarm: underarm(stitches, 0),
  });

  it('have a marker where no stitches are bound off at the underarm, whose corner is the mark else', () => {
    expect(says(sleeves(400, 400, 0))).toEqual([
      'marker',
      'middle of the top',
      'quarters',
      'top and armhole',
    ]);
    expect(says(sleeves(400, 400, 8))).toEqual([
      'middle of the top',
      'quarters',
      'underarm',
      'top and armhole',
    ]);
  });

  it('meet as they are up to 15 mm apart, whichever is longer', () => {
    for (const [top, armhole, meet] of [
      [400, 415, true],
      [415, 400, true],
      [400, 416, false],
      [416, 400, false],
    ] as const)
      expect(phrase(sleeves(top, armhole, 8), 'top and armhole')).toMatchObject({ meet });
  });
});

describe('what lies over something else', () => {
  it.each([
    ['placket', ['lap', 'over the head']],
    ['both shoulders', ['lap', 'before the sleeves']],
    ['left shoulder', ['lap', 'buttons below', 'over the head']],
  ] as const)('%s', (of, all) => {
    expect(says({ id: 'l', kind: 'lap', of, rows: 8, buttons: 3 })).toEqual(all);
  });

  it('has a button where nobody says how many', () => {
    const lap: MakingUpStep = { id: 'l', kind: 'lap', of: 'left shoulder', rows: 8 };
    expect(phrase(lap, 'buttons below')).toMatchObject({ count: 1 });
    expect(phrase({ ...lap, buttons: 3 }, 'buttons below')).toMatchObject({ count: 3 });
  });
});

describe('what she joined herself', () => {
  const stretch = { piece: 'Back', part: 'Back', edge: 'left' } as never;
  const edge = (count: number, mm: number) => ({ stretch, count, mm });
  const join = (
    unit: Of<'join'>['unit'],
    a: ReturnType<typeof edge> | undefined,
    b: ReturnType<typeof edge> | undefined,
  ): MakingUpStep => ({ id: 'j', kind: 'join', seam: 'x', how: 'sewn', unit, edges: [a, b] });

  it('is told to be gone where either edge is', () => {
    expect(says(join('rows', undefined, edge(10, 30)))).toEqual(['an edge is gone']);
    expect(says(join('rows', edge(10, 30), undefined))).toEqual(['an edge is gone']);
  });

  it('held by lengths is joined evenly from more than 15 mm apart, and never counted; by rows it is far off from a half on', () => {
    expect(says(join('mm', edge(0, 300), edge(0, 315)))).toEqual(['joined', 'way']);
    expect(says(join('mm', edge(0, 316), edge(0, 300)))).toEqual(['joined', 'joined evenly', 'way']);
    expect(phrase(join('mm', edge(20, 300), edge(40, 300)), 'joined')).toMatchObject({ isFarOff: false });
    expect(phrase(join('rows', edge(20, 300), edge(40, 316)), 'joined')).toMatchObject({ isFarOff: true });
    expect(says(join('rows', edge(40, 300), edge(40, 330)))).toEqual(['joined', 'way']);
    expect(phrase(join('rows', edge(40, 300), edge(40, 330)), 'joined')).toMatchObject({ isFarOff: false });
  });
});
