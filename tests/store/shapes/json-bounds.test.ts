import { describe, expect, it } from 'vitest';
import { byId, oneOf, stableJson } from '../../../src/store/backup/stable.ts';
import { jsonTrouble } from '../../../src/store/shapes/json-guard.ts';

const limits = { depth: 2, values: 6, text: 3 };
const trouble = (value: unknown) => jsonTrouble(value, limits);

describe('a document that comes from elsewhere', () => {
  it('may hold as many values as are allowed, itself counted, and not one more', () => {
    expect(trouble([1, 2, 3, 4, 5])).toBeUndefined();
    expect(trouble([1, 2, 3, 4, 5, 6])).toEqual({ what: 'too many values', path: '' });
    expect(trouble({ a: 1, b: 2, c: 3, d: 4, e: 5 })).toBeUndefined();
    expect(trouble({ a: 1, b: 2, c: 3, d: 4, e: 5, f: 6 })).toEqual({ what: 'too many values', path: '' });
    expect(trouble({ a: [1, 2, 3, 4] })).toBeUndefined();
    expect(trouble({ a: [1, 2, 3, 4, 5] })).toEqual({ what: 'too many values', path: 'a' });
  });

  it('may be as deep as is allowed, and what is empty is no deeper', () => {
    expect(trouble([[1]])).toBeUndefined();
    expect(trouble([[[]]])).toBeUndefined();
    expect(trouble([[[1]]])).toEqual({ what: 'too deep', path: '0.0' });
  });

  it('may hold texts as long as is allowed, and numbers that are numbers, wherever they stand', () => {
    expect(trouble('abc')).toBeUndefined();
    expect(trouble('abcd')).toEqual({ what: 'text too long', path: '' });
    expect(trouble({ a: ['abcd'] })).toEqual({ what: 'text too long', path: 'a.0' });
    expect(trouble([Number.POSITIVE_INFINITY])).toEqual({ what: 'bad number', path: '0' });
    expect(trouble(Number.NaN)).toEqual({ what: 'bad number', path: '' });
    for (const plain of [null, true, 0, -1.5, '']) expect(trouble(plain)).toBeUndefined();
  });

  it.each(['__proto__', 'constructor', 'prototype'])('has no field by the name of %s', (key) => {
    expect(trouble(JSON.parse(`{"a":{"${key}":1}}`))).toEqual({ what: 'bad key', path: 'a' });
  });
});

describe('text of a value that is the same on every device', () => {
  it('does not depend on the order in which its fields were written, at any depth; a list keeps its own', () => {
    const one = { b: [{ d: 1, c: 2 }], a: null };
    const other = { a: null, b: [{ c: 2, d: 1 }] };
    expect(stableJson(one)).toBe('{"a":null,"b":[{"c":2,"d":1}]}');
    expect(stableJson(other)).toBe(stableJson(one));
    expect(stableJson([2, 1])).toBe('[2,1]');
    expect(stableJson(undefined)).toBe('null');
  });

  it('chooses one of two versions, the same whichever is named first', () => {
    const one = { rows: 2, name: 'a' };
    const other = { name: 'b', rows: 1 };
    expect(oneOf(one, other)).toBe(oneOf(other, one));
    expect(oneOf(one, { ...one })).toBe(one);
  });

  it('sorts by ids, of two with the same none before the other', () => {
    const items = [
      { id: 'b', n: 1 },
      { id: 'a', n: 2 },
      { id: 'b', n: 3 },
      { id: 'C', n: 4 },
    ];
    expect(byId(items).map(({ n }) => n)).toEqual([4, 2, 1, 3]);
    expect(items[0]?.id).toBe('b');
  });
});
