import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { drawLate, drawNoMore, type LateJob } from '../../src/pace/late-queue.ts';
import type { Turn } from '../../src/pace/order.ts';

describe('what is drawn late', () => {
  let asked: FrameRequestCallback[] = [];
  /** by frame: the turns that were drawn after it */
  let drawn: Turn[][] = [];

  const part = (turn: Turn): LateJob => ({ turn, draw: () => drawn.at(-1)?.push(turn) });

  const frames = (count: number) => {
    for (let n = 0; n < count; n += 1) {
      drawn.push([]);
      const now = asked;
      asked = [];
      for (const call of now) call(0);
      expect(drawn.at(-1)).toEqual([]);
      vi.runAllTimers();
    }
    return drawn;
  };

  beforeEach(() => {
    drawn = [];
    vi.useFakeTimers();
    vi.stubGlobal('requestAnimationFrame', (call: FrameRequestCallback) => asked.push(call));
  });

  afterEach(() => {
    frames(20);
    vi.unstubAllGlobals();
    vi.useRealTimers();
  });

  it('comes one part at a time in the order of the list, after its frame, with a free frame between', () => {
    for (const turn of ['map', 'pad', 'ladder'] as const) drawLate(part(turn));
    expect(frames(8)).toEqual([[], [], ['pad'], [], ['ladder'], [], ['map'], []]);
  });

  it('waits anew when something changes meanwhile, and is drawn once', () => {
    const first = part('pad');
    drawLate(first);
    drawLate(part('map'));
    frames(2);
    drawLate(first);
    expect(frames(6)).toEqual([[], [], [], [], ['pad'], [], ['map'], []]);
  });

  it('asks for no frame when nothing waits, and draws nothing that is gone', () => {
    const gone = part('pad');
    drawLate(gone);
    drawNoMore(gone);
    expect(frames(4).flat()).toEqual([]);
    expect(asked).toEqual([]);
  });
});
