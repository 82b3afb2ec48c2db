import { describe, expect, it } from 'vitest';
import { type Bit, endOf, lengthAlong, sideBits } from '../../../src/knit/making-up/boundary.ts';
import type { PlannedPart } from '../../../src/knit/piece/planned.ts';
import type { Section, Shaping } from '../../../src/knit/piece/recipe.ts';
import { groups, off, part, piece, section, slant, standing } from './by-hand.ts';

function planned(castOn: number, ...sections: readonly Section[]): PlannedPart {
  const [one] = standing(piece('Back', 'back', [part('Back', castOn, sections)])).pieces;
  const found = one?.makes[0]?.parts[0];
  if (!found) throw new Error('no part');
  return found;
}

/** Rows by their number with what they add, level groups in brackets with the row that they are worked in. */
const spelled = (bits: readonly Bit[]): string =>
  bits
    .map(({ row, level, by }) => (level ? `[${row}:${by}]` : `${row}${by === 0 ? '' : `(${by})`}`))
    .join(' ');

describe('a side of a part, row by row', () => {
  const body = section('body', 2);
  it.each<[string, readonly Section[], string, string]>([
    ['plain', [body, section('more', 2)], '1 2 3 4', '1 2 3 4'],
    [
      'decreases lie in their rows',
      [section('a', 4, slant('both', -1, 2, 3))],
      '1 2(-1) 3(-1) 4',
      '1 2(-1) 3(-1) 4',
    ],
    ['increases at one edge', [section('a', 3, slant('left', 1, 2))], '1 2 3', '1 2(1) 3'],
    [
      'a group at the left edge, a row later, lies as high as that at the right',
      [body, section('a', 4, ...groups(1, 3, 2))],
      '1 2 [3:-3] 3 4 [5:-2] 5 6',
      '1 2 [4:-3] 3 4 [6:-2] 5 6',
    ],
    [
      'stitches cast on lie level too',
      [section('a', 4, { kind: 'cast on', edge: 'right', groups: [{ row: 3, stitches: 5 }] })],
      '1 2 [3:5] 3 4',
      '1 2 3 4',
    ],
    [
      'a decrease and a group at one edge are told apart',
      [section('a', 6, off('right', 3, 4), slant('right', -1, 5))],
      '1 2 [3:-4] 3 4 5(-1) 6',
      '1 2 3 4 5 6',
    ],
  ])('%s', (_, sections, right, left) => {
    const made = planned(30, ...sections);
    expect([spelled(sideBits(made, 'right')), spelled(sideBits(made, 'left'))]).toEqual([right, left]);
  });

  it('rows of short rows that do not come to an edge are left out there, as long as their stitches stay unworked', () => {
    const turns: Shaping = {
      kind: 'turn',
      edge: 'left',
      groups: [
        { row: 3, stitches: 5 },
        { row: 5, stitches: 5 },
      ],
    };
    const made = planned(30, section('a', 8, turns));
    expect(spelled(sideBits(made, 'right'))).toBe('1 2 3 4 5 6 7 8');
    expect(spelled(sideBits(made, 'left'))).toBe('1 2');
    // the row after the last turn goes back, the next one comes to the edge
    const closed = planned(30, section('a', 6, turns), section('b', 2));
    expect(spelled(sideBits(closed, 'left'))).toBe('1 2 7 8');
  });

  it('each has its section, and the size of a stitch of its fabric in mm', () => {
    const bits = sideBits(planned(30, section('rib', 1), section('body', 1)), 'right');
    expect(
      bits.map(({ section: name, width, height }) => [name, width, Math.round(height * 1e6) / 1e6]),
    ).toEqual([
      ['rib', 2, 5],
      ['body', 4, 3],
    ]);
  });

  it('its ends have the stitches and the width of a stitch of their own fabric', () => {
    const made = planned(30, section('rib', 2), section('body', 4, slant('both', -1, 3)));
    expect(endOf(made, 'start')).toEqual({ stitches: 30, width: 2 });
    expect(endOf(made, 'top')).toEqual({ stitches: 28, width: 4 });
    expect(endOf(planned(30, section('body', 2), section('rib', 2)), 'top')).toEqual({
      stitches: 30,
      width: 2,
    });
  });
});

