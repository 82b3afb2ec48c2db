import { describe, expect, it } from 'vitest';
import { placketJoints, type SewnBand } from '../../../src/knit/making-up/band-joints.ts';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import { groups, part, piece, section, slant, standing, stepSaid, workedSaid } from './by-hand.ts';
import { drop } from './shapes.ts';

/* A stitch is 4 mm wide, a row 3 mm high. */
describe('a back that is bound off in one row, sewn to shoulders of 8 stitches each', () => {
  const [, , sleeve] = drop;
  const fore = piece('Front', 'front', [
    part('Body', 20, [section('a', 8)], 'split'),
    part('Right', { part: 'Body', stitches: 8, edge: 'right' }, [section('b', 4)]),
    part('Middle', { part: 'Body', stitches: 4, edge: 'middle' }, [], 'hold'),
    part('Left', { part: 'Body', stitches: 8, edge: 'left' }, [section('b', 4)]),
  ]);
  const shoulders = (stitches: number) => {
    const rear = piece('Back', 'back', [part('Back', stitches, [section('a', 12)])]);
    if (!sleeve) throw new Error('a sleeve');
    return makingUpOf(standing(rear, fore, sleeve))
      .worked.map(workedSaid)
      .filter((line) => line.startsWith('shoulder'));
  };

  it.each([
    ['20: four are left for the neck', 20, 12],
    ['18: two are left', 18, 10],
    ['17: one is left', 17, 9],
  ])('of %s', (_, all, from) => {
    expect(shoulders(all)).toEqual([
      'shoulder: Left top turned (8s 32.0mm) = Back top stitches 0-8 (8s 32.0mm)',
      `shoulder: Right top (8s 32.0mm) = Back top stitches ${from}-${all} turned (8s 32.0mm)`,
    ]);
  });

  it.each([16, 15, 12])('of %i: none is left for a neck, and nothing is sewn', (all) => {
    expect(shoulders(all)).toEqual([]);
  });
});

describe('an indented sleeve', () => {
  it('goes into a corner of one stitch, 4 mm, with the one row of 3 mm that is nearest', () => {
    const corner = (name: string, rows: number) => section(name, rows, ...groups(1, 1));
    const pieces = [
      piece('Back', 'back', [part('Back', 22, [section('a', 6), corner('b', 6)])]),
      piece('Front', 'front', [
        part('Body', 22, [section('a', 6), corner('b', 2)], 'split'),
        ...(drop[1]?.parts.slice(1) ?? []),
      ]),
      piece('Sleeve', 'sleeve', [part('Sleeve', 8, [section('a', 6, slant('both', 1, 3))])], { makes: 2 }),
    ];
    const step = makingUpOf(standing(...pieces)).steps.find(({ kind }) => kind === 'set in sleeves');
    expect(step && stepSaid(step)).toContain('underarm {stitches 1 rows 1}');
  });
});

describe('a placket', () => {
  const band = (name: string, worn: 'left' | 'right'): SewnBand => ({
    piece: name,
    part: `${name} part`,
    role: 'front band',
    makes: 1,
    along: [{ edge: `${worn} front edge`, stitches: 12 }],
  });
  const [left, right] = [band('L', 'left'), band('R', 'right')];
  const end = (name: string, edge: 'left' | 'right') => [
    { piece: name, make: 1, part: `${name} part`, edge },
  ];
  const middle = [{ piece: 'Front', make: 1, part: 'Middle', edge: 'top' as const }];
  const sewn = (a: unknown, b: unknown) => ({ kind: 'seam', of: 'lap', a, b, how: 'sewn' });

  it('has the band on top sewn to what is bound off below it, the other caught behind', () => {
    expect(placketJoints([left, right], 'left', middle)).toEqual([
      sewn(end('L', 'left'), middle),
      { kind: 'left free', line: end('R', 'right'), as: 'opening' },
    ]);
    expect(placketJoints([left, right], 'right', middle)).toEqual([
      sewn(end('R', 'right'), middle),
      { kind: 'left free', line: end('L', 'left'), as: 'opening' },
    ]);
  });

  it('with nothing bound off the two ends are sewn to each other', () => {
    expect(placketJoints([left, right], 'right', [])).toEqual([sewn(end('R', 'right'), end('L', 'left'))]);
  });

  it('is none without both bands, nor of a band of the neck', () => {
    expect(placketJoints([left], 'left', middle)).toEqual([]);
    expect(placketJoints([right], 'left', middle)).toEqual([]);
    expect(placketJoints([left, { ...right, role: 'neckband' }], 'left', middle)).toEqual([]);
  });
});
