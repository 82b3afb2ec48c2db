import { describe, expect, it } from 'vitest';
import { sentinelIn } from '../../../src/store/beside/sentinel.ts';
import { dropKey, heldIn, keysFrom, readJson, writeJson } from '../../../src/store/beside/small-keep.ts';
import { Refusal } from '../../../src/store/faults.ts';
import { journalIn } from '../../../src/store/place/journal.ts';
import { lastSeenIn } from '../../../src/store/place/last-seen.ts';
import { checkPlace, fits, type Wish } from '../../../src/store/place/write-log.ts';
import type { PlaceRecord } from '../../../src/store/records.ts';
import { memoryKeep } from '../beside/memory-keep.ts';
import { LONG, planOf } from '../scenario.ts';

const PLAN = planOf('scarf', 'long', 30).id;
const place: PlaceRecord = {
  id: LONG,
  garment: 'scarf',
  piece: 'long',
  part: 0,
  make: 1,
  plan: PLAN,
  rows: 5,
  total: 7,
  seq: 5,
  at: 100,
  touched: 100,
};
const wish = (id: string, of: Partial<Wish> = {}): Wish => ({ id, make: LONG, at: 200, kind: 'row', ...of });

describe('taps that are held beside the box', () => {
  it('go on from each other as they were shown, and end at the last row', () => {
    const journal = journalIn(memoryKeep(), 'box');
    expect(journal.placeWith(place)).toBe(place);
    expect(journal.hold(wish('a', { from: 5 }), place)).toEqual({ ...place, rows: 6, at: 200 });
    expect(journal.hold(wish('b', { from: 5 }), place)).toBeUndefined();
    expect(journal.hold(wish('c', { from: 6, at: 300 }), place)).toEqual({ ...place, rows: 7, at: 300 });
    expect(journal.hold(wish('d', { from: 7 }), place)).toBeUndefined();
    expect(journal.taps().map(({ n, wish: { id }, before, after }) => [n, id, before, after])).toEqual([
      [1, 'a', 5, 6],
      [2, 'c', 6, 7],
    ]);
    expect(journal.placeWith(place)).toEqual({ ...place, rows: 7, at: 300 });
    expect(journal.placeWith({ ...place, at: 900 }).at).toBe(900);
  });

  it('take each other back, but nothing that lies in the box', () => {
    const journal = journalIn(memoryKeep(), 'box');
    expect(journal.hold(wish('x', { kind: 'undo' }), place)).toBeUndefined();
    for (const [id, kind] of [
      ['a', 'row'],
      ['b', 'note'],
      ['c', 'row'],
      ['d', 'undo'],
    ] as const)
      journal.hold(wish(id, { kind }), place);
    expect(journal.placeWith(place).rows).toBe(6);
    expect(journal.hold(wish('e', { kind: 'undo' }), place)?.rows).toBe(5);
    expect(journal.hold(wish('f', { kind: 'undo' }), place)).toBeUndefined();
  });

  it('go to any row that there is', () => {
    const journal = journalIn(memoryKeep(), 'box');
    const to = (id: string, row: number) => journal.hold(wish(id, { kind: 'place', row }), place)?.rows;
    expect([to('a', -1), to('b', 8), to('c', 0), to('d', 7)]).toEqual([undefined, undefined, 0, 7]);
    expect(journal.hold(wish('e', { kind: 'note', text: 'x' }), place)?.rows).toBe(7);
  });

  it('are told apart by their make and by their box, and are gone once they are dropped', () => {
    const keep = memoryKeep();
    const journal = journalIn(keep, 'box');
    const other = { ...place, id: 'scarf/cuff/0/1' } as const;
    journal.hold(wish('a'), place);
    journal.hold(wish('b', { make: other.id }), other);
    journalIn(keep, 'other').hold(wish('c'), place);
    expect(journal.taps(other.id).map((tap) => [tap.wish.id, tap.n])).toEqual([['b', 2]]);
    expect(journal.taps().map((tap) => tap.wish.id)).toEqual(['a', 'b']);
    expect(journal.placeWith(other).rows).toBe(6);
    journal.drop('a');
    expect(journal.taps().map((tap) => tap.wish.id)).toEqual(['b']);
  });

  it('are in the order of two windows that tapped at once, by their ids', () => {
    const keep = memoryKeep();
    for (const id of ['z', 'm', 'q'])
      writeJson(keep, `box.held.${id}`, { n: 1, wish: wish(id), before: 5, after: 6 });
    expect(
      journalIn(keep, 'box')
        .taps()
        .map((tap) => tap.wish.id),
    ).toEqual(['m', 'q', 'z']);
  });

  it('are not held where the small store is full', () => {
    const keep = memoryKeep();
    keep.full = true;
    expect(journalIn(keep, 'box').hold(wish('a'), place)).toBeUndefined();
    expect(journalIn(undefined, 'box').hold(wish('a'), place)).toBeUndefined();
  });

  it('pass over what is no tap', () => {
    const whole = { n: 1, wish: wish('a'), before: 5, after: 6 };
    const odd: unknown[] = [
      7,
      null,
      { ...whole, n: '1' },
      { ...whole, before: null },
      { ...whole, after: undefined },
      { ...whole, wish: null },
      { ...whole, wish: wish('a', { at: 'x' as never }) },
      { ...whole, wish: wish(1 as never) },
      { ...whole, wish: wish('a', { make: 3 as never }) },
      { ...whole, wish: wish('a', { kind: 'dance' as never }) },
    ];
    const keep = memoryKeep();
    for (const [i, one] of odd.entries()) writeJson(keep, `box.held.${i}`, one);
    keep.setItem('box.held.text', '{');
    expect(journalIn(keep, 'box').taps()).toEqual([]);
    writeJson(keep, 'box.held.whole', whole);
    expect(journalIn(keep, 'box').taps()).toEqual([whole]);
  });
});

