import { describe, expect, it } from 'vitest';
import { adjustablePaths, adjusted, figureAt, withFigure } from '../../../src/knit/garment/adjust.ts';
import { even } from './spelled.ts';

/* Figures of one size, and of all of them, that are set otherwise than the rules have them. */
describe('a figure of a design by its path', () => {
  it('is that of the design, or of one of its parts', () => {
    expect(adjustablePaths.map((path) => `${path} ${figureAt(even, path)}`)).toEqual([
      'lengthMm 560',
      'sleeve.lengthMm undefined',
      'ease.chest 40',
      'ease.upperArm 20',
      'ease.wrist 40',
      'ease.armholeDepth 20',
      'neck.widthMm 160',
      'neck.depthMm 80',
      'neck.backDepthMm 24',
      'shoulderDropMm 24',
      'hem.heightMm 40',
      'cuff.heightMm 40',
      'neckband.heightMm 24',
    ]);
  });

  it('is none where it is a word, a part, no number, or nothing', () => {
    for (const path of ['kind', 'neck', 'neck.shape', 'nothing', 'nothing.there'])
      expect(figureAt(even, path), path).toBeUndefined();
    for (const mm of [Number.NaN, Number.POSITIVE_INFINITY])
      expect(figureAt({ ...even, lengthMm: mm }, 'lengthMm')).toBeUndefined();
  });

  it('is set there, and nothing else', () => {
    expect(withFigure(even, 'lengthMm', 600)).toEqual({ ...even, lengthMm: 600 });
    expect(withFigure(even, 'neck.shape', 'V')).toEqual({ ...even, neck: { ...even.neck, shape: 'V' } });
    expect(withFigure(even, 'sleeve.lengthMm', 400)).toEqual({
      ...even,
      sleeve: { ...even.sleeve, lengthMm: 400 },
    });
  });
});

describe('what is set for a size', () => {
  const adjustments = [
    { path: 'lengthMm', mm: 610, size: 'M' },
    { path: 'lengthMm', mm: 600 },
    { path: 'hem.heightMm', mm: 50 },
    { path: 'lengthMm', mm: 620, size: 'L' },
  ] as const;
  it.each([
    ['M', 610],
    ['L', 620],
    ['S', 600],
  ])('goes before what is set for all: %s is %i mm long', (size, lengthMm) => {
    expect(adjusted(even, adjustments, size)).toEqual({
      ...even,
      lengthMm,
      hem: { ...even.hem, heightMm: 50 },
    });
  });

  it('is nothing where nothing is set', () => {
    expect(adjusted(even, [], 'S')).toEqual(even);
  });
});
