import { describe, expect, it } from 'vitest';
import { adviceFor, signFor } from '../../../../src/knit/piece/count/advice.ts';
import type { LaidRow, Lie } from '../../../../src/knit/piece/count/lie.ts';
import { bestLook, type LookCode, looksAt, sameSeen, seenAt } from '../../../../src/knit/piece/count/look.ts';
import type { Slip, SlipCause, Stretch } from '../../../../src/knit/piece/count/slip.ts';
import { slipsIn } from '../../../../src/knit/piece/count/slips.ts';
import { explainCount } from '../../../../src/knit/piece/explain-count.ts';
import { mitten, partOf, section } from './mitten.ts';

/** What may have gone wrong in a mitten of 16 rows (mitten.ts), reckoned by hand from the rates of slips (rates.ts). */

const stretch = (from: number, to: number, landmark = from): Stretch => ({
  part: mitten,
  from,
  latest: to,
  to,
  landmark,
});

/** How a row lies: what it added at the right edge, across or in a group, and at the left edge; '.' where nothing. */
const told = ({ right, left, across, group }: LaidRow): string =>
  right === 0 && left === 0 && across === 0 && group === 0
    ? '.'
    : [right || '', across || group || '', left || ''].join('/');

const of = (cause: SlipCause, where: Stretch) => slipsIn(where).filter((slip) => slip.cause === cause);

/** 'rows edge: what it adds, one in so many, how it lies' */
const lines = (cause: SlipCause, where: Stretch) =>
  of(cause, where).map((slip) => {
    const lie = slip.lie();
    const at = [slip.rows.join('+'), slip.edge, `×${slip.times}`].filter((one) => one).join(' ');
    const trace = lie.trace === 'none' ? '' : ` ${lie.trace}`;
    const one = Math.round(1 / slip.weight);
    return `${at}: ${slip.by}, 1 in ${one}, ${lie.rows.map(told).join(' ')}${trace}`;
  });

