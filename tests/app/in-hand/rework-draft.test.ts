import { beforeEach, describe, expect, it } from 'vitest';
import { openCount } from '../../../src/app/in-hand/count.ts';
import { finishRow, openMake } from '../../../src/app/in-hand/knit.ts';
import { draftFrom, openSections, proposed, wishKinds } from '../../../src/app/in-hand/rework-draft.ts';
import { type InHand, inHand } from '../../../src/app/state.ts';
import { openApp } from '../open-app.ts';

const shown = (): InHand => {
  const now = inHand.value;
  if (!now) throw new Error('no make in hand');
  return now;
};

beforeEach(async () => {
  const { back } = await openApp();
  await openMake(back);
  await openCount(back);
});

describe('what can be wished of the rows to come', () => {
  it('before the first row is a count or a length, and no height, since nothing is there to measure', () => {
    expect(wishKinds(shown())).not.toContain('measured');
    expect(wishKinds(shown())).toContain('accept');
    expect(wishKinds(shown())).toContain('rows');
  });

  it('after a row is also the height that she measures', async () => {
    await finishRow();
    expect(wishKinds(shown()).slice(0, 2)).toEqual(['accept', 'measured']);
  });

  it('is of a stretch that has rows left, by its place in the recipe', () => {
    const [first] = openSections(shown());
    expect(first?.index).toBe(0);
    expect(first?.rows).toBeGreaterThan(0);
  });
});

describe('what has changed', () => {
  const saidBy = (query: string) => draftFrom(shown(), new URLSearchParams(query)).kind;

  it('is hers to say where the count agrees, and a count that differs where that led to it', () => {
    const planned = draftFrom(shown(), new URLSearchParams()).stitches;
    expect(planned).toBeGreaterThan(0);
    expect(saidBy('')).toBeUndefined();
    expect(saidBy(`stitches=${planned}`)).toBeUndefined();
    expect(saidBy('stitches=3')).toBe('accept');
    expect(saidBy('wish=shoulder')).toBe('shoulder');
  });
});

describe('a plan proposed', () => {
  it('of the count that is on the needle is none', () => {
    expect(proposed(shown(), draftFrom(shown(), new URLSearchParams()))).toBeUndefined();
  });

  it('of two rows more in a stretch has two rows more', () => {
    const draft = draftFrom(shown(), new URLSearchParams());
    const [first] = openSections(shown());
    const made = proposed(shown(), { ...draft, kind: 'rows', rows: (first?.rows ?? 0) + 2 });
    if (!made?.ok) throw new Error('not planned');
    expect(made.value.parts[0]?.part.rows).toHaveLength(shown().part.rows.length + 2);
  });
});
