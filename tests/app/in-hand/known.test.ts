import { afterEach, describe, expect, it } from 'vitest';
import { knownFrom } from '../../../src/app/in-hand/known.ts';
import { forgetRefused } from '../../../src/app/in-hand/refused.ts';
import { saving, tapFault } from '../../../src/app/state.ts';
import { fault } from '../../../src/knit/fault.ts';
import type { LogEntry } from '../../../src/progress/log.ts';
import { LONG, plainPart } from '../../store/scenario.ts';

/** What the log tells of the rows on the needle; the part has 20 stitches after every row. */

const part = plainPart(30);
const known = (...entries: readonly object[]) =>
  knownFrom(
    entries.map((entry, i) => {
      const usual = { id: `e${i}`, make: LONG, seq: i + 1, at: i, kind: 'row', row: 1 };
      return { ...usual, ...entry } as LogEntry;
    }),
    part,
  );
const check = (row: number, count: number) => ({ kind: 'check', row, count }) as const;
const lifeline = (row: number) => ({ kind: 'lifeline', row, text: 'red' }) as const;
const rows = (from: number, to: number) =>
  Array.from({ length: to - from + 1 }, (_, i) => ({ kind: 'row', row: from + i }) as const);

describe('what is known of the rows on the needle', () => {
  it('is nothing of rows that nobody looked at', () => {
    expect(known()).toEqual({ checks: [], firm: undefined, lifelines: [] });
    expect(known(...rows(1, 5))).toEqual({ checks: [], firm: undefined, lifelines: [] });
  });

  it('is each count, right or wrong, and the last right one as firm ground', () => {
    const all = known(...rows(1, 4), check(4, 20), ...rows(5, 8), check(8, 19), { kind: 'note', row: 8 });
    expect(all.checks).toEqual([
      { row: 4, count: 20 },
      { row: 8, count: 19 },
    ]);
    expect(all.firm).toMatchObject({ row: 4, count: 20 });
  });

  it('has no check without a count', () => {
    expect(known(...rows(1, 2), { kind: 'check', row: 2 }).checks).toEqual([]);
  });

  it('is each lifeline once, the lowest first', () => {
    const all = known(...rows(1, 9), lifeline(9), { kind: 'place', row: 4 }, lifeline(4), lifeline(4));
    expect(all.lifelines).toEqual([4]);
    expect(known(...rows(1, 10), lifeline(10), lifeline(2)).lifelines).toEqual([2, 10]);
  });

  it('loses what lay above a row that was ripped back to, not what lay at it', () => {
    const all = known(
      ...rows(1, 10),
      check(5, 20),
      lifeline(6),
      check(7, 20),
      lifeline(10),
      { kind: 'rip back', row: 6 },
      ...rows(7, 12),
    );
    expect(all).toMatchObject({ checks: [{ row: 5, count: 20 }], firm: { row: 5 }, lifelines: [6] });
  });
});

describe('a tap that was refused for good', () => {
  afterEach(() => {
    saving.value = 'saved';
    tapFault.value = undefined;
  });

  it('is forgotten when its screen is left, but not while something is still to be written', () => {
    const refused = fault('place-moved', { row: 1, nextRow: 2 });
    for (const now of ['saving', 'felt', 'slow', 'held', 'failed'] as const) {
      saving.value = now;
      tapFault.value = refused;
      forgetRefused();
      expect(tapFault.value, now).toBe(refused);
    }
    saving.value = 'saved';
    forgetRefused();
    expect(tapFault.value).toBeUndefined();
  });
});
