import { describe, expect, it } from 'vitest';
import { type Phrase, phrasesOf, plainPhrases } from '../../../src/knit/making-up/phrases.ts';
import { easeOf, type MakingUpStep } from '../../../src/knit/making-up/step.ts';

/* All that is told of each kind of step, in its order and with every figure, reckoned by hand; common practice, no published source. */

type Of<K extends MakingUpStep['kind']> = Omit<Extract<MakingUpStep, { kind: K }>, 'id'>;
const none = { stitches: 0, rows: 0 };
const mattress = { say: 'way', how: 'mattress' } as const;
const edges = (
  unit: 'rows' | 'stitches',
  [first, second]: readonly [number, number],
  names: readonly [string, string],
  more: { readonly seams?: number; readonly isFarOff?: true } = {},
) =>
  ({ say: 'edges', unit, both: easeOf(first, second), names, seams: 1, isFarOff: false, ...more }) as const;

const told = (step: Omit<MakingUpStep, 'id'>) => phrasesOf({ id: 'a step', ...step } as MakingUpStep);
const tells = <K extends MakingUpStep['kind']>(step: Of<K>, phrases: readonly Phrase[]) =>
  expect(told(step as unknown as Omit<MakingUpStep, 'id'>)).toEqual(phrases);

describe('of one more of the longer edge to the other', () => {
  it.each([
    [90, 90, 0, 0],
    [100, 90, 10, 9],
    [90, 100, -10, 9],
    // 50 between 3 are 16 and a bit
    [53, 50, 3, 16],
    [50, 20, 30, 1],
    [1, 0, 1, 1],
  ])('%i and %i: %i more, one after every %i', (first, second, difference, oneMoreEvery) => {
    expect(easeOf(first, second)).toEqual({ first, second, difference, oneMoreEvery });
  });
});

it('the phrases without a figure are these ten', () => {
  expect(plainPhrases).toEqual([
    'one stitch in',
    'the left shoulder is buttoned',
    'one shoulder waits',
    'the left back line to its opening',
    'middle of the top',
    'over the head',
    'before the sleeves',
    'joined evenly',
    'an edge is gone',
    'along the seams',
  ]);
});