describe('what may have happened in rows 6 to 13, in two of which both edges were decreased', () => {
  const where = stretch(5, 13);

  it('the place is ahead of the knitting, or behind it: one row in 250 of the eight, four times rarer each further', () => {
    // 8/250 is 1 in 31; rows 7 and 8 still have 24 stitches
    expect(lines('place ahead', where)).toEqual([
      '12 ×1: 2, 1 in 31, . . . -1//-1 . . .',
      '11 ×2: 2, 1 in 125, . . . -1//-1 . .',
      '10 ×3: 2, 1 in 500, . . . -1//-1 .',
      '9 ×4: 2, 1 in 2000, . . . -1//-1',
      '8 ×5: 4, 1 in 8000, . . .',
      '7 ×6: 4, 1 in 32000, . .',
    ]);
    expect(lines('place behind', where)).toEqual([
      '14 ×1: -1, 1 in 31, . . . -1//-1 . . . -1//-1 -1//',
      '15 ×2: -4, 1 in 125, . . . -1//-1 . . . -1//-1 -1// /-3/',
      '16 ×3: -7, 1 in 500, . . . -1//-1 . . . -1//-1 -1// /-3/ /-3/',
    ]);
  });

  it('not further back than the count that was right', () => {
    expect(of('place ahead', stretch(10, 13)).map(({ rows }) => rows[0])).toEqual([12, 11, 10]);
    expect(of('place ahead', stretch(0, 3)).map(({ by }) => by)).toEqual([0, 0, 0]);
  });

  it('a shaping row was tapped and not worked, or worked plain: one in 250, one in 50', () => {
    expect(lines('shaping missed', where)).toEqual([
      '9 ×1: 2, 1 in 250, . . . . . . -1//-1',
      '13 ×1: 2, 1 in 250, . . . -1//-1 . . .',
      '9 ×1: 2, 1 in 50, . . . . . . . -1//-1',
      '9+13 ×2: 4, 1 in 200, . . . . . . . .',
      '13 ×1: 2, 1 in 50, . . . -1//-1 . . . .',
    ]);
  });

  it('of different kinds not two at once', () => {
    const rows = of('shaping missed', stretch(12, 16)).map((slip) => slip.rows.join('+'));
    expect(rows).toEqual(['13', '14', '15', '16', '13', '14', '15', '15+16', '16']);
  });

  it('a shaping row was worked twice: in another row, as a pair or for want of a tap', () => {
    expect(lines('shaping doubled', where)).toEqual([
      '9 ×1: -2, 1 in 300, . . . -1//-1 . -1//-1 . -1//-1',
      '9 ×1: -2, 1 in 300, . . . -1//-1 . -1//-1 . . . -1//-1',
      '9 ×1: -2, 1 in 250, . . . -1//-1 -1//-1 . . . -1//-1',
      '13 ×1: -2, 1 in 300, . . . -1//-1 . . . -1//-1 . -1//-1',
      '13 ×1: -2, 1 in 250, . . . -1//-1 . . . -1//-1 -1//-1',
    ]);
    // the next but one is shaped itself here: the next one then
    const close = partOf(
      20,
      'hold',
      section({
        rows: 8,
        shaping: [{ kind: 'edge', edge: 'left', by: -1, rows: [3, 5], inset: 1, lean: 'mirrored' }],
      }),
    );
    const close3 = slipsIn({ part: close, from: 0, latest: 4, to: 8, landmark: 0 });
    const [another] = close3.filter(({ cause }) => cause === 'shaping doubled');
    expect(another?.lie().rows.map(told).join(' ')).toBe('. . //-1 //-1 //-1 . . .');
  });

  it('only one of the two edges was worked: one in 120, either as likely', () => {
    expect(lines('one edge only', where)).toEqual([
      '9 right ×1: 1, 1 in 240, . . . //-1 . . . -1//-1',
      '9 left ×1: 1, 1 in 240, . . . -1// . . . -1//-1',
      '13 right ×1: 1, 1 in 240, . . . -1//-1 . . . //-1',
      '13 left ×1: 1, 1 in 240, . . . -1//-1 . . . -1//',
    ]);
    expect(of('one edge only', stretch(13, 16))).toEqual([]);
  });

  it('a stitch was dropped or made: one row in 1200 and in 1500, and the fabric shows it', () => {
    const lie = '. . . -1//-1 . . . -1//-1';
    expect(lines('stitch dropped', where)).toEqual([
      `×1: -1, 1 in 150, ${lie} ladder`,
      `×2: -2, 1 in 600, ${lie} ladder`,
      `×3: -3, 1 in 2400, ${lie} ladder`,
    ]);
    expect(lines('stray yarn-over', where).map((line) => line.replace(lie, ''))).toEqual([
      '×1: 1, 1 in 188,  hole',
      '×2: 2, 1 in 750,  hole',
      '×3: 3, 1 in 3000,  hole',
    ]);
    expect(of('stitch dropped', stretch(13, 13))).toEqual([]);
  });
});

describe('what may have happened in a row that adds four stitches', () => {
  it('one, two or three too few: one row in ten, each more half as likely; or too many: one in thirty', () => {
    expect(lines('spread short', stretch(0, 5))).toEqual([
      '5 ×1: -1, 1 in 20, . . . . /3/',
      '5 ×2: -2, 1 in 40, . . . . /2/',
      '5 ×3: -3, 1 in 80, . . . . /1/',
    ]);
    expect(lines('spread over', stretch(0, 5))).toEqual([
      '5 ×1: 1, 1 in 60, . . . . /5/',
      '5 ×2: 2, 1 in 120, . . . . /6/',
      '5 ×3: 3, 1 in 240, . . . . /7/',
    ]);
    expect(of('spread short', stretch(5, 16))).toEqual([]);
  });

  it('of decreases the same, the other way; of two nothing is left out by counting', () => {
    const row = (by: number) =>
      partOf(30, 'hold', section({ rows: 2, shaping: [{ kind: 'across', row: 1, by }] }));
    const at = (by: number) =>
      slipsIn({ part: row(by), from: 0, latest: 2, to: 2, landmark: 0 })
        .filter(({ cause }) => cause === 'spread short' || cause === 'spread over')
        .map((slip) => slip.by);
    expect(at(-3)).toEqual([1, 2, -1, -2, -3]);
    expect(at(2)).toEqual([]);
  });
});

