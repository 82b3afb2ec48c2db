import { describe, expect, it } from 'vitest';
import { evenRows, runTrack } from '../../../../../src/knit/pattern/follow/build/run-rows.ts';
import { firstDue, newTrack, type Waits } from '../../../../../src/knit/pattern/follow/build/track.ts';
import type { Beat } from '../../../../../src/knit/pattern/say/how-far.ts';
import type { Edge } from '../../../../../src/knit/piece/recipe.ts';
import type { Side } from '../../../../../src/knit/row/step.ts';
import { castOn } from './in-hand.ts';

type Told = Parameters<typeof newTrack>[1] & Waits;

const trackOf = (beats: readonly Beat[], change = -1, edge: 'both' | Edge = 'both', more = {}): Told => ({
  edge: () => edge,
  change,
  beats,
  limit: 0,
  line: 1,
  ...more,
});

/** The rows in which it shapes, of how many, and the stitches left. */
function shaped(told: Told, live = 40, firstSide: Side = 'RS'): string {
  const { build, part } = castOn(live, firstSide);
  const wrong = runTrack(build, part, newTrack(part, told, told));
  const rows = part.rows.flatMap(({ edits }, i) => (edits.length > 0 ? [i + 1] : []));
  return `${rows.join(' ') || 'none'} of ${part.rows.length}: ${part.live}${wrong ? ` ${wrong.code}` : ''}`;
}

/** How often a beat comes: worked out by hand. An open first row lies on the right side where it can (common practice, no published source). */
describe('rows until the first shaping of a beat', () => {
  it.each<[Beat, boolean, Side, number]>([
    [{ every: 4 }, true, 'RS', 3],
    [{ every: 4 }, true, 'WS', 4],
    [{ every: 2 }, true, 'RS', 1],
    [{ every: 2 }, true, 'WS', 2],
    [{ every: 3 }, true, 'RS', 3],
    [{ every: 3 }, true, 'WS', 3],
    [{ every: 1 }, true, 'WS', 1],
    [{ every: 0 }, true, 'RS', 1],
    [{ every: 4 }, false, 'RS', 4],
    [{ every: 3 }, false, 'WS', 3],
    [{ every: 4, first: 2 }, true, 'RS', 2],
    [{ every: 4, first: 2 }, false, 'RS', 2],
    [{ every: 6, side: 'RS' }, true, 'RS', 1],
    [{ every: 6, side: 'RS' }, true, 'WS', 2],
    [{ every: 6, side: 'WS' }, true, 'RS', 2],
    [{ every: 6, side: 'RS' }, false, 'WS', 6],
    [{ every: 6, side: 'RS', first: 4 }, false, 'RS', 1],
    [{ every: 6, side: 'RS', first: 4 }, false, 'WS', 2],
    [{ every: 6, side: 'RS', first: 4 }, true, 'WS', 2],
  ])('of %j, the first one: %s, on %s are %i', (beat, isFirst, side, rows) => {
    expect(firstDue(beat, isFirst, side)).toBe(rows);
  });
});

