import { describe, expect, it } from 'vitest';
import { draftKey, draftsIn, lastWriter } from '../../../../src/app/drafts/editor/draft.ts';
import { blankGarment } from '../../../../src/app/drafts/editor/garment-form.ts';

const draft = (garment: string, at: number) => ({ version: 1, garment, at, form: blankGarment }) as const;

describe('drafts in the settings', () => {
  it('are found among the other settings, the latest first, the new one told apart', () => {
    const settings = {
      language: 'de',
      [draftKey(undefined)]: draft('g2', 5),
      [draftKey('g1')]: draft('g1', 9),
      [draftKey('g3')]: null,
    };
    expect(draftsIn(settings).map(({ garment, isNew }) => [garment, isNew])).toEqual([
      ['g1', false],
      ['g2', true],
    ]);
  });
});

describe('writing while she types', () => {
  it('one write runs at a time, the newest value is always the last one written, those between are left out', async () => {
    const written: number[] = [];
    const gates: (() => void)[] = [];
    const give = lastWriter<number>(async (value) => {
      await new Promise<void>((open) => gates.push(open));
      written.push(value);
      return true;
    });
    const all = Promise.all([give(1), give(2), give(3)]);
    expect(gates).toHaveLength(1);
    gates[0]?.();
    await new Promise((resolve) => setTimeout(resolve));
    gates[1]?.();
    expect(await all).toEqual([true, true, true]);
    expect(written).toEqual([1, 3]);
  });

  it('a write that fails is told, and the next one is tried', async () => {
    const answers = [false, true];
    const give = lastWriter<string>(async () => answers.shift() ?? false);
    expect(await give('a')).toBe(false);
    expect(await give('b')).toBe(true);
  });
});
