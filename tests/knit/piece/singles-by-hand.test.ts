import { describe, expect, it } from 'vitest';
import type { PlannedPart } from '../../../src/knit/piece/planned.ts';
import type { Shaping } from '../../../src/knit/piece/recipe.ts';
import { asReallyKnitted } from '../../../src/knit/piece/rework/make-recipe.ts';
import { slipFirst } from '../../../src/knit/piece/slip-first.ts';
import { addRun, type Run } from '../../../src/knit/row/shorten.ts';
import { off, part, section, slant } from '../making-up/by-hand.ts';

/* Single steps of a plan over rows that are counted in the head. */

describe('a slipped selvedge', () => {
  const runsOf = (text: string): Run[] => {
    const runs: Run[] = [];
    for (const one of text.split(' ').filter(Boolean)) {
      const [times, work] = one.split('×');
      addRun(runs, work as Run['work'], Number(times));
    }
    return runs;
  };
  it.each([
    ['3×k 2×p', '1×sl 2×k 2×p'],
    ['1×k 2×p', '1×sl 2×p'],
    ['2×p', '1×sl 1×p'],
    ['1×p', '1×sl'],
    ['1×ssk 5×k', '1×ssk 5×k'],
    ['1×m1 5×k', '1×m1 5×k'],
    ['3×bo 5×k', '3×bo 5×k'],
    ['2×sl 5×k', '2×sl 5×k'],
    ['', ''],
  ])('of %s is %s', (row, slipped) => {
    const runs = runsOf(row);
    slipFirst(runs);
    expect(runs.map(({ work, times }) => `${times}×${work}`).join(' ')).toBe(slipped);
  });
});

describe('what was counted anew becomes shaping of its own, for a second make', () => {
  const across = (row: number, by: number): Shaping => ({ kind: 'across', row, by });
  /** Six rows of 20 stitches that end with so many as planned, and were counted as `now` before the next section. */
  const shapingFor = (by: number, ...shaping: readonly Shaping[]) => {
    const sections = [section('a', 6, ...shaping), { ...section('b', 4), onNeedle: 20 + by }];
    const recipe = part('Back', 20, sections);
    const rows = Array.from({ length: 10 }, () => ({ after: 20 }));
    const plan = {
      recipe,
      start: 20,
      sections: [{ first: 1 }, { first: 7 }],
      rows,
    } as unknown as PlannedPart;
    const made = asReallyKnitted(plan);
    expect(made?.sections[1] && 'onNeedle' in made.sections[1]).toBe(made ? false : undefined);
    return made?.sections[0]?.shaping;
  };
  const taken = slant('both', -1, 1, 3, 5);

  it.each<[string, number, readonly Shaping[], readonly Shaping[] | undefined]>([
    ['as many as planned: nothing', 0, [taken], [taken]],
    [
      'two more than planned: the last decrease of both edges was left out',
      2,
      [taken],
      [slant('both', -1, 1, 3)],
    ],
    ['four more: the last two', 4, [taken], [slant('both', -1, 1)]],
    ['six more: all three', 6, [taken], []],
    ['eight more: they are put in the last free row', 8, [taken], [taken, across(6, 8)]],
    ['one more, which two edges do not give', 1, [taken], [taken, across(6, 1)]],
    ['two fewer', -2, [taken], [taken, across(6, -2)]],
    ['one more at one edge', 1, [slant('left', -1, 2, 4)], [slant('left', -1, 2)]],
    ['two fewer of increases', -2, [slant('right', 1, 2, 4)], []],
    ['of two edges the one whose rows give it', 1, [taken, slant('left', -1, 6)], [taken]],
    [
      'the last rows taken: the one before',
      1,
      [off('right', 5, 3), across(6, 2)],
      [off('right', 5, 3), across(6, 2), across(4, 1)],
    ],
    [
      'only the first row is free',
      1,
      [across(6, 1), taken, across(2, 1), across(4, 1)].slice(0, 1).concat(slant('both', -1, 2, 3, 4, 5)),
      [across(6, 1), slant('both', -1, 2, 3, 4, 5), across(1, 1)],
    ],
    ['no row is free', 1, [slant('both', -1, 1, 2, 3, 4, 5, 6)], undefined],
  ])('%s', (_, by, shaping, now) => {
    expect(shapingFor(by, ...shaping)).toEqual(now);
  });
});