describe('what a tap was meant for', () => {
  const faultOf = (of: Partial<Wish>) => {
    try {
      checkPlace(wish('a', of), place);
    } catch (error) {
      return error instanceof Refusal ? error.fault : error;
    }
    return undefined;
  };

  it('is the row and the plan that the screen showed, if it says so', () => {
    expect(faultOf({})).toBeUndefined();
    expect(faultOf({ from: 5, by: PLAN })).toBeUndefined();
    expect(fits(wish('a', { from: 4 }), place)).toBe(false);
    expect(fits(wish('a', { by: 'scarf/long/0/s/9' }), place)).toBe(false);
  });

  it('is told with the row that was meant and the one that is next', () => {
    expect(faultOf({ from: 3 })).toMatchObject({ code: 'place-moved', figures: { row: 4, nextRow: 6 } });
    expect(faultOf({ from: 3, by: PLAN })).toMatchObject({ code: 'place-moved' });
    expect(faultOf({ from: 0 })).toMatchObject({ figures: { row: 1 } });
    expect(faultOf({ from: 5, by: 'scarf/long/0/s/9' })).toMatchObject({ code: 'plan-moved' });
  });
});

describe('what this window has seen last', () => {
  const inHand = (key = LONG, garment = 'scarf') =>
    ({ place: { ...place, id: key }, plan: { id: PLAN }, garment: { id: garment } }) as never;

  it('is kept beside the box as ids, and read from there where it is whole', () => {
    const keep = memoryKeep();
    const first = lastSeenIn(keep, 'box');
    expect(first.guess()).toBeUndefined();
    first.shows(inHand());
    const seen = { make: LONG, plan: PLAN, garment: 'scarf' };
    expect(first.guess()).toEqual(seen);
    expect(readJson(keep, 'box.seen')).toEqual(seen);
    expect(lastSeenIn(keep, 'box').guess()).toEqual(seen);
    expect(lastSeenIn(keep, 'other').guess()).toBeUndefined();
    for (const field of ['make', 'plan', 'garment']) {
      writeJson(keep, 'box.seen', { ...seen, [field]: 5 });
      expect(lastSeenIn(keep, 'box').guess()).toBeUndefined();
    }
  });

  it('is written only where it is another make or another plan', () => {
    const keep = memoryKeep();
    const seen = lastSeenIn(keep, 'box');
    seen.shows(inHand());
    dropKey(keep, 'box.seen');
    seen.shows(inHand());
    expect(readJson(keep, 'box.seen')).toBeNull();
    seen.shows(inHand('scarf/cuff/0/1' as never));
    expect(readJson(keep, 'box.seen')).toMatchObject({ make: 'scarf/cuff/0/1' });
    seen.shows({ ...(inHand('scarf/cuff/0/1' as never) as object), plan: { id: 'other' } } as never);
    expect(readJson(keep, 'box.seen')).toMatchObject({ plan: 'other' });
  });

  it('is what was read at the opening until something changes, for the make that was asked for', () => {
    const seen = lastSeenIn(undefined, 'box');
    const read = inHand();
    seen.opened(undefined, read);
    expect(seen.atOpening(undefined)).toBe(read);
    expect(seen.atOpening(LONG)).toBe(read);
    expect(seen.atOpening('scarf/cuff/0/1')).toBeUndefined();
    seen.changed();
    expect(seen.atOpening(LONG)).toBeUndefined();
    seen.opened(LONG, undefined);
    expect(seen.atOpening(LONG)).toBeUndefined();
    seen.opened(LONG, read);
    expect(seen.atOpening(undefined)).toBeUndefined();
  });

  it('is what the screen was given, where that is asked for again', () => {
    const seen = lastSeenIn(undefined, 'box');
    expect(seen.shown(undefined)).toBeUndefined();
    const read = inHand();
    expect(seen.shows(read)).toBe(read);
    expect([seen.shown(undefined), seen.shown(LONG), seen.shown('scarf/cuff/0/1')]).toEqual([
      read,
      read,
      undefined,
    ]);
    seen.saw(place);
    expect(seen.place(LONG)).toBe(place);
    expect(seen.place('scarf/cuff/0/1')).toBeUndefined();
  });
});

