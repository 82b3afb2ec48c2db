import { describe, expect, it } from 'vitest';
import { sheets } from './sheets.ts';
import { colour, contrast, themes } from './tokens.ts';

/** Read while knitting, at arm's length, by lamplight: WCAG 2.2 success criterion 1.4.6 (AAA). */
const readWhileKnitting = [
  ['ink', 'ground'],
  ['ink', 'raised'],
  ['ink', 'sunk'],
  ['ink', 'place-tint'],
  ['ink', 'shaping-tint'],
  ['ink', 'warning-tint'],
  ['soft', 'ground'],
  ['soft', 'raised'],
  ['place', 'ground'],
  ['place', 'raised'],
  ['place-ink', 'place'],
  ['shaping', 'ground'],
  ['shaping', 'raised'],
  ['shaping', 'shaping-tint'],
  ['shaping-ink', 'shaping'],
  ['warning-ink', 'warning'],
] as const;

/** Everything else that is read: 1.4.3 (AA). */
const readOtherwise = [
  ['soft', 'sunk'],
  ['soft', 'place-tint'],
  ['soft', 'shaping-tint'],
  ['soft', 'warning-tint'],
  ['place', 'place-tint'],
  ['place', 'sunk'],
  ['shaping', 'sunk'],
] as const;

/** Edges of controls and drawings: 1.4.11 (AA), and the ring of focus. */
const seen = [
  ['line', 'ground'],
  ['line', 'raised'],
  ['line', 'sunk'],
  ['place', 'ground'],
  ['place', 'sunk'],
] as const;

const tooLow = (pairs: readonly (readonly [string, string])[], least: number) =>
  themes.flatMap((theme) =>
    pairs
      .map(([on, under]) => ({
        pair: `${theme}: ${on} on ${under}`,
        ratio: contrast(colour(theme, on), colour(theme, under)),
      }))
      .filter(({ ratio }) => ratio < least)
      .map(({ pair, ratio }) => `${pair} is ${ratio.toFixed(2)}`),
  );

describe('contrast, computed from tokens.css', () => {
  it('is measured as WCAG measures it: black on white is 21, #777777 on white just fails 4.5', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
    expect(contrast('#777777', '#ffffff')).toBeCloseTo(4.48, 2);
    expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
  });

  it('is at least 7 : 1 for what is read while knitting, by day, by night and dimmed', () => {
    expect(tooLow(readWhileKnitting, 7)).toEqual([]);
  });

  it('is at least 7 : 1 on the pad’s dark cloth in the evening', () => {
    expect(contrast(colour('dimmed', 'place'), colour('dimmed', 'place-tint'))).toBeGreaterThanOrEqual(7);
    expect(contrast(colour('dimmed', 'shaping'), colour('dimmed', 'shaping-tint'))).toBeGreaterThanOrEqual(7);
  });

  it('is at least 4.5 : 1 for everything else that is read', () => {
    expect(tooLow(readOtherwise, 4.5)).toEqual([]);
  });

  it('is at least 3 : 1 for edges and the ring of focus', () => {
    expect(tooLow(seen, 3)).toEqual([]);
  });

  it('holds everywhere, for no style sheet names a colour that is not a token', () => {
    const bound = sheets.filter(({ path }) => !/(tokens|print)\.css$/.test(path));
    expect(bound.length).toBeGreaterThan(12);
    const strays = bound.filter(({ text }) => /#[0-9a-f]{3,8}\b|\b(rgba?|hsla?|oklch|lab)\(/i.test(text));
    expect(strays.map(({ path }) => path)).toEqual([]);
  });
});
