import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { uniteNotes } from '../../../src/app/garments/unite-notes.ts';

describe('notes that were changed in two windows', () => {
  it('are what she typed where nothing was stored meanwhile', () => {
    expect(uniteNotes('washed cold', 'washed warm', 'washed cold')).toBe('washed warm');
    expect(uniteNotes('', 'first', '')).toBe('first');
  });

  it('are both, what was stored first, where both windows wrote', () => {
    expect(uniteNotes('', 'second, from B', 'first, from A')).toBe('first, from A\nsecond, from B');
    expect(uniteNotes('wool', 'wool\nsleeves 2 cm longer', 'wool\ncuff: 48')).toBe(
      'wool\ncuff: 48\nsleeves 2 cm longer',
    );
  });

  it('are what she typed where the same was stored, or all was taken away there', () => {
    expect(uniteNotes('wool', 'wool, washed', 'wool, washed')).toBe('wool, washed');
    expect(uniteNotes('wool', 'wool, washed', '')).toBe('wool, washed');
  });

  it('are what was stored where she added nothing but space', () => {
    expect(uniteNotes('wool', 'wool', 'silk')).toBe('silk');
    expect(uniteNotes('wool', 'wool \n', 'silk')).toBe('silk');
  });

  it('stand under each other, with no empty line between', () => {
    expect(uniteNotes('', '\n mine', 'theirs \n\n')).toBe('theirs\nmine');
    expect(uniteNotes('wool', 'silk', 'linen')).toBe('linen\nsilk');
  });

  it('hold every line of either, whatever stood there before', () => {
    const note = fc.stringMatching(/^[a-z]{1,12}$/);
    fc.assert(
      fc.property(note, note, note, (began, mine, theirs) => {
        const united = uniteNotes(began, `${began}\n${mine}`, `${began}\n${theirs}`).split('\n');
        expect(united).toEqual(expect.arrayContaining([began, mine, theirs]));
      }),
    );
  });
});
