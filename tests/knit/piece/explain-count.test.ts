import { describe, expect, it } from 'vitest';
import { sampleGarment } from '../../../src/knit/garment/sample.ts';
import { countAt } from '../../../src/knit/piece/count/count-at.ts';
import { laidRows } from '../../../src/knit/piece/count/lie.ts';
import { seenAt } from '../../../src/knit/piece/count/look.ts';
import { explainCount } from '../../../src/knit/piece/explain-count.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { PlannedPart } from '../../../src/knit/piece/planned.ts';
import { explainTrials } from '../../trials/explain-trials.ts';

const partOf = (piece: string, index = 0): PlannedPart => {
  const recipe = sampleGarment.pieces.find((one) => one.name === piece);
  const planned = recipe && plan(recipe);
  if (!planned?.ok) throw new Error(`${piece} cannot be planned`);
  return planned.value.parts[index] as PlannedPart;
};

const sleeve = partOf('Sleeve');
const shoulder = partOf('Front', 1);
const counted = (part: PlannedPart, rows: number, off: number) => (countAt(part, rows) ?? 0) + off;
const firm = (part: PlannedPart, row: number) => ({ row, count: countAt(part, row) ?? 0 });

describe('a count that does not agree', () => {
  it('needs no explanation where it is as planned', () => {
    expect(explainCount(sleeve, 60, counted(sleeve, 60, 0), { checks: [] })).toEqual([]);
  });

  it('two stitches short on a sleeve: an increase row was missed, in one of the rows since the last right count', () => {
    const found = explainCount(sleeve, 61, counted(sleeve, 61, -2), { checks: [firm(sleeve, 48)] });
    expect(found[0]?.cause).toBe('shaping missed');
    expect([...(found[0]?.rows ?? [])].sort((a, b) => a - b)).toEqual([51, 55, 59]);
    expect(found[0]?.between).toEqual([48, 61]);
  });

  it('by the cast-on only where nobody counted that, be it right or as many off as was known', () => {
    const thinksOfCastOn = (...checks: readonly { row: number; count: number }[]) =>
      explainCount(sleeve, 6, counted(sleeve, 6, -3), { checks })
        .map(({ cause }) => cause)
        .includes('cast-on miscounted');
    expect(thinksOfCastOn()).toBe(true);
    expect(thinksOfCastOn(firm(sleeve, 0))).toBe(false);
    expect(thinksOfCastOn({ row: 0, count: counted(sleeve, 0, -2) })).toBe(false);
    expect(thinksOfCastOn(firm(sleeve, 4))).toBe(false);
  });

  it('right after a shaping row, the place that is one row ahead is thought of too', () => {
    const found = explainCount(sleeve, 59, counted(sleeve, 59, -2), { checks: [firm(sleeve, 48)] });
    expect(found.map((one) => one.cause)).toContain('place ahead');
    expect(found.find((one) => one.cause === 'place ahead')?.rows).toContain(58);
  });

  it('one stitch too few where both edges are increased: one edge, or a dropped stitch; a look tells which', () => {
    const found = explainCount(sleeve, 61, counted(sleeve, 61, -1), { checks: [firm(sleeve, 48)] });
    expect(found.map((one) => one.cause)).toEqual([
      'one edge only',
      'stitch dropped',
      'worked together',
      'other',
    ]);
    const look = found[0]?.ask;
    if (!look) throw new Error('no look was asked for');
    const ladder = seenAt(look, { rows: laidRows(sleeve, look.landmark, 61), trace: 'ladder' });
    const after = explainCount(sleeve, 61, counted(sleeve, 61, -1), {
      checks: [firm(sleeve, 48)],
      answers: [{ look, seen: ladder }],
    });
    expect(after[0]?.cause).toBe('stitch dropped');
    expect(after[0]?.likelihood).toBeGreaterThan(0.9);
  });

  it('names the edge once the fabric has shown it', () => {
    const counts = { checks: [firm(sleeve, 48)] };
    const look = { code: 'edge tallies' as const, landmark: 18 };
    const planned = seenAt(look, { rows: laidRows(sleeve, 18, 61), trace: 'none' });
    const seen = { ...planned, left: (planned.left ?? 0) - 1 };
    const found = explainCount(sleeve, 61, counted(sleeve, 61, -1), { ...counts, answers: [{ look, seen }] });
    expect(found[0]).toMatchObject({ cause: 'one edge only', edge: 'left', times: 1 });
  });

  it('three too few after a spread row of eight: three increases were left out there', () => {
    const found = explainCount(sleeve, 22, counted(sleeve, 22, -3), { checks: [firm(sleeve, 18)] });
    expect(found[0]).toMatchObject({ cause: 'spread short', rows: [19], times: 3 });
  });

  it('at a neck edge that is decreased alone, one too many is a missed decrease, a place too far on or a stray yarn-over', () => {
    const found = explainCount(shoulder, 9, counted(shoulder, 9, 1), { checks: [firm(shoulder, 2)] });
    expect(found.map((one) => one.cause)).toEqual([
      'shaping missed',
      'place ahead',
      'other',
      'stray yarn-over',
    ]);
    expect(found[0]?.ask?.options.length).toBeGreaterThan(1);
  });

  it('a count that was off by as much before puts the slip below that count', () => {
    const checks = [firm(sleeve, 48), { row: 56, count: counted(sleeve, 56, -2) }];
    const found = explainCount(sleeve, 70, counted(sleeve, 70, -2), { checks });
    const missed = found.find((one) => one.cause === 'shaping missed');
    expect([...(missed?.rows ?? [])].sort((a, b) => a - b)).toEqual([51, 55]);
  });

  it('a count that was off by another number before leaves only what came on top', () => {
    const checks = [firm(sleeve, 48), { row: 56, count: counted(sleeve, 56, -2) }];
    const found = explainCount(sleeve, 65, counted(sleeve, 65, -4), { checks });
    const missed = found.find((one) => one.cause === 'shaping missed');
    expect([...(missed?.rows ?? [])].sort((a, b) => a - b)).toEqual([59, 63]);
    expect(missed?.times).toBe(1);
  });

  it('a cast-on that was never counted may have been miscounted itself, and its edge is to be counted', () => {
    const bare = explainCount(sleeve, 6, counted(sleeve, 6, 2), { checks: [] });
    expect(bare[0]).toMatchObject({ cause: 'cast-on miscounted', rows: [], times: 2 });
    const look = { code: 'cast-on edge' as const, landmark: 0 };
    const seen = seenAt(look, { rows: laidRows(sleeve, 0, 6), trace: 'none', castOn: 0 });
    const after = explainCount(sleeve, 6, counted(sleeve, 6, 2), { checks: [], answers: [{ look, seen }] });
    expect(after[0]?.cause).not.toBe('cast-on miscounted');
    // counted once, before the first row or later, it was right
    for (const row of [0, 4]) {
      const found = explainCount(sleeve, 6, counted(sleeve, 6, 2), { checks: [firm(sleeve, row)] });
      expect(found.map((one) => one.cause)).not.toContain('cast-on miscounted');
    }
    // stitches from a holder are cast on by nobody
    const held = explainCount(shoulder, 2, counted(shoulder, 2, 1), { checks: [] });
    expect(held.map((one) => one.cause)).not.toContain('cast-on miscounted');
  });

  it('two stitches worked together unawares leave a place to be seen; the look tells them from a dropped one', () => {
    const known = { checks: [firm(sleeve, 62)] };
    const found = explainCount(sleeve, 66, counted(sleeve, 66, -1), known);
    const look = { code: 'trace' as const, landmark: 18 };
    const seen = seenAt(look, { rows: laidRows(sleeve, 18, 66), trace: 'joined' });
    expect(found.map((one) => one.cause)).toContain('worked together');
    const after = explainCount(sleeve, 66, counted(sleeve, 66, -1), { ...known, answers: [{ look, seen }] });
    expect(after[0]).toMatchObject({
      cause: 'worked together',
      times: 1,
      toDo: [{ code: 'add' }, { code: 'accept' }],
    });
  });

  it('something else always remains: no cause is ever all that can be, and answers that fit none make it the likeliest', () => {
    const known = { checks: [firm(sleeve, 18)] };
    const found = explainCount(sleeve, 22, counted(sleeve, 22, -3), known);
    expect(found[0]?.likelihood).toBeLessThan(0.99);
    expect(found.find(({ cause }) => cause === 'other')).toMatchObject({
      toDo: [{ code: 'count again' }, { code: 'find the place' }, { code: 'accept' }],
    });
    const answers = (['trace', 'spread row', 'rows above'] as const).map((code) => ({
      look: { code, landmark: 18, row: 19 },
      seen: {},
    }));
    expect(explainCount(sleeve, 22, counted(sleeve, 22, -3), { ...known, answers })[0]?.cause).toBe('other');
  });

  it('what no single slip explains is said to be unknown, with the advice to count again', () => {
    const found = explainCount(sleeve, 40, counted(sleeve, 40, 37), { checks: [] });
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({
      cause: 'unknown',
      toDo: [{ code: 'count again' }, { code: 'find the place' }, { code: 'accept' }],
    });
  });

  it('likelihoods are shares of one whole, the largest first', () => {
    const found = explainCount(shoulder, 30, counted(shoulder, 30, 1), { checks: [] });
    const shares = found.map((one) => one.likelihood);
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1);
    expect(shares).toEqual([...shares].sort((a, b) => b - a));
  });
});

describe('simulated slips', () => {
  const shown = explainTrials(300, 20_000).filter((trial) => trial.shows);

  it('the true cause stands among the first three in at least 95 of 100 that a count shows', () => {
    const among = shown.filter((trial) => trial.amongThree).length;
    expect(among / shown.length).toBeGreaterThanOrEqual(0.95);
  });

  it('and first in at least 90 of 100 after the one look that was asked for', () => {
    const first = shown.filter((trial) => trial.firstAfterLook).length;
    expect(first / shown.length).toBeGreaterThanOrEqual(0.9);
  });

  it('a look answered truly puts the true cause first more often than none', () => {
    const before = shown.filter((trial) => trial.firstBefore).length;
    expect(shown.filter((trial) => trial.firstAfterLook).length).toBeGreaterThan(before * 1.1);
  });
});
