import { describe, expect, it } from 'vitest';
import { adviceFor, signFor } from '../../../../src/knit/piece/count/advice.ts';
import type { Slip, SlipCause } from '../../../../src/knit/piece/count/slip.ts';
import { explainCount } from '../../../../src/knit/piece/explain-count.ts';
import { mitten, partOf, section } from './mitten.ts';

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
    adviceFor(one, all, { part: mitten, from: 0, latest: to, to, landmark: 0 }).map(
      ({ code, figures }) => `${code} ${JSON.stringify(figures)}`,
    );

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

  it('of stitches worked together one is made; a cast-on is made anew while few rows stand on it', () => {
    expect(advice(slip('worked together', -2, []), [], 13)).toEqual(['add {"off":2}', 'accept {"off":2}']);
    const castOn = slip('cast-on miscounted', 1, []);
    expect(advice(castOn, [], 6)).toEqual([
      'rip back {"row":0,"rows":6}',
      'take out {"off":1}',
      'accept {"off":1}',
    ]);
    expect(advice(castOn, [], 7)).toEqual(['take out {"off":1}', 'accept {"off":1}']);
    expect(advice(slip('cast-on miscounted', -1, []), [], 7)[0]).toBe('add {"off":1}');
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
  // place ahead 8/250 (1 + 1/4 + 1/16 + 1/64), missed 2/50 + 2/250, two yarn-overs 8/1200/4; something else a twentieth of them all
  const ahead = (8 / 250) * (1 + 1 / 4 + 1 / 16 + 1 / 64);
  const missed = 2 / 50 + 2 / 250;
  const stray = 8 / 1200 / 4;
  const other = (ahead + missed + stray) / 20;
  const all = ahead + missed + stray + other;
  const found = explainCount(mitten, 13, 22, { checks: [{ row: 5, count: 24 }] });

  it('are a decrease row missed, a place one row ahead, or two yarn-overs, as likely as reckoned', () => {
    expect(found.map(({ cause, likelihood }) => [cause, likelihood.toFixed(6)])).toEqual([
      ['shaping missed', (missed / all).toFixed(6)],
      ['place ahead', (ahead / all).toFixed(6)],
      ['other', (other / all).toFixed(6)],
      ['stray yarn-over', (stray / all).toFixed(6)],
    ]);
  });

  it('with the rows that it may be, the later first where both are as likely, and those left out that hardly are', () => {
    expect(found.map(({ rows, times }) => [rows, times])).toEqual([
      [[13, 9], 1],
      [[12, 11, 10], 1],
      [[], 2],
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
    expect(before).toMatchObject({ cause: 'cast-on miscounted', between: [0, 6] });
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
    const left = ahead / 100 + 2 / 50 + 2 / 250 / 100 + stray + other / 5;
    expect(after[0]).toMatchObject({ cause: 'shaping missed', rows: [13, 9] });
    expect(after[0]?.likelihood).toBeCloseTo((2 / 50 + 2 / 250 / 100) / left, 9);
    // and it is not asked again
    expect(after[0]?.ask?.code).not.toBe('rows above');
  });
});
