import { describe, expect, it } from 'vitest';
import { type AboutPanel, FoundPanel } from '../../../src/knit/making-up/found-panel.ts';
import type { PartRecipe, Shaping } from '../../../src/knit/piece/recipe.ts';
import { groups, lineSaid, off, part, piece, section, slant, standing } from './by-hand.ts';

/* The edges of a panel as its rows tell them, counted by hand: 4 mm a stitch, 3 mm a row. Both edges bind off in one pair of rows. */

function panel(parts: readonly PartRecipe[], more: Partial<AboutPanel> = {}): FoundPanel {
  const made = standing(piece('Back', 'back', parts)).pieces[0]?.makes[0];
  if (!made) throw new Error('no make');
  return new FoundPanel({
    piece: 'Back',
    make: 1,
    parts: made.parts,
    isHalf: false,
    isRaglan: false,
    isCapped: false,
    ...more,
  });
}
/** Side, armhole, shoulder at the right edge and at the left one. */
const edges = (one: FoundPanel) =>
  (['right', 'left'] as const).map((edge) =>
    [one.side(edge), one.armhole(edge, true), one.shoulder(edge)].map(lineSaid).join(' | '),
  );
const straight = [part('Back', 20, [section('a', 12)])];

describe('where an armhole begins', () => {
  it('is where its rows are called so, before all that is told', () => {
    const named = [part('Back', 20, [section('a', 4), section('armhole', 8)])];
    expect(edges(panel(named, { sideRows: 6, depthMm: 9 }))).toEqual([
      'Back right rows 1-4 | Back right rows 5-12 | ',
      'Back left rows 1-4 | Back left rows 5-12 | ',
    ]);
    const raglan = [part('Back', 20, [section('a', 4), section('raglan', 8, slant('both', -1, 1, 3, 5))])];
    expect(edges(panel(raglan, { isRaglan: true }))).toEqual([
      'Back right rows 1-4 | Back right rows 5-12 | ',
      'Back left rows 1-4 | Back left rows 5-12 | ',
    ]);
  });

  it('is behind as many rows as a text tells, else so deep below the shoulder as its sleeve is wide', () => {
    expect(edges(panel(straight, { sideRows: 5, depthMm: 9 }))[0]).toBe(
      'Back right rows 1-5 | Back right rows 6-12 | ',
    );
    expect(edges(panel(straight, { sideRows: 0 }))[0]).toBe(' | Back right | ');
    // nine mm are three rows
    expect(edges(panel(straight, { depthMm: 9 }))[0]).toBe('Back right rows 1-9 | Back right rows 10-12 | ');
    expect(edges(panel(straight))[0]).toBe('Back right |  | ');
  });

  it('is where stitches are bound off at once, be it in the first rows of all', () => {
    const off3 = (at: number) => [part('Back', 30, [section('a', 12, ...groups(at, 3))])];
    expect(edges(panel(off3(5), { depthMm: 9 }))).toEqual([
      'Back right rows 1-4 | Back right rows 5-12 | ',
      'Back left rows 1-4 | Back left rows 5-12 | ',
    ]);
    // a yoke that begins with its underarm has no side
    expect(edges(panel(off3(1), { depthMm: 9 }))).toEqual([' | Back right | ', ' | Back left | ']);
    expect(panel(off3(1)).underarm('right')?.stitches).toBe(3);
    expect(panel(off3(1)).indentMm('right')).toBe(12);
    expect(panel(straight).indentMm('right')).toBe(0);
    expect(panel(straight, { depthMm: 9 }).underarm('right')).toBeUndefined();
  });

  it('leaves out what is bound off first where that is sewn to the sleeve’s own', () => {
    const one = panel([part('Back', 30, [section('a', 12, ...groups(5, 3))])]);
    expect(lineSaid(one.armhole('right', false))).toBe('Back right rows 5-12 without');
    expect(lineSaid(one.armhole('right', true))).toBe('Back right rows 5-12');
    expect(one.underarm('right')?.line.map((stretch) => lineSaid([stretch]))).toEqual([
      'Back right rows 5-12 only',
    ]);
    expect(lineSaid(panel(straight, { depthMm: 9 }).armhole('right', false))).toBe('Back right rows 10-12');
  });

  it('is where it narrows for a cap, or high up in a vest; not where a body is taken in', () => {
    const narrowing = (...rows: readonly number[]) => [
      part('Back', 30, [section('a', 12, slant('both', -1, ...rows))]),
    ];
    const armhole = (rows: readonly number[], more: Partial<AboutPanel>) =>
      lineSaid(panel(narrowing(...rows), more).armhole('right', true));
    expect(armhole([3, 5, 7], { isCapped: true })).toBe('Back right rows 3-12');
    expect(armhole([7, 9, 11], { hasSleeve: false })).toBe('Back right rows 7-12');
    expect(armhole([3, 5, 7], { hasSleeve: false })).toBe('');
    expect(armhole([7, 9, 11], { hasSleeve: true })).toBe('');
    expect(armhole([7, 9, 11], {})).toBe('');
  });
});

