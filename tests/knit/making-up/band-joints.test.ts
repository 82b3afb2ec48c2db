import { describe, expect, it } from 'vitest';
import {
  bandJoints,
  closingsOf,
  type EdgeName,
  freeBandEdges,
  lapBand,
  lapJoints,
  placketJoints,
  type SewnBand,
} from '../../../src/knit/making-up/band-joints.ts';
import type { Line } from '../../../src/knit/making-up/joint.ts';
import type { PieceRole } from '../../../src/knit/piece/recipe.ts';
import { jointSaid, named } from './sewn-by-name.ts';

/* Bands by what they are picked up along, and what becomes of their ends; common practice, no published source. */

const band = (piece: string, role: PieceRole, ...along: readonly EdgeName[]): SewnBand => ({
  piece,
  part: piece,
  role,
  makes: 1,
  along: along.map((edge, i) => ({ edge, stitches: i + 1 })),
});
/** Each edge is called by its own name. */
const lines = new Proxy({}, { get: (_, name: string) => named(name) }) as Readonly<Record<EdgeName, Line>>;

const neckband = band('Neckband', 'neckband', 'back neck');
const flap = band('Flap', 'front band', 'left front shoulder');
const [left, right] = [
  band('Left', 'front band', 'left front edge'),
  band('Right', 'front band', 'right front edge'),
];
const plain = { isOpen: false, hasOpening: false, laps: undefined, hasPlacket: false } as const;

describe('when a band is knitted', () => {
  it('is at the neck first, then along an open shoulder, and last wherever else', () => {
    const all = [left, flap, neckband, band('Second', 'neckband', 'front neck')];
    const pickedUp = (which: 'neck' | 'shoulder' | 'rest') =>
      bandJoints(all, lines, which).map((joint) => (joint.kind === 'pick up' ? joint.piece : ''));
    expect(pickedUp('neck')).toEqual(['Neckband', 'Second']);
    expect(pickedUp('shoulder')).toEqual(['Flap']);
    expect(pickedUp('rest')).toEqual(['Left']);
  });

  it('is with the other bands for a neckband that goes along a shoulder, which is no flap', () => {
    const collar = band('Collar', 'neckband', 'left front shoulder');
    expect(lapBand([collar])).toBeUndefined();
    expect(bandJoints([collar], lines, 'neck')).toHaveLength(1);
    expect(bandJoints([collar], lines, 'shoulder')).toEqual([]);
    expect(lapBand([collar, left, flap])).toBe(flap);
  });
});

describe('a band goes on along the neckband', () => {
  const along = (one: SewnBand, ...others: readonly SewnBand[]) =>
    bandJoints([one, ...others], lines, one === flap ? 'shoulder' : 'rest').map(jointSaid);

  it('where it is that of a front edge or an open shoulder, each at its own side', () => {
    expect(along(right, neckband)).toEqual(['pick up Right 1: 1 right front edge, Neckband']);
    expect(along(flap, neckband)).toEqual(['pick up Flap 1: 1 left front shoulder, Neckband']);
    expect(along(left, neckband)).toEqual(['pick up Left 1: 1 Neckband left turned, left front edge']);
  });

  it('and alone where there is none, or along another edge', () => {
    expect(along(right)).toEqual(['pick up Right 1: 1 right front edge']);
    expect(along(left)).toEqual(['pick up Left 1: 1 left front edge']);
    const other = band('Other', 'other', 'right front shoulder');
    expect(along(other, neckband)).toEqual(['pick up Other 1: 1 right front shoulder']);
  });
});

describe('a band that goes round', () => {
  it('is closed, each of its makes, and no other', () => {
    const two = { ...band('Armhole band', 'armhole band', 'left front armhole'), makes: 2 };
    expect(closingsOf([neckband, two], 'armhole band', true).map(jointSaid)).toEqual([
      'band: Armhole band = Armhole band left',
      'band: Armhole band of 2 = Armhole band left of 2',
    ]);
    expect(closingsOf([neckband, two], 'neckband', true).map(jointSaid)).toEqual([
      'band: Neckband = Neckband left',
    ]);
    expect(closingsOf([neckband, two], 'neckband', false)).toEqual([]);
  });
});