describe('all that is told of', () => {
  it('blocking a piece: how wide and how high', () => {
    tells<'block'>({ kind: 'block', piece: 'Back', makes: 2, widthMm: 500, heightMm: 620 }, [
      { say: 'block to', widthMm: 500, heightMm: 620 },
    ]);
  });

  it('both shoulders, and one alone', () => {
    const both: Of<'shoulders'> = {
      kind: 'shoulders',
      back: 'Back',
      front: 'Front',
      stitches: easeOf(30, 28),
      seams: 2,
      how: 'three-needle',
    };
    const seams = edges('stitches', [30, 28], ['Back', 'Front'], { seams: 2 });
    tells<'shoulders'>(both, [seams, { say: 'way', how: 'three-needle' }]);
    const right = [{ ...seams, seams: 1 }, mattress] as const;
    const one = { ...both, seams: 1, how: 'mattress' as const };
    tells<'shoulders'>({ ...one, side: 'left' }, [...right, { say: 'a shoulder waits', worn: 'right' }]);
    tells<'shoulders'>({ ...one, side: 'right' }, [...right, { say: 'a shoulder waits', worn: 'left' }]);
    tells<'shoulders'>({ ...one, side: 'right', isOtherButtoned: true }, [
      ...right,
      { say: 'the left shoulder is buttoned' },
    ]);
    tells<'shoulders'>({ ...one, side: 'right', isOtherButtoned: true, nos: [1] }, right);
    tells<'shoulders'>({ ...both, nos: [1] }, [seams, { say: 'way', how: 'three-needle' }]);
  });

  it('a band that is picked up: along what, how many in all, its ratio and its share', () => {
    const along = [
      { along: 'back neck', stitches: 40 },
      { along: 'left front neck', stitches: 21 },
    ];
    const band: Of<'pick up'> = {
      kind: 'pick up',
      band: 'Neckband',
      edges: along,
      ratio: { stitches: 3, rows: 4 },
      total: 61,
    };
    const picked = { say: 'picked up', edges: along, total: 61 } as const;
    const ratio = { say: 'ratio', ratio: { stitches: 3, rows: 4 } } as const;
    tells<'pick up'>(band, [picked, ratio]);
    tells<'pick up'>({ ...band, percent: 90 }, [picked, ratio, { say: 'share', percent: 90 }]);
    const one = { ...band, ratio: { stitches: 1, rows: 1 } };
    tells<'pick up'>({ ...one, percent: 90 }, [picked, { say: 'share', percent: 90 }]);
    tells<'pick up'>(one, [picked]);
  });

  it('the ends of a band, and the seam that waited for it', () => {
    const ends = { say: 'ends of the band', band: 'Neckband', rows: 8 } as const;
    const close = { kind: 'close', band: 'Neckband', rows: 8 } as const;
    tells<'close'>({ ...close, seam: undefined }, [ends]);
    tells<'close'>({ ...close, seam: { of: 'raglan', line: 'right front', both: easeOf(40, 44) } }, [
      { say: 'first the open line', line: 'right front' },
      edges('rows', [40, 44], ['', '']),
      mattress,
      ends,
    ]);
    const shoulder = { of: 'shoulder', line: 'left front', both: easeOf(30, 45) } as const;
    tells<'close'>({ ...close, seam: shoulder }, [
      { say: 'first the open shoulder', worn: 'left' },
      // one more after every second stitch
      edges('stitches', [30, 45], ['', ''], { isFarOff: true }),
      { say: 'way', how: 'sewn' },
      ends,
    ]);
    // a line of a raglan is always sewn so, whatever else is said
    tells<'close'>({ ...close, seam: { ...shoulder, of: 'raglan', how: 'grafted' } }, [
      { say: 'first the open line', line: 'left front' },
      edges('rows', [30, 45], ['', ''], { isFarOff: true }),
      mattress,
      ends,
    ]);
  });

  it('a neck without a band: its edges, and that a shoulder waits', () => {
    const along = { along: 'back neck', times: 1, rows: undefined, ratio: undefined, stitches: 40 } as const;
    tells<'neck edge'>({ kind: 'neck edge', edges: [along], total: 40 }, [
      { say: 'neck', edges: [along], total: 40 },
      { say: 'one shoulder waits' },
    ]);
  });

  it('the lines of a raglan', () => {
    const lines: Of<'raglan'> = {
      kind: 'raglan',
      sleeve: 'Sleeve',
      seams: 3,
      waits: 'left back',
      rows: easeOf(40, 44),
      asFarAsOpening: easeOf(30, 36),
      underarm: { stitches: 6, rows: 0 },
    };
    const names = ['Sleeve', ''] as const;
    tells<'raglan'>(lines, [
      { say: 'raglan lines', which: 'one has an opening' },
      edges('rows', [40, 44], names),
      { say: 'the left back line to its opening' },
      edges('rows', [30, 36], names),
      mattress,
      { say: 'a line waits', line: 'left back' },
      { say: 'underarm', underarm: { stitches: 6, rows: 0 }, isOwn: true },
    ]);
    tells<'raglan'>({ kind: 'raglan', sleeve: 'Arm', seams: 4, rows: easeOf(40, 40), underarm: none }, [
      { say: 'raglan lines', which: 'four' },
      edges('rows', [40, 40], ['Arm', '']),
      mattress,
    ]);
  });

  it('sleeves that are set in, with and without stitches bound off at the underarm', () => {
    const sleeves: Of<'set in sleeves'> = {
      kind: 'set in sleeves',
      sleeve: 'Sleeve',
      topMm: 430,
      armholeMm: 400,
      markerRows: 60,
      markerMm: 200,
      on: 'Back',
      marksMm: [380, 480],
      quarters: [15, 45],
      underarm: none,
    };
    const rest = [
      { say: 'middle of the top' },
      { say: 'quarters', rows: [15, 45] },
      { say: 'top and armhole', topMm: 430, armholeMm: 400, meet: false },
    ] as const;
    tells<'set in sleeves'>(sleeves, [{ say: 'marker', rows: 60, mm: 200 }, ...rest]);
    // a single stitch makes a corner, too
    const corner = { stitches: 1, rows: 2 };
    tells<'set in sleeves'>({ ...sleeves, topMm: 415, underarm: corner }, [
      ...rest.slice(0, 2),
      { say: 'underarm', underarm: corner, isOwn: false },
      { say: 'top and armhole', topMm: 415, armholeMm: 400, meet: true },
    ]);
  });

  it('seams along rows: mattress stitch, one stitch in', () => {
    const rest = [mattress, { say: 'one stitch in' }] as const;
    tells<'side seams'>({ kind: 'side seams', back: 'Back', front: 'Front', rows: easeOf(120, 122) }, [
      edges('rows', [120, 122], ['Back', 'Front']),
      ...rest,
    ]);
    tells<'sleeve seams'>({ kind: 'sleeve seams', sleeve: 'Sleeve', rows: 100 }, [
      edges('rows', [100, 100], ['Sleeve', 'Sleeve']),
      ...rest,
    ]);
  });

  it.each(['back', 'raglan'] as const)('an opening of a %s: its loop, tried over the head', (of) => {
    tells<'opening'>({ kind: 'opening', of, rows: 20 }, [
      { say: 'loop', of, rows: 20 },
      { say: 'over the head' },
    ]);
  });

  it('edges that lie over each other, a placket by the band on top', () => {
    tells<'lap'>({ kind: 'lap', of: 'placket', rows: 8, band: 'Left band', buttons: 3 }, [
      { say: 'lap', of: 'placket', rows: 8, band: 'Left band' },
      { say: 'over the head' },
    ]);
    tells<'lap'>({ kind: 'lap', of: 'both shoulders', rows: 6 }, [
      { say: 'lap', of: 'both shoulders', rows: 6 },
      { say: 'before the sleeves' },
    ]);
    const lap = told({ kind: 'lap', of: 'left shoulder', rows: 6 } as Of<'lap'>);
    expect(lap).toEqual([
      { say: 'lap', of: 'left shoulder', rows: 6 },
      { say: 'buttons below', count: 1 },
      { say: 'over the head' },
    ]);
    expect(lap[0]).not.toHaveProperty('band');
  });

  it('buttons: where the holes lie, and on what they are sewn', () => {
    const holes = { say: 'holes', band: 'Holes', stitches: [3, 23] } as const;
    const buttons = { kind: 'buttons', band: 'Holes', stitches: [3, 23] } as const;
    tells<'buttons'>({ ...buttons, on: 'Buttons' }, [holes, { say: 'buttons opposite', on: 'Buttons' }]);
    tells<'buttons'>(buttons, [holes, { say: 'buttons opposite', on: undefined }]);
  });

  it('what she joined herself: both edges, one to the other, and her way', () => {
    const stretch = { piece: 'Back', make: 1, part: 'Back', edge: 'left' } as const;
    const [a, b] = [
      { stretch, count: 40, mm: 300 },
      { stretch, count: 20, mm: 330 },
    ];
    const join = { kind: 'join', seam: 'own', how: 'grafted' } as const;
    const way = { say: 'way', how: 'grafted' } as const;
    const joined = { say: 'joined', edges: [a, b], both: easeOf(40, 20) } as const;
    tells<'join'>({ ...join, unit: 'rows', edges: [a, b] }, [
      { ...joined, unit: 'rows', isFarOff: true },
      way,
    ]);
    tells<'join'>({ ...join, unit: 'mm', edges: [a, b] }, [
      { ...joined, unit: 'mm', isFarOff: false },
      { say: 'joined evenly' },
      way,
    ]);
  });

  it('the ends: woven in along the seams', () => {
    tells<'ends'>({ kind: 'ends' }, [{ say: 'along the seams' }]);
  });
});