describe('a shaping worked to its end', () => {
  it.each<[string, Told, string]>([
    ['every 2nd row 3 times', trackOf([{ every: 2, times: 3 }]), '1 3 5 of 5: 34'],
    ['at one edge', trackOf([{ every: 2, times: 3 }], -1, 'left'), '1 3 5 of 5: 37'],
    ['every row once', trackOf([{ every: 1, times: 1 }]), '1 of 1: 38'],
    ['once unless said', trackOf([{ every: 1 }]), '1 of 1: 38'],
    ['no times', trackOf([{ every: 2, times: 0 }]), 'none of 0: 40'],
    [
      'no times, then once',
      trackOf([
        { every: 2, times: 0 },
        { every: 1, times: 1 },
      ]),
      '1 of 1: 38',
    ],
    [
      'once, then no times, then twice',
      trackOf([
        { every: 1, times: 1 },
        { every: 2, times: 0 },
        { every: 3, times: 2 },
      ]),
      '1 4 7 of 7: 34',
    ],
    ['no beats', trackOf([]), 'none of 0: 40'],
    [
      'twice, then every 4th row twice',
      trackOf([
        { every: 2, times: 2 },
        { every: 4, times: 2 },
      ]),
      '1 3 7 11 of 11: 32',
    ],
    ['4th and 2nd rows alternately', trackOf([{ every: 4, and: 2, times: 5 }]), '3 7 9 13 15 of 15: 30'],
    ['two stitches each', trackOf([{ every: 2, times: 2 }], -2), '1 3 of 3: 32'],
    ['increases', trackOf([{ every: 2, times: 2 }], 1), '1 3 of 3: 44'],
    ['to a count', trackOf([{ every: 2, toCount: 34 }]), '1 3 5 of 5: 34'],
    ['to a count up', trackOf([{ every: 2, toCount: 44 }], 1), '1 3 of 3: 44'],
    ['to a count at one edge', trackOf([{ every: 1, toCount: 38 }], -1, 'right'), '1 2 of 2: 38'],
    ['never past a count', trackOf([{ every: 1, toCount: 37 }]), '1 of 1: 38'],
    ['the count is there', trackOf([{ every: 2, toCount: 40 }]), 'none of 0: 40'],
    ['one short of the count', trackOf([{ every: 2, toCount: 39 }]), 'none of 0: 40'],
    [
      'the count is there, then once',
      trackOf([
        { every: 2, toCount: 40 },
        { every: 1, times: 1 },
      ]),
      '1 of 1: 38',
    ],
    [
      'a later count is there',
      trackOf([
        { every: 1, times: 1 },
        { every: 2, toCount: 38 },
      ]),
      '1 of 1: 38',
    ],
    [
      'so many rows',
      trackOf([{ every: 2, until: { is: 'rows', n: 6 } }], -1, 'both', { limit: 6 }),
      '1 3 5 of 6: 34',
    ],
    ['one row', trackOf([{ every: 2, until: { is: 'rows', n: 1 } }], -1, 'both', { limit: 1 }), '1 of 1: 38'],
  ])('%s', (_, track, rows) => {
    expect(shaped(track)).toBe(rows);
  });

  it('begins on the right side where a wrong-side row comes first', () => {
    expect(shaped(trackOf([{ every: 2, times: 2 }]), 40, 'WS')).toBe('2 4 of 4: 36');
  });

  it('stops where no stitches are left to shape, and says how many it needs', () => {
    expect(shaped(trackOf([{ every: 1, times: 4 }]), 5)).toBe('1 of 1: 3 not enough stitches');
  });

  it.each([
    [1, '3 5 7 of 7: 34'],
    [2, '3 5 7 of 7: 34'],
    [3, '5 7 9 of 9: 34'],
  ])('waits %i rows first: its beat begins behind them', (wait, rows) => {
    expect(shaped(trackOf([{ every: 2, times: 3 }], -1, 'both', { wait }))).toBe(rows);
  });

  it('goes on beside rows that are worked even', () => {
    const { build, part } = castOn(20);
    build.meanwhile = [newTrack(part, trackOf([{ every: 2, times: 2 }]), {})];
    expect(evenRows(build, part, 5, 'even')).toBeUndefined();
    expect(part.rows.map(({ after, kind }) => `${after} ${kind}`)).toEqual([
      '18 shape',
      '18 even',
      '16 shape',
      '16 even',
      '16 even',
    ]);
    expect(build.meanwhile).toEqual([]);
  });
});

type Group = NonNullable<Told['groups']>['list'][number];

const groupsOf = (edge: 'both' | Edge, list: readonly Group[], more = {}): Told => ({
  ...trackOf([], 0, edge),
  groups: { work: 'bo', atEnd: false, list, begins: () => undefined, ...more },
});

