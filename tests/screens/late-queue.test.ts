import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { drawLate, drawNoMore, type LateJob } from '../../src/screens/knitting/late-queue.ts';

describe('what is drawn late', () => {
  let asked: FrameRequestCallback[] = [];
  /** by frame: the turns that were drawn after it */
  let drawn: number[][] = [];

  const part = (turn: number): LateJob => ({ turn, draw: () => drawn.at(-1)?.push(turn) });

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

  it('comes one part at a time in the order of turns, after its frame, with a free frame between', () => {
    for (const turn of [3, 1, 2]) drawLate(part(turn));
    expect(frames(8)).toEqual([[], [], [1], [], [2], [], [3], []]);
  });

  it('waits anew when something changes meanwhile, and is drawn once', () => {
    const first = part(1);
    drawLate(first);
    drawLate(part(2));
    frames(2);
    drawLate(first);
    expect(frames(6)).toEqual([[], [], [], [], [1], [], [2], []]);
  });

  it('asks for no frame when nothing waits, and draws nothing that is gone', () => {
    const gone = part(1);
    drawLate(gone);
    drawNoMore(gone);
    expect(frames(4).flat()).toEqual([]);
    expect(asked).toEqual([]);
  });
});
