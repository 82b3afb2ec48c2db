import { describe, expect, it } from 'vitest';
import { keptDraft, lastWriter } from '../../../../src/app/drafts/kept/kept-draft.ts';
import { emptyDraft } from '../../../../src/app/drafts/pattern/draft.ts';
import { store } from '../../../../src/app/store.ts';
import { fault, refuse } from '../../../../src/knit/fault.ts';
import { given } from '../../../store/scenario.ts';
import { openApp } from '../../open-app.ts';

const pattern = { ...emptyDraft, name: 'Bettsocken', text: 'Cast on 40 sts.' };

describe('a draft that is kept', () => {
  it('is on disk once it says so, and is read back as it was typed', async () => {
    await openApp();
    const kept = keptDraft('patternDraft');
    const keeping = kept.keep('pattern new', pattern);
    expect(kept.keeping.value).toBe('keeping');
    await keeping;
    expect(kept.keeping.value).toBe('kept');
    const settings = given(await (await store()).settings());
    expect(await kept.left(settings['pattern new'])).toEqual({ draft: pattern });
    expect(kept.unread.value).toBeUndefined();
  });

  it('says that it failed where the store does not take it', async () => {
    await openApp((open) => ({ ...open, setSetting: async () => refuse(fault('storage-full')) }));
    const kept = keptDraft('patternDraft');
    await kept.keep('pattern new', pattern);
    expect(kept.keeping.value).toBe('failed');
  });

  it('that was never typed is nothing, and no fault', async () => {
    const kept = keptDraft('patternDraft');
    expect(await kept.left(undefined)).toEqual({ draft: undefined });
    expect(await kept.left(null)).toEqual({ draft: undefined });
    expect(kept.unread.value).toBeUndefined();
  });

  it('that cannot be read is told with what was stored, until it is begun anew', async () => {
    const kept = keptDraft('patternDraft');
    const stored = { ...pattern, version: 9 };
    expect(await kept.left(stored)).toBeUndefined();
    expect(kept.unread.value).toMatchObject({ stored, fault: { code: 'kept-unreadable' } });
    expect(kept.beginAnew()).toBe(stored);
    expect(kept.unread.value).toBeUndefined();
  });

  it('of one setting neither waits for another nor makes way for it', async () => {
    await openApp();
    const kept = keptDraft('patternDraft');
    await Promise.all([
      kept.write('pattern new', { ...pattern, name: 'a' }),
      kept.write('pattern other', { ...pattern, name: 'b' }),
      kept.write('pattern new', { ...pattern, name: 'c' }),
    ]);
    const settings = given(await (await store()).settings());
    expect(settings).toMatchObject({ 'pattern new': { name: 'c' }, 'pattern other': { name: 'b' } });
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
