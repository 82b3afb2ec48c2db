import { describe, expect, it } from 'vitest';
import {
  decreaseFor,
  leansLeftAt,
  madeInside,
  makeFor,
  topOf,
  widthOf,
} from '../../../src/knit/piece/edge-stitch.ts';

describe('one decrease or increase', () => {
  const work = (by: number, inset: number, lean: 'mirrored' | 'plain' = 'mirrored') => ({ by, inset, lean });

  it('is worked over so many stitches with its inset', () => {
    expect(widthOf(undefined)).toBe(0);
    expect([0, 1, 3].map((inset) => widthOf(work(-1, inset)))).toEqual([2, 3, 5]);
    expect([0, 1, 3].map((inset) => widthOf(work(-2, inset)))).toEqual([3, 4, 6]);
    // made between two stitches; or in the edge stitch itself; two of them on either side of a stitch
    expect([0, 1, 3].map((inset) => widthOf(work(1, inset)))).toEqual([1, 1, 3]);
    expect([0, 1, 3].map((inset) => widthOf(work(2, inset)))).toEqual([1, 2, 4]);
    expect([0, 1, 3].map((inset) => madeInside(work(1, inset)))).toEqual([0, 1, 3]);
    expect([0, 1, 3].map((inset) => madeInside(work(2, inset)))).toEqual([0, 2, 4]);
  });

  it('leans along its edge: to the left at the right edge as seen from the right side', () => {
    expect((['k', 'p'] as const).map((face) => leansLeftAt('right', 'RS', face))).toEqual([true, true]);
    expect((['k', 'p'] as const).map((face) => leansLeftAt('left', 'RS', face))).toEqual([false, false]);
    // knitted from the back what leans left there leans right in front
    expect((['k', 'p'] as const).map((face) => leansLeftAt('right', 'WS', face))).toEqual([false, true]);
    expect((['k', 'p'] as const).map((face) => leansLeftAt('left', 'WS', face))).toEqual([true, false]);
  });

  it('has its name (the trade’s, common practice)', () => {
    const names = (by: number) =>
      (['k', 'p'] as const).flatMap((face) => [true, false].map((left) => decreaseFor(by, face, left)));
    expect(names(-1)).toEqual(['ssk', 'k2tog', 'ssp', 'p2tog']);
    expect(names(-2)).toEqual(['sk2p', 'k3tog', 'sssp', 'p3tog']);
    const made = (edgeAt: 'right' | 'left', side: 'RS' | 'WS') => makeFor('mirrored', edgeAt, side, 'k');
    expect([made('right', 'RS'), made('left', 'RS'), made('right', 'WS'), made('left', 'WS')]).toEqual([
      'm1r',
      'm1l',
      'm1l',
      'm1r',
    ]);
    expect(makeFor('plain', 'right', 'RS', 'k')).toBe('m1');
    expect(makeFor('mirrored', 'right', 'RS', 'p')).toBe('m1p');
    expect(makeFor('plain', 'right', 'RS', 'p')).toBe('m1p');
  });

  it('has the outer stitch on top where it follows its edge, else the left one', () => {
    const top = (at: 'right' | 'left', side: 'RS' | 'WS', lean: 'mirrored' | 'plain') =>
      topOf([5, 6, 7], lean, at, side);
    expect([top('right', 'RS', 'mirrored'), top('left', 'RS', 'mirrored')]).toEqual([5, 7]);
    expect([top('right', 'WS', 'mirrored'), top('left', 'WS', 'mirrored')]).toEqual([7, 5]);
    expect([top('right', 'RS', 'plain'), top('left', 'RS', 'plain')]).toEqual([7, 7]);
    expect([top('right', 'WS', 'plain'), top('left', 'WS', 'plain')]).toEqual([5, 5]);
    expect(topOf([], 'plain', 'right', 'RS')).toBeUndefined();
  });
});