describe('what may have happened to a group of three', () => {
  it('one or two more or fewer were bound off: one in 60, more and fewer as likely', () => {
    expect(lines('group miscounted', stretch(14, 16))).toEqual([
      '15 ×2: -2, 1 in 480, /-5/ /-3/',
      '15 ×1: -1, 1 in 120, /-4/ /-3/',
      '15 ×1: 1, 1 in 120, /-2/ /-3/',
      '15 ×2: 2, 1 in 480, /-1/ /-3/',
      '16 ×2: -2, 1 in 480, /-3/ /-5/',
      '16 ×1: -1, 1 in 120, /-3/ /-4/',
      '16 ×1: 1, 1 in 120, /-3/ /-2/',
      '16 ×2: 2, 1 in 480, /-3/ /-1/',
    ]);
    // it is not worked again elsewhere
    expect(of('shaping doubled', stretch(14, 15))).toHaveLength(2);
  });

  it('in which all is bound off nothing can be miscounted', () => {
    const allOff = partOf(
      8,
      'hold',
      section({
        rows: 3,
        shaping: [{ kind: 'bind off', edge: 'right', groups: [{ row: 3, stitches: 8 }] }],
      }),
    );
    const slips = slipsIn({ part: allOff, from: 2, latest: 3, to: 3, landmark: 0 });
    expect(slips.filter(({ cause }) => cause === 'group miscounted')).toEqual([]);
  });
});

