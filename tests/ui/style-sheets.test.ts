import { describe, expect, it } from 'vitest';
import { sheets } from './sheets.ts';

describe('the style sheets', () => {
  // with one such rule anywhere, each element that comes has the next one styled anew with all that is in it
  it('have no rule for whatever follows something', () => {
    const followsAny = (text: string) => /[+~]\s*[*:]/.test(text);
    expect(followsAny('.a > * + * {}')).toBe(true);
    expect(followsAny('.a ~ :not(.b) {}')).toBe(true);
    expect(followsAny('.a + .b {}')).toBe(false);
    expect(sheets.length).toBeGreaterThan(20);
    expect(sheets.filter(({ text }) => followsAny(text)).map(({ path }) => path)).toEqual([]);
  });

  // With :has() at a frame, every element that comes or goes in it asks all that are around it, and one rule for whatever
  // is in it styles its whole page anew: in hand that was more than half of what a tap's styles cost. What the frame
  // has to know it is told by <Shows>. An argument without a name is asked by every element that comes, wherever it is.
  it('ask no frame what it has, ask by names, and have no rule for whatever is in it', () => {
    expect(isWide('.screen-main:has(> .b) .c {}')).toBe(true);
    expect(isWide('.knitting:has(.b) {}')).toBe(true);
    expect(isWide('.a:has(> .b) > * {}')).toBe(true);
    expect(isWide('.a:has(> .b) > :not(.b) {}')).toBe(true);
    expect(isWide('.a:has(:checked) {}')).toBe(true);
    expect(isWide('.a:has(> :nth-child(4):last-child) {}')).toBe(true);
    expect(isWide('.a:has(.b, input:checked) > .c {}')).toBe(false);
    expect(isWide('.a > :has(> [open]) {}')).toBe(false);
    expect(sheets.filter(({ text }) => text.includes(':has(')).length).toBeGreaterThan(3);
    expect(sheets.filter(({ text }) => isWide(text)).map(({ path }) => path)).toEqual([]);
  });
});

/** Whether a frame has a :has(), or a compound of one, or of what follows one, has no name (no element, class or attribute). */
const isWide = (text: string): boolean =>
  /\.(?:screen|knitting|count-page)[\w-]*:has\(/.test(text) ||
  [...text.matchAll(/:has\(((?:[^()]|\([^()]*\))*)\)((?:[^,{()]|\([^()]*\))*)/g)].some(
    ([, asked = '', after = '']) => {
      const names = (compound: string) => /^(?::is\()?[^:*]/.test(compound);
      const compounds = (selector: string) => selector.split(/[\s>+~]+/).filter(Boolean);
      const inIt = after.startsWith(' ') ? compounds(after) : compounds(after).slice(1);
      return (
        !asked
          .split(/,(?![^(]*\))/)
          .flatMap(compounds)
          .every(names) || !inIt.every(names)
      );
    },
  );