describe('a shoulder', () => {
  it('begins where its rows are called so, or where its groups do', () => {
    const named = [part('Back', 20, [section('a', 8), section('shoulder', 4)])];
    expect(lineSaid(panel(named).shoulder('right'))).toBe('Back right rows 9-12');
    const grouped = [part('Back', 20, [section('a', 8), section('b', 4, ...groups(1, 3, 3))])];
    expect(lineSaid(panel(grouped).shoulder('right'))).toBe('Back right rows 9-12');
    expect(lineSaid(panel(grouped).shoulder('left'))).toBe('Back left rows 9-12');
  });

  it('is none of a raglan, whose side goes up to its top', () => {
    const one = panel([part('Back', 20, [section('a', 4), section('b', 8, ...groups(1, 3))])], {
      isRaglan: true,
    });
    expect([lineSaid(one.shoulder('right')), lineSaid(one.shoulder('left'))]).toEqual(['', '']);
    expect(one.shoulder('right')).toEqual([]);
    expect(lineSaid(one.armhole('right', true))).toBe('Back right rows 5-12');
  });

  it('has at its top what its groups have left of it, where the other panel’s is known', () => {
    const grouped = [part('Back', 20, [section('a', 8), section('b', 2, ...groups(1, 3))])];
    const one = panel(grouped, { shoulder: 5 });
    // 20 less 3 at either edge are 14, two of them shoulder at either end
    expect(lineSaid(one.shoulder('right'))).toBe('Back right rows 9-10, Back top stitches 0-2');
    expect(lineSaid(one.shoulder('left'))).toBe('Back left rows 9-10, Back top stitches 12-14 turned');
    expect(lineSaid(one.wholeNeck())).toBe('Back top stitches 2-12');
    // as many as the groups took: all of the top is neck
    expect(lineSaid(panel(grouped, { shoulder: 3 }).shoulder('right'))).toBe('Back right rows 9-10');
    expect(lineSaid(panel(grouped, { shoulder: 3 }).wholeNeck())).toBe('Back top');
    // half of the top, or more, leaves no neck
    expect(lineSaid(panel(grouped, { shoulder: 10 }).wholeNeck())).toBe('Back top');
    expect(lineSaid(panel(grouped, { shoulder: 9 }).wholeNeck())).toBe('Back top stitches 6-8');
  });

  it('has all of it at the top where the panel rests and nothing is bound off', () => {
    const held = (...shaping: readonly Shaping[]) => [
      part('Back', 20, [section('a', 8), section('b', 2, ...shaping)], 'hold'),
    ];
    expect(lineSaid(panel(held(), { shoulder: 6 }).shoulder('right'))).toBe('Back top stitches 0-6');
    // what rests behind shoulders that are bound off is the neck
    expect(lineSaid(panel(held(...groups(1, 3)), { shoulder: 6 }).shoulder('right'))).toBe(
      'Back right rows 9-10',
    );
  });
});

describe('a panel that its neck parts', () => {
  const side = (name: string, edge: 'right' | 'left', ...shaping: readonly Shaping[]) =>
    part(name, { part: 'Body', stitches: 8, edge }, [section('b', 6, ...shaping)]);
  const middle = part('Middle', { part: 'Body', stitches: 4, edge: 'middle' }, [], 'hold');
  const body = part('Body', 20, [section('a', 8)], 'split');
  const parted = [
    body,
    side('Right', 'right', slant('left', -1, 1, 3)),
    middle,
    side('Left', 'left', slant('right', -1, 1, 3)),
  ];

  it('has its neck in the inner edges of both sides and what lies between them', () => {
    const one = panel(parted);
    expect(one.isFlat()).toBe(false);
    expect(lineSaid(one.wholeNeck())).toBe('Right left turned, Middle top, Left right');
    expect(lineSaid(one.middle())).toBe('Middle top');
    expect(lineSaid(one.neckSide('right', true))).toBe('Right left, Right top turned');
    expect(lineSaid(one.neckSide('left', true))).toBe('Left right, Left top');
    expect(lineSaid(one.shoulder('right'))).toBe('Right top');
    expect(lineSaid(one.shoulder('left'))).toBe('Left top turned');
    expect([one.shoulderStitches('right'), one.shoulderStitches('left')]).toEqual([6, 6]);
    expect(panel(straight).shoulderStitches('right')).toBeUndefined();
    expect(panel(straight).isFlat()).toBe(true);
  });

  it('counts what a shoulder binds off in groups with what is left of it', () => {
    const sloped = [
      body,
      side('Right', 'right', off('right', 3, 3)),
      middle,
      side('Left', 'left', off('left', 4, 3)),
    ];
    const one = panel(sloped);
    expect([one.shoulderStitches('right'), one.shoulderStitches('left')]).toEqual([8, 8]);
  });

  it('may begin its left side with the middle, bound off in its first row', () => {
    const left = part('Left', { part: 'Body', stitches: 12, edge: 'left' }, [
      section('b', 6, off('right', 1, 4), slant('right', -1, 3, 5)),
    ]);
    const one = panel([body, side('Right', 'right', slant('left', -1, 1, 3)), left]);
    expect(lineSaid(one.middle())).toBe('Left right only');
    expect(lineSaid(one.neckSide('left', false))).toBe('Left right without');
    expect(lineSaid(one.neckSide('right', false))).toBe('Right left');
    expect(lineSaid(one.wholeNeck())).toBe('Right left turned, Left right only, Left right without');
    // bound off two rows later it is a step of the neck
    const later = part('Left', { part: 'Body', stitches: 12, edge: 'left' }, [
      section('b', 6, off('right', 3, 4)),
    ]);
    const other = panel([body, side('Right', 'right', slant('left', -1, 1, 3)), later]);
    expect([lineSaid(other.middle()), lineSaid(other.neckSide('left', false))]).toEqual(['', 'Left right']);
  });

  it('with a placket between, has its neck above the first decrease and its opening below it', () => {
    const one = panel(parted, { hasPlacket: true });
    expect(lineSaid(one.neckSide('right', false))).toBe('Right left after shaping');
    expect(lineSaid(one.front('right'))).toBe('Right left before shaping');
    expect(lineSaid(one.front('left'))).toBe('Left right before shaping');
    expect(
      Object.fromEntries(Object.entries(one.opened()).map(([key, line]) => [key, lineSaid(line)])),
    ).toEqual({
      left: 'Left right after shaping',
      right: 'Right left after shaping',
      edges: 'Right left before shaping turned, Middle top, Left right before shaping',
    });
  });
});