describe('a look at the fabric', () => {
  const row = (over: Partial<LaidRow> = {}): LaidRow => ({ right: 0, left: 0, across: 0, group: 0, ...over });
  const lie: Lie = {
    rows: [row({ right: -1, left: -1 }), row(), row({ left: 1 }), row(), row({ across: -3 }), row()],
    trace: 'hole',
  };

  it.each<[LookCode, object]>([
    ['rows above', { rows: 6 }],
    ['trace', { trace: 'hole' }],
    ['spread row', { spread: 3 }],
    ['edge tallies', { right: 1, left: 2 }],
    ['last shaping', { rightAbove: 5, leftAbove: 3 }],
    ['edges', { right: 1, left: 2, rightAbove: 5, leftAbove: 3 }],
  ])('%s', (code, seen) => {
    expect(seenAt({ code, landmark: 10, row: 15 }, lie)).toEqual(seen);
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
    const slip = (cause: SlipCause): Slip => ({ ...(slipsIn(stretch(0, 5))[0] as Slip), cause, rows: [5] });
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

describe('what is said of a slip', () => {
  const slip = (cause: SlipCause, by: number, rows: readonly number[], over: Partial<Slip> = {}): Slip => ({
    cause,
    rows,
    times: 2,
    by,
    weight: 1,
    lie: () => ({ rows: [], trace: 'none' }),
    ...over,
  });
  const advice = (one: Slip, all: readonly Slip[], to: number) =>
    adviceFor(one, all, stretch(0, to)).map(({ code, figures }) => `${code} ${JSON.stringify(figures)}`);

  it('a place is set right, a stitch is caught or let down, or the count is taken as it is', () => {
    expect(advice(slip('place ahead', 2, [12]), [], 13)).toEqual(['set place {"row":12}']);
    expect(advice(slip('place behind', -4, [15]), [], 13)).toEqual(['set place {"row":15}']);
    expect(advice(slip('stitch dropped', -2, []), [], 13)).toEqual([
      'catch stitch {"count":2}',
      'accept {"off":2}',
    ]);
    expect(advice(slip('stray yarn-over', 2, []), [], 13)).toEqual([
      'let down {"count":2}',
      'accept {"off":2}',
    ]);
  });

  it.each([
    'shaping missed',
    'shaping doubled',
    'one edge only',
    'spread short',
    'spread over',
    'group miscounted',
  ] as const)(
    '%s: a few rows are ripped back, more are mended first, from the oldest row that it may be in',
    (cause) => {
      const one = slip(cause, 1, [12]);
      const older = slip(cause, 1, [10, 12]);
      expect(advice(one, [one, older], 15)).toEqual(['rip back {"row":9,"rows":6}', 'accept {"off":1}']);
      expect(advice(one, [one, older], 16)).toEqual([
        'take out {"off":1}',
        'accept {"off":1}',
        'rip back {"row":9,"rows":7}',
      ]);
      expect(advice(slip(cause, -3, [10]), [older], 16)[0]).toBe('add {"off":3}');
    },
  );

  it('where it is looked for: six rows at most by their numbers, the others by how many they are', () => {
    const rows = [19, 17, 15, 13, 11, 9, 7, 5];
    expect(signFor(slip('shaping missed', 1, [19, 17]), rows, [4, 20])).toEqual({
      code: 'shaping missed',
      figures: { rows: '19, 17, 15, 13, 11, 9', more: 2, row: 19, times: 2, from: 5, to: 20 },
    });
    expect(signFor(slip('one edge only', 1, [], { edge: 'left' }), rows.slice(0, 6), [4, 20])).toEqual({
      code: 'one edge only',
      figures: { rows: '19, 17, 15, 13, 11, 9', more: 0, row: 0, times: 2, from: 5, to: 20, edge: 'left' },
    });
  });
});

describe('two stitches too many after row 13, the count right after row 5', () => {
  // place ahead 8/250 (1 + 1/4 + 1/16 + 1/64), missed 2/50 + 2/250, two yarn-overs 8/1500/4
  const ahead = (8 / 250) * (1 + 1 / 4 + 1 / 16 + 1 / 64);
  const missed = 2 / 50 + 2 / 250;
  const stray = 8 / 1500 / 4;
  const all = ahead + missed + stray;
  const found = explainCount(mitten, 13, 22, { checks: [{ row: 5, count: 24 }] });

  it('are a decrease row missed, a place one row ahead, or two yarn-overs, as likely as reckoned', () => {
    expect(found.map(({ cause, likelihood }) => [cause, likelihood.toFixed(6)])).toEqual([
      ['shaping missed', (missed / all).toFixed(6)],
      ['place ahead', (ahead / all).toFixed(6)],
      ['stray yarn-over', (stray / all).toFixed(6)],
    ]);
  });

  it('with the rows that it may be, the later first where both are as likely, and those left out that hardly are', () => {
    expect(found.map(({ rows, times }) => [rows, times])).toEqual([
      [[13, 9], 1],
      [[12, 11, 10], 1],
      [[], 2],
    ]);
    expect(found[0]).toMatchObject({
      between: [5, 13],
      lookFor: { code: 'shaping missed', figures: { rows: '13, 9', more: 0, row: 13, from: 6, to: 13 } },
      toDo: [
        { code: 'rip back', figures: { row: 8, rows: 5 } },
        { code: 'accept', figures: { off: 2 } },
      ],
    });
  });

  it('are sought only above the row from which the stitches were counted anew', () => {
    const recounted = partOf(20, 'hold', section({ rows: 8 }), {
      ...section({ name: 'rest', rows: 8, onNeedle: 18 }),
      shaping: [{ kind: 'edge', edge: 'both', by: -1, rows: [3], inset: 1, lean: 'mirrored' }],
    });
    const [first] = explainCount(recounted, 12, 18, { checks: [] });
    expect(first).toMatchObject({ cause: 'shaping missed', rows: [11], between: [8, 12] });
    const [before] = explainCount(recounted, 6, 19, { checks: [] });
    expect(before).toMatchObject({ cause: 'stitch dropped', between: [0, 6] });
  });

  it('that nothing explains are said to be off by so many, between the two counts', () => {
    expect(explainCount(mitten, 13, 60, { checks: [{ row: 5, count: 24 }] })).toEqual([
      {
        cause: 'unknown',
        rows: [],
        between: [5, 13],
        times: 40,
        likelihood: 1,
        lookFor: { code: 'unknown', figures: { off: 40, from: 5, to: 13 } },
        toDo: [
          { code: 'count again', figures: {} },
          { code: 'find the place', figures: {} },
          { code: 'accept', figures: { off: 40 } },
        ],
      },
    ]);
  });

  it('an answer that a slip would not have shown leaves it a hundredth', () => {
    const look = { code: 'rows above' as const, landmark: 5 };
    const after = explainCount(mitten, 13, 22, {
      checks: [{ row: 5, count: 24 }],
      answers: [{ look, seen: { rows: 8 } }],
    });
    // eight rows were laid where a row was worked plain; seven and fewer where the place is ahead or one was tapped only
    const left = ahead / 100 + 2 / 50 + 2 / 250 / 100 + stray;
    expect(after[0]).toMatchObject({ cause: 'shaping missed', rows: [13, 9] });
    expect(after[0]?.likelihood).toBeCloseTo((2 / 50 + 2 / 250 / 100) / left, 9);
    // and it is not asked again
    expect(after[0]?.ask?.code).not.toBe('rows above');
  });
});
