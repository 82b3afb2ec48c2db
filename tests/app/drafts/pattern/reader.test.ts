import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { emptyDraft } from '../../../../src/app/drafts/pattern/draft.ts';
import { type Manner, withWorkers } from '../../off-thread/fake-worker.ts';
import { openApp } from '../../open-app.ts';

/** A text, and the stitches after its one row. */
const scarf = (stitches: number) => `SCARF\nCast on ${stitches} sts.\nRow 1: Knit.\nBind off.`;

describe('a text that takes long to read', () => {
  const manner: { now: Manner } = { now: 'answers' };
  beforeEach(async () => {
    await openApp();
    manner.now = 'answers';
    withWorkers(manner);
  });
  afterEach(() => vi.unstubAllGlobals());

  async function reader() {
    const read = await import('../../../../src/app/drafts/pattern/reader.ts');
    read.pattern.value = { ...emptyDraft, text: scarf(10) };
    return read;
  }

  it('makes way for the one that is typed after it', async () => {
    const at = await reader();
    manner.now = 'is deep in work';
    const first = at.settle();
    manner.now = 'answers';
    at.change({ text: scarf(12) });
    await at.settle();
    await first;
    expect(at.read.value?.pieces[0]?.recipe.parts[0]?.from).toEqual({ castOn: 12 });
    expect(at.reading.value).toBe('read');
  });

  it('can be stopped, which is said, and read after all', async () => {
    const at = await reader();
    at.change({ text: scarf(14) });
    manner.now = 'is deep in work';
    const first = at.settle();
    at.stopReading();
    await first;
    expect(at.reading.value).toBe('stopped');
    manner.now = 'answers';
    await at.settle();
    expect(at.read.value?.pieces[0]?.recipe.parts[0]?.from).toEqual({ castOn: 14 });
    expect(at.reading.value).toBe('read');
  });

  it('that is longer than any that is read says how much of it is left over', async () => {
    const at = await reader();
    at.change({ text: scarf(16).padEnd(400_123, '\n') });
    await at.settle();
    expect(at.read.value?.unreadCharacters).toBe(123);
  });
});

describe('what is typed', () => {
  beforeEach(async () => {
    await openApp();
    withWorkers({ now: 'answers' });
  });
  afterEach(() => {
    vi.useRealTimers();
    vi.unstubAllGlobals();
  });

  it('is read once she pauses, and not while she goes on typing', async () => {
    const at = await import('../../../../src/app/drafts/pattern/reader.ts');
    at.pattern.value = { ...emptyDraft, text: scarf(10), size: 0 };
    await at.settle();
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    const sizeAfter = (ms: number) => {
      vi.advanceTimersByTime(ms);
      return at.options.value.size;
    };
    at.change({ size: 1 });
    expect(sizeAfter(100)).toBe(0);
    at.change({ size: 2 });
    // 180 ms after the first letter, 100 after the second
    expect(sizeAfter(100)).toBe(0);
    expect(sizeAfter(79)).toBe(0);
    expect(sizeAfter(1)).toBe(2);
    vi.useRealTimers();
    await at.settle();
  });
});
