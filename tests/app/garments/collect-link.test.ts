import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { collectLink } from '../../../src/app/garments/collect-link.ts';
import { partsOfLink } from '../../../src/store/share/link-parts.ts';
import { memoryKeep } from '../../store/beside/memory-keep.ts';

/** The codes of one garment, photographed one by one, each opening the app anew. */

const KEY = 'ridgeline.link-parts';
const text = '1.the-text-of-a-garment-that-has-no-room-in-one-code_at-all';
const parts = partsOfLink(text, 45) ?? [];
const other = partsOfLink(`${text}-2`, 45) ?? [];

let keep = memoryKeep();
beforeEach(() => {
  keep = memoryKeep();
  vi.stubGlobal('localStorage', keep);
});
afterEach(() => vi.unstubAllGlobals());

const taken = (n: number, of = parts) => collectLink(of[n - 1] ?? '');

describe('a link in several codes', () => {
  it('is of three here', () => expect([parts.length, other.length]).toEqual([3, 3]));

  it('is whole once each was taken, in any order, and then nothing of it lies about', () => {
    for (const order of [
      [1, 2, 3],
      [3, 1, 2],
      [2, 3, 1],
    ]) {
      const [first = 0, second = 0, last = 0] = order;
      expect(taken(first)).toEqual({ n: first, of: 3, missing: [1, 2, 3].filter((n) => n !== first) });
      expect(taken(second)).toEqual({ n: second, of: 3, missing: [last] });
      expect(taken(last)).toEqual({ text });
      expect(keep.getItem(KEY)).toBeNull();
    }
  });

  it('has one that is taken twice once', () => {
    taken(2);
    expect(taken(2)).toEqual({ n: 2, of: 3, missing: [1, 3] });
    expect(JSON.parse(keep.getItem(KEY) ?? '')).toEqual([parts[1]]);
  });

  it('begins anew with a code of another link', () => {
    taken(1);
    taken(2);
    expect(taken(3, other)).toEqual({ n: 3, of: 3, missing: [1, 2] });
    expect(taken(3)).toEqual({ n: 3, of: 3, missing: [1, 2] });
  });

  it('passes over what lies in the keep and is no code', () => {
    for (const odd of [7, null, { n: 1 }, ['P.1.3', 5, null, parts[0]]]) {
      keep.setItem(KEY, JSON.stringify(odd));
      expect(taken(2)).toEqual({ n: 2, of: 3, missing: Array.isArray(odd) ? [3] : [1, 3] });
    }
    keep.setItem(KEY, '{');
    expect(taken(2)).toEqual({ n: 2, of: 3, missing: [1, 3] });
  });

  it('cannot be gathered where nothing can be kept: each is told as the first', () => {
    vi.stubGlobal('localStorage', undefined);
    taken(1);
    expect(taken(2)).toEqual({ n: 2, of: 3, missing: [1, 3] });
  });
});

describe('a link in one', () => {
  it('is as it is, and leaves what was gathered', () => {
    taken(1);
    expect(collectLink(text)).toEqual({ text });
    expect(collectLink('P.4.3.abc.text')).toEqual({ text: 'P.4.3.abc.text' });
    expect(taken(2)).toEqual({ n: 2, of: 3, missing: [3] });
  });
});
