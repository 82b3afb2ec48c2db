import { describe, expect, it } from 'vitest';
import type { LaidRow, Lie } from '../../../../src/knit/piece/count/lie.ts';
import {
  bestLook,
  type LookCode,
  lookCodes,
  looksAt,
  sameSeen,
  seenAt,
} from '../../../../src/knit/piece/count/look.ts';
import type { Slip, SlipCause } from '../../../../src/knit/piece/count/slip.ts';
import { slipsIn } from '../../../../src/knit/piece/count/slips.ts';
import { mitten } from './mitten.ts';

describe('a look at the fabric', () => {
  const row = (over: Partial<LaidRow> = {}): LaidRow => ({ right: 0, left: 0, across: 0, group: 0, ...over });
  const lie: Lie = {
    rows: [row({ right: -1, left: -1 }), row(), row({ left: 1 }), row(), row({ across: -3 }), row()],
    trace: 'hole',
    castOn: -2,
  };

  it.each<[LookCode, object]>([
    ['rows above', { rows: 6 }],
    ['trace', { trace: 'hole' }],
    ['cast-on edge', { castOn: -2 }],
    ['spread row', { spread: 3 }],
    ['edge tallies', { right: 1, left: 2 }],
    ['last shaping', { rightAbove: 5, leftAbove: 3 }],
    ['edges', { right: 1, left: 2, rightAbove: 5, leftAbove: 3 }],
  ])('%s', (code, seen) => {
    expect(seenAt({ code, landmark: 10, row: 15 }, lie)).toEqual(seen);
  });

  it('is one of seven, and each sees something', () => {
    expect(lookCodes).toEqual([
      'rows above',
      'trace',
      'cast-on edge',
      'last shaping',
      'spread row',
      'edge tallies',
      'edges',
    ]);
    for (const code of lookCodes)
      expect(Object.keys(seenAt({ code, landmark: 10, row: 15 }, lie)).length, code).toBeGreaterThan(0);
  });

  it('where there is nothing to see', () => {
    const bare: Lie = { rows: [row(), row()], trace: 'none' };
    expect(seenAt({ code: 'edges', landmark: 0 }, bare)).toEqual({
      right: 0,
      left: 0,
      rightAbove: -1,
      leftAbove: -1,
    });
    expect(
      seenAt({ code: 'last shaping', landmark: 0 }, { rows: [row({ right: 1 })], trace: 'none' }),
    ).toEqual({
      rightAbove: 0,
      leftAbove: -1,
    });
    expect(seenAt({ code: 'spread row', landmark: 0, row: 9 }, bare)).toEqual({ spread: 0 });
  });

  it('two are alike whichever is said first, and not where one figure differs', () => {
    expect(sameSeen({ right: 1, left: 2 }, { left: 2, right: 1 })).toBe(true);
    expect(sameSeen({ right: 1, left: 2 }, { right: 2, left: 1 })).toBe(false);
    expect(sameSeen({ right: 1 }, { right: 1, left: 2 })).toBe(false);
  });

  it('at edges is asked for where they are shaped up to six rows on, and at a spread row where one may be wrong', () => {
    const slip = (cause: SlipCause): Slip => ({
      ...(slipsIn({ part: mitten, from: 0, latest: 5, to: 5, landmark: 0 })[0] as Slip),
      cause,
      rows: [5],
    });
    const codes = (to: number, slips: readonly Slip[] = []) =>
      looksAt(mitten, 0, to, slips).map(({ code, row }) => (row === undefined ? code : `${code} ${row}`));
    expect(codes(2)).toEqual(['rows above', 'trace']);
    expect(codes(3)).toEqual(['rows above', 'trace', 'last shaping', 'edge tallies', 'edges']);
    expect(codes(2, [slip('stitch dropped'), slip('spread short')])).toEqual([
      'rows above',
      'trace',
      'spread row 5',
    ]);
    expect(codes(2, [slip('spread over')])).toEqual(['rows above', 'trace', 'spread row 5']);
    expect(codes(2, [slip('cast-on miscounted')])).toEqual(['rows above', 'trace', 'cast-on edge']);
    expect(codes(2, [slip('group miscounted')])).toEqual(['rows above', 'trace']);
    expect(new Set(looksAt(mitten, 3, 5, []).map(({ landmark }) => landmark))).toEqual(new Set([3]));
    // one edge alone is reason enough
    expect(looksAt(mitten, 13, 14, []).map(({ code }) => code)).toContain('edges');
  });

  describe('is worth it', () => {
    const plain: Lie = { rows: [row(), row()], trace: 'none' };
    const slip = (cause: SlipCause, weight: number, over: Partial<Lie>): Slip => ({
      cause,
      rows: [],
      times: 1,
      by: -1,
      weight,
      lie: () => ({ ...plain, ...over }),
    });
    const look = (code: LookCode) => ({ code, landmark: 0 });

    it('where its answer tells one cause from the other; what the plan would show is said', () => {
      const slips = [
        slip('place ahead', 1, { rows: [row()] }),
        slip('stitch dropped', 3, { trace: 'ladder' }),
      ];
      expect(bestLook(slips, [look('rows above'), look('trace')], plain)).toEqual({
        code: 'rows above',
        landmark: 0,
        options: [
          { answer: { rows: 2 }, likelihood: 0.75, planned: true },
          { answer: { rows: 1 }, likelihood: 0.25, planned: false },
        ],
      });
    });

    it('and the cheaper one of two that tell as much', () => {
      const slips = [slip('one edge only', 1, { rows: [row({ right: 1 })] }), slip('shaping missed', 1, {})];
      const edges = [look('edges'), look('edge tallies')];
      expect(bestLook(slips, edges, plain)?.code).toBe('edge tallies');
      expect(bestLook(slips, [...edges, look('last shaping')], plain)?.code).toBe('last shaping');
    });

    it('but not where it tells nothing, or less than it costs', () => {
      const alike = [slip('one edge only', 1, {}), slip('shaping missed', 1, {})];
      expect(bestLook(alike, [look('rows above'), look('edges')], plain)).toBeUndefined();
      const rare = (weight: number) => [
        slip('place ahead', weight, { rows: [] }),
        slip('shaping missed', 1, {}),
      ];
      expect(bestLook(rare(0.009), [look('rows above')], plain)).toBeUndefined();
      expect(bestLook(rare(0.012), [look('rows above')], plain)?.code).toBe('rows above');
      expect(bestLook([], [look('rows above')], plain)).toBeUndefined();
    });

    it.each<[LookCode, number, Partial<Lie>]>([
      ['rows above', 1, { rows: [row()] }],
      ['trace', 1, { trace: 'ladder' }],
      ['cast-on edge', 2, { castOn: 1 }],
      ['last shaping', 1, { rows: [row({ right: 1 }), row()] }],
      ['spread row', 1, { rows: [row({ across: 1 }), row()] }],
      ['edge tallies', 2, { rows: [row({ right: 1 }), row()] }],
      ['edges', 4, { rows: [row({ right: 1 }), row()] }],
    ])('%s: where it makes a little more than %i in 100 surer', (code, percent, over) => {
      // of 100 the one cause weighs what it costs, and half of one in a hundred more or less
      const askedAt = (weight: number) =>
        bestLook(
          [slip('one edge only', weight, over), slip('shaping missed', 100 - weight, {})],
          [{ ...look(code), row: 1 }],
          plain,
        )?.code;
      expect([askedAt(percent - 0.5), askedAt(percent + 0.5)]).toEqual([undefined, code]);
    });

    it('by what is learnt of causes, not of rows: two slips of one cause are one', () => {
      const slips = [
        slip('stitch dropped', 2, {}),
        slip('stitch dropped', 2, { rows: [row()] }),
        slip('stray yarn-over', 3, { trace: 'hole' }),
      ];
      // rows tell 2 + 3 of 7 from 2, no more than the cause that weighs 4 already; the trace tells all
      expect(bestLook(slips, [look('rows above'), look('trace')], plain)?.code).toBe('trace');
    });
  });
});