describe('edges of bands that nothing is sewn to', () => {
  const free = (bands: readonly SewnBand[], more: Partial<Parameters<typeof freeBandEdges>[1]> = {}) =>
    freeBandEdges(bands, { ...plain, ...more }).map(jointSaid);
  const tops = ['free front: Left top', 'free front: Right top'];

  it('are where it is bound off: of a neck, an armhole, a front', () => {
    expect(free([neckband])).toEqual(['free neck: Neckband top']);
    const two = { ...band('Armhole band', 'armhole band', 'left front armhole'), makes: 2 };
    expect(free([two])).toEqual(['free armhole: Armhole band top', 'free armhole: Armhole band top of 2']);
    expect(free([band('Pocket', 'other', 'front neck')])).toEqual(['free front: Pocket top']);
  });

  it('both ends of the bands of an open front, and those of its neckband where it has no front bands', () => {
    const ends = (name: string) => [`free front: ${name}`, `free front: ${name} left`];
    expect(free([left, right], { isOpen: true })).toEqual(
      [left, right].flatMap(({ piece }, i) => [tops[i], ...ends(piece)]),
    );
    expect(free([neckband], { isOpen: true })).toEqual(['free neck: Neckband top', ...ends('Neckband')]);
    expect(free([neckband, left], { isOpen: true })).toEqual([
      'free neck: Neckband top',
      tops[0],
      ...ends('Left'),
    ]);
  });

  it('both ends of a neckband that opens behind', () => {
    expect(free([neckband], { hasOpening: true })).toEqual([
      'free neck: Neckband top',
      'free opening: Neckband',
      'free opening: Neckband left',
    ]);
    expect(free([band('Armhole band', 'armhole band', 'left front armhole')], { hasOpening: true })).toEqual([
      'free armhole: Armhole band top',
    ]);
  });

  it('of a placket its bands and their upper ends: the left end of the right band, the right one of the left', () => {
    expect(free([neckband, left, right], { hasPlacket: true })).toEqual([
      'free neck: Neckband top',
      'free opening: Left top',
      'free opening: Left',
      'free opening: Right top',
      'free opening: Right left',
    ]);
  });

  it('of one open shoulder the left ends of its two bands, of both shoulders no end', () => {
    const armholes = band('Armhole band', 'armhole band', 'left front armhole');
    expect(free([neckband, flap, armholes], { laps: 'left' })).toEqual([
      'free neck: Neckband top',
      'free opening: Neckband left',
      'free opening: Flap top',
      'free opening: Flap left',
      'free armhole: Armhole band top',
    ]);
    expect(free([neckband, armholes], { laps: 'both' })).toEqual([
      'free neck: Neckband top',
      'free armhole: Armhole band top',
    ]);
  });
});

describe('bands that lie over each other', () => {
  const middle = named('middle');
  const placket = (onTop: 'left' | 'right', between: Line, ...bands: readonly SewnBand[]) =>
    placketJoints(bands, onTop, between).map(jointSaid);

  it('of a placket: the one on top sewn to what lies between them, the other behind it', () => {
    expect(placket('left', middle, left, right)).toEqual([
      'lap: Left left = middle sewn',
      'free opening: Right',
    ]);
    expect(placket('right', middle, left, right)).toEqual([
      'lap: Right = middle sewn',
      'free opening: Left left',
    ]);
    expect(placket('right', [], left, right)).toEqual(['lap: Right = Left left sewn']);
    expect(placket('right', middle, left)).toEqual([]);
    expect(placket('right', middle, right)).toEqual([]);
    // a band of another kind along that edge is none of it
    expect(placket('right', middle, left, band('Right', 'other', 'right front edge'))).toEqual([]);
  });

  it('of both shoulders: the ends of the back’s on those of the front’s; of one its band on the back', () => {
    const back = band('Behind', 'neckband', 'back neck');
    const both = (...bands: readonly SewnBand[]) => lapJoints(bands, 'both', middle).map(jointSaid);
    const front = band('Before', 'neckband', 'front neck');
    expect(both(front, left, back)).toEqual([
      'lap: Behind left = Before sewn',
      'lap: Behind = Before left sewn',
    ]);
    expect(both(front)).toEqual([]);
    expect(both(left, right)).toEqual([]);
    expect(lapJoints([neckband, flap], 'left', middle).map(jointSaid)).toEqual(['lap: Flap = middle sewn']);
    expect(lapJoints([neckband, left], 'left', middle)).toEqual([]);
  });
});
