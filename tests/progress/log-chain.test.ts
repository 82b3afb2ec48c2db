import { describe, expect, it } from 'vitest';
import type { LogEntry } from '../../src/progress/log.ts';
import { deviceOf, goneOnFrom, plansIn, toBeNamed } from '../../src/progress/log-chain.ts';

/** Entries as devices write them: the letters of the device, a dash and a name; rows unless told. */
const entry = (id: string, seq: number, more: Partial<LogEntry> = {}) =>
  ({
    id,
    seq,
    make: 'g/back/0/1',
    at: 0,
    kind: 'row',
    row: seq,
    ...more,
  }) as LogEntry;

/** Ids of what each entry went on from, by the entry's id. */
function chain(...entries: readonly LogEntry[]): Record<string, string | undefined> {
  const inOneOrder = goneOnFrom(entries);
  const inTheOther = goneOnFrom([...entries].reverse());
  for (const one of entries) expect(inTheOther(one)?.id).toBe(inOneOrder(one)?.id);
  return Object.fromEntries(entries.map((one) => [one.id, inOneOrder(one)?.id]));
}

describe('an entry went on from', () => {
  it('the one before it in number, on one device; the first from none', () => {
    expect(chain(entry('a-x', 1), entry('a-y', 2), entry('a-z', 3))).toEqual({
      'a-x': undefined,
      'a-y': 'a-x',
      'a-z': 'a-y',
    });
  });

  it('that of its own device, where another one has written the same number', () => {
    const found = chain(entry('a-1', 1), entry('a-2', 2), entry('b-2', 2), entry('a-3', 3), entry('b-3', 3));
    expect(found).toMatchObject({ 'a-2': 'a-1', 'b-2': 'a-1', 'a-3': 'a-2', 'b-3': 'b-2' });
  });

  it('the newest of its own device, where that wrote two under one number', () => {
    expect(chain(entry('a-1', 1), entry('a-2', 1), entry('a-3', 2))['a-3']).toBe('a-2');
  });

  it('the last one with a lower number where its own device has none, never one of the same number', () => {
    expect(chain(entry('a-1', 1), entry('a-2', 2), entry('c-2', 2), entry('b-4', 4))['b-4']).toBe('c-2');
    const beside = chain(entry('a-1', 1), entry('c-2', 2), entry('d-4', 4), entry('e-4', 4), entry('f-4', 4));
    expect(beside).toMatchObject({ 'd-4': 'c-2', 'e-4': 'c-2', 'f-4': 'c-2' });
    expect(chain(entry('a-1', 1), entry('b-1', 1))['b-1']).toBeUndefined();
  });

  it('the one that it names, be that of another device, a lower number or its neighbour', () => {
    const log = [entry('a-1', 1), entry('a-2', 2), entry('b-2', 2)];
    expect(chain(...log, entry('b-3', 3, { follows: 'a-2' }))['b-3']).toBe('a-2');
    expect(chain(...log, entry('b-3', 3, { follows: 'a-1' }))['b-3']).toBe('a-1');
  });

  it('what the numbers tell where the one named is not there, is itself, or comes after it', () => {
    const log = [entry('a-1', 1), entry('a-2', 2), entry('b-4', 4)];
    for (const follows of ['nowhere', 'a-3', 'b-4'])
      expect(chain(...log, entry('a-3', 3, { follows }))['a-3'], follows).toBe('a-2');
  });
});

describe('the plan of which an entry’s row is one', () => {
  it('is the one that it names, else that of the entry it went on from, and so on', () => {
    const log = [
      entry('a-1', 1, { plan: 'g/p/0/s/1-p' }),
      entry('a-2', 2),
      entry('a-3', 3, { kind: 'rework', plan: 'g/p/0/s/1-q' }),
      entry('b-3', 3),
      entry('b-4', 4),
      entry('a-4', 4),
    ];
    const planOf = plansIn([...log].reverse());
    expect(log.map(planOf)).toEqual(['p', 'p', 'q', 'p', 'p', 'q'].map((name) => `g/p/0/s/1-${name}`));
    expect(plansIn([entry('a-1', 1)])(entry('a-1', 1))).toBeUndefined();
  });
});

describe('the next entry has to name the one that tells the place', () => {
  it('not while the numbers tell it', () => {
    expect(toBeNamed([])).toBeUndefined();
    expect(toBeNamed([entry('a-1', 1)])).toBeUndefined();
    expect(toBeNamed([entry('a-2', 2), entry('a-1', 1)])).toBeUndefined();
    expect(toBeNamed([entry('a-1', 1), entry('a-2', 2, { kind: 'note', row: 1 })])).toBeUndefined();
    expect(toBeNamed([entry('a-1', 1, { kind: 'note' }), entry('a-2', 2, { kind: 'note' })])).toBeUndefined();
  });

  it('where two of the same number come last', () => {
    expect(toBeNamed([entry('b-2', 2), entry('a-1', 1), entry('a-2', 2)])).toBe('b-2');
    expect(toBeNamed([entry('a-1', 1), entry('a-2', 2), entry('b-2', 2, { kind: 'note' })])).toBe('a-2');
  });

  it('where what comes last is a note of the way that is not shown', () => {
    const parted = [entry('a-1', 1), entry('a-2', 2), entry('b-2', 2, { row: 9 })];
    expect(toBeNamed([...parted, entry('a-3', 3, { kind: 'note' })])).toBe('b-2');
    expect(toBeNamed([...parted, entry('b-3', 3, { kind: 'note' })])).toBeUndefined();
  });
});

it('the letters of a device stand before the first dash of an id', () => {
  expect(deviceOf({ id: 'abc-1-2' })).toBe('abc');
});
