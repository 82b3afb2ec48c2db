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
});