describe('the length along an edge of stitches 4 mm wide and rows 3 mm high', () => {
  const one = { row: 1, section: 'a', width: 4, height: 3 };
  const plain = (rows: number): Bit[] =>
    Array.from({ length: rows }, () => ({ ...one, level: false, by: 0 }));
  const dec = (by = -1): Bit[] => [{ ...one, level: false, by }];
  const level = (by: number): Bit[] => [{ ...one, level: true, by }];
  const steps = (times: number, every: number): Bit[] =>
    Array.from({ length: times }, () => [...dec(), ...plain(every - 1)]).flat();
  const { hypot } = Math;

  it.each<[string, readonly Bit[], number]>([
    ['nothing', [], 0],
    ['ten rows', plain(10), 30],
    ['a stitch in every second row is a slant of 4 by 6', steps(4, 2), 4 * hypot(4, 6)],
    ['so is an increase', [...dec(1), ...plain(1), ...dec(1), ...plain(1)], 2 * hypot(4, 6)],
    ['rows below the first decrease are upright', [...plain(5), ...steps(2, 2)], 15 + 2 * hypot(4, 6)],
    ['what follows the last is upright', [...steps(3, 2), ...plain(10)], 3 * hypot(4, 6) + 30],
    ['the last is as steep as the one before it', [...steps(2, 4), ...plain(10)], 2 * hypot(4, 12) + 30],
    ['one alone is a slant over two rows', steps(1, 9), hypot(4, 6) + 21],
    [
      'in every row: the last is a slant over two',
      [...steps(3, 1), ...plain(4)],
      2 * hypot(4, 3) + hypot(4, 6) + 9,
    ],
    [
      'a slant that stops is upright after twice as many rows',
      [...steps(2, 2), ...plain(10), ...steps(1, 2)],
      2 * hypot(4, 6) + hypot(4, 12) + 24,
    ],
    [
      'one that grows less steep goes on',
      [...steps(2, 2), ...steps(2, 4)],
      2 * hypot(4, 6) + 2 * hypot(4, 12),
    ],
    ['a double decrease is 8 wide', [...dec(-2), ...plain(1)], hypot(8, 6)],
    ['bound off where it begins: a corner', [...level(-3), ...plain(8)], 12 + 24],
    ['two stitches are a corner as well', [...level(-2), ...plain(4)], 8 + 12],
    ['a single stitch there is none', [...level(-1), ...plain(8)], hypot(4, 6) + 18],
    ['stitches cast on there are', [...level(3), ...plain(8)], 12 + 24],
    ['a double decrease there is not bound off', [...dec(-2), ...plain(7)], hypot(8, 6) + 18],
    [
      'a corner after six rows without a change',
      [...dec(), ...plain(5), ...level(-3), ...plain(4)],
      hypot(4, 18) + 12 + 12,
    ],
    ['none after five', [...dec(), ...plain(4), ...level(-3), ...plain(4)], hypot(4, 15) + hypot(12, 12)],
    ['after plain rows at the beginning', [...plain(2), ...level(-3), ...plain(8)], 6 + 12 + 24],
    [
      'a slope of groups',
      [...plain(6), ...level(-1), ...plain(2), ...level(-4), ...plain(2)],
      18 + hypot(4, 6) + hypot(16, 6),
    ],
    ['a group with no row above it lies level', [...steps(1, 2), ...level(-4)], hypot(4, 6) + 16],
  ])('%s', (_, bits, mm) => {
    expect(lengthAlong(bits)).toBeCloseTo(mm, 9);
  });
});

describe('an edge beside what lies level, reckoned by hand: stitches of 4 mm, rows of 3 mm', () => {
  const row = (n: number, by = 0, level = false): Bit => ({
    row: n,
    section: 'a',
    level,
    by,
    width: 4,
    height: 3,
  });
  const plain = (from: number, count: number) => Array.from({ length: count }, (_, i) => row(from + i));

  it('has a corner where a group follows on six rows and more without shaping', () => {
    // up 18 mm, across five stitches and up 12 mm
    const bits = [...plain(1, 6), row(7, -5, true), ...plain(7, 4)];
    expect(lengthAlong(bits, true)).toBeCloseTo(18 + 20 + 12, 9);
  });

  it('goes on in a slant where it follows on fewer: over two rows, and the others upright', () => {
    const bits = [...plain(1, 5), row(6, -5, true), ...plain(6, 4)];
    expect(lengthAlong(bits, true)).toBeCloseTo(15 + Math.hypot(20, 6) + 6, 9);
    // of one that begins where nothing lies level it is a corner at once
    expect(lengthAlong(bits)).toBeCloseTo(15 + 20 + 12, 9);
  });
});

describe('a top of one row in another fabric', () => {
  it('is as wide as that row’s stitches are', () => {
    const [one] = standing(
      piece('Back', 'back', [part('Back', 22, [section('body', 4), section('rib', 1)], 'hold')]),
    ).pieces;
    const made = one?.makes[0]?.parts[0] as PlannedPart;
    expect(endOf(made, 'top')).toEqual({ stitches: 22, width: 2 });
    expect(endOf(made, 'start')).toEqual({ stitches: 22, width: 4 });
  });
});