describe('the small store beside the box', () => {
  it('has the keys that begin so, and says whether it kept what it was given', () => {
    const keep = memoryKeep();
    expect([
      writeJson(keep, `${heldIn('box')}a`, 1),
      writeJson(keep, 'box.seen', 2),
      writeJson(undefined, 'x', 3),
    ]).toEqual([true, true, false]);
    expect(keysFrom(keep, heldIn('box'))).toEqual(['box.held.a']);
    expect(keysFrom(undefined, 'box')).toEqual([]);
    const refusing = {
      ...keep,
      key: () => {
        throw new Error('refused');
      },
      length: 1,
    };
    expect(keysFrom(refusing as never, 'box')).toEqual([]);
    expect(readJson(undefined, 'x')).toBeNull();
    dropKey(keep, 'box.seen');
    expect(readJson(keep, 'box.seen')).toBeNull();
  });
});

describe('what the device knows of its box', () => {
  it('is nothing at first, and of odd numbers nothing', () => {
    const keep = memoryKeep();
    const none = { garments: 0, entries: 0, backupAt: 0, backupEntries: 0 };
    expect(sentinelIn(keep, 'box').read()).toEqual(none);
    writeJson(keep, 'box.sentinel', { garments: 'x', entries: 4, backupAt: null, backupEntries: 2 });
    expect(sentinelIn(keep, 'box').read()).toEqual({ ...none, entries: 4, backupEntries: 2 });
    keep.setItem('box.sentinel', '{"garments":1e999,"entries":3}');
    expect(sentinelIn(keep, 'box').read()).toEqual({ ...none, entries: 3 });
  });

  it('is written at once, or with what comes next, each change once', async () => {
    const keep = memoryKeep();
    const sentinel = sentinelIn(keep, 'box');
    const one = (was: { entries: number }) => ({ entries: was.entries + 1 });
    sentinel.change(one, true);
    expect(readJson(keep, 'box.sentinel')).toBeNull();
    expect(sentinel.read().entries).toBe(1);
    sentinel.change(one);
    expect(readJson(keep, 'box.sentinel')).toMatchObject({ entries: 2 });
    sentinel.change(one, true);
    await new Promise((done) => setTimeout(done));
    expect(readJson(keep, 'box.sentinel')).toMatchObject({ entries: 3 });
    expect(sentinel.read().entries).toBe(3);
  });
});
