import { describe, expect, it } from 'vitest';
import { proposed } from '../../../src/knit/making-up/propose.ts';
import { nothingTold, type Told } from '../../../src/knit/making-up/told.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { lineSaid, part, piece, section, slant, standing } from './by-hand.ts';
import { drop, raglan } from './shapes.ts';

/* Back and sleeves of twelve rows each, four of them below the underarm: what is told to be open is taken from their tops. */

const told = (more: Partial<Told>): Told => ({ ...nothingTold, ...more });
const joints = (pieces: readonly Recipe[], more: Partial<Told>) => proposed(standing(...pieces), told(more));
const seams = (of: string, pieces: readonly Recipe[], more: Partial<Told>) =>
  joints(pieces, more).flatMap((joint) =>
    joint.kind === 'seam' && joint.of === of ? [`${lineSaid(joint.a)} = ${lineSaid(joint.b)}`] : [],
  );
const open = (pieces: readonly Recipe[], more: Partial<Told>) =>
  joints(pieces, more).flatMap((joint) =>
    joint.kind === 'left free' && joint.as === 'opening' ? [lineSaid(joint.line)] : [],
  );

const isRaglan = { seams: new Set(['raglan'] as const) };

describe('a raglan that is told to open', () => {
  const opened = { ...isRaglan, opening: { of: 'raglan', rows: 3 } } as const;

  it('has as many rows left open at the top of its back as at that of its sleeve; the other lines go on to their tops', () => {
    expect(open(raglan, opened)).toEqual(['Back left rows 10-12', 'Sleeve right rows 10-12']);
    expect(seams('raglan', raglan, opened)).toEqual([
      'Sleeve left rows 5-12 without = Body right rows 5-8 without, Right right',
      'Sleeve 2 right rows 5-12 without = Body left rows 5-8 without, Left left',
      'Sleeve 2 left rows 5-12 without = Back right rows 5-12 without',
      'Sleeve right rows 5-9 without = Back left rows 5-9 without',
    ]);
  });

  it('is closed to its top where nothing is told of it', () => {
    expect(open(raglan, isRaglan)).toEqual([]);
    expect(seams('raglan', raglan, isRaglan).at(-1)).toBe(
      'Sleeve right rows 5-12 without = Back left rows 5-12 without',
    );
  });

  it('without a back, or without a sleeve, has nothing to open', () => {
    const [back, front, sleeve] = raglan as [Recipe, Recipe, Recipe];
    for (const some of [
      [front, sleeve],
      [back, front],
    ])
      expect(open(some, opened)).toEqual([]);
  });

  it('of a sleeve from the top down: its first rows', () => {
    const [back, front] = raglan as [Recipe, Recipe];
    const cast = (edge: 'right' | 'left', row: number) =>
      ({ kind: 'cast on', edge, groups: [{ row, stitches: 2 }] }) as const;
    const down = piece(
      'Sleeve',
      'sleeve',
      [
        part('Sleeve', 4, [
          section('a', 8, slant('both', 1, 2, 4, 6), cast('right', 7), cast('left', 8)),
          section('b', 4),
        ]),
      ],
      { makes: 2 },
    );
    const all = open([back, front, down], { ...opened, topDown: true });
    expect(all[0]).toBe('Back left rows 10-12');
    expect(all[1]).toMatch(/^Sleeve right rows 1-3/);
  });
});

describe('a back that is told to open', () => {
  it('opens behind and nowhere else', () => {
    const [, front, sleeve] = drop as [Recipe, Recipe, Recipe];
    const half = (name: string, edge: 'right' | 'left') =>
      part(name, { part: 'Low', stitches: 10, edge }, [
        section('b', 4),
        section('c', 4, slant(edge === 'right' ? 'left' : 'right', -1, 1, 3)),
      ]);
    const parted = piece('Back', 'back', [
      part('Low', 20, [section('a', 4)], 'split'),
      half('Right', 'right'),
      half('Left', 'left'),
    ]);
    const opening = { of: 'back', rows: 4 } as const;
    const slit = 'Right left before shaping turned, Left right before shaping';
    expect(open([parted, front, sleeve], { opening })).toEqual([slit]);
    expect(open([parted, front, sleeve], {})).toEqual([]);
    // a raglan's back, too: its lines are sewn to their tops
    expect(open(raglan, { ...isRaglan, opening }).filter((line) => line.includes('Sleeve'))).toEqual([]);
    expect(seams('raglan', raglan, { ...isRaglan, opening }).at(-1)).toBe(
      'Sleeve right rows 5-12 without = Back left rows 5-12 without',
    );
  });
});

describe('a sleeve’s edge that is told to be eased into its armhole', () => {
  const armholes = (more: Partial<Told>) =>
    joints(drop, more).flatMap((joint) =>
      joint.kind === 'seam' && joint.of === 'armhole' ? [joint.ease] : [],
    );

  it('is eased by what it is longer, in hundredths to a tenth; else by what its own seam takes', () => {
    // ten stitches of 4 mm beside five rows of 3 mm in back and front each: a third longer, whatever was measured
    expect(armholes({ top: { sleeveMm: 400, armholeMm: 390 } })).toEqual([33.3, 33.3]);
    // 40 mm of which two stitches' halves go into the seam: 8 of 32
    expect(armholes({})).toEqual([25, 25]);
  });
});

describe('what lies on top of a placket', () => {
  const [back, front, sleeve] = drop as [Recipe, Recipe, Recipe];
  const banded = (name: string, along: string) =>
    piece(name, 'front band', [part(name, { pickUp: [{ along, stitches: 4 }] }, [section('rib', 3)])]);
  const bands = [banded('Left Band', 'left front edge'), banded('Right Band', 'right front edge')];
  const lap = (onTop: string | undefined, pieces = [back, front, sleeve, ...bands]) =>
    seams('lap', pieces, onTop === undefined ? {} : { onTop });

  it('is the band that is told, the right one where none is and neither has holes', () => {
    expect(lap('left band')).toEqual(['Left Band left = Middle top']);
    expect(lap('right band')).toEqual(['Right Band right = Middle top']);
    expect(lap(undefined)).toEqual(['Right Band right = Middle top']);
    expect(lap('neckband')).toEqual(['Right Band right = Middle top']);
  });

  it('is none where nothing opens so, whatever is told', () => {
    expect(lap('left band', [back, front, sleeve, bands[0] as Recipe])).toEqual([]);
  });
});
