import { describe, expect, it } from 'vitest';
import { widened } from '../../../src/knit/making-up/edit-width.ts';
import type { PartRecipe, Section, Shaping } from '../../../src/knit/piece/recipe.ts';
import { part, section, slant } from './by-hand.ts';

/* A sleeve without a slant that is to be wider at its top, reckoned by hand: on right-side rows, the first in row 3. */

const straight = (from: number | PartRecipe['from'], ...rows: readonly number[]) =>
  part(
    'Arm',
    from,
    rows.map((n) => section('a', n)),
  );
const edges = (by: 1 | -1, ...rows: readonly number[]): Shaping => ({
  kind: 'edge',
  edge: 'both',
  by,
  rows,
  inset: 1,
  lean: 'mirrored',
});
/** All of the part as it is, but for what is cast on and one section that is shaped. */
const shaped = (was: PartRecipe, castOn: number, at: number, ...more: readonly Shaping[]): PartRecipe => ({
  ...was,
  from: { castOn },
  sections: was.sections.map(
    (one, i): Section => (i === at ? { ...one, shaping: [...one.shaping, ...more] } : one),
  ),
});

describe('a straight part', () => {
  const one = straight(20, 12);

  it.each<[string, number, boolean, number, Shaping]>([
    ['wider: it widens on its way up', 4, false, 20, edges(1, 3, 11)],
    ['narrower: it narrows on its way up', -4, false, 20, edges(-1, 3, 11)],
    ['wider at its beginning: begun with more, and narrowing', 4, true, 24, edges(-1, 3, 11)],
    ['narrower at its beginning: begun with fewer, and widening', -4, true, 16, edges(1, 3, 11)],
    ['by two: a single row', 2, false, 20, edges(1, 3)],
  ])('%s', (_, by, isTopDown, castOn, slanted) => {
    expect(widened(one, by, isTopDown)).toEqual(shaped(one, castOn, 0, slanted));
  });

  it('is widened from its lower end on unless said otherwise', () => {
    expect(widened(one, 4)).toEqual(widened(one, 4, false));
  });

  it('gets its slant in the longest of its sections, the first of those that are as long', () => {
    expect(widened(straight(20, 4, 12, 6), 4)).toEqual(
      shaped(straight(20, 4, 12, 6), 20, 1, edges(1, 3, 11)),
    );
    expect(widened(straight(20, 12, 12, 4), 4)).toEqual(
      shaped(straight(20, 12, 12, 4), 20, 0, edges(1, 3, 11)),
    );
    expect(widened(straight(20, 4, 6, 13), 4)).toEqual(
      shaped(straight(20, 4, 6, 13), 20, 2, edges(1, 3, 11)),
    );
  });

  it('may be shaped across a row, which stays', () => {
    const across: Shaping = { kind: 'across', row: 1, by: 2 };
    const cuffed = part('Arm', 20, [section('rib', 4), section('a', 12, across)]);
    expect(widened(cuffed, 4)).toEqual(shaped(cuffed, 20, 1, edges(1, 3, 11)));
    const both = part('Arm', 20, [section('rib', 4, slant('left', 1, 3)), section('a', 12, across)]);
    expect(widened(both, 4)).toBeUndefined();
    expect(widened(part('Arm', 20, [section('a', 12, across, slant('left', 1, 3))]), 4)).toBeUndefined();
  });

  it('cannot be begun wider where it is picked up, but may widen from there', () => {
    const from = { pickUp: [{ along: 'armhole', stitches: 20 }] };
    const picked = straight(from, 12);
    expect(widened(picked, 4, true)).toBeUndefined();
    expect(widened(picked, -4, true)).toBeUndefined();
    expect(widened(picked, 4)).toEqual({ ...shaped(picked, 0, 0, edges(1, 3, 11)), from });
  });

  it('without a row, or by a stitch that has no half, is not widened', () => {
    expect(widened(straight(20), 4)).toBeUndefined();
    expect(widened(straight(20), 4, true)).toBeUndefined();
    expect([widened(one, 1), widened(one, -3), widened(one, 5, true)]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
    // six shapings to either side have no room on the right-side rows of twelve
    expect(widened(one, 40)).toBeUndefined();
  });
});

describe('a part that is shaped at both edges', () => {
  it('is shaped more often where it is most often, the first of those that are so as often', () => {
    const two = part('Arm', 20, [
      section('a', 20, slant('both', 1, 3, 9)),
      section('b', 20, slant('both', 1, 3, 9)),
    ]);
    const made = widened(two, 2);
    expect(made?.sections.map(({ shaping: [own] }) => own?.kind === 'edge' && own.rows.length)).toEqual([
      3, 2,
    ]);
    expect(made?.from).toEqual({ castOn: 20 });
  });

  it('keeps what else is said of its slant', () => {
    const own: Shaping = { kind: 'edge', edge: 'both', by: 1, rows: [3, 7], inset: 2, lean: 'plain' };
    const made = widened(part('Arm', 20, [section('a', 20, own)]), 2);
    expect(made?.sections[0]).toMatchObject({ name: 'a', rows: 20, fabric: 'stocking', needle: 4 });
    const [only] = made?.sections[0]?.shaping ?? [];
    expect(only).toMatchObject({ kind: 'edge', edge: 'both', by: 1, inset: 2, lean: 'plain' });
    expect(only?.kind === 'edge' && only.rows).toHaveLength(3);
  });
});
