import { describe, expect, it } from 'vitest';
import { lex } from '../../../src/knit/row/read/lex.ts';
import {
  compiled,
  fill,
  isStop,
  matchAt,
  type SlotReader,
  wordsOf,
} from '../../../src/knit/written/template.ts';

/* Sentences with places, taken apart and put together by hand. */

describe('a sentence is filled in', () => {
  it('with texts and numbers, a nought too; a place without a value is empty', () => {
    expect(fill('{a} of {b}', { a: 0, b: 'two' })).toBe('0 of two');
    expect(fill('{a} of {b}.', { a: 1 })).toBe('1 of .');
    expect(fill('{a}, {a} and {a}', { a: 3 })).toBe('3, 3 and 3');
  });

  it('with what stands in brackets only where each of its places has a value', () => {
    const said = 'Do {a}[, {b} of {c}][, {d} more].';
    expect(fill(said, { a: 1, b: 2, c: 3, d: 4 })).toBe('Do 1, 2 of 3, 4 more.');
    expect(fill(said, { a: 1, b: 2, d: 0 })).toBe('Do 1, 0 more.');
    expect(fill(said, { a: 1, b: 2, c: 3 })).toBe('Do 1, 2 of 3.');
    expect(fill(said, { a: 1 })).toBe('Do 1.');
    expect(fill('Do it[ now].', {})).toBe('Do it now.');
  });
});

describe('the words of a sentence', () => {
  it('are in small letters, its figures and commas among them, its stops left out', () => {
    expect(wordsOf('Sew it, twice.')).toEqual(['sew', 'it', ',', 'twice']);
    expect(wordsOf('. Sew . it .')).toEqual(['sew', 'it']);
    expect(lex('a. b').map(isStop)).toEqual([false, true, false]);
  });
});

describe('the ways to say the sentences of a table', () => {
  const ways = (table: Readonly<Record<string, string>>) =>
    compiled(table).map(
      ({ key, parts }) =>
        `${key}: ${parts.map((part) => ('word' in part ? part.word : `{${part.slot}}`)).join(' ')}`,
    );

  it('are with and without what may be left out, the longest first', () => {
    expect(ways({ a: 'Go[ on][, {n} times]' })).toEqual([
      'a: go on , {n} times',
      'a: go , {n} times',
      'a: go on',
      'a: go',
    ]);
    expect(ways({ a: 'Go', b: 'Go far away', c: 'Go far' })).toEqual([
      'b: go far away',
      'c: go far',
      'a: go',
    ]);
  });

  it('have their places in their order', () => {
    expect(ways({ a: '{a} to {b}.' })).toEqual(['a: {a} to {b}']);
    expect(ways({ a: 'From {a}{b}' })).toEqual(['a: from {a} {b}']);
  });
});

describe('a sentence is found', () => {
  const number: SlotReader = (tokens, at) => {
    const token = tokens[at];
    return token?.kind === 'number' ? { value: token.value, to: at + 1 } : undefined;
  };
  const table = {
    edges: '{first} rows to {second} rows[, every {n}]',
    band: 'Work the {band} as given',
    ends: 'Sew the {band}',
    into: 'Join {a} to {b}',
    so: 'Lay it {n} {m}',
  };
  const found = (text: string, at = 0) =>
    matchAt(compiled(table), lex(text), at, { first: number, second: number, n: number });

  it('with its figures, and where it ends', () => {
    expect(found('60 rows to 62 rows')).toEqual({ key: 'edges', values: { first: 60, second: 62 }, to: 5 });
    expect(found('60 rows to 62 rows, every 30')).toEqual({
      key: 'edges',
      values: { first: 60, second: 62, n: 30 },
      to: 8,
    });
    // what may be left out is not there as a whole
    expect(found('60 rows to 62 rows, every other')).toMatchObject({ to: 5 });
    expect(found('sew 60 rows to 62 rows', 1)).toEqual({
      key: 'edges',
      values: { first: 60, second: 62 },
      to: 6,
    });
  });

  it('not where a word or a figure is another, or is missing', () => {
    for (const other of ['60 rows to 62', '60 rows to rows', '60 sts to 62 rows', 'rows to 62 rows', ''])
      expect(found(other), other).toBeUndefined();
    expect(found('60 rows to 62 rows', 1)).toBeUndefined();
  });

  it('with a name of one word to six, up to the word that follows it', () => {
    const named = (words: number) =>
      found(`Work the ${Array.from({ length: words }, (_, i) => `n${'abcdefgh'[i]}`).join(' ')} as given`);
    expect(named(1)).toEqual({ key: 'band', values: { band: 'na' }, to: 5 });
    expect(named(2)).toEqual({ key: 'band', values: { band: 'na nb' }, to: 6 });
    expect(named(6)).toEqual({ key: 'band', values: { band: 'na nb nc nd ne nf' }, to: 10 });
    expect(named(7)).toBeUndefined();
    expect(named(0)).toBeUndefined();
    expect(found('Work the left front band')).toBeUndefined();
  });

  it('not with a name at its end, or before another place: nothing says where it stops', () => {
    expect(found('Sew the neckband')).toBeUndefined();
    expect(found('Join back to sleeve')).toBeUndefined();
    expect(found('Lay it 3 4')).toBeUndefined();
  });
});