describe('half a front', () => {
  const half = [
    part('Front', 10, [section('a', 8), section('b', 4, off('right', 1, 3), slant('left', -1, 1, 3))]),
  ];

  it('has its neck and its opening at its inner edge', () => {
    const one = panel(half, { isHalf: true });
    expect(one.isFlat()).toBe(false);
    expect(lineSaid(one.hem())).toBe('Front start');
    expect(lineSaid(one.front('right'))).toBe('Front left before shaping');
    expect(lineSaid(one.neckSide('right', false))).toBe('Front left after shaping');
    expect(lineSaid(one.neckSide('right', true))).toBe('Front left after shaping, Front top turned');
    expect(lineSaid(one.shoulder('right'))).toBe('Front right rows 9-12, Front top');
    expect(one.shoulderStitches('right')).toBe(8);
    expect(one.middle()).toEqual([]);
  });

  it('whose shoulder is told has the rest of its top as its neck', () => {
    const one = panel(half, { isHalf: true, isShoulderTold: true, shoulder: 5 });
    // three in a group, two of the five at the top; three of them are neck
    expect(lineSaid(one.shoulder('right'))).toBe('Front right rows 9-12, Front top stitches 0-2');
    expect(lineSaid(one.neckSide('right', false))).toBe(
      'Front left after shaping, Front top stitches 2-5 turned',
    );
    const mirrored = [
      part('Front', 10, [section('a', 8), section('b', 4, off('left', 2, 3), slant('right', -1, 1, 3))]),
    ];
    const other = panel(mirrored, { isHalf: true, isShoulderTold: true, shoulder: 5 });
    expect(lineSaid(other.shoulder('left'))).toBe('Front left rows 9-12, Front top stitches 3-5 turned');
    expect(lineSaid(other.neckSide('left', false))).toBe('Front right after shaping, Front top stitches 0-3');
    const all = panel(half, { isHalf: true, isShoulderTold: true, shoulder: 8 });
    expect(lineSaid(all.shoulder('right'))).toBe('Front right rows 9-12, Front top');
    expect(lineSaid(all.neckSide('right', false))).toBe('Front left after shaping');
  });
});

describe('a panel looks like a raglan’s', () => {
  it('where it narrows up to its top, with no shoulder and few plain rows', () => {
    const narrowing = (rows: number, ...at: readonly number[]) =>
      panel([part('Back', 30, [section('a', 4), section('b', rows, slant('both', -1, ...at))])]).looksRaglan(
        'right',
      );
    expect(narrowing(8, 3, 5, 7)).toBe(true);
    // four plain rows above the last of them, and five
    expect(narrowing(11, 3, 5, 7)).toBe(true);
    expect(narrowing(12, 3, 5, 7)).toBe(false);
    expect(narrowing(8, 3, 5)).toBe(false);
    expect(narrowing(8, 1, 3, 5)).toBe(true);
    const sloped = part('Back', 40, [
      section('a', 8, slant('both', -1, 3, 5, 7)),
      section('b', 2, ...groups(1, 3)),
    ]);
    expect(panel([sloped]).looksRaglan('right')).toBe(false);
  });
});
