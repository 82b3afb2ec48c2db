import { describe, expect, it } from 'vitest';
import type { LogEntry } from '../../src/progress/log.ts';
import { leftBy, waysIn } from '../../src/progress/ways.ts';

const entry = (id: string, seq: number, row: number, more: Partial<LogEntry> = {}) =>
  ({
    id,
    seq,
    row,
    make: 'g/back/0/1',
    at: 0,
    kind: 'row',
    ...more,
  }) as LogEntry;

/** Two rows that both devices have. */
const common = [entry('a-1', 1, 1, { plan: 'g/p/0/s/1-p' }), entry('a-2', 2, 2)];
/** Device b knits on to row 5. */
const onward = [entry('b-3', 3, 3), entry('b-4', 4, 4), entry('b-5', 5, 5)];
const shown = { end: 'b-5', rows: 5, plan: 'g/p/0/s/1-p', device: 'b' };

/** What is said of the two devices, in whatever order the entries come. */
function said(...ofA: readonly LogEntry[]) {
  const entries = [...common, ...onward, ...ofA];
  const ways = waysIn(entries);
  expect(waysIn([...entries].reverse())).toEqual(ways);
  return ways;
}

describe('the ways that a make has gone', () => {
  it('are none of nothing, or of notes alone, and one on one device', () => {
    expect(waysIn([])).toEqual({ shown: undefined, open: [], left: [] });
    expect(waysIn([entry('a-1', 1, 0, { kind: 'note' })])).toEqual({ shown: undefined, open: [], left: [] });
    expect(said()).toEqual({ shown, open: [], left: [] });
    expect(waysIn([entry('a-1', 1, 1)]).shown).toEqual({ end: 'a-1', rows: 1, plan: '', device: 'a' });
  });

  it('are one where a device is merely not as far, or went back no further than to where they parted', () => {
    expect(said(entry('a-3', 3, 3)).open).toEqual([]);
    expect(said(entry('a-3', 3, 3), entry('a-4', 4, 4)).open).toEqual([]);
    expect(said(entry('a-3', 3, 3), entry('a-4', 4, 2, { kind: 'rip back' })).open).toEqual([]);
  });

  it('are two where one went to a row that the other never was at since they parted', () => {
    const away = entry('a-3', 3, 7, { kind: 'place' });
    expect(said(away)).toEqual({
      shown,
      open: [{ end: 'a-3', rows: 7, plan: 'g/p/0/s/1-p', device: 'a' }],
      left: [],
    });
    const below = said(entry('a-3', 3, 3), entry('a-4', 4, 1, { kind: 'rip back' }));
    expect(below.open).toEqual([{ end: 'a-4', rows: 1, plan: 'g/p/0/s/1-p', device: 'a' }]);
  });

  it('are two where one goes by another plan, also at a row that both were at', () => {
    const other = [entry('a-3', 3, 2, { kind: 'rework', plan: 'g/p/0/s/1-q' }), entry('a-4', 4, 3)];
    expect(said(...other).open).toEqual([{ end: 'a-4', rows: 3, plan: 'g/p/0/s/1-q', device: 'a' }]);
  });

  it('end at what was written last of each, and are where it was last knitted', () => {
    const away = [entry('a-3', 3, 7, { kind: 'place' }), entry('a-4', 4, 0, { kind: 'note', text: 'x' })];
    expect(said(...away).open).toEqual([{ end: 'a-4', rows: 7, plan: 'g/p/0/s/1-p', device: 'a' }]);
  });

  it('are not made by a note, neither beside the knitting nor before it began', () => {
    expect(said(entry('a-3', 3, 9, { kind: 'note' })).open).toEqual([]);
    expect(said(entry('c-1', 1, 9, { kind: 'check', count: 9 })).open).toEqual([]);
  });

  it('are told with the place on the knitting, though a note came last', () => {
    const last = entry('b-6', 6, 0, { kind: 'note' });
    expect(said(last).shown).toEqual(shown);
  });

  it('are left once she has chosen, and each other one stays open', () => {
    const away = [entry('a-3', 3, 7, { kind: 'place' }), entry('c-3', 3, 8, { kind: 'place' })];
    const left = said(...away, entry('b-6', 6, 6, { settles: ['a-3'] }));
    expect(left.open.map(({ end }) => end)).toEqual(['c-3']);
    expect(left.left).toEqual([{ end: 'a-3', rows: 7, plan: 'g/p/0/s/1-p', device: 'a' }]);
    expect(left.shown?.end).toBe('b-6');
  });

  it('are open again once the choice is taken back, and end where they ended before it', () => {
    const away = entry('a-3', 3, 7, { kind: 'place' });
    const chosen = entry('b-6', 6, 5, { kind: 'place', settles: ['a-3'] });
    const back = entry('b-7', 7, 5, { kind: 'undo', undoes: 'b-6' });
    expect(said(away, chosen)).toMatchObject({ open: [], left: [{ end: 'a-3' }] });
    const again = said(away, chosen, back);
    expect(again.left).toEqual([]);
    expect(again.open).toEqual([{ end: 'a-3', rows: 7, plan: 'g/p/0/s/1-p', device: 'a' }]);
  });

  it('do not end at a choice that was taken back: it led where another entry had led before it', () => {
    // a goes on to 7 and 8, b chooses a's way, takes that back and knits on by its own
    const ofA = [entry('a-3', 3, 7, { kind: 'place' }), entry('a-4', 4, 8)];
    const chosen = entry('b-6', 6, 8, { kind: 'place', settles: ['b-5'], follows: 'a-4' });
    const back = entry('b-7', 7, 5, { kind: 'undo', undoes: 'b-6', follows: 'b-5' });
    const ways = said(...ofA, chosen, back);
    expect(ways.shown).toMatchObject({ rows: 5, device: 'b' });
    expect(ways.open).toEqual([{ end: 'b-6', rows: 8, plan: 'g/p/0/s/1-p', device: 'a' }]);
    expect(ways.left).toEqual([]);
  });

  it('may have parted before the first row', () => {
    const apart = [entry('a-1', 1, 1, { plan: 'g/p/0/s/1-p' }), entry('b-1', 1, 9, { plan: 'g/p/0/s/1-p' })];
    expect(waysIn(apart)).toEqual({
      shown: { end: 'b-1', rows: 9, plan: 'g/p/0/s/1-p', device: 'b' },
      open: [{ end: 'a-1', rows: 1, plan: 'g/p/0/s/1-p', device: 'a' }],
      left: [],
    });
  });
});

describe('going on from an end', () => {
  const entries = [...common, ...onward, entry('a-3', 3, 7, { kind: 'place' }), entry('c-3', 3, 3)];

  it('leaves the ends of the other ways', () => {
    expect(leftBy(entries, 'b-5')).toEqual(['a-3']);
    expect(leftBy(entries, 'a-3')).toEqual(['c-3', 'b-5']);
  });

  it('is none where no entry has that name', () => {
    expect(leftBy(entries, 'b-9')).toBeUndefined();
    expect(leftBy([], 'b-5')).toBeUndefined();
  });
});