/** A group is bound off where a row begins: at the right edge on the right side (common practice, no published source). */
describe('groups worked to their end', () => {
  it.each<[string, Told, Side, string]>([
    [
      'at the right edge',
      groupsOf(
        'right',
        [4, 2, 2].map((stitches) => ({ stitches, every: 2 })),
      ),
      'RS',
      '1 3 5 of 5: 32',
    ],
    [
      'wait for their edge',
      groupsOf(
        'right',
        [4, 2, 2].map((stitches) => ({ stitches, every: 2 })),
      ),
      'WS',
      '2 4 6 of 6: 32',
    ],
    [
      'at the left edge',
      groupsOf(
        'left',
        [4, 2].map((stitches) => ({ stitches, every: 2 })),
      ),
      'RS',
      '2 4 of 4: 34',
    ],
    [
      'at both',
      groupsOf(
        'both',
        [4, 4, 2].map((stitches) => ({ stitches, every: 1 })),
      ),
      'RS',
      '1 2 3 of 3: 30',
    ],
    [
      'every 4th row',
      groupsOf(
        'right',
        [4, 4].map((stitches) => ({ stitches, every: 4 })),
      ),
      'RS',
      '1 5 of 5: 32',
    ],
    [
      'on the side that is said',
      groupsOf(
        'both',
        [4, 4].map((stitches) => ({ stitches, every: 1, side: 'WS' })),
      ),
      'RS',
      '2 4 of 4: 32',
    ],
    [
      'at the end of a row',
      groupsOf('left', [{ stitches: 4, every: 2 }], { atEnd: true, work: 'co' }),
      'RS',
      '1 of 1: 44',
    ],
    ['none', groupsOf('right', []), 'RS', 'none of 0: 40'],
  ])('%s', (_, told, side, rows) => {
    expect(shaped(told, 40, side)).toBe(rows);
  });

  it('begin once, with the first of them', () => {
    let begun = 0;
    const list = [4, 2].map((stitches) => ({ stitches, every: 2 }));
    expect(shaped(groupsOf('left', list, { begins: () => (begun += 1) }))).toBe('2 4 of 4: 34');
    expect(begun).toBe(1);
  });

  it('wait for rows first', () => {
    const told = groupsOf('right', [{ stitches: 4, every: 2 }]);
    expect(shaped({ ...told, wait: 1 })).toBe('3 of 3: 36');
    expect(shaped({ ...told, wait: 2 })).toBe('3 of 3: 36');
  });
});

describe('a shaping that waits for a count', () => {
  it.each<[string, number, boolean, string]>([
    ['of fewer stitches begins in the row behind it', 16, true, '18 16 13 10 10'],
    ['of no fewer is there from the first row on', 16, false, '18 15 12 10 10'],
    ['that never comes never begins', 4, true, '18 16 14 12 12'],
  ])('%s', (_, stitches, fewer, counts) => {
    const { build, part } = castOn(20);
    const dec = trackOf([{ every: 1, times: 4 }]);
    const waits = trackOf([{ every: 1, times: 2 }], -1, 'left', { waitFor: { stitches, fewer } });
    build.meanwhile = [newTrack(part, dec, {}), newTrack(part, waits, waits)];
    evenRows(build, part, 5, 'even');
    expect(part.rows.map(({ after }) => after).join(' ')).toBe(counts);
  });
});

it('a shaping for so many rows counts none of those that it waits for', () => {
  const until = { is: 'rows', n: 4 } as const;
  const rows = (wait: number) =>
    shaped(trackOf([{ every: 1, until }], -1, 'both', { limit: 4, wait }), 40, 'WS');
  expect([0, 1, 2].map(rows)).toEqual(['1 2 3 4 of 4: 32', '2 3 4 5 of 5: 32', '3 4 5 6 of 6: 32']);
});
